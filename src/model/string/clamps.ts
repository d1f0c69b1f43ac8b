import type { Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { FITTING_BARB, CLAMP_GAP, CLAMP_WIDTH } from './lengths.ts';

/**
 * Clamps side by side over a barb, centred on it.
 *
 * @param joint       word for the keys: "clamp/pump/1"
 * @param pipeEnd     depth of the pipe's end, where the barb begins [m]
 * @param direction   1 when the barb points down from there (a joint at the pipe's upper end), -1 when it points up
 * @param count       clamps on this joint
 * @param pipeRadius  outside radius of the pipe [m]
 */
export function clampsOver(
  joint: string,
  pipeEnd: Metres,
  direction: 1 | -1,
  count: number,
  pipeRadius: Metres,
): PlacedPart[] {
  const span = count * CLAMP_WIDTH + (count - 1) * CLAMP_GAP;
  const first = pipeEnd + (direction * (FITTING_BARB - span)) / 2;
  return Array.from({ length: count }, (_, i): PlacedPart => {
    const near = first + direction * i * (CLAMP_WIDTH + CLAMP_GAP);
    const far = near + direction * CLAMP_WIDTH;
    return {
      key: `clamp/${joint}/${i + 1}`,
      kind: 'clamp',
      top: Math.min(near, far),
      bottom: Math.max(near, far),
      radius: pipeRadius * 1.08,
    };
  });
}
