/** What a field is and where to find it, in the reader's units. */
import type { FieldInfo } from '../../../model/plan/fields.ts';

export function helpOf({ help, metricHelp = help }: FieldInfo, units: 'us' | 'metric'): string {
  return units === 'us' ? help : metricHelp;
}
