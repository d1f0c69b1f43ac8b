/** The six quantities: what each is now, from where to where it may move, and the plan in which it has moved. */
import type { Facts } from '../facts.ts';
import { provenYield } from '../figures/provenYield.ts';
import { handlesOf, type Handle } from '../handles.ts';
import { datumOf, valueAt, withDepth, withValue } from '../plan/editPlan.ts';
import type { Plan } from '../plan/schema.ts';
import { isAssumed } from '../rules/assumed.ts';
import type { CubicMetresPerSecond, Metres, Pascals } from '../si.ts';
import type { Solution } from '../solution.ts';
import { feet, gpm, inches, parseQuantity, psi, writeQuantity } from '../units.ts';
import type { Direction, HeadroomOf, Units } from './told.ts';
import { settingForDischarge, settingForMotorBottom } from '../string/pumpDepths.ts';

export interface Movable {
  readonly of: HeadroomOf;
  readonly direction: Direction;
  /** SI; null: nobody said it. */
  readonly now: number | null;
  /** The fields of the plan that hold it. */
  readonly fields: readonly string[];
  /** What a person would read of it, SI. */
  readonly step: number;
  /** What is told is the way that is left, not the value. */
  readonly fromNow: boolean;
  /** How far it can go at all, and how far the other way. */
  readonly end: number;
  readonly back: number;
  /** Values at which something begins or ends, so that a short stretch of trouble is not stepped over. */
  readonly places: readonly number[];
  readonly write: (to: number) => Plan;
  /** Another way in which it may come to be so: what is met first counts. */
  readonly orElse?: (to: number) => Plan;
}

/**
 * The plan that the moved ones are held against. What is said stands as it was typed, to its last bit; what was assumed
 * is written as in the moved ones, lest the saying of it count as a change.
 */
export function standingStill({ now, fields, write }: Movable, plan: Plan, solution: Solution): Plan {
  return now !== null && fields.some((path) => isAssumed(solution, path)) ? write(now) : plan;
}

/**
 * Choices that nobody made and that follow from what is moved: an adapter is assumed under the frost, a pump under the
 * water. Each is held where it is while something else moves; the kind of top that nobody chose is none to hold.
 */
export function heldStill(
  plan: Plan,
  { assumed }: Solution,
): { readonly plan: Plan; readonly held: ReadonlySet<string> } {
  const follows = assumed.filter(
    ({ path }) => path === 'pump.setting' || (path === 'top.depth' && plan.top?.kind !== undefined),
  );
  return {
    plan: follows.reduce((now, { path, value }) => withValue(now, path, value), plan),
    held: new Set(follows.map(({ path }) => path)),
  };
}

/** Nothing of the kind is there: an open tank has no pressure switch. */
export function movablesOf(plan: Plan, solution: Solution, units: Units): readonly Movable[] {
  const handles = handlesOf(solution);
  const handle = (id: string) => handles.find((each) => each.id === id);
  const [pump, frost] = [handle('pumpSetting'), handle('frostDepth')];
  return [
    staticLevel(plan, solution, units),
    wellYield(plan, solution, units),
    demand(plan, solution, units),
    ...(solution.facts.house.kind === 'open tank' ? [] : [pressureSwitch(plan, solution, units)]),
    ...(pump === undefined ? [] : [pumpDeeper(plan, solution, pump, units), pumpHigher(plan, solution, pump, units)]),
    ...(frost === undefined ? [] : [frostDepth(plan, solution, frost, units)]),
  ];
}

function depthStep(units: Units): Metres {
  return units === 'us' ? feet(0.5) : 0.1;
}

/** The water at rest falls, and takes along the level while pumping, the dry season's and the highest. */
function staticLevel(plan: Plan, { facts, levels }: Solution, units: Units): Movable {
  const now = levels.static;
  return {
    of: 'staticLevel',
    direction: 'more',
    now,
    fields: ['water.staticLevel'],
    step: depthStep(units),
    fromNow: true,
    end: facts.well.bottom,
    back: Math.min(0, now ?? 0),
    places: [facts.pump.setting, ...inflowDepths(facts)],
    write: (to) => LEVELS.reduce((moved, path) => shifted(moved, path, to - (now ?? 0)), plan),
  };
}

