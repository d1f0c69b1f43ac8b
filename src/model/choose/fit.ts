/** Whether a pump does the job, by its figures: pressure, flow, range, water over the intake. */
import { levelAtFlow, levelAtNoFlow, pumpAtLevel, pumpFromLevel } from '../figures/curves.ts';
import { dayNeed } from '../figures/dayNeed.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { provenYield } from '../figures/provenYield.ts';
import { wantedOfPump } from '../figures/wantedOfPump.ts';
import { siteWater } from '../figures/siteWater.ts';
import { STANDARD_GRAVITY } from '../formulas/water.ts';
import { hasCutOff } from '../rules/cutOff.ts';
import { meets } from '../rules/grace.ts';
import { floorTo } from '../rules/rounding.ts';
import { LEAST_SHARE } from '../rules/delivery.ts';
import { verdictBy } from '../rules/index.ts';
import { openPumpingLevel, openYield } from '../rules/openFacts.ts';
import type { Sentence } from '../rules/rule.ts';
import { CUT_OUT_SPARE, reachAt } from '../rules/tank.ts';
import { LEFT_OVER_INTAKE } from '../rules/yield.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres, Pascals, Ratio, Seconds } from '../si.ts';
import type { Solution, Verdict } from '../solution.ts';
import { gpm } from '../units.ts';

/** What is asked of a pump over what is wanted of it, and where in its range it is to work. Common practice, no source. */
export const WANTED_SHARE: Ratio = 1.1;
export const RANGE = { from: 0.5, to: 1.3 } as const;
/** In a well that gives less than is wanted a pump is named for no more than so many times what is wanted. Common practice, no source. */
export const MOST_FROM_STORE: Ratio = 2;
export { CUT_OUT_SPARE, LEFT_OVER_INTAKE };

/** What a pump does in its well, SI; null where a fact it needs is unknown, or where it has no meaning. */
export interface PumpFigures {
  /** At cut-in from the lowest level at rest, the water falling as it flows; with the water at its worst where nobody knows how far it falls. */
  readonly flow: CubicMetresPerSecond | null;
  /** Where the water stands meanwhile. */
  readonly level: Metres | null;
  /** Of what is asked of it. */
  readonly share: Ratio | null;
  /** Over cut-out, no water drawn, at the lowest level; null for an open tank. */
  readonly spare: Pascals | null;
  /** The deepest water from which it still fills the tank. */
  readonly lifts: Metres | null;
  /** Water over the intake at the strongest that its name can stand for. */
  readonly left: Metres | null;
  /** The flow over the rated one. */
  readonly range: Ratio | null;
}

export type Why =
  | Sentence<'fits', { flow: number; share: Ratio | null; spare: Pascals | null; left: Metres }>
  /** The well gives less than the house wants; the pump gives it from the water that stands in the bore. */
  | Sentence<
      'fromStore',
      {
        flow: number;
        gives: number;
        sure: number;
        level: Metres;
        /** With the bore full. */
        full: number;
        /** Where that is past its range: what a flow-limiting valve may pass; 0 where one would pass too little. */
        valve: number | null;
      }
    >
  /** The same, of a well that was only blown with air. */
  | Sentence<'yieldUnsure', { gives: number }>
  /** It does where the house draws what is assumed. */
  | Sentence<'ifDemand', { flow: number; wanted: number }>
  /** The same of a house whose peak an open tank carries. */
  | Sentence<'ifPeak', { flow: number; peak: number }>
  | Sentence<'dependsOnDemand', { flow: number }>
  /** Only while the water stands above a depth. */
  | Sentence<'dependsOnLevel', { turn: Metres }>
  /** Even with the water at its intake, but nobody knows how much stays over it. */
  | Sentence<'unknownLevel', { level: Metres }>
  /** Not even from the water at rest; or from there, but it does not get the water as low as it has to. */
  | Sentence<'liftsNone', { rest: Metres; lifts: Metres | null }>
  | Sentence<'lacksPressure', { spare: Pascals; level: Metres; asked: Pascals }>
  /** `house` is what is asked of it, `wanted` with what is to spare. */
  | Sentence<'givesLittle', { flow: number; house: number; wanted: number; fillsTank: boolean }>
  | Sentence<'takesTooMuch', { left: Metres; asked: Metres }>
  | Sentence<'outpumps', { gives: number | null }>
  | Sentence<'underRange', { range: Ratio; least: Ratio; open?: true }>
  | Sentence<'overRange', { range: Ratio; most: Ratio }>
  /** It does, but no usual tank takes what it gives in one run. */
  | Sentence<'tanksTogether', { water: CubicMetres }>
  /** It only empties the bore the sooner, and a smaller one does. */
  | Sentence<'farOver', { rated: number; gives: number | null; house: number; fillsTank: boolean }>
  /** Of a drop pipe that nobody rated: no usual one bears it. */
  | Sentence<'overAnyPipe', { need: Pascals }>
  | Sentence<'unguarded', { gives: number }>
  | Sentence<'storeTooSmall', { gives: number; wanted: number }>
  /** No tank makes up for what a day lacks. */
  | Sentence<'dayTooLittle', { aDay: CubicMetres; need: CubicMetres }>;

