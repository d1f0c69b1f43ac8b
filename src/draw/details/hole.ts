/** The hole inside a window, cut open: grout and gravel round it, air and water in it, walls, screens, water levels. */
import { inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { BoreStretch, Solution } from '../../model/solution.ts';
import { surfaceOf, type Moment } from '../moment.ts';
import { drawCasing, wallCut } from '../parts/casing.ts';
import { entryArrows } from '../parts/entries.ts';
import { drawFracture } from '../parts/fracture.ts';
import { drawGravelPack, drawGrout, PACK_OVER_SCREEN } from '../parts/grout.ts';
import { drawOpenHole } from '../parts/openHole.ts';
import type { Pen } from '../parts/pen.ts';
import { block, straight, strokes } from '../parts/outline.ts';
import { drawScreen } from '../parts/screen.ts';
import type { Shape } from '../scene.ts';
import { DRAWN_DOWN } from '../section/hole.ts';
import { path, rect } from '../shapes.ts';
import type { Point } from '../shapes.ts';
import { drawLevel } from './levels.ts';
import { solidCasings } from './solidCasings.ts';
import { within } from './stage.ts';
import type { Stage } from './stage.ts';

/** Thickness of the grouted ring where no one gives the drilled diameter: 1.5 in is the least that most codes ask. */
export const ANNULUS: Metres = inches(1.6);

/** Outer edge of what is drilled, casing and annulus together, at the window's middle. */
export function drilledRadius({ facts, bore }: Solution, depth: Metres): Metres {
  const outer = facts.well.casings[0];
  // Round a driven casing the ground was never opened.
  const annulus = facts.well.intake.kind === 'driven point' ? 0 : ANNULUS;
  if (outer !== undefined && (outer.bottom === null || depth < outer.bottom))
    return outer.outsideDiameter / 2 + annulus;
  const stretch = bore.find((each) => each.bottom >= depth) ?? bore[bore.length - 1];
  const radius = stretch?.outsideRadius ?? 0.08;
  return stretch?.kind === 'openHole' ? radius : radius + annulus;
}

/** Farther than this past the window's edge, no height of the water changes what is drawn in it. */
const PAST_EDGE: Metres = 0.5;

/** One value for all heights of the water above the window, and one for all below it. */
function surfaceBy(surface: Metres | null, { top, bottom }: Pen): Metres | null {
  return surface === null ? null : Math.min(Math.max(surface, top - PAST_EDGE), bottom + PAST_EDGE);
}

/** A level that stands in the window. */
function levelIn(level: Metres | null, { top, bottom }: Pen): Metres | null {
  return level !== null && level > top && level < bottom ? level : null;
}

/** Back to front; what each is drawn from besides the casings, the bore and the pen: water that falls elsewhere is nothing to it. */
export const HOLE: readonly {
  readonly name: string;
  readonly draw: (stage: Stage) => Shape[];
  readonly from: (solution: Solution, moment: Moment | undefined, pen: Pen) => readonly unknown[];
}[] = [
  { name: 'annulus', draw: drawAnnulus, from: () => [] },
  {
    name: 'bore',
    draw: drawBore,
    from: ({ levels }, moment, pen) => [surfaceBy(surfaceOf(levels, moment), pen), surfaceBy(levels.static, pen)],
  },
  { name: 'inflows', draw: drawInflows, from: () => [] },
  // Only where nobody knows the drawdown does the pump's place say where the water may stand.
  {
    name: 'unknownZone',
    draw: drawUnknownZone,
    from: ({ levels, facts }) => (levels.pumping === null ? [levels.static, facts.pump.setting] : []),
  },
  { name: 'walls', draw: drawWalls, from: () => [] },
  {
    name: 'waterLevels',
    draw: drawWaterLevels,
    from: ({ levels }, _moment, pen) => [levelIn(levels.static, pen), levelIn(levels.pumping, pen)],
  },
];

function drawAnnulus(stage: Stage): Shape[] {
  const {
    solution: { facts, bore },
    pen,
  } = stage;
  const outer = facts.well.casings[0];
  if (outer === undefined) return [];
  const shapes: Shape[] = [];
  const insideRadius = outer.outsideDiameter / 2;
  const outsideRadius = insideRadius + ANNULUS;
  const screen = bore.find((stretch) => stretch.kind === 'screen');
  const grout = facts.well.groutBottom;
  // Driven points and dug wells are not grouted; elsewhere what nobody reported is outlined, dashed.
  if (facts.well.intake.kind === 'open hole' || facts.well.intake.kind === 'screen') {
    if (within(stage, 0, grout ?? outer.bottom ?? pen.bottom)) {
      shapes.push(drawGrout('grout', pen, { insideRadius, outsideRadius, top: 0, bottom: grout }));
      stage.placed.push({
        part: 'grout',
        kind: 'grout',
        left: pen.x(insideRadius),
        right: pen.x(outsideRadius),
        top: pen.y(0),
        bottom: pen.y(grout ?? outer.bottom ?? pen.bottom),
      });
    }
  }
  if (screen !== undefined && facts.well.intake.kind === 'screen') {
    const packTop = Math.max(screen.top - PACK_OVER_SCREEN, grout ?? -Infinity);
    const pack = {
      insideRadius: screen.outsideRadius,
      outsideRadius,
      top: packTop,
      bottom: facts.well.bottom,
    };
    if (within(stage, pack.top, pack.bottom)) shapes.push(drawGravelPack('gravelPack', pen, pack));
  }
  return shapes;
}

/** What fills the hole: air over the water, water under it, and between them, paler, what stands there at rest. */
function drawBore(stage: Stage): Shape[] {
  const {
    solution: { bore, levels },
    pen,
    moment,
  } = stage;
  const surface = surfaceOf(levels, moment);
  const name = counter();
  const shapes: Shape[] = [];
  for (const stretch of bore) {
    const key = name(stretch.kind);
    if (!within(stage, stretch.top, stretch.bottom)) continue;
    const level = surface === null ? stretch.bottom : Math.min(stretch.bottom, Math.max(stretch.top, surface));
    shapes.push(...fillStretch(stage, `${key}/air`, stretch, stretch.top, level, pen.tones.bore));
    shapes.push(...fillStretch(stage, `${key}/water`, stretch, level, stretch.bottom, pen.tones.water));
    const from = Math.max(stretch.top, levels.static ?? level);
    if (from < level && within(stage, from, level)) shapes.push(drawnDown(stage, key, stretch, from, level));
    stage.placed.push({
      part: stretch.kind,
      kind: stretch.kind,
      left: pen.x(stretch.insideRadius),
      right: pen.x(stretch.outsideRadius),
      top: pen.y(stretch.top),
      bottom: pen.y(stretch.bottom),
    });
  }
  return shapes;
}

function fillStretch(
  stage: Stage,
  key: string,
  stretch: BoreStretch,
  top: Metres,
  bottom: Metres,
  fill: string,
): Shape[] {
  const {
    solution: { bore },
    pen,
    ink,
  } = stage;
  if (bottom - top < 1e-6 || !within(stage, top, bottom)) return [];
  if (stretch.kind === 'openHole') {
    const last = bottom === stretch.bottom && stretch === bore[bore.length - 1];
    return [
      drawOpenHole(key, pen, {
        radius: stretch.insideRadius,
        top,
        bottom,
        known: stretch.known,
        last,
        fill,
        edge: ink.ground.rock.hatch,
      }),
    ];
  }
  const from = pen.y(Math.max(top, pen.top - 0.1));
  const to = pen.y(Math.min(bottom, pen.bottom + 0.1));
  return [rect(key, pen.x(-stretch.insideRadius), from, stretch.insideRadius * 2 * pen.across, to - from, { fill })];
}

function drawnDown(
  { pen }: Stage,
  key: string,
  { insideRadius, kind }: BoreStretch,
  top: Metres,
  bottom: Metres,
): Shape {
  const from = pen.y(Math.max(top, pen.top - 0.1));
  const to = pen.y(Math.min(bottom, pen.bottom + 0.1));
  // An open hole's wall wanders that much.
  const half = insideRadius * pen.across - (kind === 'openHole' ? 2 : 0);
  return rect(`${key}/drawnDown`, pen.x(0) - half, from, 2 * half, to - from, {
    fill: pen.tones.water,
    'fill-opacity': DRAWN_DOWN,
  });
}

/** "screen", "screen/2": names stay while depths are dragged. */
function counter(): (word: string) => string {
  const times = new Map<string, number>();
  return (word) => {
    const n = (times.get(word) ?? 0) + 1;
    times.set(word, n);
    return n === 1 ? word : `${word}/${n}`;
  };
}

function drawWalls(stage: Stage): Shape[] {
  const { solution, pen } = stage;
  const shapes: Shape[] = [];
  for (const casing of solidCasings(solution)) {
    if (!within(stage, casing.top, casing.bottom ?? Infinity)) continue;
    shapes.push(drawCasing(casing.key, pen, casing, wallCut(casing.material, pen)));
  }
  const name = counter();
  for (const stretch of solution.bore) {
    if (stretch.kind !== 'screen') continue;
    const key = name('screen');
    if (!within(stage, stretch.top, stretch.bottom)) continue;
    shapes.push(drawScreen(key, pen, stretch));
    const top = pen.y(Math.max(stretch.top, pen.top));
    const foot = pen.y(Math.min(stretch.bottom, pen.bottom));
    if (foot - top < 12) continue;
    shapes.push(
      path(`${key}/entry`, entryArrows(pen.x(0), packRadius(solution, stretch) * pen.across, top, foot), {
        fill: 'none',
        stroke: pen.tones.waterEdge,
        'stroke-width': 1.4,
      }),
    );
  }
  const { bottom, intake } = solution.facts.well;
  const last = solution.bore[solution.bore.length - 1];
  if (last !== undefined && last.kind !== 'openHole' && within(stage, bottom - 0.1, bottom + 0.1)) {
    const y = pen.y(bottom);
    const half = last.outsideRadius * pen.across + 1;
    const tip: Point[] = [
      [pen.x(0) - half, y - 2],
      [pen.x(0) + half, y - 2],
      [pen.x(0), y + half * 1.6],
    ];
    shapes.push(
      intake.kind === 'driven point'
        ? path('drivePoint', straight(tip), { fill: pen.tones.steel.shadow, stroke: pen.tones.steel.edge })
        : path('bottomPlate', block(pen.x(-last.outsideRadius), y - 3, pen.x(last.outsideRadius), y), {
            fill: pen.tones.metalWall.fill,
            stroke: pen.tones.metalWall.ink,
          }),
    );
  }
  return shapes;
}

/** Outer edge of the gravel round a screen; of the screen itself where it was driven. */
function packRadius({ facts }: Solution, screen: BoreStretch): Metres {
  const casing = facts.well.casings[0];
  if (facts.well.intake.kind !== 'screen' || casing === undefined) return screen.outsideRadius;
  return casing.outsideDiameter / 2 + ANNULUS;
}

function drawWaterLevels({ solution: { levels, bore }, pen, ink, placed }: Stage): Shape[] {
  const shapes: Shape[] = [];
  for (const [key, depth, colour] of [
    ['staticLevel', levels.static, ink.static],
    ['pumpingLevel', levels.pumping, ink.pumping],
  ] as const) {
    if (depth === null || levelIn(depth, pen) === null) continue;
    const stretch = bore.find((each) => each.bottom >= depth);
    const radius = stretch?.insideRadius ?? 0.08;
    shapes.push(drawLevel(key, pen, depth, pen.x(-radius), pen.x(radius), colour, ink.paper));
    placed.push({
      part: key,
      kind: key,
      left: pen.x(-radius),
      right: pen.x(radius),
      top: pen.y(depth) - 6,
      bottom: pen.y(depth) + 6,
    });
  }
  return shapes;
}

/** Cracks that give water, from the hole outwards on both sides. */
function drawInflows({ solution: { facts, bore }, pen, ink, placed }: Stage): Shape[] {
  const shapes: Shape[] = [];
  (facts.well.inflows ?? []).forEach(({ depth, share }, i) => {
    const stretch = bore.find((each) => each.bottom >= depth);
    if (stretch === undefined || depth < pen.top || depth > pen.bottom) return;
    const y = pen.y(depth);
    const wall = stretch.insideRadius - 1 / pen.across;
    const key = `inflow/${i + 1}`;
    shapes.push(
      drawFracture(key, {
        left: pen.x(-wall),
        right: pen.x(wall),
        y,
        long: 54,
        gape: 4 + 5 * (share ?? 0.2),
        water: pen.tones.water,
        edge: pen.tones.waterEdge,
        crack: ink.ground.rock.hatch,
        dashed: share === null,
      }),
    );
    placed.push({ part: key, kind: 'openHole', left: pen.x(wall), right: pen.x(wall) + 40, top: y - 5, bottom: y + 5 });
  });
  return shapes;
}
/** Where nobody measured the drawdown, the water may fall to anywhere between the static level and the pump. */
function drawUnknownZone({ solution: { facts, levels, bore }, pen, ink }: Stage): Shape[] {
  if (levels.static === null || levels.pumping !== null) return [];
  const from = Math.max(levels.static, pen.top);
  const to = Math.min(facts.pump.setting, pen.bottom);
  if (to <= from) return [];
  const inside = bore.find((each) => each.bottom >= (from + to) / 2)?.insideRadius ?? 0.05;
  const places: Point[] = [];
  for (let y = Math.ceil(pen.y(from) / 12) * 12; y + 8 < pen.y(to); y += 12) places.push([pen.x(-inside) + 2, y + 8]);
  return [
    path('unknownZone', strokes(places, inside * 2 * pen.across - 4, -8), {
      stroke: ink.pumping,
      'stroke-width': 0.8,
      'stroke-dasharray': '3 3',
    }),
  ];
}
