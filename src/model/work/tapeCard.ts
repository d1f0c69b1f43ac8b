/** What passes the casing's top on the way down, and what hangs on the hook meanwhile. */
import type { Metres, Newtons } from '../si.ts';
import type { Solved } from '../solution.ts';
import { graphOf } from '../string/graph/graph.ts';
import type { PieceKind } from '../string/graph/piece.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { feet } from '../units.ts';
import { hookAt } from './hook.ts';
import { letDownTo } from './lowering.ts';

/** Told on the card, where they stand on the pipe. */
const MARKED = ['checkValve', 'torqueArrestor', 'splice', 'probe', 'guard', 'tie', 'coupling'] as const;
export type Marked = (typeof MARKED)[number] | 'water' | 'topJoint' | 'hanging';

export interface TapeRow {
  /** Along the pipe from the pump's outlet: what a tape reads that hangs down from the casing's top. */
  readonly height: Metres;
  readonly marks: readonly Marked[];
  /** While this height is at the casing's top; null while nobody knows what the pump weighs. */
  readonly hook: Newtons | null;
}

/** Between two rows that only tell the hook. */
export function hookEvery(units: 'us' | 'metric'): Metres {
  return units === 'us' ? feet(20) : 5;
}

/** From the pump up: every mark, and the hook at even steps. The last row is the string as it hangs. */
export function tapeCard(solved: Solved): readonly TapeRow[] {
  const { facts, levels } = solved;
  const discharge = dischargeDepth(facts.pump);
  const casingTop = -facts.well.casingHeight;
  const stop = letDownTo(facts);
  // Over an adapter the lift-out pipe takes the string on down.
  const whole = Math.max(discharge - casingTop, stop);
  const heights = new Map<number, Set<Marked>>();
  const mark = (height: Metres, what: Marked | null): void => {
    if (height < 0 || height > whole + 1e-9) return;
    const at = Math.round(height * 1000) / 1000;
    const marks = heights.get(at) ?? new Set();
    if (what !== null) marks.add(what);
    heights.set(at, marks);
  };
  for (const { kind, top, bottom } of graphOf(solved).pieces)
    if (isMarked(kind)) mark(discharge - (top + bottom) / 2, kind);
  const every = hookEvery(facts.units);
  for (let height = every; height < whole; height += every) mark(height, null);
  // From here on the water carries some of it, and the hook reads less for a while.
  if (levels.static !== null) mark(levels.static - casingTop, 'water');
  mark(stop, 'topJoint');
  mark(whole, 'hanging');
  return [...heights.entries()]
    .sort(([a], [b]) => a - b)
    .map(([height, marks]) => ({
      height,
      marks: MARKED_ORDER.filter((each) => marks.has(each)),
      hook: hookAt(solved, casingTop + height),
    }));
}

const MARKED_ORDER: readonly Marked[] = [...MARKED, 'water', 'topJoint', 'hanging'];

function isMarked(kind: PieceKind): kind is (typeof MARKED)[number] {
  return (MARKED as readonly PieceKind[]).includes(kind);
}