/**
 * Whether a pump does the job. `works`: it lacks something that only choosing asks for, to spare or for its range; no
 * rule finds it wrong where it hangs, and `why` is what it lacks.
 */
export type Does = 'yes' | 'works' | 'depends' | 'no';

export interface Fit {
  readonly does: Does;
  readonly why: Why;
  readonly figures: PumpFigures;
}

const AT_CUT_IN = { end: 'least', tank: 'cutIn' } as const;

/**
 * @param solution  of the plan with the pump in it, whose level at rest and way to the tank are known
 * @param rated     the flow that the pump is named for
 */
export function fitOf(solution: Solution, rated: CubicMetresPerSecond): Fit {
  if (givesLess(solution)) return fitFromStore(solution, rated);
  const open = openPumpingLevel(solution);
  return open === null ? fitInKnown(solution, rated) : fitInUnknown(solution, rated, open.good, open.bad);
}

/** Less than the house wants at its busiest. */
export function givesLess({ facts }: Pick<Solution, 'facts'>): boolean {
  const gives = provenYield(facts);
  const { demand } = facts.house;
  return gives !== null && demand !== null && !meets(gives - demand, 'flow');
}

/** The drawdown is known, or that the pump empties the bore. */
function fitInKnown(solution: Solution, rated: CubicMetresPerSecond): Fit {
  const { facts, lowest, curves } = solution;
  const rest = lowestStatic(facts) ?? 0;
  const point = pumpFromLevel(facts, AT_CUT_IN, rest);
  const level = lowest?.depth ?? rest;
  const figures = figuresAt(solution, rated, {
    flow: point?.flow ?? null,
    level: point?.waterLevel ?? null,
    lowest: level,
  });
  const no = shortAt(solution, figures, level);
  if (no !== null && shortAt(solution, figures, level, BY_CHECK) !== null) return short(no, figures);
  // That something stops it there makes it no pump to choose for this well.
  if (curves.atCutInMost?.outpumped === true || verdictBy('PR-07', solution) === 'note') {
    // Of a pump that is too small even with the water at rest, that is told.
    const { best } = atBoth(solution, rated, rest, rest);
    const small = shortAt(solution, { ...best, range: null }, rest);
    if (small !== null) return short(small, best);
    return { does: 'no', why: { variant: 'outpumps', numbers: { gives: provenYield(facts) } }, figures };
  }
  const left = figures.left ?? 0;
  if (!meets(left - LEFT_OVER_INTAKE, 'length'))
    return { does: 'no', why: { variant: 'takesTooMuch', numbers: { left, asked: LEFT_OVER_INTAKE } }, figures };
  if (no !== null) return worksBut(solution, no, figures);
  return done(solution, figures, { variant: 'fits', numbers: { ...saidOf(figures), left } });
}

