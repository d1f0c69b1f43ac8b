/** Wells that come and go in an address. */
import { readLink, type LinkReading } from '../../link/planLink.ts';
import type { Problem } from '../../model/plan/problem.ts';
import { readPlanText } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';

export { linkOf } from '../../link/planLink.ts';

type Fault = Exclude<LinkReading, { ok: true }>['why'];

const FAULTS: Readonly<Record<Fault, Pick<Problem, 'problem' | 'write'>>> = {
  none: { problem: 'there is no well in it', write: 'ask for the link again' },
  newer: { problem: 'it was made with a newer Wellcut', write: 'load this page anew, and open the link again' },
  damaged: { problem: 'a part of it is missing or changed', write: 'copy all of it, or ask for the plan as a file' },
  tooLong: { problem: 'it is longer than any well', write: 'ask for the plan as a file' },
};

export type LinkedPlan =
  { readonly ok: true; readonly plan: Plan } | { readonly ok: false; readonly problems: readonly Problem[] };

/** The plan in a fragment. */
export function planInLink(fragment: string): LinkedPlan {
  const read = readLink(fragment);
  if (!read.ok) return { ok: false, problems: [{ path: '', read: '', kind: 'text', ...FAULTS[read.why] }] };
  const reading = readPlanText(read.text);
  return reading.ok ? { ok: true, plan: reading.plan } : { ok: false, problems: reading.problems };
}

export function sayCame(title: string): string {
  return `${title === '' ? 'The well' : title} came in a link. It is kept on this device once you change it, or save it.`;
}

/** The page's own address with the well behind it. */
export function addressOf(fragment: string, { origin, pathname }: Pick<Location, 'origin' | 'pathname'>): string {
  return `${origin === 'null' ? 'file://' : origin}${pathname}#${fragment}`;
}
