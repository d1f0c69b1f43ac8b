import type { Watts } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';

/** A motor's size as its makers round it: "3 hp", "2.2 kW"; "1 hp", "0.75 kW". */
export function motorSize(power: Watts, show: Show): string {
  if (show.units === 'us' || power < 1000) return show.power(power);
  return show.power(Math.round(power / 100) * 100);
}
