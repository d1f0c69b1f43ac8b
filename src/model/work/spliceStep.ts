import { step, type Draft, type Job } from './making.ts';
import type { Beside } from './wayUp.ts';

/** A splice, with the cable that it joins on. */
export function spliceStep(
  { solved: { facts }, pieces }: Job,
  { key, height }: Beside,
  beforeLowering: boolean,
): Draft {
  return step(
    'splice',
    { height, joints: facts.pump.wires + 1, gauge: facts.wire.gauge, beforeLowering },
    {
      puts: [key, ...cableAbove({ pieces }, key)],
      about: [key, 'cable'],
      view: beforeLowering ? 'pump' : { at: (pieces.piece(key).top + pieces.piece(key).bottom) / 2 },
      cautions: ['electric'],
    },
  );
}

/** Of the two cables that meet in it, the upper: cables count from the top, splices from the pump. */
function cableAbove({ pieces }: Pick<Job, 'pieces'>, splice: string): readonly string[] {
  const cables = pieces.ofKinds('cable');
  const splices = pieces.ofKinds('splice').toSorted((a, b) => pieces.piece(a).top - pieces.piece(b).top);
  return cables.slice(splices.indexOf(splice), splices.indexOf(splice) + 1);
}
