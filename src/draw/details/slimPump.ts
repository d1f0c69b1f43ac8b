/**
 * A strip beside the widened well, at its depths: pipe, pump and motor in their bore at one scale both ways. Who sees a pump
 * for the first time sees that it is a stick.
 */
import type { Metres } from '../../model/si.ts';
import type { Solution } from '../../model/solution.ts';
import { block, stroke } from '../parts/outline.ts';
import { makePen, type Pen } from '../parts/pen.ts';
import { drawPumpStick, pumpStick } from '../parts/pumpStick.ts';
import { THEMES } from '../theme.ts';
import { pipeRamp } from '../well/stage.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, rect, text } from '../shapes.ts';
import type { DetailFrame } from './contract.ts';
import { RAIL_PX } from './rail.ts';

const SIZE = 11;
const LINE = 12;
/** Of the strip, round its bore and its words [px]. */
const PAD = 5;
/** Slimmer than this a pump is a line, and shows nothing [px]. */
const LEAST_PUMP_PX = 5;

/** Width of the strip [px]. */
export function stripWidth({ type, words }: Pick<DetailFrame, 'type' | 'words'>, bore: Metres, down: number): number {
  const said = Math.max(...words.sheet.trueWidth.map((each) => type.width(each, SIZE, 600)));
  return Math.round(Math.max(said, bore * down) + 2 * PAD);
}

export const isWorthIt = (pumpDiameter: Metres, down: number): boolean => pumpDiameter * down >= LEAST_PUMP_PX;

/** @param radius  of the hole about the pump */
export function drawSlimPump(
  { parts, facts }: Solution,
  { x, y, height, theme, ink, words: { sheet } }: DetailFrame,
  wide: { readonly pen: Pen; readonly strip: number; readonly radius: Metres },
): Shape {
  const { top, bottom, down } = wide.pen;
  const left = x + RAIL_PX;
  const right = left + wide.strip;
  const axis = (left + right) / 2;
  const pen = makePen({
    axis,
    topY: y,
    top,
    bottom,
    across: down,
    down,
    tones: THEMES[theme].tones,
    // A shell of a few pixels is not cut open.
    looks: { pumpOpen: false, bands: false },
  });
  const begin = y + 6 + sheet.trueWidth.length * LINE + 5;
  const half = Math.max(2, wide.radius * down);
  const pipe = Math.max(0.8, (facts.dropPipe.outsideDiameter / 2) * down);
  const discharge = parts.find(({ kind }) => kind === 'pump')?.top ?? bottom;
  const ramp = pipeRamp(facts.dropPipe.material, pen.tones);
  return group('slimPump', [
    rect('strip', left, y, wide.strip, height, { fill: ink.paper }),
    path('edge', stroke(right, y, right, y + height), { stroke: ink.hair }),
    path('bore', block(axis - half, begin, axis + half, y + height + 2), { fill: pen.tones.water, stroke: ink.hair }),
    path(
      'dropPipe',
      block(axis - pipe, begin, axis + pipe, Math.max(begin, pen.y(discharge))),
      faced(ramp.base, ramp.edge, 0.7),
    ),
    drawPumpStick(pumpStick({ ...facts.pump, diameter: facts.pump.motorDiameter }, pen, 0), undefined, pen),
    ...sheet.trueWidth.map((each, i) =>
      text(each, axis, y + 6 + LINE * (i + 0.75), each, { size: SIZE, weight: 600, fill: ink.ink, anchor: 'middle' }),
    ),
  ]);
}
