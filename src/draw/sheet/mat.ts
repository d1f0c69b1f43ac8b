/**
 * The paper round the details, drawn once more over what reaches out of their frames. A nested viewport crops them, but
 * word processors do not heed it: there the mat covers what would stick out.
 */
import type { Box } from '../hatch/clip.ts';
import type { Shape } from '../scene.ts';
import { digits, path } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import type { FramePlace } from '../view.ts';

/** How far a ragged edge may stand out to the left, where the section is [px]. */
const LEFT = 6;

/** @param sheet  as far as the mat may reach; left of the details only where there is no section */
export function drawMat(details: readonly FramePlace[], sheet: Box, besideSection: boolean, ink: Ink): Shape {
  const left = besideSection ? Math.min(...details.map(({ x }) => x)) - LEFT : sheet.left;
  const holes = details.map(({ x, y, width, height }) => box(x, y, x + width, y + height));
  return path('mat', box(left, sheet.top, sheet.right, sheet.bottom) + holes.join(''), {
    fill: ink.paper,
    'fill-rule': 'evenodd',
  });
}

function box(left: number, top: number, right: number, bottom: number): string {
  return `M${digits(left)} ${digits(top)}H${digits(right)}V${digits(bottom)}H${digits(left)}Z`;
}
