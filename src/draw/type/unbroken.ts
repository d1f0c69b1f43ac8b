/** Figures that no line parts from their unit. */
import { show, type Show } from '../../model/units.ts';
import { hold } from './width.ts';

const ROUND = { us: unbrokenFrom(show('us')), metric: unbrokenFrom(show('metric')) };

/** As `show`, with a no-break space between figure and unit. */
export function unbroken(units: Show['units']): Show {
  return ROUND[units];
}

function unbrokenFrom(plain: Show): Show {
  const held = Object.entries(plain).map(([name, say]: [string, unknown]) => [
    name,
    typeof say === 'function' ? (value: number) => hold((say as (value: number) => string)(value)) : say,
  ]);
  return Object.fromEntries(held) as Show;
}
