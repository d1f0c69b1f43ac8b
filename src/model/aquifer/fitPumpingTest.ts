/** A pumping test typed in by hand, fitted: transmissivity and storativity with what is uncertain in them. */
import { storageFadeTime } from '../formulas/boreStorage.ts';
import { theisArgument } from '../formulas/theis.ts';
import type { Seconds } from '../si.ts';
import { assumptionsOf, doubtsOf } from './doubts.ts';
import { logEstimate } from './estimate.ts';
import type { FittedTest, PumpingTest, Residual, TestReading } from './pumpingTest.ts';
import { refusal } from './refusal.ts';
import { LINE_ARGUMENT, recoveryLine, straightLine } from './straightLine.ts';
import { computedDrawdown, solveTheis, type AquiferFigures, type FitPoint, type TheisSolution } from './theisFit.ts';

/** Why a test cannot be fitted, and what to do about it. */
export interface NotFitted {
  readonly reason: string;
}

/**
 * Fits Theis to all readings, drawdown and recovery together, and the straight lines where they hold.
 *
 * In the pumped well itself readings up to 25 rc²/T are left out when the bore's radius is known: until then the level
 * tells of the bore. The methods need not agree: the whole series and its early part give different figures wherever
 * the ground is not what the formula takes it for, so each result carries its name.
 *
 * @returns  the fit, or why there is none
 *
 * Source   Theis (1935); Cooper & Jacob (1946); Kruseman & de Ridder (1994), Analysis and Evaluation of Pumping Test
 *          Data, ch. 3 and 13
 */
export function fitPumpingTest(test: PumpingTest): FittedTest | NotFitted {
  const refused = refusal(test);
  if (refused !== null) return { reason: refused };
  const points = pointsOf(test);
  const fit = fitLateEnough(test, points);
  if ('reason' in fit) return fit;
  const { solution, used, tooEarly } = fit;
  const { uncertainty } = solution;
  if (uncertainty === null)
    return {
      reason: 'The readings do not tell transmissivity and storativity apart: add readings spread over a longer time.',
    };

  const degrees = used.length - 2;
  const residuals = points.map((point): Residual => {
    const computed = computedDrawdown(test, solution, point);
    const measured = point.drawdown;
    const phase = point.sinceStop === null ? 'pumping' : 'recovery';
    return {
      time: point.sinceStart,
      phase,
      measured,
      computed,
      difference: measured - computed,
      leftOut: !used.includes(point),
    };
  });
  const argumentAt = (time: Seconds) => theisArgument({ ...solution, radius: test.radius, time });
  const times = used.map(({ sinceStart }) => sinceStart);
  const theis = {
    transmissivity: logEstimate(solution.transmissivity, uncertainty.logT, degrees),
    storativity: logEstimate(solution.storativity, uncertainty.logS, degrees),
    correlation: uncertainty.correlation,
    rootMeanSquare: Math.sqrt(solution.squares / used.length),
    residuals,
    argumentRange: { first: argumentAt(Math.min(...times)), last: argumentAt(Math.max(...times)) },
  };
  const line = lineOf(test, solution, tooEarly);
  const recovered =
    test.recovery && test.pumpedFor ? recoveryLine(test.flow, test.pumpedFor, lateRecovery(test, solution)) : null;
  return {
    theis,
    straightLine: line.line,
    lineReason: line.reason,
    recoveryLine: recovered,
    assumptions: assumptionsOf(test, tooEarly),
    doubts: doubtsOf(test, theis, line.line, recovered),
  };
}

function pointsOf({ readings, recovery = [], pumpedFor = 0 }: PumpingTest): FitPoint[] {
  return [
    ...readings.map(({ time, drawdown }) => ({ sinceStart: time, sinceStop: null, drawdown })),
    ...recovery.map(({ sinceStop, drawdown }) => ({ sinceStart: pumpedFor + sinceStop, sinceStop, drawdown })),
  ];
}

interface LateFit {
  readonly solution: TheisSolution;
  readonly used: readonly FitPoint[];
  /** Time until which the bore's water counts; 0 where nothing was left out for it. */
  readonly tooEarly: Seconds;
}

/** Leaves out what only emptied or filled the bore; how long that lasts follows from the fit, so it goes round a few times. */
function fitLateEnough(test: PumpingTest, points: readonly FitPoint[]): LateFit | NotFitted {
  let fit: LateFit = { solution: solveTheis(test, points), used: points, tooEarly: 0 };
  if (test.measuredIn === 'observation well' || test.casingRadius === undefined) return fit;
  for (let round = 0; round < ROUNDS; round++) {
    const tooEarly = storageFadeTime(test.casingRadius, fit.solution.transmissivity, 25);
    const used = points.filter(({ sinceStart, sinceStop }) => (sinceStop ?? sinceStart) > tooEarly);
    if (used.length < FEWEST)
      return {
        reason: `The bore’s own water counts for the first ${minutes(tooEarly)} minutes, and fewer than three readings are later: measure longer.`,
      };
    if (used.length === fit.used.length && round > 0) break;
    fit = { solution: solveTheis(test, used), used, tooEarly };
  }
  return fit;
}

const ROUNDS = 6;
const FEWEST = 3;

function minutes(time: Seconds): string {
  return (time / 60).toPrecision(2).replace(/\.0$/, '');
}

function lineOf(test: PumpingTest, figures: AquiferFigures, tooEarly: Seconds) {
  const { lineThrough, readings, radius, flow } = test;
  const late = ({ time }: TestReading) =>
    time > tooEarly && theisArgument({ ...figures, radius, time }) < LINE_ARGUMENT;
  const asked = ({ time }: TestReading) =>
    lineThrough !== undefined && time >= lineThrough.from && time <= lineThrough.to;
  const chosen = readings.filter(lineThrough ? asked : late);
  const line = straightLine(flow, radius, chosen);
  const reason =
    line !== null
      ? null
      : chosen.length < FEWEST
        ? `Only ${chosen.length} of the readings lie where the straight line holds (u under ${LINE_ARGUMENT}).`
        : 'The drawdown does not grow along the line.';
  return { line, reason };
}

function lateRecovery({ recovery = [], radius }: PumpingTest, figures: AquiferFigures) {
  const late = recovery.filter(
    ({ sinceStop }) => theisArgument({ ...figures, radius, time: sinceStop }) < LINE_ARGUMENT,
  );
  return late.length >= FEWEST ? late : [];
}
