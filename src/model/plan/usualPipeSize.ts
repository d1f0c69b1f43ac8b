/** The size of a drop pipe of which nobody said it. */
import type { PipeMaterial } from '../facts.ts';
import { findPipe, isMetricPipe } from '../tables/pipes.ts';
import { DEFAULTS } from './defaults.ts';
import type { Defaults } from './defaults.ts';

/** What else is said of the pipe, as typed. */
export interface SaidOfPipe {
  readonly material?: PipeMaterial | undefined;
  readonly standard?: string | undefined;
  readonly resin?: string | undefined;
  readonly ratio?: string | undefined;
}

/** The usual one of the plan's units, unless standard, material, resin or wall belong to pipe of another family. */
export function usualPipeSize({ material, standard, resin, ratio }: SaidOfPipe, usual: Defaults): string {
  if (standard !== undefined) return isMetricPipe({ standard }) ? METRIC_SIZE : DEFAULTS.pipeSize;
  const found = findPipe({ material: material ?? DEFAULTS.pipeMaterial, size: usual.pipeSize, ratio });
  return found === null || (resin !== undefined && isMetricPipe(found) !== METRIC_RESIN.test(resin))
    ? DEFAULTS.pipeSize
    : usual.pipeSize;
}

const METRIC_SIZE = '32 mm';
const METRIC_RESIN = /^PE (?:100|80)$/;
