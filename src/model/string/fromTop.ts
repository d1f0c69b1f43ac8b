/** All that stands in the well and along its string, from top to bottom, with what it meets: the section as a list. */
import type { CasingFacts, Facts, HouseFacts, PipeMaterial, RopeFacts, StringFacts } from '../facts.ts';
import { assumedPaths } from '../rules/assumed.ts';
import { isFlowing } from '../rules/highestStatic.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres, Pascals, Ratio, Watts } from '../si.ts';
import type { BoreStretch, PartKind, PlacedPart, Solved } from '../solution.ts';
import type { WireSize } from '../tables/wireSizes.ts';
import { floorDepth } from './houseEnd.ts';
import { isInHouse, type HouseKind } from './houseKinds.ts';
import { RIGID_SECTION } from './lengths.ts';
import { linksOf, type Link, type Meeting } from './meetings.ts';
import { assumedEnds, isPlaceKnown, type Ends } from './placedBy.ts';
import { isUnasked } from './placedBy.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

/** One of several, counted from the top; the only one needs no number. */
export interface Of {
  readonly index: number;
  readonly count: number;
}

/** What is told of a thing, besides where it is and what it meets. */
export interface Tellings {
  readonly cap: { readonly flowing: boolean };
  readonly seal: { readonly flowing: boolean };
  readonly plug: object;
  readonly tee: object;
  readonly union: object;
  readonly tap: object;
  readonly support: object;
  /** One joint for each wire and the ground. */
  readonly capSplice: { readonly joints: number };
  readonly collar: object;
  readonly shortNipple: object;
  readonly pitlessAdapter: { /** Negative above it. */ readonly belowFrost: Metres | null };
  /** Null where nobody said which pipe. */
  readonly line: { readonly pipe: { readonly size: string; readonly material: PipeMaterial } | null };
  readonly conduit: object;
  readonly bond: object;
  readonly dropPipe: Of & {
    readonly size: string;
    readonly material: PipeMaterial;
    readonly rating: Pascals | null;
    readonly wallClass: string | null;
    readonly length: Metres;
    /** Of rigid pipe: what it comes in; `assumed` where nobody said how long those are. */
    readonly sections: { readonly of: Metres; readonly assumed: boolean; readonly couplings: number } | null;
    readonly guards: { readonly every: Metres; readonly count: number } | null;
  };
  readonly torqueArrestor: { readonly against: BoreStretch['kind'] };
  readonly splice: Of & { readonly joints: number };
  readonly probe: { /** Negative under it. */ readonly overIntake: Metres };
  readonly cable: {
    readonly gauge: WireSize;
    readonly wires: number;
    readonly ties: Metres;
    readonly spliced: boolean;
  };
  readonly rope: {
    readonly material: string;
    readonly tied: RopeFacts['tied'];
    readonly top: Facts['top']['kind'];
  };
  readonly checkValve: Of & { readonly arrow: StringFacts['arrow'] };
  /** Null where nobody said what it holds. */
  readonly flowLimiter: { readonly flow: CubicMetresPerSecond | null };
  readonly nipple: object;
  readonly pump: {
    readonly power: Watts | null;
    readonly flow: CubicMetresPerSecond | null;
    readonly generic: boolean;
    /** Into an open tank, which has no cut-out. */
    readonly open: boolean;
  };
  /** Water that stands over it while pumping; null where nobody knows. */
  readonly intake: { readonly water: Metres | null };
  readonly motor: { /** Negative under it. */ readonly overBottom: Metres };
  readonly shroud: { readonly diameter: Metres };
  /** What stands in the house; heights over its floor. */
  readonly inHouse: {
    readonly part: HouseKind;
    readonly from: Metres;
    readonly to: Metres;
    readonly house: HouseFacts;
  };
  readonly tank: {
    readonly open: boolean;
    readonly volume: CubicMetres | null;
    /** Between cut-out and cut-in; null while unknown, and of an open one. */
    readonly gives: CubicMetres | null;
    readonly precharge: Pascals;
  };
  readonly ground: object;
  readonly frost: { readonly estimated: boolean };
  readonly staticLevel: object;
  /** `foretold`: a test foretells it below the intake, which the water never passes. */
  readonly pumpingLevel: { readonly is: 'held' | 'foretold' | 'anywhere' | 'notKnown' };
  readonly casing: {
    readonly size: string;
    /** Null where nobody said. */
    readonly material: CasingFacts['material'] | null;
    readonly inner: boolean;
    /** Of the outermost; `undefined` for one inside it, null where nobody said. */
    readonly grout: Metres | null | undefined;
  };
  readonly casingFoot: { readonly inner: boolean; readonly over: BoreStretch['kind'] | null };
  readonly screen: Of;
  readonly openHole: { readonly diameter: Metres | null; readonly said: boolean };
  readonly blankPipe: { readonly sump: boolean };
  readonly inflow: { readonly share: Ratio | null };
  readonly wellBottom: object;
}

