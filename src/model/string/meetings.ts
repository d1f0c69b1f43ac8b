/** What meets what on the way of the water, from the well's top down to the motor, and how each joint is made. */
import type { Facts } from '../facts.ts';
import type { PartKind, PlacedPart, Solved } from '../solution.ts';
import { COUPLING, FITTING_SHOWING } from './lengths.ts';
import { pipeRun, type Stretch } from './pipeRun.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

export type Neighbour = Extract<
  PartKind,
  'pitlessAdapter' | 'plug' | 'tee' | 'nipple' | 'coupling' | 'dropPipe' | 'checkValve' | 'pump' | 'intake' | 'motor'
>;

/** `pushed`: over the barbs of an insert fitting, held by clamps. `outlet`: in the thread of the pump's outlet. */
export type Joint =
  | { readonly by: 'pushed'; readonly fittings: Facts['string']['fittings']; readonly clamps: number }
  | { readonly by: 'threaded' }
  | { readonly by: 'outlet'; readonly thread: string }
  | { readonly by: 'bolted' };

export type Meeting =
  | { readonly with: Neighbour; readonly joint: Joint }
  /** The upper end of an adapter, which takes the pipe that lifts the string off. */
  | { readonly with: 'liftOutPipe' };

export interface Link extends Stretch {
  /** Key of the part; a pipe that valves cut has one for each piece. */
  readonly key: string;
  readonly kind: Neighbour;
  readonly above: Meeting | null;
  readonly below: Meeting | null;
}

type Bare = Pick<Link, 'key' | 'kind' | 'top' | 'bottom'>;

/** From the top down. */
export function linksOf({ facts, parts }: Pick<Solved, 'facts' | 'parts'>): readonly Link[] {
  const bare = bareLinks(facts, parts);
  return bare.map((link, i): Link => {
    const above = bare[i - 1];
    const below = bare[i + 1];
    const liftedOff = link.kind === 'pitlessAdapter' ? ({ with: 'liftOutPipe' } as const) : null;
    return {
      ...link,
      above:
        above !== undefined && meet(above, link) ? { with: above.kind, joint: jointOf(above, link, facts) } : liftedOff,
      below: below !== undefined && meet(link, below) ? { with: below.kind, joint: jointOf(link, below, facts) } : null,
    };
  });
}

function bareLinks(facts: Facts, parts: readonly PlacedPart[]): readonly Bare[] {
  const { pieces } = pipeRun(facts);
  const placed = (key: string): readonly Bare[] =>
    parts
      .filter((part) => part.key === key)
      .map(({ kind, ...part }) => ({ key, kind: kind as Neighbour, top: part.top, bottom: part.bottom }));
  const pipe = pieces.map((piece, i): Bare => {
    return { key: i === 0 ? 'dropPipe' : `dropPipe/${i + 1}`, kind: 'dropPipe', ...piece };
  });
  const valves = parts.filter(({ kind }) => kind === 'checkValve').flatMap(({ key }) => placed(key));
  return [
    ...placed('pitlessAdapter'),
    ...['plug', 'tee', 'nipple/top', 'coupling/top', 'nipple/seal'].flatMap(placed),
    ...[...pipe, ...valves].sort((a, b) => a.top - b.top),
    ...['nipple', 'pump', 'intake', 'motor'].flatMap(placed),
  ];
}

/** The last digits of a sum [m]. */
const ROUNDING = 1e-9;

/**
 * From end to end a fitting may show between them, and a pipe ends in the middle of its collar. What stands in or over
 * the other, as a plan may have it that hangs its pump too high, meets nothing.
 */
function meet(above: Stretch, below: Stretch): boolean {
  const gap = below.top - above.bottom;
  return gap >= -COUPLING - ROUNDING && gap <= FITTING_SHOWING + ROUNDING;
}

function jointOf(above: Bare, below: Bare, { dropPipe, string, pump }: Facts): Joint {
  if (below.kind === 'intake' || below.kind === 'motor') return { by: 'bolted' };
  if (below.kind === 'pump') return { by: 'outlet', thread: pump.outlet };
  const isPushed = isBarbed(dropPipe) && (above.kind === 'dropPipe' || below.kind === 'dropPipe');
  return isPushed ? { by: 'pushed', fittings: string.fittings, clamps: string.clampsPerJoint } : { by: 'threaded' };
}
