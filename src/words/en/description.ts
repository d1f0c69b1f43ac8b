/** The drawing in a few sentences, for those who do not see it. */
import type { Metres } from '../../model/si.ts';
import type { Severity } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { capital } from './phrases.ts';

const severities: Readonly<Record<Severity, string>> = { danger: 'Danger', warning: 'Warning', note: 'Note' };

export interface Known {
  readonly depth: Metres | null;
}

export const description = {
  /** @param well  what well it is, and from where its depths count: sentences of the sheet's heading */
  section: (well: string): string => `Section through the well. ${well}`,
  staticLevel: ({ depth }: Known, show: Show): string =>
    depth === null ? 'Static water level not known.' : `Static water level ${show.depth(depth)}.`,
  pumpingLevel: ({ depth }: Known, show: Show): string =>
    depth === null ? 'Pumping level not known.' : `Pumping level ${show.depth(depth)}.`,
  fallsToIntake: 'While pumping, the water falls to the intake.',
  intakeAndBottom: ({ intake, assumed, bottom }: Hung, show: Show): string =>
    `Pump intake ${show.depth(intake)}${assumed ? ', assumed' : ''}, well bottom ${show.depth(bottom)}.`,
  frost: ({ depth, estimated }: Known & { readonly estimated: boolean }, show: Show): string =>
    depth === null ? 'Frost depth not known.' : `Frost to ${show.small(depth)}${estimated ? ', estimated' : ''}.`,
  finding: ({ number, severity, title, amount }: FindingNumbers): string =>
    `${number}: ${severities[severity]}. ${title.endsWith('?') ? `${title} ${capital(amount)}` : `${title}, ${amount}`}.`,
};

export interface Hung {
  readonly intake: Metres;
  /** Nobody said where it hangs. */
  readonly assumed: boolean;
  readonly bottom: Metres;
}

export interface FindingNumbers {
  /** In the list and on the drawing. */
  readonly number: number;
  readonly severity: Severity;
  readonly title: string;
  readonly amount: string;
}
