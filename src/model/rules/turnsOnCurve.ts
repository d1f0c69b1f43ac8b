import type { Finding, Solved } from '../solution.ts';

/** Rules that judge a generic pump at one end of its band or the other. */
const ON_THE_BAND: readonly string[] = [
  'PR-02',
  'PR-07',
  'PR-18',
  'PR-44',
  'PR-46',
  'PR-48',
  'PR-54',
  'PR-58',
  'PR-61',
];

/** What such a rule measures of the pump; all else that it may find rests on no curve. */
const MEASURED: readonly unknown[] = ['pressure', 'flow'];

/** Whether the points of the pump's own sheet would decide a finding that now rests on a generic pump. */
export function turnsOnCurve(
  { rule, quantity, variant, together }: Finding,
  { facts }: Pick<Solved, 'facts'>,
): boolean {
  if (facts.pump.curve.kind !== 'generic' || facts.pump.power === null) return false;
  if (together.some((each) => each.rule !== 'PR-02' && ON_THE_BAND.includes(each.rule))) return true;
  return ON_THE_BAND.includes(rule) && (MEASURED.includes(quantity) || variant === 'mayRunDry');
}

/** Whether it would help to say the frequency: a motor named in kilowatts is judged at both ends of what it may run on. */
export function turnsOnFrequency(finding: Finding, solved: Pick<Solved, 'facts'>): boolean {
  return solved.facts.pump.frequency === null && turnsOnCurve(finding, solved);
}
