/** "5 gal in 28 s": how a flow is measured where no meter is. */
import { parseQuantity, UNITS, writeQuantity } from '../units.ts';

/**
 * @param text  a volume, "in", a time, each with its unit
 * @returns     the flow in the reader's unit, as one would type it; null for anything else
 */
export function bucketFlow(text: string, units: 'us' | 'metric'): string | null {
  const [volume, time, more] = text.split(/\s+in\s+/i);
  if (volume === undefined || time === undefined || more !== undefined) return null;
  const [filled, took] = [parseQuantity(volume, 'volume'), parseQuantity(time, 'time')];
  if (!filled.ok || !took.ok || took.si <= 0) return null;
  const unit = UNITS.flow[units === 'us' ? 0 : 1]?.name ?? 'gpm';
  const one = parseQuantity(`1 ${unit}`, 'flow');
  return one.ok ? writeQuantity(filled.si / took.si, 'flow', unit, one.si / 10) : null;
}
