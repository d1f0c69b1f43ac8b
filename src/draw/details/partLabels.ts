/** Which label a part has in a detail, and the numbers that it is said with. */
import { isFlowing } from '../../model/rules/highestStatic.ts';
import type { Show } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { BoreStretch, PartKind, PlacedPart, Solution } from '../../model/solution.ts';
import type { PartLabel } from '../../words/labels.ts';
import type { ShortLanguage } from '../../words/words.ts';
import { fallsToIntake } from '../fallsToIntake.ts';
import { isPartKind } from '../kinds.ts';
import { SLIDING_HALF } from '../well/stage.ts';

type PartSayings = ShortLanguage['partLabels'];

/** What is named, and what the window shows of the well. */
interface Named {
  readonly key: string;
  readonly part: PlacedPart | undefined;
  readonly shown: { readonly top: Metres; readonly bottom: Metres };
}

type Saying = (solution: Solution, words: PartSayings, show: Show, named: Named) => PartLabel;

export interface Look {
  /** Larger is stiller, and collapses later. */
  readonly weight: number;
  readonly say: Saying;
}

/** Whose depth of frost it is; our own where the plan gives none. */
const frostFrom = ({ frostDepth, frostFrom: from }: Solution['facts']['site']) =>
  frostDepth === null ? 'estimate' : (from ?? 'typed');

/** By kind; null for what no detail names. */
const LOOKS: Readonly<Record<PartKind, Look | null>> = {
  cap: {
    weight: 2,
    say: ({ facts, levels }, words, show) =>
      words.cap({ height: facts.well.casingHeight, flowing: isFlowing({ levels }) }, show),
  },
  bond: { weight: 1.4, say: (_, words) => words.bond },
  rope: { weight: 1.6, say: ({ facts }, words) => words.rope({ tied: facts.rope?.tied ?? null, top: facts.top.kind }) },
  cable: {
    weight: 1.8,
    say: ({ facts }, words, show) => words.cable({ gauge: facts.wire.gauge, wires: facts.pump.wires }, show),
  },
  conduit: { weight: 1.5, say: (_, words, show, { part }) => words.conduit({ depth: part?.bottom ?? null }, show) },
  buriedLine: {
    weight: 2,
    say: ({ facts }, words, show, { part }) => {
      const { line } = facts.house;
      const pipe = line === null ? null : { size: line.nominalSize, material: line.material };
      return words.buriedLine({ pipe, top: part?.top ?? null }, show);
    },
  },
  pitlessAdapter: {
    weight: 4,
    say: ({ facts, values }, words, show) =>
      words.pitlessAdapter(
        { depth: facts.top.kind === 'pitless' ? facts.top.depth : 0, belowFrost: values.pitlessBelowFrost },
        show,
      ),
  },
  seal: {
    weight: 4,
    say: ({ facts, levels }, words, show) =>
      words.seal({ height: facts.well.casingHeight, flowing: isFlowing({ levels }) }, show),
  },
  tee: { weight: 2, say: (_, words) => words.tee },
  union: { weight: 1.5, say: (_, words) => words.union },
  tap: { weight: 1.5, say: (_, words) => words.tap },
  support: { weight: 1.3, say: (_, words) => words.support },
  capSplice: { weight: 1.5, say: (_, words) => words.capSplice },
  frost: {
    weight: 4,
    say: ({ values, facts }, words, show) =>
      words.frost({ depth: values.frostDepth, from: frostFrom(facts.site) }, show),
  },
  insertFitting: { weight: 1.5, say: ({ facts }, words) => words.fitting(jointOf(facts)) },
  dropPipe: {
    weight: 2,
    say: ({ facts: { dropPipe }, values }, words, show) =>
      words.dropPipe(
        {
          size: dropPipe.nominalSize,
          material: dropPipe.material,
          rating: dropPipe.rating,
          wallClass: dropPipe.wallClass,
          toCut: values.dropPipeToCut,
        },
        show,
      ),
  },
  splice: {
    weight: 2,
    say: ({ facts, parts }, words, show, { part }) => {
      const pump = parts.find(({ kind }) => kind === 'pump');
      const up = part !== undefined && pump !== undefined ? pump.top - (part.top + part.bottom) / 2 : null;
      return words.splice({ joints: facts.pump.wires + 1, up }, show);
    },
  },
  probe: {
    weight: 3,
    say: ({ facts }, words, show, { part }) =>
      words.probe(
        { depth: part?.bottom ?? 0, above: part === undefined ? null : facts.pump.setting - part.bottom },
        show,
      ),
  },
  torqueArrestor: {
    weight: 2,
    say: ({ facts }, words, show) => words.torqueArrestor({ up: facts.string.torqueArrestor }, show),
  },
  flowLimiter: {
    weight: 3,
    say: ({ facts: { pump } }, words, show) =>
      words.flowLimiter({ flow: typeof pump.flowLimiter === 'number' ? pump.flowLimiter : null }, show),
  },
  checkValve: { weight: 3, say: ({ facts }, words) => words.checkValve({ arrow: facts.string.arrow }) },
  nipple: { weight: 0.6, say: ({ facts }, words) => words.nipple({ outlet: facts.pump.outlet }) },
  coupling: { weight: 0.6, say: (_, words) => words.coupling },
  tie: { weight: 0.7, say: ({ facts }, words, show) => words.tie({ every: facts.string.ties }, show) },
  guard: { weight: 1, say: (_, words) => words.guard },
  cableGuardStrip: { weight: 0.8, say: (_, words) => words.cableGuardStrip },
  shroud: {
    weight: 2,
    say: (_, words, show, { part }) => words.shroud({ diameter: part === undefined ? null : part.radius * 2 }, show),
  },
  pump: {
    weight: 4,
    say: ({ facts, values, curves }, words, show) =>
      words.pump(
        {
          power: facts.pump.power,
          flow: values.operatingFlowAtCutOut,
          generic: curves.generic,
          open: facts.house.kind === 'open tank',
        },
        show,
      ),
  },
  intake: {
    weight: 4,
    say: ({ facts, values }, words, show) =>
      words.intake({ depth: values.intakeDepth ?? facts.pump.setting, water: values.submergence }, show),
  },
  motor: {
    weight: 3,
    say: ({ facts, values }, words, show) =>
      words.motor({ diameter: facts.pump.motorDiameter, velocity: values.velocityPastMotor }, show),
  },
  grout: { weight: 1, say: ({ facts }, words, show) => words.grout({ depth: facts.well.groutBottom }, show) },
  // Of several in one hole, and of blank pipe, the one that this window shows.
  casing: {
    weight: 1.2,
    say: ({ facts, bore }, words, show, { shown }) => {
      const stretch = bore.find(
        ({ kind, top, bottom }) => kind === 'casing' && bottom > shown.top && top < shown.bottom,
      );
      if (stretch !== undefined && stretch.casing === undefined) return blankPipe(stretch, bore, words, show);
      const index = stretch?.casing ?? 0;
      const casing = facts.well.casings[index];
      const pipe =
        casing === undefined
          ? null
          : {
              size: casing.nominalSize,
              material: casing.materialKnown ? casing.material : null,
              top: casing.top,
              bottom: casing.bottom,
            };
      return index === 0 ? words.casing(pipe, show) : words.liner(pipe, show);
    },
  },
  screen: {
    weight: 2,
    say: ({ facts }, words, show) => words.screen(facts.well.intake.screens[0] ?? null, show),
  },
  openHole: {
    weight: 1,
    say: ({ facts }, words, show) =>
      words.openHole({ diameter: facts.well.intake.diameter, said: facts.well.intake.kind !== null }, show),
  },
  staticLevel: { weight: 4, say: ({ levels }, words, show) => words.staticLevel({ depth: levels.static }, show) },
  pumpingLevel: {
    weight: 4,
    say: (solution, words, show) => {
      const { levels, facts } = solution;
      return fallsToIntake(solution)
        ? words.foretoldLevel({ demand: facts.house.demand }, show)
        : words.pumpingLevel({ depth: levels.pumping }, show);
    },
  },
  clamp: null,
  plug: null,
  riser: null,
  tankTee: null,
  reliefValve: null,
  reliefPipe: null,
  gauge: null,
  switch: null,
  drain: null,
  shutOff: null,
  tank: null,
  float: null,
  disconnect: null,
  controlBox: null,
  drive: null,
  well: null,
};

