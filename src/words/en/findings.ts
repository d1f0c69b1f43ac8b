/** How findings are counted and told of as a whole. What each of them says is in `rules`. */
import type { OpenFact, Severity, Taken, WorseFrom } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { capital, ended } from './phrases.ts';

const severities: Readonly<Record<Severity, string>> = { danger: 'Danger', warning: 'Warning', note: 'Note' };

const counted: Readonly<Record<Severity, (count: number) => string>> = {
  danger: (count) => `${count} ${count === 1 ? 'danger' : 'dangers'}`,
  warning: (count) => `${count} ${count === 1 ? 'warning' : 'warnings'}`,
  note: (count) => `${count} ${count === 1 ? 'note' : 'notes'}`,
};

const from: Readonly<Record<OpenFact, (at: number, show: Show) => string>> = {
  pumpingLevel: (at, show) => `once pumping draws the water below ${show.depth(at)}`,
  yield: (at, show) => `if the well gives less than ${show.flow(at)}`,
  frostDepth: (at, show) => `if the frost reaches below ${show.small(at)}`,
  protrusion: (at, show) => `if the adapter stands more than ${show.bore(at)} into the casing`,
  cutOffDepth: (at, show) => `if the dry-run protection acts below ${show.depth(at)}`,
};

export const findings = {
  severities,
  counted,
  /** A rule's title where it holds, as what nobody can tell yet. */
  whether: (title: string) => `whether ${title.charAt(0).toLowerCase()}${title.slice(1)}`,
  /** A well came on the desk. */
  drawn: (well: string, counted: string, unchecked: number) =>
    `Well drawn: ${well}. ${capital(counted)}.${
      unchecked === 0 ? '' : ` ${unchecked} ${unchecked === 1 ? 'check' : 'checks'} could not be made.`
    }`,
  /** In place of a count. */
  none: 'nothing wrong found',
  /** Before the words that lead to the pump's own points. */
  ownCurve: { before: 'Judged on a generic pump; its own sheet decides.', link: 'Type the points of its sheet' },
  /** Where a motor is named in kilowatts and nobody said what it runs on. */
  frequency: {
    before: 'Judged at 50 Hz and at 60 Hz, since nobody said which.',
    link: 'Say the frequency of the supply',
  },
  /** Before what would tell. */
  taken: {
    demandAlone: 'If the pump draws no more than the house wants. Nobody said:',
    beyondTest: 'If the well gives as its test foretells, far past what was pumped. Measure:',
  } satisfies Readonly<Record<Taken, string>>,
  /** What is told with the work, whatever was found. */
  atWork: 'While you work',
  /** Of what is broken whatever a fact is: from which value of it on it is worse. */
  worse: ({ fact, at, severity }: WorseFrom, show: Show) => `A ${severity} ${from[fact](at, show)}.`,
  added: (severity: Severity, title: string) => ended(`New ${severity}: ${title}`),
  changed: (severity: Severity, title: string) => ended(`Now a ${severity}: ${title}`),
  gone: (severity: Severity, title: string) => ended(`${capital(severity)} gone: ${title}`),
  inAll: (counted: string) => `In all ${counted}.`,
  andOpen: (count: number) => `; ${count} ${count === 1 ? 'check' : 'checks'} could not be made`,
};