const LEVELS = ['water.staticLevel', 'water.staticHighest', 'water.staticLowest', 'water.pumping.level'] as const;

/** A depth that the plan says, moved by so much; what it does not say stays unsaid. */
function shifted(plan: Plan, path: string, by: Metres): Plan {
  const typed = valueAt(plan, path);
  const parsed = typeof typed === 'string' ? parseQuantity(typed, 'length') : null;
  return parsed?.ok === true ? withDepth(plan, path, parsed.si + datumOf(plan, path) + by) : plan;
}

function inflowDepths({ well }: Facts): readonly Metres[] {
  return [
    ...well.intake.screens.flatMap(({ top, bottom }) => [top, bottom]),
    ...(well.inflows ?? []).map(({ depth }) => depth),
  ];
}

/** To the tenth from one gallon a minute on, or ten litres; to the hundredth, or the tenth of a litre, below. */
function flowStep(now: CubicMetresPerSecond, units: Units): CubicMetresPerSecond {
  const litre = 0.001 / 60;
  if (units === 'us') return gpm(now < gpm(1) ? 0.01 : 0.1);
  return now < 10 * litre ? 0.1 * litre : litre;
}

function writeFlow(flow: CubicMetresPerSecond, units: Units): string {
  return writeQuantity(flow, 'flow', units === 'us' ? 'gpm' : 'L/min');
}

/** No well is asked to give so many times what it gives. */
const TIMES_YIELD = 5;

/**
 * A yield that is said is moved alone: what was pumped in the test stands as it was measured. Where a test alone tells what
 * the well gives, it may come to give less in two ways: no more than so much however far the water falls, or less at the
 * drawdown of the test.
 */
function wellYield(plan: Plan, solution: Solution, units: Units): Movable {
  const { facts } = solution;
  const now = provenYield(facts);
  const step = flowStep(now ?? 0, units);
  const movable: Movable = {
    of: 'yield',
    direction: 'less',
    now,
    fields: ['well.yield', 'water.pumping'],
    step,
    fromNow: false,
    end: Math.min(step, now ?? step),
    back: TIMES_YIELD * (now ?? 0),
    places: [],
    write: (to) => withValue(plan, 'well.yield', writeFlow(to, units)),
  };
  if (facts.well.yield !== null) return movable;
  return { ...movable, orElse: (to) => testWith(to / (now ?? to), plan, facts, units) };
}

/** The same drawdown at so much of the flow. */
function testWith(share: number, plan: Plan, { water: { pumping } }: Facts, units: Units): Plan {
  const flowAt = (moved: Plan, path: string, flow: CubicMetresPerSecond) =>
    withValue(moved, path, writeFlow(flow * share, units));
  switch (pumping?.kind) {
    case 'test':
      return flowAt(plan, 'water.pumping.flow', pumping.flow);
    case 'steps':
      return stepsOf(plan).reduce(
        (moved, { index, flow }) => flowAt(moved, `water.pumping.steps.${index}.flow`, flow),
        plan,
      );
    default:
      return plan;
  }
}

/** As the plan counts them; a step of which nobody said the flow is none. */
function stepsOf({
  water: { pumping },
}: Plan): readonly { readonly index: number; readonly flow: CubicMetresPerSecond }[] {
  if (pumping?.kind !== 'steps') return [];
  return pumping.steps.flatMap(({ flow }, index) => {
    const parsed = parseQuantity(flow, 'flow');
    return parsed.ok ? [{ index, flow: parsed.si }] : [];
  });
}

/** More than this no house wants at once. Common practice, no source. */
const LARGEST_DEMAND = gpm(30);
const TIMES_DEMAND = 3;