/**
 * No pump makes a well give more: the water that stands in it carries the peak, and the pump has to get it up from as low
 * as its dry-run protection lets it fall.
 */
function fitFromStore(solution: Solution, rated: CubicMetresPerSecond): Fit {
  const { facts, lowest } = solution;
  const rest = lowestStatic(facts) ?? 0;
  const level = lowest?.depth ?? lowestLevel(facts).depth;
  const { best, worst: figures } = atBoth(solution, rated, rest, level);
  const gives = provenYield(facts) ?? 0;
  const low = shortBetween(solution, best, figures, level, FROM_STORE);
  const no = low ?? shortAtRest(solution, best, figures);
  // What it lacks with the water at rest stands beside its flow from there.
  const shown = low === null ? { ...best, spare: figures.spare, left: figures.left } : figures;
  if (no !== null && shortBetween(solution, best, figures, level, BY_CHECK) !== null) return short(no, shown);
  if (!hasCutOff(solution)) return { does: 'no', why: { variant: 'unguarded', numbers: { gives } }, figures };
  const shortage = verdictBy('PR-55', solution);
  const sure = openYield(solution)?.bad ?? gives;
  if (shortage === 'warning' || shortage === 'danger') return { does: 'no', why: shortageOf(solution, gives), figures };
  if (no !== null) return shortage === 'depends' ? short(no, shown) : worksBut(solution, no, shown);
  if (shortage === 'depends') return { does: 'depends', why: { variant: 'yieldUnsure', numbers: { gives } }, figures };
  // A pump that gets the last water up runs out while the bore is full: a valve holds it, and none is refused for it.
  const pastRange = facts.house.control !== 'variable speed' && !meets(RANGE.to - (best.range ?? 0), 'ratio');
  const full = best.flow ?? 0;
  const valve = pastRange ? valveFor(solution, rated) : null;
  const numbers = { flow: figures.flow ?? 0, gives, sure, level, full, valve };
  return done(solution, figures, { variant: 'fromStore', numbers });
}

function shortageOf(solution: Solution, gives: CubicMetresPerSecond): Why {
  const { demand, kind } = solution.facts.house;
  const { need } = dayNeed(solution);
  return kind === 'open tank' && gives * DAY < need
    ? { variant: 'dayTooLittle', numbers: { aDay: gives * DAY, need } }
    : { variant: 'storeTooSmall', numbers: { gives, wanted: demand ?? 0 } };
}

const DAY: Seconds = 86_400;

/** As much as keeps the pump in its range, in the steps that valves are made in; 0 where more is wanted. */
function valveFor(solution: Solution, rated: CubicMetresPerSecond): CubicMetresPerSecond {
  const { facts } = solution;
  const step = facts.units === 'us' ? gpm(0.5) : 0.001 / 60;
  const most = floorTo(RANGE.to * rated, step, step * 1e-6);
  return meets(most - WANTED_SHARE * (wantedOfPump(solution)?.flow ?? 0), 'flow') ? most : 0;
}

/** What is asked of every pump, where the water that stands in the bore is drawn: from where it stands at rest. */
function shortAtRest(solution: Solution, best: PumpFigures, worst: PumpFigures): Why | null {
  return shortAt(solution, { ...best, range: null, spare: worst.spare }, lowestStatic(solution.facts) ?? 0);
}

/** With the water held at rest, and as low as it gets. */
function atBoth(solution: Solution, rated: CubicMetresPerSecond, rest: Metres, deepest: Metres) {
  const at = (level: Metres) =>
    figuresAt(solution, rated, {
      flow: pumpAtLevel(solution.facts, AT_CUT_IN, level)?.flow ?? null,
      level,
      lowest: level,
    });
  return { best: at(rest), worst: at(deepest) };
}