export type Telling = { [V in keyof Tellings]: { readonly variant: V; readonly numbers: Tellings[V] } }[keyof Tellings];

export interface Standing {
  readonly key: string;
  readonly telling: Telling;
  /** Null where nobody knows how deep. */
  readonly top: Metres | null;
  /** Null for a level, and for what has no lower end that anybody knows. */
  readonly bottom: Metres | null;
  readonly above: Meeting | null;
  readonly below: Meeting | null;
  /** Ends that rest on what nobody said. */
  readonly placeAssumed: Ends<boolean>;
  /** Choices that nobody made and that it is told with, besides its place: paths of the plan. */
  readonly assumed: readonly string[];
  /** No plan says whether it is there at all. */
  readonly unasked: boolean;
}

/** What nobody knows the depth of stands last, but for a pumping level: that is somewhere under the level at rest. */
export function fromTop(solved: Solved): readonly Standing[] {
  const all = [...wellOf(solved), ...waterOf(solved), ...stringOf(solved)];
  const begins = ({ top, telling }: Standing): Metres =>
    top ?? (telling.variant === 'pumpingLevel' ? solved.levels.static : null) ?? Infinity;
  const between = (a: Metres, b: Metres): number => (a === b ? 0 : a - b);
  // Of what begins at one depth, well and water stand before the string, each in its own order.
  return all.sort((a, b) => between(begins(a), begins(b)));
}

/** Fields that are told of it, besides those that place it. */
const TOLD: Readonly<Partial<Record<keyof Tellings, readonly string[]>>> = {
  dropPipe: ['dropPipe.size', 'dropPipe.material', 'dropPipe.rating'],
  splice: ['pump.wires'],
  cable: ['wire.size', 'pump.wires', 'string.ties'],
  rope: ['rope.tied'],
  checkValve: ['string.arrow'],
  pump: ['pump.curve.flow', 'house.cutOut'],
  intake: ['house.demand', 'water.pumping.flow'],
  pumpingLevel: ['house.demand', 'water.pumping.flow'],
  shroud: ['pump.shroudWall'],
  frost: ['site.frostDepth'],
  pitlessAdapter: ['site.frostDepth'],
};

const OF_JOINTS: Readonly<Record<string, readonly string[]>> = {
  pushed: ['string.fittings', 'string.clampsPerJoint'],
  outlet: ['pump.outlet'],
};

const NOWHERE = { top: false, bottom: false };
const NO_MEETINGS = { above: null, below: null };

type Placing = Pick<Standing, 'key' | 'top' | 'bottom'> & Partial<Pick<Standing, 'above' | 'below'>>;

