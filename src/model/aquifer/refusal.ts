import type { Metres } from '../si.ts';
import type { PumpingTest } from './pumpingTest.ts';

/** Why readings cannot be fitted at all, and what to do; null where they can be tried. */
export function refusal({ flow, radius, readings, recovery = [], pumpedFor }: PumpingTest): string | null {
  if (!positive(flow)) return 'The flow of the test is missing: it must be more than zero.';
  if (!positive(radius))
    return 'The distance from the pumped well is missing: for the pumped well itself, give half the hole.';
  if (recovery.length > 0 && !(pumpedFor !== undefined && positive(pumpedFor)))
    return 'Readings of the recovery need the time that was pumped before.';
  const late = readings.findIndex(({ time }) => !positive(time));
  if (late >= 0) return `Reading ${late + 1}: the time since the pump started must be more than zero.`;
  const dry = [...readings, ...recovery].findIndex(({ drawdown }) => !Number.isFinite(drawdown));
  if (dry >= 0) return `Reading ${dry + 1}: the drawdown is not a number.`;
  const stopped = recovery.findIndex(({ sinceStop }) => !positive(sinceStop));
  if (stopped >= 0) return `Recovery reading ${stopped + 1}: the time since the pump stopped must be more than zero.`;
  if (pumpedFor !== undefined && readings.some(({ time }) => time > pumpedFor * (1 + 1e-9)))
    return 'A reading of the drawdown is later than the time that was pumped: enter it with the recovery.';
  const times = new Set([...readings.map(({ time }) => time), ...recovery.map(({ sinceStop }) => -sinceStop)]);
  if (times.size < 3)
    return `Readings at ${times.size} different times are too few: three are the least, ten are good.`;
  if (![...readings, ...recovery].some(({ drawdown }) => drawdown > LEAST_DRAWDOWN))
    return 'No reading shows any drawdown.';
  return readings.length > 2 && !grows(readings)
    ? 'The drawdown does not grow with time: these readings tell no transmissivity (a steady level, a changing flow, or times in the wrong order).'
    : null;
}

/** Nobody reads a level closer than a tenth of a millimetre. */
const LEAST_DRAWDOWN: Metres = 1e-4;

function positive(value: number): boolean {
  return value > 0 && value < Infinity;
}

/** Whether drawdown rises with log time on the whole. */
function grows(readings: PumpingTest['readings']): boolean {
  const n = readings.length;
  const meanTime = readings.reduce((sum, { time }) => sum + Math.log(time), 0) / n;
  return readings.reduce((sum, { time, drawdown }) => sum + (Math.log(time) - meanTime) * drawdown, 0) > 0;
}
