/**
 * The levels of a well that can be dragged, from where to where: what a drawing reads beside its section. A handle's `min`
 * and `max` are what is physically possible; bad practice lies between them and is allowed, because a drawing that
 * teaches must be able to show a mistake.
 */
import type { Block, HandleName, PlainHandle } from './handleNames.ts';
import { UNKNOWN } from './plan/unknown.ts';
import { assumedPaths, plainPath } from './rules/assumed.ts';
import type { Metres } from './si.ts';
import type { Solution } from './solution.ts';
import { feet, inches } from './units.ts';
import { dischargeDepth, motorBottomDepth, settingForDischarge, settingForMotorBottom } from './string/pumpDepths.ts';
import { ROOM_OVER_PUMP } from './string/lengths.ts';
import { suspensionDepth } from './string/topDepths.ts';

export type HandleInk = 'static' | 'pumping' | 'frost' | 'pump' | 'casing' | 'ground' | 'pitless';

export interface Handle {
  /** "pumpSetting", "checkValve/0" */
  readonly id: string;
  readonly label: HandleName;
  /** Where the plan keeps it. */
  readonly path: string;
  /** Depth from the ground; a height is a negative depth. 0 when not known. */
  readonly depth: Metres;
  readonly known: boolean;
  /** Nobody said it: the program put it in, or worked it out from what it put in. */
  readonly assumed: boolean;
  /** Why it cannot be dragged; null when it can. */
  readonly locked: Block | null;
  readonly min: Metres;
  readonly minWhy: Block;
  readonly max: Metres;
  readonly maxWhy: Block;
  readonly ink: HandleInk;
}

/** Least room between two things that must not touch while they are dragged. */
export const ROOM = inches(1);
export const DEEPEST_WELL = feet(2000);
/** An adapter is fitted from a hole dug beside the casing. */
const DEEPEST_DIG = feet(20);
const DEEPEST_FROST = feet(12);
const TALLEST_CASING = feet(10);

/** All of a handle but what follows from its path. */
export type Placed = Omit<Handle, 'assumed'>;

/** Asked for by the drawing and by the page in the same frame: found once for each solution. */
const FOUND = new WeakMap<Solution, readonly Handle[]>();

export function levelHandlesOf(solution: Solution): readonly Handle[] {
  const found =
    FOUND.get(solution) ??
    toHandles(solution, [
      ...topHandles(solution),
      ...waterHandles(solution),
      pumpHandle(solution),
      ...wellHandles(solution),
    ]);
  FOUND.set(solution, found);
  return found;
}

export function toHandles(solution: Solution, placed: readonly Placed[]): Handle[] {
  const assumed = assumedPaths(solution);
  return placed.map((handle) => ({ ...handle, assumed: handle.known && isPutIn(handle, assumed) }));
}

function isPutIn({ id, path }: Placed, assumed: ReadonlySet<string>): boolean {
  if (assumed.size === 0) return false;
  const own = plainPath(path);
  return (
    assumed.has(own) ||
    // Heights of valves and splices are put in as a whole list.
    (ENDS_IN_DIGIT.test(own) && assumed.has(own.slice(0, own.lastIndexOf('.')))) ||
    RESTS_ON[id]?.some((each) => assumed.has(each)) === true
  );
}

const ENDS_IN_DIGIT = /\d$/;

/** Levels that are worked out from another choice than their own field. */
const RESTS_ON: Readonly<Record<string, readonly string[]>> = {
  pumpingLevel: ['house.demand', 'water.pumping.flow'],
};

function named(variant: PlainHandle): HandleName {
  return { variant, numbers: NO_NUMBERS };
}

const NO_NUMBERS = {};

