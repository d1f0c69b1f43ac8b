/** Pump, intake and motor from afar: one stick at its true depths, or a symbol in its middle where it would be shorter. */
import type { PumpFacts } from '../../model/facts.ts';
import type { Metres } from '../../model/si.ts';
import type { PlacedPart } from '../../model/solution.ts';
import { dischargeDepth, motorBottomDepth } from '../../model/string/pumpDepths.ts';
import { SYMBOL } from '../looks.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, polyline, rect, type Place } from '../shapes.ts';
import { DASH } from './closed.ts';
import type { Pen } from './pen.ts';
import type { Ramp } from '../theme.ts';

const LEAST_HALF_PX = 5;

export interface PumpStick {
  readonly left: number;
  readonly width: number;
  readonly top: number;
  readonly bottom: number;
  /** Middle of the intake's ring. */
  readonly intake: number;
  /** Taller than it is. */
  readonly symbol: boolean;
  readonly trueTop: Metres;
  readonly trueBottom: Metres;
}

/** @param least  half of what it is drawn wide at least [px] */
export function pumpStick(facts: PumpFacts, pen: Pen, least = LEAST_HALF_PX): PumpStick {
  const { setting, diameter } = facts;
  const trueTop = dischargeDepth(facts);
  const trueBottom = motorBottomDepth(facts);
  const symbol = pen.closed?.pump === false;
  const middle = pen.y((trueTop + trueBottom) / 2);
  const half = Math.max(least, (diameter / 2) * pen.across);
  return {
    left: pen.x(0) - half,
    width: half * 2,
    top: symbol ? middle - SYMBOL / 2 : pen.y(trueTop),
    bottom: symbol ? middle + SYMBOL / 2 : pen.y(trueBottom),
    intake: symbol ? middle : pen.y(setting),
    symbol,
    trueTop,
    trueBottom,
  };
}

export function drawPumpStick(
  { left, width, top, bottom, intake, symbol }: PumpStick,
  shroud: PlacedPart | undefined,
  pen: Pen,
): Shape {
  const { pump, motor, rubber, metalWall } = pen.tones;
  const ring = Math.min(4, Math.max(2, (bottom - top) * 0.12));
  const sleeve =
    shroud === undefined || symbol
      ? []
      : [
          path(
            'shroud',
            polyline([
              [pen.x(-shroud.radius), pen.y(shroud.bottom)],
              [pen.x(-shroud.radius), pen.y(shroud.top)],
              [pen.x(shroud.radius), pen.y(shroud.top)],
              [pen.x(shroud.radius), pen.y(shroud.bottom)],
            ]),
            faced('none', metalWall.ink, 1.2),
          ),
        ];
  return group('pumpBody', [
    ...round('pump', { x: left, width, y: top, height: intake - ring / 2 - top }, pump),
    ...round('motor', { x: left, width, y: intake + ring / 2, height: bottom - intake - ring / 2 }, motor),
    rect('intake', left, intake - ring / 2, width, ring, { fill: rubber.shadow }),
    rect('outline', left, top, width, bottom - top, {
      rx: 2,
      fill: 'none',
      stroke: pump.edge,
      'stroke-width': 1.2,
      ...(symbol ? DASH : {}),
    }),
    ...sleeve,
  ]);
}

/** A round body as three flat strips: a highlight left of the middle, a shade at the right. */
function round(key: string, { x, y, width, height }: Place, ramp: Ramp): Shape[] {
  return [
    rect(`${key}/body`, x, y, width, height, { rx: 2, fill: ramp.base }),
    rect(`${key}/light`, x + width * 0.16, y, width * 0.2, height, { fill: ramp.light }),
    rect(`${key}/shade`, x + width * 0.76, y, width * 0.24, height, { fill: ramp.shadow }),
  ];
}
