/** Points of a pump's curve as they were read, for whoever pasted them. */
import type { PastedCurve } from '../model/choose/pastedCurve.ts';
import type { Show } from '../model/units.ts';
import type { choose } from './en/choose.ts';

/** Each point, and what is taken at no flow where the sheet does not say it; empty where nothing could be read. */
export function sayPoints(read: PastedCurve, { own }: typeof choose, show: Show): string {
  if (!read.ok) return '';
  const points = own.readAs(read.points.map(([flow, head]) => own.point(flow, head)).join('; '));
  return read.atNoFlow === null ? points : `${points} ${own.atNoFlow(show.head(read.atNoFlow))}`;
}