/** As low as it gets; over its range only where it is so even there, under it only where it is so even at rest. */
function shortBetween(
  solution: Solution,
  best: PumpFigures,
  worst: PumpFigures,
  deepest: Metres,
  asked: Asked = BY_CHOOSING,
): Why | null {
  const range = worst.range !== null && worst.range > RANGE.from ? worst.range : best.range;
  return shortAt(solution, { ...worst, range: range === null ? null : inRangeAtRest(range, worst) }, deepest, asked);
}

function inRangeAtRest(range: Ratio, worst: PumpFigures): Ratio {
  return range === worst.range ? range : Math.min(range, RANGE.to);
}

/** Nobody knows how far the water falls: from rest down to the intake. */
function fitInUnknown(solution: Solution, rated: CubicMetresPerSecond, rest: Metres, deepest: Metres): Fit {
  const { best, worst } = atBoth(solution, rated, rest, deepest);
  const figures = { ...worst, left: null };
  const over = worst.range !== null && worst.range > RANGE.to;
  if (over) return short({ variant: 'overRange', numbers: { range: worst.range, most: RANGE.to } }, figures);
  const no = shortAt(solution, { ...best, range: Math.min(best.range ?? 0, RANGE.to) }, rest);
  // What it lacks even with the water at rest stands beside its figures from there.
  if (no !== null) return short(no, { ...best, left: null });
  if (shortBetween(solution, best, worst, deepest) === null)
    return { does: 'depends', why: { variant: 'unknownLevel', numbers: { level: deepest } }, figures };
  return { does: 'depends', why: { variant: 'dependsOnLevel', numbers: { turn: turnOf(solution, rest) } }, figures };
}

/** The deepest water from which it gives what is asked at the pressure that is asked. */
export function turnOf(solution: Solution, rest: Metres): Metres {
  const { facts } = solution;
  const { kind } = facts.house;
  const want = wantedOfPump(solution);
  const wanted = want?.flow ?? null;
  const { share } = givesLess({ facts }) ? FROM_STORE : BY_CHOOSING;
  const byFlow = wanted === null ? Infinity : (levelAtFlow(facts, AT_CUT_IN, share * wanted) ?? rest);
  const atCutOut = levelAtNoFlow(facts, { end: 'least', tank: 'cutOut' }) ?? Infinity;
  // So little fills a tank that a pump gives it nearly where it stalls: it would never draw its probe dry, and burn.
  const isHeld = kind !== 'open tank' || want?.fillsTank === true;
  const spare = isHeld ? CUT_OUT_SPARE / weightOf(facts) : 0;
  return Math.max(Math.min(byFlow, atCutOut - spare), rest);
}

function weightOf({ site }: Solution['facts']): number {
  return siteWater(site).density * STANDARD_GRAVITY;
}

interface Asked {
  /** Flow over what is wanted of it. */
  readonly share: Ratio;
  readonly range: { readonly from: Ratio; readonly to: Ratio };
}
const BY_CHOOSING: Asked = { share: WANTED_SHARE, range: RANGE };
/** The store is drawn down as it is used, and with its last water a pump may give as little as its rule lets it. */
const FROM_STORE: Asked = { share: LEAST_SHARE, range: RANGE };
/** Of a pump that hangs less is asked: how far it may run out its own rule says. */
const BY_CHECK: Asked = { share: LEAST_SHARE, range: { from: 0, to: Infinity } };

