/** The whole string from the motor's lower end to the cap, part by part, at true depths with real lengths. */
import { cableDisplacedArea } from '../formulas/wire.ts';
import type { Facts } from '../facts.ts';
import { late } from '../late.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { inches } from '../units.ts';
import { placeAlongPipe } from './alongPipe.ts';
import { SEAL_EYE } from './lengths.ts';
import { placeHouseEnd } from './houseEnd.ts';
import { runBetween } from './pipeRun.ts';
import type { PipeRun } from './pipeRun.ts';
import { placePumpEnd } from './pumpEnd.ts';
import { placeTopWorks } from './topWorks.ts';

export interface PlacedString {
  readonly run: PipeRun;
  /** Placed when they are first asked for: figures are found from the pipe alone. */
  readonly parts: () => readonly PlacedPart[];
}

/** @param boreRadiusAt  inside radius of what lines the hole at a depth [m] */
export function placeString(facts: Facts, boreRadiusAt: (depth: Metres) => Metres): PlacedString {
  const end = placePumpEnd(facts);
  const top = placeTopWorks(facts);
  const run = runBetween(facts, top.pipeTop, end);
  return { run, parts: late(() => partsOf(facts, { end, top, run }, boreRadiusAt)) };
}

interface Ends {
  readonly end: ReturnType<typeof placePumpEnd>;
  readonly top: ReturnType<typeof placeTopWorks>;
  readonly run: PipeRun;
}

function partsOf(facts: Facts, { end, top, run }: Ends, boreRadiusAt: (depth: Metres) => Metres): PlacedPart[] {
  const casingTop = -facts.well.casingHeight;
  const parts = [
    ...end.parts,
    ...placeAlongPipe(facts, run, end.discharge, boreRadiusAt),
    ...top.parts,
    ...placeHouseEnd(facts),
  ];
  const cableRadius = Math.sqrt(cableDisplacedArea(facts.wire.gauge, facts.pump.wires) / Math.PI);
  parts.push({
    key: 'cable',
    kind: 'cable',
    top: casingTop,
    bottom: Math.max(end.discharge, casingTop),
    radius: cableRadius,
  });
  if (facts.rope) {
    // From a hook in the casing, or from the eye under a seal: a hook would pierce the casing for nothing.
    const seal = top.parts.find(({ kind }) => kind === 'seal');
    const tiedAt = seal === undefined ? casingTop + inches(4) : seal.bottom + SEAL_EYE;
    parts.push({
      key: 'rope',
      kind: 'rope',
      top: tiedAt,
      bottom: Math.max(end.discharge, tiedAt),
      radius: (facts.rope.diameter ?? inches(0.25)) / 2,
    });
  }
  return parts;
}
