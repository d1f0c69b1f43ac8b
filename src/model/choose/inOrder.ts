/** The pumps of one table, the best first. */
import { wantedOfPump } from '../figures/wantedOfPump.ts';
import { meets } from '../rules/grace.ts';
import { openYield } from '../rules/openFacts.ts';
import type { CubicMetresPerSecond, Watts } from '../si.ts';
import type { Solution } from '../solution.ts';
import { givesLess, RANGE, WANTED_SHARE, type Does, type PumpFigures } from './fit.ts';

interface Judged {
  readonly does: Does;
  readonly why: { readonly variant: string };
  readonly figures: Pick<PumpFigures, 'share' | 'range' | 'level'>;
  readonly power: Watts | null;
  readonly rated: CubicMetresPerSecond;
  readonly solution: Solution;
}

/** What hangs on the house alone, or does at the worst end of what nobody knows of the well. */
const SURE_OF_WELL: ReadonlySet<string> = new Set(['ifDemand', 'ifPeak', 'dependsOnDemand', 'unknownLevel']);

/** Of what is wanted: a pump that works within this is taken before one that gives more than twice it. Common practice, no source. */
const NEAR_ENOUGH = { from: 1, to: 1.6 } as const;
const FAR_OVER = 2;

/**
 * What does, what does wherever the water is, what works with all that the house wants, what depends, and of that last
 * what hardly lifts from the deepest that it may have to, what only gets along, the rest. In each, of a well whose yield is only sure in part, first what draws more of it; then the smallest
 * power, then the rated flow nearest to what is asked, or where the well gives less than that, what draws the most of its
 * store.
 */
export function inOrder<Row extends Judged>(rows: readonly Row[]): Row[] {
  const near = new Set(rows.filter(isNearEnough).map(({ does }) => does));
  const rank = (row: Row) => {
    if (!isFarOver(row)) return rankOf(row);
    // Of its own kind one that is near goes before it; one that works goes before what only does with far too much.
    return near.has('works') ? AFTER_NEARER : rankOf(row) + (near.has(row.does) ? 0.5 : 0);
  };
  return rows.toSorted(
    (one, other) =>
      rank(one) - rank(other) ||
      sureTenths(other) - sureTenths(one) ||
      (one.power ?? Infinity) - (other.power ?? Infinity) ||
      farFrom(one) - farFrom(other),
  );
}

const AFTER_NEARER = 2.5;

function isNearEnough({ does, why, figures: { share } }: Judged): boolean {
  if (does === 'no' || share === null || why.variant === 'underRange') return false;
  return meets(share - NEAR_ENOUGH.from, 'ratio') && meets(NEAR_ENOUGH.to - share, 'ratio');
}

function isFarOver({ does, why, figures: { share } }: Judged): boolean {
  if (share === null || meets(FAR_OVER - share, 'ratio')) return false;
  return does === 'yes' || (does === 'depends' && SURE_OF_WELL.has(why.variant));
}

/** In tenths of what air blew out: less is no difference. */
function sureTenths({ does, solution }: Judged): number {
  if (does === 'no' || !givesLess(solution)) return 0;
  const open = openYield(solution);
  return open === null ? 0 : Math.round((10 * open.bad) / open.good);
}

function rankOf(row: Judged): number {
  const { does, why, figures } = row;
  switch (does) {
    case 'yes':
      return 0;
    case 'depends':
      if (SURE_OF_WELL.has(why.variant)) return 1;
      return meets((figures.range ?? 0) - RANGE.from, 'ratio') ? 3 : 3.5;
    case 'works':
      if (why.variant === 'underRange' || !meets((figures.share ?? 1) - 1, 'ratio')) return 4;
      return isNearEnough(row) ? 2 : 2.7;
    case 'no':
      return 5;
  }
}

/** In a well that gives less than is asked the store counts: the deeper it is drawn, the better. */
function farFrom({ does, rated, solution, figures }: Judged): number {
  if (does !== 'no' && givesLess(solution)) return -(figures.level ?? 0);
  const wanted = wantedOfPump(solution)?.flow;
  return wanted === undefined ? rated : Math.abs(rated - WANTED_SHARE * wanted);
}
