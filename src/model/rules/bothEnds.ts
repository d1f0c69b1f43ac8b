/** Judges a rule at both ends of a fact that nobody said. */
import type { Severity } from '../solution.ts';
import type { Open } from './openFacts.ts';
import type { Breaks, Depends, Outcome, Sentence, WorseFrom } from './rule.ts';

/**
 * The outcome where both ends agree, else that it depends, and on what.
 *
 * Margins are affine in the open fact, so the two of them give the turn; a rule whose margin is not gives its own.
 *
 * @param judgeAt  the rule at a value of the fact [SI]; outcomes that hold or break carry their margin
 * @param say      the sentence for the value at which the verdict turns [SI]
 * @param turnAt   that value, where margins do not tell it
 */
export function atBothEnds<Out extends Outcome, Said extends Sentence>(
  open: Open,
  judgeAt: (value: number) => Out,
  say: (turn: number) => Said,
  turnAt?: () => number | null,
): Out | Depends<Said['variant'], Said['numbers']> {
  const good = judgeAt(open.good);
  const bad = judgeAt(open.bad);
  if (bad.kind !== 'breaks') return bad;
  if (bad.severity === severityOf(good)) return good;
  if (good.kind === 'breaks') {
    const at = worseAt(open, good.severity, judgeAt);
    const worse = { fact: open.fact, field: open.field, at, severity: severityOf(judgeAt(at)) ?? bad.severity };
    // Broken even where things are best: that is what is told, whatever else is unknown, and from where on it is worse.
    return good.severity === 'note' ? brokenAtBest(open, good, bad, worse) : { ...good, worse };
  }
  const turn = within(open, turnAt?.() ?? turnBetween(open, good, bad));
  return { kind: 'depends', open, turn, worst: bad, ...say(turn) };
}

/** Short even at the good end, and worse at the bad one: what is said at the good end is true of all. */
function brokenAtBest(
  open: Open,
  { variant, numbers }: Breaks,
  worst: Breaks,
  worse: WorseFrom,
): Depends<never, never> {
  const turn = worse.at;
  return { kind: 'depends', open, turn, worst, worse, variant: variant as never, numbers: numbers as never };
}

/** The first value, towards the bad end, at which it is no longer just as bad as at the good one. */
function worseAt(open: Open, severity: Severity, judgeAt: (value: number) => Outcome): number {
  let [same, worse] = [open.good, open.bad];
  for (let halving = 0; halving < HALVINGS; halving++) {
    const middle = (same + worse) / 2;
    if (severityOf(judgeAt(middle)) === severity) same = middle;
    else worse = middle;
  }
  return worse;
}

/** A hundred metres come down to a millimetre. Rare: only where both ends break, and not alike. */
const HALVINGS = 17;

function within({ good, bad }: Open, turn: number): number {
  return Math.min(Math.max(turn, Math.min(good, bad)), Math.max(good, bad));
}

function severityOf(outcome: Outcome): Severity | null {
  return outcome.kind === 'breaks' ? outcome.severity : null;
}

function turnBetween({ good, bad }: Open, atGood: Outcome, atBad: Outcome): number {
  const best = marginOf(atGood);
  const worst = marginOf(atBad);
  // What is short even at the good end turns there.
  if (best === null || worst === null || !(best > Math.max(worst, 0))) return good;
  return worst >= 0 ? bad : good + ((bad - good) * best) / (best - worst);
}

function marginOf(outcome: Outcome): number | null {
  if (outcome.kind === 'holds') return outcome.margin ?? null;
  return outcome.kind === 'breaks' ? outcome.margin : null;
}
