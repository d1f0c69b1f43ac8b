/**
 * Taper pipe threads NPT, in inches.
 *
 * Source  ASME B1.20.1, basic dimensions. One printed table has 0.402 in for the hand-tight length of 1-1/2 in; its own
 *         4.83 turns show that it is 0.420.
 */
export interface PipeThread {
  readonly nominalSize: string;
  readonly outsideDiameterInches: number;
  readonly threadsPerInch: number;
  /** L1: engaged by hand. */
  readonly handTightInches: number;
  /** L2: effective thread. */
  readonly effectiveInches: number;
}

const thread = (
  nominalSize: string,
  outsideDiameterInches: number,
  threadsPerInch: number,
  handTightInches: number,
  effectiveInches: number,
): PipeThread => ({ nominalSize, outsideDiameterInches, threadsPerInch, handTightInches, effectiveInches });

export const PIPE_THREADS: readonly PipeThread[] = [
  thread('1/2 in', 0.84, 14, 0.32, 0.5337),
  thread('3/4 in', 1.05, 14, 0.339, 0.5457),
  thread('1 in', 1.315, 11.5, 0.4, 0.6828),
  thread('1-1/4 in', 1.66, 11.5, 0.42, 0.7068),
  thread('1-1/2 in', 1.9, 11.5, 0.42, 0.7235),
  thread('2 in', 2.375, 11.5, 0.436, 0.7565),
];

/** Throws RangeError for a size that is not tabulated. */
export function pipeThread(nominalSize: string): PipeThread {
  const found = PIPE_THREADS.find((row) => row.nominalSize === nominalSize);
  if (found === undefined) throw new RangeError(`pipeThread: no NPT "${nominalSize}"; use 1/2 in to 2 in`);
  return found;
}