/** What is not enough with the water at a level; null where nothing is. */
function shortAt(solution: Solution, figures: PumpFigures, level: Metres, asked: Asked = BY_CHOOSING): Why | null {
  const { facts } = solution;
  const { flow, spare, lifts, range } = figures;
  const { control, kind } = facts.house;
  const want = wantedOfPump(solution);
  // It lifts from there, so that what nobody can tell is only how far it draws the water down.
  if (flow === null && lifts !== null && lifts > level)
    return { variant: 'outpumps', numbers: { gives: provenYield(facts) } };
  if (flow === null || !(flow > 0)) return { variant: 'liftsNone', numbers: { rest: lowestStatic(facts) ?? 0, lifts } };
  if (spare !== null && !meets(spare - CUT_OUT_SPARE, 'pressure'))
    return { variant: 'lacksPressure', numbers: { spare, level, asked: CUT_OUT_SPARE } };
  if (want !== null && !meets(flow - asked.share * want.flow, 'flow')) {
    const { flow: house, fillsTank } = want;
    return { variant: 'givesLittle', numbers: { flow, house, wanted: asked.share * house, fillsTank } };
  }
  if (range === null) return null;
  const { from, to } = asked.range;
  if (!meets(range - from, 'ratio'))
    return { variant: 'underRange', numbers: { range, least: from, ...(kind === 'open tank' && { open: true }) } };
  // A pump that follows the demand slows down before it runs out.
  if (control !== 'variable speed' && !meets(to - range, 'ratio'))
    return { variant: 'overRange', numbers: { range, most: to } };
  return null;
}

/** Rules that ask for the same as choosing does, and for less of it. */
const ASK_LESS = ['PR-54', 'PR-58'] as const;
const KEPT: ReadonlySet<Verdict> = new Set<Verdict>(['ok', 'not judged']);

/** It serves, by all that is said; only choosing asks for more. */
function worksBut(solution: Solution, why: Why, figures: PumpFigures): Fit {
  const { facts, assumed } = solution;
  const isSaid = facts.house.demand !== null && !assumed.some(({ path }) => path === 'house.demand');
  const isKept = () => ASK_LESS.every((rule) => KEPT.has(verdictBy(rule, solution)));
  return isSaid && isKept() ? { does: 'works', why, figures } : short(why, figures);
}

/** A pump that lifts no water draws none down: neither what stays over it nor its pressure from there means anything. */
function short(why: Why, figures: PumpFigures): Fit {
  const none = why.variant === 'liftsNone' ? { spare: null, left: null } : {};
  return { does: 'no', why, figures: { ...figures, ...none } };
}

/** Rests on what the house draws: said, assumed, or not known. */
function done(solution: Solution, figures: PumpFigures, why: Why): Fit {
  const { facts, assumed } = solution;
  const { demand } = facts.house;
  const flow = figures.flow ?? 0;
  if (demand === null) return { does: 'depends', why: { variant: 'dependsOnDemand', numbers: { flow } }, figures };
  if (assumed.some(({ path }) => path === 'house.demand')) {
    const fills = wantedOfPump(solution)?.fillsTank === true;
    const rests: Why = fills
      ? { variant: 'ifPeak', numbers: { flow, peak: demand } }
      : { variant: 'ifDemand', numbers: { flow, wanted: demand } };
    return { does: 'depends', why: rests, figures };
  }
  return { does: 'yes', why, figures };
}

function saidOf({ flow, share, spare }: PumpFigures) {
  return { flow: flow ?? 0, share, spare };
}

interface Working {
  readonly flow: CubicMetresPerSecond | null;
  readonly level: Metres | null;
  /** The lowest pumping level. */
  readonly lowest: Metres;
}

function figuresAt(solution: Solution, rated: CubicMetresPerSecond, working: Working): PumpFigures {
  const { facts } = solution;
  const wanted = wantedOfPump(solution)?.flow ?? 0;
  const { flow, level, lowest } = working;
  return {
    flow,
    level,
    share: flow === null || !(wanted > 0) ? null : flow / wanted,
    spare: spareAt(solution, lowest),
    lifts: levelAtNoFlow(facts, AT_CUT_IN),
    left: facts.pump.setting - lowest,
    range: flow === null ? null : flow / rated,
  };
}

function spareAt(solution: Solution, level: Metres): Pascals | null {
  const { house } = solution.facts;
  const reach = reachAt(solution, level);
  return house.kind === 'open tank' || reach === null ? null : reach - house.cutOut;
}
