/** What stands in the house, drawn at one scale both ways, with a note of where every part came to stand. */
import { tankWater } from '../../../model/figures/tankWater.ts';
import { RELIEF_PORT, TANK_FOOT, TEE_HEIGHT, floorDepth } from '../../../model/string/houseEnd.ts';
import { isInHouse, type HouseKind } from '../../../model/string/houseKinds.ts';
import { openTankOf } from '../../../model/string/tankShape.ts';
import type { Metres } from '../../../model/si.ts';
import type { Solution } from '../../../model/solution.ts';
import { inches } from '../../../model/units.ts';
import type { Box } from '../../hatch/clip.ts';
import { drawDrainTap } from '../../parts/drainTap.ts';
import { drawGauge } from '../../parts/gauge.ts';
import { drawHousePipe } from '../../parts/housePipe.ts';
import { drawFloat, drawOpenTank } from '../../parts/openTank.ts';
import { block, stroke } from '../../parts/outline.ts';
import type { Pen } from '../../parts/pen.ts';
import { drawPressureSwitch, drawSensor } from '../../parts/pressureSwitch.ts';
import { drawReliefPipe, drawReliefValve, OUTLET } from '../../parts/reliefValve.ts';
import { drawShutOff } from '../../parts/shutOff.ts';
import { drawTank, levelIn } from '../../parts/tank.ts';
import { drawTankTee } from '../../parts/tankTee.ts';
import { drawWallBox } from '../../parts/wallBox.ts';
import type { Shape } from '../../scene.ts';
import { inked, path, type Point } from '../../shapes.ts';
import type { Ink } from '../../theme.ts';
import { isBlackPlastic, type Placed } from '../../well/stage.ts';

/** A pen whose depths count from the floor: what stands on it has negative ones. */
export type HousePen = Pen;

export interface InHouse {
  readonly shapes: readonly Shape[];
  readonly placed: readonly Placed[];
}

/** The line runs this far under the floor before it turns: no plan says how deep it lies there. */
export const UNDER_FLOOR: Metres = inches(9);
const SLAB: Metres = inches(4);
/** Conduit for the pump's wires, beside the riser. */
const CONDUIT: Metres = inches(3.6);

interface Stage {
  readonly solution: Solution;
  readonly pen: HousePen;
  readonly ink: Ink;
  readonly window: Box;
  /** Where each part that stands there is on paper. */
  readonly boxes: ReadonlyMap<HouseKind, Box>;
}

export function drawContents(solution: Solution, pen: HousePen, ink: Ink, window: Box): InHouse {
  const floor = floorDepth(solution.facts);
  const boxes = new Map<HouseKind, Box>();
  for (const { kind, top, bottom, radius, across = 0 } of solution.parts) {
    if (!isInHouse(kind)) continue;
    boxes.set(kind, {
      left: pen.x(across - radius),
      right: pen.x(across + radius),
      top: pen.y(top - floor),
      bottom: pen.y(bottom - floor),
    });
  }
  const stage: Stage = { solution, pen, ink, window, boxes };
  const line = lineUnderFloor(stage);
  const shapes = [
    ...drawFloor(stage),
    ...drawWires(stage),
    ...drawPipes(stage, line),
    ...[...boxes].flatMap(([kind, box]) => DRAWN[kind]?.(box, stage) ?? []),
  ];
  const placed: Placed[] = [...boxes].map(([kind, box]) => ({ part: kind, kind, ...box }));
  placed.push({ part: 'buriedLine', kind: 'buriedLine', ...line });
  return { shapes, placed };
}

