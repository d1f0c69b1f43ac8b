/** How fine a drag is: the smallest round step that is worth at least one pixel, so that a readout fakes no precision. */
import { feet, inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';

const STEPS: Readonly<Record<'us' | 'metric', readonly Metres[]>> = {
  us: [inches(1), inches(3), inches(6), feet(1), feet(2), feet(5), feet(10)],
  metric: [0.01, 0.05, 0.1, 0.5, 1, 2, 5],
};

/** @param metresPerPixel  depth that one pixel of the view is worth */
export function dragStep(metresPerPixel: Metres, units: 'us' | 'metric'): Metres {
  const steps = STEPS[units];
  return steps.find((step) => step >= metresPerPixel * 0.999) ?? steps.at(-1) ?? metresPerPixel;
}

/** A depth on the grid of steps that counts from `origin` (the ground, or the datum that the value is typed in). */
export function onStep(depth: Metres, step: Metres, origin: Metres): Metres {
  return origin + Math.round((depth - origin) / step) * step;
}
