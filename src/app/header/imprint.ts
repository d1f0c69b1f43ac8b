/** What the title block of a printed or saved drawing says of date and version. */
import { version } from '../../../package.json';
import type { Solution } from '../../model/solution.ts';
import type { View } from '../../draw/view.ts';

/** The plan's own date, or the day on this device's clock. */
export function imprint({ facts }: Solution): NonNullable<View['imprint']> {
  return { date: facts.date ?? dayOf(new Date()), version };
}

/** ISO 8601, as the device's own calendar has it. */
function dayOf(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
