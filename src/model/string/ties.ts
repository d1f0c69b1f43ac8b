/** Where tape or strap ties cable and pipe: at the planned spacing and round each splice, over nothing else. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { feet, inches } from '../units.ts';
import { FITTING_BARB, SPLICE, TIE, TIE_CLEAR } from './lengths.ts';
import type { PipeRun, Stretch } from './pipeRun.ts';
import { valveInPipe, valvesInPipe } from './pipeRun.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

/** A tie whose place is taken goes to the nearest free one within this, or is left out. Common practice, no source. */
const MOVES_AT_MOST = feet(1);
/** Bare pipe at either end. */
const BELOW_TOP = inches(6);
const ABOVE_PUMP = inches(3);
/** A place that touches what is beside it is free, whichever way the last digit rounds. */
const ROUNDING = 1e-9;

/**
 * @param round  arrestor, splices and guards as they are placed
 */
export function placeTies(
  facts: Facts,
  { top, bottom }: PipeRun,
  discharge: Metres,
  round: readonly PlacedPart[],
): PlacedPart[] {
  const { dropPipe, string } = facts;
  const onBarePipe = (depth: Metres): boolean => depth >= top + BELOW_TOP && depth <= bottom - ABOVE_PUMP;
  const fixed = [...valves(facts, discharge), ...round];
  const depths: Metres[] = [];
  const tieNear = (wanted: Metres, taken: readonly Stretch[]): void => {
    const depth = nearestFree(wanted, taken, onBarePipe);
    if (depth !== null) depths.push(depth);
  };
  for (const height of string.splices) {
    for (const side of [-1, 1]) {
      tieNear(discharge - height + side * (SPLICE / 2 + TIE_CLEAR), [...fixed, ...depths.map(tiedAt)]);
    }
  }
  const splicesTied = [...depths];
  const taken = [...fixed, ...splicesTied.map(tiedAt)];
  const lastTie = taken.length;
  // Where a splice's tie holds the cable, another within a foot holds nothing more.
  const held = (depth: Metres): boolean => splicesTied.some((tie) => Math.abs(tie - depth) < MOVES_AT_MOST);
  if (string.ties > 0) {
    for (let depth = discharge - string.ties; depth > top + BELOW_TOP; depth -= string.ties) {
      if (held(depth)) continue;
      tieNear(depth, taken);
      // Only the last one can stand in the way of the next.
      const last = depths.at(-1);
      if (last !== undefined) taken[lastTie] = tiedAt(last);
    }
  }
  return depths
    .sort((a, b) => b - a)
    .map((depth, i) => ({
      key: `tie/${i + 1}`,
      kind: 'tie',
      ...tiedAt(depth),
      radius: dropPipe.outsideDiameter / 2,
    }));
}

function tiedAt(depth: Metres): Stretch {
  return { top: depth - TIE / 2, bottom: depth + TIE / 2 };
}

/** Valves in the pipe, with the fittings and clamps at both sides. */
function valves(facts: Facts, discharge: Metres): Stretch[] {
  const barb = isBarbed(facts.dropPipe) ? FITTING_BARB : 0;
  return valvesInPipe(facts).map((height) => {
    const { gap } = valveInPipe(facts, discharge - height);
    return { top: gap.top - barb, bottom: gap.bottom + barb };
  });
}

/** The nearest depth to the wanted one that keeps clear of everything; of two, the higher. Null where there is none. */
function nearestFree(wanted: Metres, taken: readonly Stretch[], allowed: (depth: Metres) => boolean): Metres | null {
  if (!allowed(wanted)) return null;
  const free = (depth: Metres): boolean =>
    taken.every((each) => depth <= each.top - TIE_CLEAR + ROUNDING || depth >= each.bottom + TIE_CLEAR - ROUNDING);
  if (free(wanted)) return wanted;
  let nearest: Metres | null = null;
  for (const each of taken) {
    for (const depth of [each.top - TIE_CLEAR, each.bottom + TIE_CLEAR]) {
      const off = Math.abs(depth - wanted);
      if (off <= MOVES_AT_MOST && (nearest === null || off < Math.abs(nearest - wanted) - ROUNDING))
        if (allowed(depth) && free(depth)) nearest = depth;
    }
  }
  return nearest;
}