/** By part key, where it says something else than its kind, and of what is no part. */
const LOOKS_BY_KEY: Readonly<Record<string, Look | undefined>> = {
  [SLIDING_HALF]: { weight: 1.7, say: (_, words) => words.slidingHalf },
  'insertFitting/top': { weight: 3, say: ({ facts }, words) => words.fittingAtTop(jointOf(facts)) },
  'insertFitting/pump': { weight: 2, say: ({ facts }, words) => words.fittingAtPump(jointOf(facts)) },
  inflow: {
    weight: 2,
    say: ({ facts }, words, show, { key }) =>
      words.inflow(facts.well.inflows?.[Number(key.slice(key.indexOf('/') + 1)) - 1] ?? null, show),
  },
};

const jointOf = ({ string: { clampsPerJoint, fittings } }: Solution['facts']) => ({
  clamps: clampsPerJoint,
  fittings,
});

/** Under the last screen it catches what settles; elsewhere it joins two screens, or a screen to its casing. */
function blankPipe(stretch: BoreStretch, bore: readonly BoreStretch[], words: PartSayings, show: Show): PartLabel {
  const isLast = !bore.some((each) => each.kind === 'screen' && each.top >= stretch.bottom - 1e-6);
  return isLast ? words.sump(stretch, show) : words.blankPipe(stretch, show);
}

/** How the label of a part is said; undefined for what has none. */
export function lookOfLabel(key: string, kind: string): Look | undefined {
  return LOOKS_BY_KEY[key] ?? LOOKS_BY_KEY[kind] ?? (isPartKind(kind) ? (LOOKS[kind] ?? undefined) : undefined);
}
