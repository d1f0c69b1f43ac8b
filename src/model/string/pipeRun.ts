/** Where the drop pipe runs, and the pieces that it is cut into: the lengths that place the joints, and no others. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import { CHECK_VALVE, FITTING_SHOWING } from './lengths.ts';
import { placePumpEnd, VALVE_AT_PUMP } from './pumpEnd.ts';
import { placeTopWorks } from './topWorks.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

export interface Stretch {
  readonly top: Metres;
  readonly bottom: Metres;
}

/** From the end in the top joint to the end in the pump's. */
export interface PipeRun extends Stretch {
  /**
   * From the top down, from end to end. An end that goes over a barb is the pipe's own, so what covers the barb is in
   * the length. A thread's turn into valve, spool or collar (3/4 in, common practice, no source) is not, and couplings
   * cut no piece: the pipes meet in the middle of them.
   */
  readonly pieces: readonly Stretch[];
}

export function pipeRun(facts: Facts): PipeRun {
  return runBetween(facts, placeTopWorks(facts).pipeTop, placePumpEnd(facts));
}

/** Of ends that are placed already. A pump that hangs above its adapter has no pipe. */
export function runBetween(
  facts: Facts,
  top: Metres,
  { pipeBottom, discharge }: { readonly pipeBottom: Metres; readonly discharge: Metres },
): PipeRun {
  const bottom = Math.max(pipeBottom, top);
  const gaps = valvesInPipe(facts)
    .map((height) => valveInPipe(facts, discharge - height).gap)
    .filter((gap) => gap.bottom > top && gap.top < bottom)
    .sort((a, b) => a.top - b.top);
  const pieces: Stretch[] = [];
  let from = top;
  for (const gap of gaps) {
    if (gap.top > from) pieces.push({ top: from, bottom: gap.top });
    from = Math.max(from, gap.bottom);
  }
  if (bottom > from) pieces.push({ top: from, bottom });
  return { top, bottom, pieces };
}

/** Heights of the valves that stand in the pipe, as the plan lists them; a lower one stands on the pump's nipple. */
export function valvesInPipe({ string }: Facts): readonly Metres[] {
  return string.checkValves.filter((height) => height > VALVE_AT_PUMP);
}

/** A valve in the pipe, and from one end of the pipe to the other round it: on PE the fittings show at both. */
export function valveInPipe({ dropPipe }: Facts, centre: Metres): { readonly body: Stretch; readonly gap: Stretch } {
  const body = { top: centre - CHECK_VALVE / 2, bottom: centre + CHECK_VALVE / 2 };
  const showing = isBarbed(dropPipe) ? FITTING_SHOWING : 0;
  return { body, gap: { top: body.top - showing, bottom: body.bottom + showing } };
}

/** What is cut, all pieces together. */
export function lengthToCut({ pieces }: PipeRun): Metres {
  return pieces.reduce((sum, { top, bottom }) => sum + bottom - top, 0);
}