function standing(solved: Solved, placing: Placing, telling: Telling, placeAssumed: Ends<boolean> = NOWHERE): Standing {
  const { key, top, bottom, above, below } = { ...NO_MEETINGS, ...placing };
  const joints = [above, below].flatMap((meeting) =>
    meeting === null || meeting.with === 'liftOutPipe' ? [] : (OF_JOINTS[meeting.joint.by] ?? []),
  );
  const assumed = assumedPaths(solved);
  const told = [...new Set([...(TOLD[telling.variant] ?? []), ...joints])].filter((path) => assumed.has(path));
  return { key, telling, top, bottom, above, below, placeAssumed, assumed: told, unasked: false };
}

function stringOf(solved: Solved): Standing[] {
  const links = linksOf(solved);
  const linked = links.map((link) =>
    standing(
      solved,
      { ...link, ...placeOf(link, solved) },
      tellingOfLink(link, links, solved),
      assumedEnds(solved, link),
    ),
  );
  const beside = solved.parts.flatMap((part) => {
    const telling = tellingOfPart(part, solved);
    if (telling === null) return [];
    const unasked = isUnasked(part);
    const place = unasked ? NOWHERE : assumedEnds(solved, part);
    const { key } = part;
    const placing = isPlaceKnown(solved, part) ? part : { key, top: null, bottom: null };
    return [{ ...standing(solved, placing, telling, place), unasked }];
  });
  return [...linked, ...beside];
}

/** An adapter and an intake are told at the depth that people mean by theirs. */
function placeOf({ kind, top, bottom }: Link, { facts }: Solved): Pick<Standing, 'top' | 'bottom'> {
  if (kind === 'pitlessAdapter' && facts.top.kind === 'pitless') return { top: facts.top.depth, bottom: null };
  if (kind === 'intake') return { top: facts.pump.setting, bottom: null };
  return { top, bottom };
}

function tellingOfLink(link: Link, links: readonly Link[], { facts, values, curves, parts }: Solved): Telling {
  const { pump, dropPipe, string } = facts;
  switch (link.kind) {
    case 'pitlessAdapter':
      return { variant: 'pitlessAdapter', numbers: { belowFrost: values.pitlessBelowFrost } };
    case 'plug':
    case 'tee':
      return { variant: link.kind, numbers: {} };
    case 'coupling':
      return { variant: 'collar', numbers: {} };
    case 'nipple':
      return { variant: link.key === 'nipple' ? 'nipple' : 'shortNipple', numbers: {} };
    case 'dropPipe': {
      const { nominalSize: size, material, rating, wallClass } = dropPipe;
      const { top, bottom } = link;
      const within = (kind: PartKind) =>
        parts.filter(
          (part) => part.kind === kind && part.key !== 'coupling/top' && part.top >= top && part.bottom <= bottom,
        );
      const sections = isBarbed(dropPipe)
        ? null
        : {
            of: dropPipe.sectionLength ?? RIGID_SECTION,
            assumed: dropPipe.sectionLength === null,
            couplings: within('coupling').length,
          };
      const guards = string.guards === null ? null : { every: string.guards, count: within('guard').length };
      const piece = oneOf(link, links);
      return {
        variant: 'dropPipe',
        numbers: { ...piece, size, material, rating, wallClass, length: bottom - top, sections, guards },
      };
    }
    case 'checkValve':
      return { variant: 'checkValve', numbers: { ...oneOf(link, links), arrow: string.arrow } };
    case 'pump':
      return {
        variant: 'pump',
        numbers: {
          power: pump.power,
          flow: values.operatingFlowAtCutOut,
          generic: curves.generic,
          open: facts.house.kind === 'open tank',
        },
      };
    case 'intake':
      return { variant: 'intake', numbers: { water: values.submergence } };
    case 'motor':
      return { variant: 'motor', numbers: { overBottom: facts.well.bottom - link.bottom } };
  }
}

function oneOf({ key, kind }: Pick<Link, 'key' | 'kind'>, links: readonly Link[]): Of {
  const all = links.filter((each) => each.kind === kind);
  return { index: all.findIndex((each) => each.key === key), count: all.length };
}

