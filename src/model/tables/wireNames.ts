/** What a wire is called. */
import { awgArea } from '../formulas/wire.ts';
import { writeQuantity } from '../units.ts';

/** "12 AWG", "2/0 AWG"; for readers of metric units with its copper, "12 AWG (3.3 mm²)", as their shops sell it. */
export function wireName(gauge: number, units: 'us' | 'metric'): string {
  const name = writeQuantity(gauge, 'gauge', 'AWG');
  if (units === 'us') return name;
  const area = awgArea(gauge) * 1e6;
  return `${name} (${area.toFixed(area < 9.95 ? 1 : 0)} mm²)`;
}
