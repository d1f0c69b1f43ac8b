import type { Facts } from '../facts.ts';
import type { PlacedPart } from '../solution.ts';
import { feet, inches } from '../units.ts';

/** Tank, switch, gauge and relief valve where the line arrives; at the height of the rise, or at grade when that is unknown. */
export function placeHouseEnd({ house }: Facts): PlacedPart[] {
  const floor = -(house.rise ?? 0);
  const manifold = floor - inches(8);
  const at = (key: PlacedPart['kind'], height: number): PlacedPart => ({
    key,
    kind: key,
    top: manifold - height,
    bottom: manifold,
    radius: inches(1.5),
  });
  const parts: PlacedPart[] = [{ key: 'tank', kind: 'tank', top: floor - feet(4), bottom: floor, radius: feet(0.75) }];
  if (house.kind === 'open tank') return parts;
  parts.push(at('switch', inches(5)), at('gauge', inches(4)));
  if (house.reliefValve === true) parts.push(at('reliefValve', inches(4)));
  return parts;
}
