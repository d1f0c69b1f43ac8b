/** What a dragged part catches on: the limits of the rules, the ground, the casing's foot, contacts of layers. */
import type { Handle } from '../../model/handles.ts';
import type { Band, Solution } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';

export interface Snap {
  readonly depth: Metres;
  /** Why it catches, in words. */
  readonly reason: string;
}

/** px: nearer than this it catches, further than the second it lets go. */
export const CATCH = 6;
export const LET_GO = 9;

export function snapsFor(handle: Handle, solution: Solution): readonly Snap[] {
  const { well } = solution.facts;
  const contacts = well.layers.flatMap(({ material, bottom }, i) => {
    const below = well.layers[i + 1]?.material;
    return handle.id === `layer/${i}`
      ? []
      : [{ depth: bottom, reason: below === undefined ? `foot of the ${material}` : `${material} meets ${below}` }];
  });
  const feetOfCasings =
    handle.id === 'casingBottom'
      ? []
      : well.casings.flatMap(({ bottom }) =>
          bottom === null ? [] : [{ depth: bottom, reason: 'foot of the casing' }],
        );
  const limits = solution.bands.filter((band) => band.setting === handle.path).flatMap(endsOf);
  return [...limits, { depth: 0, reason: 'ground surface' }, ...feetOfCasings, ...contacts];
}

function endsOf({ from, fromLabel, to, toLabel }: Band): readonly Snap[] {
  return [
    ...(from === null ? [] : [{ depth: from, reason: fromLabel }]),
    ...(to === null ? [] : [{ depth: to, reason: toLabel }]),
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