/** Null for what the links tell already, and for small things that come by the dozen. */
function tellingOfPart(part: PlacedPart, solved: Solved): Telling | null {
  const { facts, parts, bore } = solved;
  const { pump, rope, string, wire, house } = facts;
  if (part.kind === 'tank') {
    const { kind, tank: volume, precharge } = house;
    const gives = solved.values.tankDrawdown;
    return { variant: 'tank', numbers: { open: kind === 'open tank', volume, gives, precharge } };
  }
  if (isInHouse(part.kind)) {
    const floor = floorDepth(facts);
    const [from, to] = [floor - part.bottom, floor - part.top];
    return { variant: 'inHouse', numbers: { part: part.kind, from, to, house } };
  }
  switch (part.kind) {
    case 'cap':
    case 'seal':
      return { variant: part.kind, numbers: { flowing: isFlowing(solved) } };
    case 'buriedLine': {
      const { line } = house;
      return {
        variant: 'line',
        numbers: { pipe: line === null ? null : { size: line.nominalSize, material: line.material } },
      };
    }
    case 'conduit':
    case 'bond':
    case 'union':
    case 'tap':
    case 'support':
      return { variant: part.kind, numbers: {} };
    case 'torqueArrestor': {
      const middle = (part.top + part.bottom) / 2;
      const stretch = bore.find(({ bottom }) => middle <= bottom);
      return { variant: 'torqueArrestor', numbers: { against: stretch?.kind ?? 'openHole' } };
    }
    case 'splice': {
      const splices = parts.filter(({ kind }) => kind === 'splice').toSorted((a, b) => a.top - b.top);
      const index = splices.findIndex(({ key }) => key === part.key);
      return { variant: 'splice', numbers: { index, count: splices.length, joints: pump.wires + 1 } };
    }
    case 'capSplice':
      return { variant: 'capSplice', numbers: { joints: pump.wires + 1 } };
    case 'flowLimiter': {
      const { flowLimiter } = pump;
      return { variant: 'flowLimiter', numbers: { flow: typeof flowLimiter === 'number' ? flowLimiter : null } };
    }
    case 'probe':
      return { variant: 'probe', numbers: { overIntake: pump.setting - part.bottom } };
    case 'cable': {
      const spliced = string.splices.length > 0;
      return {
        variant: 'cable',
        numbers: { gauge: wire.gauge, wires: pump.wires, ties: string.ties, spliced },
      };
    }
    case 'rope':
      return rope === null
        ? null
        : { variant: 'rope', numbers: { material: rope.material, tied: rope.tied, top: facts.top.kind } };
    case 'shroud':
      return { variant: 'shroud', numbers: { diameter: part.radius * 2 } };
    case 'motor':
    case 'intake':
    case 'pump':
    case 'cableGuardStrip':
    case 'nipple':
    case 'checkValve':
    case 'insertFitting':
    case 'clamp':
    case 'dropPipe':
    case 'tie':
    case 'guard':
    case 'pitlessAdapter':
    case 'coupling':
    case 'tee':
    case 'plug':
    case 'casing':
    case 'screen':
    case 'openHole':
    case 'grout':
    case 'well':
    case 'frost':
    case 'staticLevel':
    case 'pumpingLevel':
      return null;
  }
}

/** The first casing has one name, wherever it was typed. */
const HEIGHT = 'well.casing.height';

function isAssumed(solved: Solved, path: string): boolean {
  return assumedPaths(solved).has(path);
}

/** Two depths that a rounding parts are one. */
const SAME: Metres = 1e-6;

