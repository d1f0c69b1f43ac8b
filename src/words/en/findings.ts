/** How findings are counted and told of as a whole. What each of them says is in `rules`. */
import type { Severity } from '../../model/solution.ts';

const severities: Readonly<Record<Severity, string>> = { danger: 'Danger', warning: 'Warning', note: 'Note' };

const counted: Readonly<Record<Severity, (count: number) => string>> = {
  danger: (count) => `${count} ${count === 1 ? 'danger' : 'dangers'}`,
  warning: (count) => `${count} ${count === 1 ? 'warning' : 'warnings'}`,
  note: (count) => `${count} ${count === 1 ? 'note' : 'notes'}`,
};

export const findings = {
  severities,
  counted,
  /** A rule's title where it holds, as what nobody can tell yet. */
  whether: (title: string) => `whether ${title.charAt(0).toLowerCase()}${title.slice(1)}`,
  /** In place of a count. */
  none: 'nothing wrong found',
  /** Before the words that lead to the pump's own points. */
  ownCurve: { before: 'Judged on a generic pump; its own sheet decides.', link: 'Type the points of its sheet' },
  /** What is told with the work, whatever was found. */
  atWork: 'While you work',
  added: (severity: Severity, title: string) => `New ${severity}: ${title}.`,
  changed: (severity: Severity, title: string) => `Now a ${severity}: ${title}.`,
  gone: (title: string) => `No longer: ${title}.`,
  inAll: (counted: string) => `In all ${counted}.`,
};
