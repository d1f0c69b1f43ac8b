/** The fixed half of a pitless adapter: slot and saddle inside the casing, neck through the hole in its wall, nut outside. */
import type { Shape } from '../scene.ts';
import { path } from '../shapes.ts';
import { block, straight, stroke } from './outline.ts';
import type { Pen } from './pen.ts';
import type { PitlessMeasures } from './pitlessMeasures.ts';

/** The hole is a little wider than the neck, so that the neck is seen to go through one [px]. */
const CLEAR_PX = 1.8;

export function drawPitlessBody(m: PitlessMeasures, pen: Pen): Shape[] {
  const { brass, bore, ink, rubber } = pen.tones;
  const { face, lipEnd, plate, back, end, plateTop, lipTop, slotFloor, neckTop, neckBottom, up } = m;
  const lip = face + 1;
  const upper = straight([
    [end, neckTop],
    [back, neckTop],
    [back, plateTop],
    [plate, plateTop],
    [plate, slotFloor],
    [lipEnd, slotFloor],
    [lipEnd, lipTop],
    [lip, lipTop],
    [lip, m.waterTop],
    [end, m.waterTop],
  ]);
  const lower = straight([
    [end, m.waterBottom],
    [lip, m.waterBottom],
    [lip, up(-10)],
    [plate, up(-10)],
    [plate, up(-16)],
    [back, up(-16)],
    [back, neckBottom],
    [end, neckBottom],
  ]);
  const holeTop = neckTop - CLEAR_PX * Math.sqrt(m.grow);
  const holeBottom = neckBottom + CLEAR_PX * Math.sqrt(m.grow);
  const gaskets = [m.wallIn - m.gasket, m.wallOut]
    .map((x) => block(x, up(15), x + m.gasket, holeTop) + block(x, holeBottom, x + m.gasket, up(-15)))
    .join('');
  return [
    path('hole', block(m.wallIn - 0.6, holeTop, m.wallOut + 0.6, holeBottom), { fill: bore, stroke: 'none' }),
    path(
      'holeEdges',
      stroke(m.wallIn, holeTop, m.wallOut, holeTop) + stroke(m.wallIn, holeBottom, m.wallOut, holeBottom),
      { stroke: ink },
    ),
    path('body', upper + lower, { fill: brass.shadow }),
    path('bodyHatch', bodyHatch(m), {}),
    path('gaskets', gaskets, { fill: rubber.base, stroke: rubber.edge }),
  ];
}

/** Cut the other way from the sliding half, as two parts are that meet: so they differ in black and white too. */
function bodyHatch({ plate, back, plateTop, neckTop, neckBottom, up }: PitlessMeasures): string {
  const wide = back - plate;
  let d = '';
  for (const [from, to] of [
    [plateTop, neckTop],
    [neckBottom, up(-16)],
  ] as const)
    for (let y = from + 1; y + wide < to; y += 5) d += stroke(plate, y, back, y + wide);
  return d;
}

/** Over the neck outside, seen whole, with the thread beyond it that the line's fitting screws into. */
export function drawPitlessNut(
  { nutLeft, nutRight, end, neckTop, neckBottom, up, ...m }: PitlessMeasures,
  pen: Pen,
): Shape[] {
  const { brass } = pen.tones;
  const turns = [0.3, 0.6].map((share) => nutRight + (end - nutRight) * share);
  return [
    // A washer, or the nut would cut the rubber that it turns on.
    path('washer', block(nutLeft - 1.8, up(11), nutLeft, up(-11)), { fill: pen.tones.steel.base }),
    path('nut', block(nutLeft, up(13), nutRight, up(-13)), { fill: brass.base }),
    path('nutFaces', block(nutLeft, up(7), nutRight, up(2)), { fill: brass.shine, stroke: 'none' }),
    path(
      'edges',
      turns.map((x) => stroke(x, neckTop, x, m.waterTop) + stroke(x, m.waterBottom, x, neckBottom)).join('') +
        stroke(nutLeft, up(7), nutRight, up(7)) +
        stroke(nutLeft, up(-6), nutRight, up(-6)),
      {},
    ),
  ];
}