function wellOf(solved: Solved): Standing[] {
  const { facts, bore } = solved;
  const { well } = facts;
  const casings = well.casings.flatMap((casing, i): Standing[] => {
    const inner = i > 0;
    const { nominalSize: size, top, bottom } = casing;
    const material = casing.materialKnown ? casing.material : null;
    const grout = inner ? undefined : well.groutBottom;
    const key = `casing/${i}`;
    const whole = standing(
      solved,
      { key, top, bottom },
      { variant: 'casing', numbers: { size, material, inner, grout } },
      { top: !inner && isAssumed(solved, HEIGHT), bottom: false },
    );
    if (bottom === null) return [whole];
    const over = bore.find((stretch) => Math.abs(stretch.top - bottom) < SAME)?.kind ?? null;
    const foot: Telling = { variant: 'casingFoot', numbers: { inner, over } };
    return [whole, standing(solved, { key: `${key}/foot`, top: bottom, bottom: null }, foot)];
  });
  const inflows = (well.inflows ?? []).map(({ depth, share }, i) =>
    standing(solved, { key: `inflow/${i + 1}`, top: depth, bottom: null }, { variant: 'inflow', numbers: { share } }),
  );
  return [
    standing(solved, { key: 'ground', top: 0, bottom: null }, { variant: 'ground', numbers: {} }),
    ...casings,
    ...uncased(solved),
    ...inflows,
    standing(solved, { key: 'wellBottom', top: well.bottom, bottom: null }, { variant: 'wellBottom', numbers: {} }),
  ];
}

/** Screens, blank pipe between and under them, and what stands open. */
function uncased(solved: Solved): Standing[] {
  const { bore, facts } = solved;
  const { intake } = facts.well;
  const screens = bore.filter(({ kind }) => kind === 'screen');
  return bore
    .filter(({ kind, casing }) => kind !== 'casing' || casing === undefined)
    .map((stretch): Standing => {
      const { top, bottom, kind } = stretch;
      const key = `${kind === 'casing' ? 'blankPipe' : kind}/${top}`;
      const telling = ((): Telling => {
        switch (kind) {
          case 'screen':
            return { variant: 'screen', numbers: { index: screens.indexOf(stretch), count: screens.length } };
          case 'casing':
            return { variant: 'blankPipe', numbers: { sump: screens.every((screen) => screen.top < bottom) } };
          case 'openHole':
            return { variant: 'openHole', numbers: { diameter: intake.diameter, said: intake.kind !== null } };
        }
      })();
      return standing(solved, { key, top, bottom }, telling);
    });
}

function waterOf(solved: Solved): Standing[] {
  const { levels, values, assumed } = solved;
  const estimated = assumed.some(({ path }) => path === 'site.frostDepth');
  // Where it never freezes there is no line to tell of.
  const frost =
    values.frostDepth === 0
      ? []
      : [
          standing(
            solved,
            { key: 'frost', top: values.frostDepth, bottom: null },
            { variant: 'frost', numbers: { estimated } },
          ),
        ];
  return [
    ...frost,
    standing(solved, { key: 'staticLevel', top: levels.static, bottom: null }, { variant: 'staticLevel', numbers: {} }),
    pumpingLevelOf(solved),
  ];
}

function pumpingLevelOf(solved: Solved): Standing {
  const { levels, facts } = solved;
  const is = pumpingIs(levels, facts);
  // Where the water falls to the intake it stands there, whatever a test foretells.
  const top = is === 'foretold' ? facts.pump.setting : levels.pumping;
  return standing(
    solved,
    { key: 'pumpingLevel', top, bottom: null },
    { variant: 'pumpingLevel', numbers: { is } },
    { top: is === 'foretold' && isAssumed(solved, 'pump.setting'), bottom: false },
  );
}

function pumpingIs({ static: rest, pumping }: Solved['levels'], { pump }: Facts): Tellings['pumpingLevel']['is'] {
  if (pumping !== null) return rest !== null && rest < pump.setting && pumping > pump.setting ? 'foretold' : 'held';
  return rest !== null && pump.setting > rest ? 'anywhere' : 'notKnown';
}
