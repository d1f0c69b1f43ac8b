/** A pump's band against what the well asks for with its water held at three levels: for a picture, so not part of a row. */
import { sampleCurves, systemOf } from '../figures/curves.ts';
import { lowestLevel } from '../figures/lowestLevel.ts';
import { lowestStatic } from '../figures/lowestPumping.ts';
import { pipesHead, tankPressure } from '../figures/pumpInWell.ts';
import type { Metres } from '../si.ts';
import type { CurvePoint, Solved } from '../solution.ts';
import { suspensionDepth } from '../string/topDepths.ts';

export type HeldLevel = 'static' | 'usual' | 'lowest';

export interface BandInWell {
  /** The weaker end of the band, and the stronger where it is another. */
  readonly least: readonly CurvePoint[];
  readonly most: readonly CurvePoint[];
  /** What well and pipes ask for with the tank at cut-in, the highest water first; a level that nobody knows is left out. */
  readonly wells: readonly { readonly at: HeldLevel; readonly level: Metres; readonly curve: readonly CurvePoint[] }[];
}

const SAMPLES = 16;

export function bandInWell(solved: Solved): BandInWell {
  const { facts, levels, lowest } = solved;
  const { pump: least, pumpMost: most } = sampleCurves(solved);
  const pipes = pipesHead(facts, systemOf(facts, suspensionDepth(facts)), tankPressure(facts, 'cutIn'));
  const lastFlow = (most.length > 0 ? most : least).at(-1)?.flow ?? 0;
  const held: readonly (readonly [HeldLevel, Metres | null])[] = [
    ['static', levels.static],
    ['usual', levels.pumping],
    ['lowest', lowest?.depth ?? (lowestStatic(facts) === null ? null : lowestLevel(facts).depth)],
  ];
  const wells = held.flatMap(([at, level]) =>
    level === null || pipes === null
      ? []
      : [
          {
            at,
            level,
            curve: Array.from({ length: SAMPLES + 1 }, (_, i) => {
              const flow = (lastFlow * i) / SAMPLES;
              return { flow, head: level + pipes(flow) };
            }),
          },
        ],
  );
  return { least, most, wells };
}
