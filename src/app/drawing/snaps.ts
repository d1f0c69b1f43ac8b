/** What a dragged part stops at: the limits of the rules, the ground, the casing's foot, contacts of layers. */
import type { Handle } from '../../model/handles.ts';
import type { Band, Solution } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Show } from '../../model/units.ts';
import { sayEnd } from '../../words/sayEnd.ts';
import { en } from '../firstLanguage.ts';

export interface Snap {
  readonly depth: Metres;
  /** What it stops at, in words. */
  readonly reason: string;
}

/** px: nearer than this it stops there, further than the second it lets go. */
export const CATCH = 6;
export const LET_GO = 9;

export function snapsFor(handle: Handle, solution: Solution, show: Show): readonly Snap[] {
  const { well } = solution.facts;
  const { stopsAt } = en.long.levels;
  const contacts = well.layers.flatMap(({ material, bottom }, i) => {
    const below = well.layers[i + 1]?.material;
    return handle.id === `layer/${i}`
      ? []
      : [
          {
            depth: bottom,
            reason: below === undefined ? stopsAt.footOf({ material }) : stopsAt.contact({ material, below }),
          },
        ];
  });
  const feetOfCasings =
    handle.id === 'casingBottom'
      ? []
      : well.casings.flatMap(({ bottom }) =>
          bottom === null ? [] : [{ depth: bottom, reason: stopsAt.footOfCasing() }],
        );
  const limits = solution.bands
    .filter(({ setting, kind }) => setting === handle.path && kind === 'allowed')
    .flatMap((band) => endsOf(band, show));
  return [...limits, { depth: 0, reason: stopsAt.ground() }, ...feetOfCasings, ...contacts];
}

function endsOf({ from, fromEnd, to, toEnd }: Band, show: Show): readonly Snap[] {
  return [
    ...(from === null ? [] : [{ depth: from, reason: sayEnd(fromEnd, en.short, show) }]),
    ...(to === null ? [] : [{ depth: to, reason: sayEnd(toEnd, en.short, show) }]),
  ];
}

/** The snap that holds the depth: the one that already holds it until it is left, else the nearest within reach. */
export function caughtBy(
  depth: Metres,
  snaps: readonly Snap[],
  metresPerPixel: Metres,
  holding: Snap | null,
): Snap | null {
  if (holding !== null && Math.abs(holding.depth - depth) <= LET_GO * metresPerPixel) return holding;
  let nearest: Snap | null = null;
  let reach = CATCH * metresPerPixel;
  for (const snap of snaps) {
    const distance = Math.abs(snap.depth - depth);
    if (distance <= reach) {
      nearest = snap;
      reach = distance;
    }
  }
  return nearest;
}