const DRAWN: Readonly<Partial<Record<HouseKind, (box: Box, stage: Stage) => readonly Shape[]>>> = {
  tank: drawWaterTank,
  tankTee: (box, { pen, boxes }) => {
    const riser = boxes.get('riser');
    const middles = (...kinds: HouseKind[]): number[] =>
      kinds.flatMap((kind) => {
        const each = boxes.get(kind);
        return each === undefined ? [] : [(each.left + each.right) / 2];
      });
    const halfRiser = (riser === undefined ? 0 : (riser.right - riser.left) / 2) + 1.5;
    return [
      drawTankTee(
        {
          box,
          riser: pen.x(0),
          halfRiser, // A port without a relief valve is plugged.
          over: [...middles('gauge', 'switch'), pen.x(RELIEF_PORT)],
          under: middles('drain'),
        },
        pen.tones,
      ),
    ];
  },
  gauge: (box, { pen }) => [drawGauge(box, pen.tones)],
  switch: (box, { pen, solution }) => [
    (solution.facts.house.control === 'variable speed' ? drawSensor : drawPressureSwitch)(box, pen.tones),
  ],
  reliefValve: (box, { pen }) => [drawReliefValve(box, pen.tones, false)],
  reliefPipe: (box, { pen, boxes }) => {
    const valve = boxes.get('reliefValve');
    if (valve === undefined) return [];
    const outlet = valve.top + (valve.bottom - valve.top) * OUTLET;
    const x = (box.left + box.right) / 2;
    return [drawReliefPipe({ from: [valve.left, outlet], x, end: box.bottom, wide: box.right - box.left }, pen.tones)];
  },
  drain: (box, { pen }) => [drawDrainTap(box, pen.tones)],
  shutOff: (box, { pen, solution }) => [drawShutOff(box, pen.tones, solution.facts.house.kind === 'open tank')],
  float: (box, { pen, boxes, solution }) => {
    const tank = boxes.get('tank') ?? box;
    const level = waterOf(tank, solution, pen);
    const ball = { x: (box.left + box.right) / 2, y: level, r: (box.right - box.left) / 2 };
    return [drawFloat([tank.right, box.top], ball, pen.tones)];
  },
  disconnect: (box, { pen }) => [drawWallBox('disconnect', box, pen.tones)],
  controlBox: (box, { pen }) => [drawWallBox('controlBox', box, pen.tones)],
  drive: (box, { pen }) => [drawWallBox('drive', box, pen.tones)],
};

function drawWaterTank(box: Box, { solution, pen }: Stage): Shape[] {
  const water = tankWater(solution.facts);
  return water === null
    ? [drawOpenTank({ box, level: waterOf(box, solution, pen), tones: pen.tones, whole: true })]
    : [drawTank(water, { box: vesselIn(box, pen), floor: box.bottom, tones: pen.tones, whole: true })];
}

/** Without its ring. */
function vesselIn(box: Box, pen: HousePen): Box {
  return { ...box, bottom: pen.y(-TANK_FOOT) };
}

/** Where the water stands when the pump stops [px]. */
export function waterOf(tank: Box, { facts }: Solution, pen: HousePen): number {
  const water = tankWater(facts);
  if (water !== null) return levelIn(vesselIn(tank, pen), water.atCutOut);
  const radius = (tank.right - tank.left) / 2 / pen.across;
  return pen.y(-openTankOf(2.4 * Math.PI * radius ** 3).water);
}

/** The line from the well, as far as it is seen under the floor. */
function lineUnderFloor({ pen, window, boxes }: Stage): Box {
  const riser = boxes.get('riser');
  const half = riser === undefined ? 2 : (riser.right - riser.left) / 2;
  const y = pen.y(UNDER_FLOOR);
  return { left: window.left, right: pen.x(0) + half, top: y - half, bottom: y + half };
}

/** Nobody says what floor it is: its lower edge is dashed, and nothing is drawn under it but the line. */
function drawFloor({ pen, ink, window }: Stage): Shape[] {
  const [top, bottom] = [pen.y(0), pen.y(SLAB)];
  const { left, right } = window;
  return [
    path('floor/slab', block(left, top, right, bottom), { fill: ink.panel }),
    path('floor/top', stroke(left, top, right, top), inked(ink.ink, 2)),
    path('floor/foot', stroke(left, bottom, right, bottom), { stroke: ink.hair, 'stroke-dasharray': '5 4' }),
  ];
}

