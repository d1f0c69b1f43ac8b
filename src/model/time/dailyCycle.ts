/** A poor well through the day: it is emptied, left to fill, and emptied again. */
import { boreKnown } from '../figures/waterFall.ts';
import { boreResponse } from '../formulas/boreStorage.ts';
import type { CubicMetres, CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';
import type { Solved } from '../solution.ts';
import { accountOf } from './account.ts';
import { drawdownKnown } from './standing.ts';
import { waterBetween } from './freeSurface.ts';
import { groundOf } from './ground.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import type { FlowChoice } from './pumpedFlow.ts';
import { drawdownAfterRest, timeToDraw, timeToFill } from './reservoir.ts';
import type { Unknown } from './unknown.ts';
import { roughYield } from './roughYield.ts';

const DAY: Seconds = 86400;

export interface CycleOptions {
  readonly flow?: FlowChoice;
  readonly start?: 'rest' | 'dry season';
  /** When the pump starts again: once this share of the stored water is back, or after a rest by a timer. Default: half. */
  readonly restart?: { readonly share: Ratio } | { readonly rest: Seconds };
}

export interface DailyCycle {
  readonly flow: CubicMetresPerSecond;
  readonly flowWords: string;
  /** Water in the first day, starting with a full bore. */
  readonly firstDay: CubicMetres;
  /** Water in each day that follows. */
  readonly laterDays: CubicMetres;
  /** The first run empties the full bore; null: the pump can run all day. */
  readonly firstRun: Seconds | null;
  /** Each later run and the rest before it; null with the first run. */
  readonly run: Seconds | null;
  readonly rest: Seconds | null;
  /** What the well gives with its water held at the lowest level: no cycle gets more. */
  readonly mostFlow: CubicMetresPerSecond;
  readonly storage: CubicMetres;
  readonly assumptions: readonly string[];
}

/**
 * Water per day from a well that the pump empties.
 *
 * Inflow follows the drawdown: c s, with c from the test or aquifer after a day of pumping, and no more at the lowest
 * level than the reported yield; for a report without a drawdown the yield is held to flow in at the lowest level.
 *
 * @returns  the day, or the reason why it cannot be told
 *
 * Range    level falls through one width of bore; the ground's own slow emptying within the day is in c alone
 */
export function dailyCycle(solved: Solved, options: CycleOptions = {}): DailyCycle | Unknown {
  const { facts } = solved;
  const staticLevel = options.start === 'dry season' ? facts.water.staticLowest : facts.water.staticLevel;
  if (staticLevel === null) return { reason: 'The static level is not known.' };
  const account = accountOf(solved, staticLevel, options.flow);
  if ('reason' in account) return account;
  const lowest = lowestLevel(facts);
  const most = lowest.depth - staticLevel;
  if (!boreKnown(solved.bore, staticLevel, lowest.depth)) return { reason: 'The width of the bore is not known.' };
  const storage = waterBetween(solved, staticLevel, lowest.depth);
  if (!(most > 0 && storage > 0)) return { reason: `The ${lowest.by} hangs above the water at rest.` };
  const inflow = inflowPerDrawdown(solved, account.flow, staticLevel, most);
  if ('reason' in inflow) return inflow;

  // A pump that settles gives in a day what the well yields, and never runs dry.
  const fall = account.kind === 'falls' ? account.fall : null;
  const flow = fall === null ? (account.fall === null ? account.flow : account.fall.meanPumpFlow) : fall.meanPumpFlow;
  const flowWords = fall === null ? account.words : `${account.words}, as it is on average while the water falls`;
  const reservoir = { area: storage / most, inflowPerDrawdown: inflow.perDrawdown };
  const mostFlow = inflow.perDrawdown * most;
  const told = { flow, flowWords, mostFlow, storage, assumptions: inflow.assumptions };
  const firstRun =
    fall?.time ??
    (account.kind === 'keepsUp' || account.kind === 'settles' ? null : timeToDraw(reservoir, flow, 0, most));
  if (firstRun === null)
    return { ...told, firstDay: flow * DAY, laterDays: flow * DAY, firstRun, run: null, rest: null };

  const restart = options.restart ?? { share: 0.5 };
  const left = 'share' in restart ? most * (1 - restart.share) : drawdownAfterRest(reservoir, most, restart.rest);
  if (!(left > 0 && left < most))
    return { reason: 'The pump must rest for some time, and start before the bore is all full.' };
  const rest = timeToFill(reservoir, most, left);
  const run = timeToDraw(reservoir, flow, left, most);
  if (run === null) return { reason: 'The pump is held at the lowest level by what flows in, so no run ends.' };
  return {
    ...told,
    firstDay: flow * pumpedTime(firstRun, run, rest),
    laterDays: (flow * run * DAY) / (run + rest),
    firstRun,
    run,
    rest,
  };
}

/** How long the pump runs in the first day: the first run, then rest and run in turn, cut off at midnight. */
function pumpedTime(firstRun: Seconds, run: Seconds, rest: Seconds): Seconds {
  if (firstRun >= DAY) return DAY;
  const cycles = Math.floor((DAY - firstRun) / (run + rest));
  const remainder = DAY - firstRun - cycles * (run + rest);
  return firstRun + cycles * run + Math.max(remainder - rest, 0);
}

interface Inflow {
  readonly perDrawdown: SquareMetresPerSecond;
  readonly assumptions: readonly string[];
}

function inflowPerDrawdown(
  solved: Solved,
  flow: CubicMetresPerSecond,
  staticLevel: Metres,
  most: Metres,
): Inflow | Unknown {
  const reported = solved.facts.well.yield;
  const atLowest = reported !== null && reported > 0 ? reported / most : null;
  const inProportion = 'Inflow goes in proportion to the drawdown.';
  if (!drawdownKnown(solved)) {
    if (atLowest === null) return { reason: 'Nothing is known of the drawdown, nor of the yield.' };
    const rough = roughYield(solved.facts.well);
    const assumption = `The reported yield flows in while the water stands at its lowest${rough === null ? '' : `; ${rough}`}.`;
    return { perDrawdown: atLowest, assumptions: [inProportion, assumption] };
  }
  const ground = groundOf(solved, { flow, staticLevel, storativity: undefined });
  if ('reason' in ground) return ground;
  const afterADay = 1 / boreResponse(ground, DAY);
  if (atLowest !== null && atLowest < afterADay)
    return {
      perDrawdown: atLowest,
      assumptions: [
        inProportion,
        'The reported yield is less than the drawdown promises at the lowest level: the yield is taken.',
      ],
    };
  return {
    perDrawdown: afterADay,
    assumptions: [inProportion, 'The inflow is that after a day of pumping.', ...ground.assumptions],
  };
}
