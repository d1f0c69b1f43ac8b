/** What a wire is called. */
import type { WireSize } from '../tables/wireSizes.ts';

/** "12 AWG", "2/0 AWG", "4 mm²"; an AWG size for readers of metric units with its copper, "12 AWG (3.3 mm²)", as their shops sell it. */
export function wireName(gauge: WireSize, units: 'us' | 'metric'): string {
  if (typeof gauge === 'string') return gauge.replace('mm2', 'mm²');
  // Sizes over 0 are numbered downwards, and named by their noughts.
  const name = gauge < 1 ? `${1 - gauge}/0 AWG` : `${gauge} AWG`;
  if (units === 'us') return name;
  const area = copperArea(gauge);
  return `${name} (${area.toFixed(area < 9.95 ? 1 : 0)} mm²)`;
}

/** mm² of a solid conductor by the gauge rule of ASTM B258, whose number 36 is 0.127 mm thick. */
function copperArea(gauge: number): number {
  return (Math.PI / 4) * (0.127 * 92 ** ((36 - gauge) / 39)) ** 2;
}