function topHandles({ plan, facts, values }: Solution): Placed[] {
  const { well, top, pump } = facts;
  const discharge = dischargeDepth(pump);
  const handles: Placed[] = [
    {
      id: 'casingHeight',
      label: named('casingTop'),
      path: `${outerCasingPath(plan)}.height`,
      depth: -well.casingHeight,
      known: true,
      locked: null,
      min: -TALLEST_CASING,
      minWhy: 'noTallerCasing',
      max: 0,
      maxWhy: 'casingEndsAtGround',
      ink: 'casing',
    },
    {
      id: 'frostDepth',
      label: named('frostLine'),
      path: 'site.frostDepth',
      depth: values.frostDepth ?? 0,
      known: values.frostDepth !== null,
      locked: values.frostDepth === null ? 'notKnown' : null,
      min: 0,
      minWhy: 'frostStartsAtGround',
      max: DEEPEST_FROST,
      maxWhy: 'permafrost',
      ink: 'frost',
    },
  ];
  if (top.kind === 'pitless') {
    handles.push({
      id: 'pitlessDepth',
      label: named('pitlessAdapter'),
      path: 'top.depth',
      depth: top.depth,
      known: true,
      locked: null,
      min: inches(2),
      minWhy: 'adapterBelowGround',
      max: Math.max(Math.min(discharge - ROOM_OVER_PUMP, Math.max(DEEPEST_DIG, top.depth)), inches(2)),
      maxWhy: discharge - ROOM_OVER_PUMP < DEEPEST_DIG ? 'pumpHangsBelow' : 'nobodyDigsThere',
      ink: 'pitless',
    });
  }
  return handles;
}

function waterHandles({ facts, levels, values }: Solution): Placed[] {
  const { water, well, house } = facts;
  const { pumping } = water;
  const floor = well.bottom - ROOM;
  const still = levels.static;
  const flowing = well.flowControl !== null || (still !== null && still < 0);
  const pumpingMoves = pumping !== null && (pumping.kind === 'test' || pumping.kind === 'level');
  const levelStays = pumping?.kind === 'level' ? pumping.level : floor;
  return [
    {
      id: 'staticLevel',
      label: named('staticLevel'),
      path: 'water.staticLevel',
      depth: still ?? 0,
      known: still !== null,
      locked: still === null ? 'notKnown' : null,
      min: flowing ? -well.casingHeight - feet(40) : 0,
      minWhy: flowing ? 'noHigherFlow' : 'sayThatItFlows',
      max: Math.max(
        pumping?.kind === 'level' ? Math.min(levelStays, floor) : floor - (values.drawdown ?? 0),
        flowing ? -feet(40) : 0,
      ),
      maxWhy: pumping?.kind === 'level' ? 'meetsMeasuredLevel' : 'waterBelowBottom',
      ink: 'static',
    },
    {
      id: 'pumpingLevel',
      label: named('pumpingLevel'),
      path: pumping?.kind === 'level' ? 'water.pumping.level' : 'water.pumping.drawdown',
      depth: levels.pumping ?? 0,
      known: levels.pumping !== null,
      locked:
        pumpingMoves && levels.pumping !== null && house.demand !== null
          ? null
          : whyNoPumpingHandle(pumping?.kind ?? null, still),
      min: still ?? 0,
      minWhy: 'meetsStaticLevel',
      max: floor,
      maxWhy: 'meetsWellBottom',
      ink: 'pumping',
    },
  ];
}

function whyNoPumpingHandle(kind: string | null, still: Metres | null): Block {
  if (still === null) return 'staticLevelNotKnown';
  if (kind === 'aquifer') return 'followsFromAquifer';
  if (kind === 'steps') return 'followsFromStepTest';
  if (kind === 'yield only') return 'airLiftTellsNoDrawdown';
  return 'notKnown';
}

function pumpHandle({ facts }: Solution): Placed {
  const { pump, well } = facts;
  return {
    id: 'pumpSetting',
    label: named('pumpIntake'),
    path: 'pump.setting',
    depth: pump.setting,
    known: true,
    locked: null,
    min: Math.min(settingForDischarge(suspensionDepth(facts) + ROOM_OVER_PUMP, pump), well.bottom),
    minWhy: 'pumpMeetsTopWorks',
    max: settingForMotorBottom(well.bottom, pump),
    maxWhy: 'motorOnBottom',
    ink: 'pump',
  };
}

