/** The pumps of one table, the best first. */
import { meets } from '../rules/grace.ts';
import type { CubicMetresPerSecond, Watts } from '../si.ts';
import type { Solution } from '../solution.ts';
import { WANTED_SHARE, type Does, type PumpFigures } from './fit.ts';

interface Judged {
  readonly does: Does;
  readonly why: { readonly variant: string };
  readonly figures: Pick<PumpFigures, 'share'>;
  readonly power: Watts | null;
  readonly rated: CubicMetresPerSecond;
  readonly solution: Pick<Solution, 'facts'>;
}

/** What hangs on the house alone, or does at the worst end of what nobody knows of the well. */
const SURE_OF_WELL: ReadonlySet<string> = new Set(['ifDemand', 'dependsOnDemand', 'unknownLevel']);

/**
 * What does, what does wherever the water is, what works with all that the house wants, what depends, what only gets
 * along, the rest; in each the smallest power first, then the rated flow nearest to what is asked.
 */
export function inOrder<Row extends Judged>(rows: readonly Row[]): Row[] {
  return rows.toSorted(
    (one, other) =>
      rankOf(one) - rankOf(other) ||
      (one.power ?? Infinity) - (other.power ?? Infinity) ||
      farFrom(one) - farFrom(other),
  );
}

function rankOf({ does, why, figures }: Judged): number {
  switch (does) {
    case 'yes':
      return 0;
    case 'depends':
      return SURE_OF_WELL.has(why.variant) ? 1 : 3;
    case 'works':
      return why.variant === 'underRange' || !meets((figures.share ?? 1) - 1, 'ratio') ? 4 : 2;
    case 'no':
      return 5;
  }
}

function farFrom({ rated, solution }: Judged): number {
  const { demand } = solution.facts.house;
  return demand === null ? rated : Math.abs(rated - WANTED_SHARE * demand);
}