function drawPipes(stage: Stage, line: Box): Shape[] {
  const { solution, pen, window, boxes, ink } = stage;
  const { facts } = solution;
  const riser = boxes.get('riser');
  if (riser === undefined) return [];
  const wide = Math.max(3, riser.right - riser.left);
  const { pipe, conduit, brass } = pen.tones;
  const ramp = isBlackPlastic((facts.house.line ?? facts.dropPipe).material) ? pipe : conduit;
  const x = pen.x(0);
  const y = (line.top + line.bottom) / 2;
  const tank = boxes.get('tank');
  const below: Point[] = [
    [window.left - 2, y],
    [x, y],
  ];
  const breakAt = pen.y((SLAB + UNDER_FLOOR) / 2);
  const shapes: Shape[] = [];
  if (facts.house.kind === 'open tank' && tank !== undefined) {
    const into = tank.right - wide * 1.6;
    shapes.push(
      ...drawHousePipe(
        'riser',
        [...below, [x, riser.top + wide / 2], [into, riser.top + wide / 2], [into, tank.top - 6]],
        wide,
        ramp,
      ),
    );
    const valve = boxes.get('shutOff');
    if (valve !== undefined) {
      const outlet = (valve.top + valve.bottom * 2) / 3;
      const up = valve.left - wide * 1.2;
      const run: Point[] = [
        [tank.left, outlet],
        [up, outlet],
        // No higher than its own water: from here it runs on by itself, or to a pump of its own.
        [up, window.bottom + 2],
      ];
      shapes.push(...drawHousePipe('toHouse', run, wide, conduit));
    }
  } else {
    const tee = pen.y(-TEE_HEIGHT);
    shapes.push(
      ...drawHousePipe(
        'toHouse',
        [
          [x, tee],
          [x, window.top - 2],
        ],
        wide,
        conduit,
      ),
    );
    shapes.push(...drawHousePipe('riser', [...below, [x, tee]], wide, ramp));
    if (tank !== undefined) {
      const middle = (tank.left + tank.right) / 2;
      shapes.push(
        ...drawHousePipe(
          'toTank',
          [
            [boxes.get('tankTee')?.left ?? x, tee],
            [middle, tee],
            [middle, pen.y(-TANK_FOOT) + 1],
          ],
          wide * 0.9,
          brass,
        ),
      );
    }
  }
  // How deep it lies under the floor, nobody said.
  shapes.push(
    path(
      'riser/break',
      stroke(x - wide, breakAt + 3, x + wide, breakAt - 1) + stroke(x - wide, breakAt + 7, x + wide, breakAt + 3),
      inked(ink.paper, 1.6),
    ),
  );
  return shapes;
}

/** From the well's conduit to the boxes and the switch: the runs alone, for what is inside is an electrician's work. */
function drawWires({ pen, boxes, window }: Stage): Shape[] {
  const off = boxes.get('disconnect');
  if (off === undefined) return [];
  const gear = boxes.get('controlBox') ?? boxes.get('drive');
  const pressure = boxes.get('switch');
  const wide = Math.max(2, inches(0.7) * pen.across);
  const middle = (box: Box): number => (box.left + box.right) / 2;
  const high = (height: number): number => pen.y(-inches(height));
  /** Out of one box's lower end, level at a height, into another's upper or lower end. */
  const between = (from: Point, level: number, to: Point): Point[] => [from, [from[0], level], [to[0], level], to];
  const conduit: Point = [pen.x(CONDUIT), window.bottom + 2];
  const last = gear ?? pressure ?? off;
  const isSwitch = last === pressure;
  const toWell: Point = isSwitch ? [middle(last) + wide * 0.8, last.top] : [middle(last) + wide * 1.6, last.bottom];
  const runs: Record<string, Point[]> = {
    supply: [
      [middle(off), window.top - 2],
      [middle(off), off.top],
    ],
    toWell: between(conduit, high(isSwitch ? 19 : 51), toWell),
  };
  if (pressure === undefined || boxes.has('drive')) {
    if (gear !== undefined)
      runs['toGear'] = between([middle(off), off.bottom], high(52.5), [middle(gear), gear.bottom]);
  } else runs['toSwitch'] = between([middle(off), off.bottom], high(24), [middle(pressure) - wide * 0.8, pressure.top]);
  const float = boxes.get('float');
  const tank = boxes.get('tank');
  // What the float switches is the pump: without its wires nothing would stop it.
  if (float !== undefined && tank !== undefined) {
    const box = gear ?? off;
    const over = Math.min(high(50), float.top - wide * 3);
    runs['toFloat'] = between([middle(box) - wide * 1.2, box.bottom], over, [tank.right + wide, float.top]);
  }
  if (pressure !== undefined && gear !== undefined)
    runs['fromSwitch'] = between([middle(gear) - wide * 1.6, gear.bottom], high(28), [
      middle(pressure) + (boxes.has('drive') ? 0 : wide * 0.8),
      pressure.top,
    ]);
  return Object.entries(runs).flatMap(([name, run]) => drawHousePipe(`wires/${name}`, run, wide, pen.tones.conduit));
}