function wellHandles({ plan, facts }: Solution): Placed[] {
  const { well, pump } = facts;
  const last = well.casings[well.casings.length - 1];
  const screens = well.intake.screens;
  const motorBottom = motorBottomDepth(pump);
  const lowest = Math.max(motorBottom, last?.bottom ?? 0, ...screens.map((screen) => screen.bottom));
  const byMotor = lowest === motorBottom;
  const handles: Placed[] = [
    {
      id: 'wellBottom',
      label: named('wellBottom'),
      path: well.soundedDepth === null ? 'well.depth' : 'well.soundedDepth',
      depth: well.bottom,
      known: true,
      locked: null,
      min: Math.min(lowest, well.bottom),
      minWhy: byMotor ? 'meetsMotor' : 'meetsCasingOrScreen',
      max: DEEPEST_WELL,
      maxWhy: 'noDeeperWell',
      ink: 'ground',
    },
  ];
  if (last) {
    const floor = screens[0]?.top ?? well.bottom;
    const isLiner = well.casings.length > 1;
    handles.push({
      id: 'casingBottom',
      label: named(isLiner ? 'linerBottom' : 'casingBottom'),
      path: `${lastCasingPath(plan, well.casings.length)}.bottom`,
      depth: last.bottom ?? floor,
      known: last.bottom !== null,
      locked: last.bottom === null ? 'notKnown' : null,
      min: Math.max(last.top, 0) + feet(1),
      minWhy: isLiner ? 'linerNeedsLength' : 'casingNeedsLength',
      max: floor,
      maxWhy: screens.length > 0 ? 'meetsScreen' : 'meetsBottom',
      ink: 'casing',
    });
  }
  // A screen with an end that nobody knows is in the plan and not in the facts.
  const typedAt = (plan.well.intake.screens ?? []).flatMap(({ top, bottom }, i) =>
    top === UNKNOWN || bottom === UNKNOWN ? [] : [i],
  );
  screens.forEach((screen, i) => {
    const short = !hasScreenList(plan);
    const base = short ? 'well.intake' : `well.intake.screens.${typedAt[i] ?? i}`;
    const above = screens[i - 1]?.bottom ?? Math.max(last?.top ?? 0, 0) + feet(1);
    const below = screens[i + 1]?.top ?? well.bottom;
    const numbers = { index: i, count: screens.length };
    handles.push(
      {
        id: `screenTop/${i}`,
        label: { variant: 'screenTop', numbers },
        path: `${base}.top`,
        depth: screen.top,
        known: true,
        locked: null,
        min: above,
        minWhy: 'meetsWhatIsAbove',
        max: screen.bottom - ROOM,
        maxWhy: 'meetsOwnLowerEnd',
        ink: 'casing',
      },
      {
        id: `screenBottom/${i}`,
        label: { variant: 'screenBottom', numbers },
        path: `${base}.bottom`,
        depth: screen.bottom,
        known: true,
        locked: null,
        min: screen.top + ROOM,
        minWhy: 'meetsOwnUpperEnd',
        max: below,
        maxWhy: 'meetsWhatIsBelow',
        ink: 'casing',
      },
    );
  });
  return handles;
}

function outerCasingPath(plan: Solution['plan']): string {
  return plan.well.casing !== undefined ? 'well.casing' : 'well.casings.0';
}

function lastCasingPath(plan: Solution['plan'], count: number): string {
  return plan.well.casing !== undefined ? 'well.casing' : `well.casings.${Math.max(count - 1, 0)}`;
}

function hasScreenList(plan: Solution['plan']): boolean {
  return plan.well.intake.screens !== undefined;
}
