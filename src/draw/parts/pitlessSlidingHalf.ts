/** The half of a pitless adapter that comes out with the string: elbow, tongue, seal ring, and a tapped hole on top that takes the lift-out pipe. */
import type { Shape } from '../scene.ts';
import { path, type Point } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import { block, straight, stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import type { PitlessMeasures } from './pitlessMeasures.ts';

/** Of the half-width of the sliding half: its boss outside, the tapped hole in it. */
const BOSS = 0.9;
const TAPPED = 0.58;
/** From crest to crest of the thread, and how deep its teeth are cut, where there is room [px]. */
const PITCH_PX = 3.4;
const TOOTH_PX = 1.8;

export function drawSlidingHalf(m: PitlessMeasures, pen: Pen): Shape[] {
  const { brassCut, water, rubber, bore } = pen.tones;
  const { centre, half, way, shoulder, thread, bottom, face, up } = m;
  const left = centre - half;
  const right = Math.min(centre + half, face);
  const boss = half * BOSS;
  const rim = shoulder - thread;
  const slack = 0.6;
  const outline = straight([
    [centre - boss, rim],
    [centre + boss, rim],
    [centre + boss, m.tongueTop],
    [m.plate - slack, m.tongueTop],
    [m.plate - slack, m.slotFloor - slack],
    [m.lipEnd + slack, m.slotFloor - slack],
    [m.lipEnd + slack, m.lipTop - slack * 1.5],
    [face, m.lipTop - slack * 1.5],
    [face, Math.min(up(-12), bottom)],
    [Math.max(right, centre + half), bottom],
    [left, bottom],
    [left, shoulder + half * 0.2],
    [centre - boss, shoulder],
  ]);
  const { waterTop, waterBottom } = m;
  const elbow = `M${pxText(centre - way)} ${pxText(bottom)}V${pxText(waterTop + way * 0.6)}Q${pxText(centre - way)} ${pxText(waterTop)} ${pxText(centre - way * 0.2)} ${pxText(waterTop)}H${pxText(m.end)}V${pxText(waterBottom)}H${pxText(centre + way)}V${pxText(bottom)}z`;
  const tall = Math.max(2.4, m.grow * 2.2);
  const ring =
    block(face - tall, waterTop - tall * 1.1, face + 1.4, waterTop - 0.4) +
    block(face - tall, waterBottom + 0.4, face + 1.4, waterBottom + tall * 1.1);
  const neck = shoulder + half * 0.2;
  const hatch = hatchIn(left, right, neck, waterTop) + hatchIn(left, centre - way, waterTop, bottom);
  return [
    path('slidingHalf', outline, { fill: brassCut.fill }),
    path('slidingHatch', hatch, {}),
    path('waterway', elbow, { fill: water }),
    path('ring', ring, { fill: rubber.base, stroke: rubber.edge }),
    path('liftThread', tapped(centre, half * TAPPED, rim, thread * 0.84), { fill: bore }),
  ];
}

/** A tapped hole cut open: the thread's teeth stand into it from both sides, turned by half a pitch, as one helix gives them. */
function tapped(centre: number, half: number, top: number, tall: number): string {
  const turns = Math.max(2, Math.round(tall / Math.max(PITCH_PX, tall / 8)));
  const pitch = tall / turns;
  const tooth = Math.min(TOOTH_PX * Math.max(1, pitch / PITCH_PX), half * 0.4);
  const down: Point[] = [];
  const back: Point[] = [];
  for (let i = 0; i < turns; i++) {
    const y = top + i * pitch;
    down.push([centre - half, y], [centre - half + tooth, y + pitch * 0.5]);
    back.push([centre + half, y + pitch * 0.5], [centre + half - tooth, y + pitch]);
  }
  return straight([
    ...down,
    [centre - half, top + tall],
    [centre + half, top + tall],
    ...back.reverse(),
    [centre + half, top],
  ]);
}

function hatchIn(left: number, right: number, top: number, bottom: number): string {
  let d = '';
  const wide = right - left;
  for (let y = top + 4; y < bottom + wide; y += 7) {
    const from = Math.min(y, bottom);
    const to = Math.max(y - wide, top);
    if (from > to) d += stroke(left + (y - from), from, left + (y - to), to);
  }
  return d;
}