function demand(plan: Plan, solution: Solution, units: Units): Movable {
  const { facts } = solution;
  const now = facts.house.demand;
  const step = flowStep(now ?? 0, units);
  // A level whose flow nobody wrote down was measured once: it does not follow what the house comes to want.
  const measured = isAssumed(solution, 'water.pumping.flow') && now !== null;
  const pinned = measured ? withValue(plan, 'water.pumping.flow', writeFlow(now, units)) : plan;
  return {
    of: 'demand',
    direction: 'more',
    now,
    fields: ['house.demand'],
    step,
    fromNow: false,
    end: Math.max(LARGEST_DEMAND, TIMES_DEMAND * (now ?? 0)),
    back: Math.min(step, now ?? step),
    places: [],
    write: (to) => withValue(pinned, 'house.demand', writeFlow(to, units)),
  };
}

/** No house's tank, switch or relief valve is made for more. Common practice, no source. */
const HIGHEST_SWITCH = psi(150);
const LOWEST_CUT_IN = psi(5);

/**
 * The nut of a switch moves both ends together, and leaves the tank's air as it is.
 */
function pressureSwitch(plan: Plan, { facts }: Solution, units: Units): Movable {
  const { cutIn, cutOut, tankRating, precharge } = facts.house;
  const pinned = withValue(plan, 'house.precharge', writePressure(precharge, units));
  const lowest = cutOut - Math.max(cutIn - LOWEST_CUT_IN, 0);
  return {
    of: 'switch',
    direction: 'more',
    now: cutOut,
    fields: ['house.cutOut', 'house.cutIn', 'house.precharge'],
    step: units === 'us' ? psi(1) : 10e3,
    fromNow: false,
    end: Math.max(HIGHEST_SWITCH, tankRating, cutOut),
    back: lowest,
    places: [tankRating],
    write: (to) =>
      withValue(
        withValue(pinned, 'house.cutOut', writePressure(to, units)),
        'house.cutIn',
        writePressure(Math.max(cutIn + to - cutOut, 0), units),
      ),
  };
}

function writePressure(pressure: Pascals, units: Units): string {
  return writeQuantity(pressure, 'pressure', units === 'us' ? 'psi' : 'bar');
}

function pumpAt(plan: Plan, solution: Solution, handle: Handle, units: Units) {
  const { facts, lowest, levels } = solution;
  const { pump, well, string } = facts;
  const { lowLevelCutOff } = pump;
  const ends = [...inflowDepths(facts), ...well.casings.flatMap(({ bottom }) => bottom ?? [])];
  const water = [levels.static, lowest?.depth, typeof lowLevelCutOff === 'number' ? lowLevelCutOff : null];
  const longest = Math.max(0, ...string.checkValves, ...string.splices);
  return {
    of: 'pumpSetting',
    now: pump.setting,
    fields: ['pump.setting'],
    step: depthStep(units),
    fromNow: false,
    places: [
      ...ends.flatMap((depth) => [depth, settingForMotorBottom(depth, pump), settingForDischarge(depth, pump)]),
      ...water.flatMap((depth) => depth ?? []),
      handle.min + longest,
    ],
    // Not held to the handle's ends: a pump may hang beyond them already.
    write: (to: Metres) => withDepth(plan, handle.path, to),
  } as const;
}

function pumpDeeper(plan: Plan, solution: Solution, handle: Handle, units: Units): Movable {
  const at = pumpAt(plan, solution, handle, units);
  return { ...at, direction: 'more', end: Math.max(handle.max, at.now), back: Math.min(handle.min, at.now) };
}

function pumpHigher(plan: Plan, solution: Solution, handle: Handle, units: Units): Movable {
  const at = pumpAt(plan, solution, handle, units);
  return { ...at, direction: 'less', end: Math.min(handle.min, at.now), back: Math.max(handle.max, at.now) };
}

function frostDepth(plan: Plan, solution: Solution, handle: Handle, units: Units): Movable {
  const { facts, values } = solution;
  const now = values.frostDepth;
  const { top } = facts;
  return {
    of: 'frostDepth',
    direction: 'more',
    now,
    fields: ['site.frostDepth'],
    step: units === 'us' ? inches(1) : 0.01,
    fromNow: false,
    end: Math.max(handle.max, now ?? 0),
    back: handle.min,
    places: top.kind === 'pitless' ? [top.depth, top.depth - facts.site.frostMargin] : [],
    write: (to) => withDepth(plan, handle.path, to),
  };
}
