/** The torque arrestor: rubber arms bowed out from two hubs on the pipe until they rest against the bore. */
import { inches } from '../../model/units.ts';
import type { PlacedPart } from '../../model/solution.ts';
import type { Metres } from '../../model/si.ts';
import type { Shape } from '../scene.ts';
import { faced, group, path, rect } from '../shapes.ts';
import { pxText } from '../tenths.ts';
import { onPaper } from './closed.ts';
import type { Pen } from './pen.ts';

const ARM: Metres = inches(0.4);

export interface ArrestorPlace {
  readonly offset: Metres;
  readonly pipeRadius: Metres;
  readonly boreRadius: Metres;
}

export function drawTorqueArrestor(
  part: PlacedPart,
  pen: Pen,
  place: ArrestorPlace,
  dash: Readonly<Record<string, string>> = {},
): Shape {
  const { rubber, steel } = pen.tones;
  const centre = pen.x(place.offset);
  const hub = place.pipeRadius * pen.across;
  const thick = Math.max(3, ARM * pen.across);
  const top = pen.y(part.top);
  const bottom = pen.y(part.bottom);
  const bandTall = Math.min(6, (bottom - top) * 0.14);
  const arms =
    arm({ wall: pen.x(-place.boreRadius), hub: centre - hub, top, bottom }, thick) +
    arm({ wall: pen.x(place.boreRadius), hub: centre + hub, top, bottom }, -thick);
  const band = (key: string, y: number): Shape =>
    rect(key, centre - hub * 1.24, y, hub * 2.48, bandTall, { fill: steel.base, stroke: steel.edge });
  return group(part.key, [
    path('arms', arms, { fill: rubber.base, stroke: rubber.edge, ...dash }),
    path('front', lens(centre, hub * 0.5, top + bandTall, bottom - bandTall), {
      fill: rubber.base,
      stroke: rubber.edge,
      ...dash,
    }),
    path('glint', lens(centre - hub * 0.14, hub * 0.16, top + bandTall + 3, bottom - bandTall - 3), {
      fill: rubber.shine,
    }),
    band('hubTop', top),
    band('hubBottom', bottom - bandTall),
  ]);
}

/** Where an arm stands [px]. */
interface Arm {
  readonly wall: number;
  readonly hub: number;
  readonly top: number;
  readonly bottom: number;
}

/**
 * One arm from hub to bore and back. A cubic reaches three quarters of the way to its control points, so the controls
 * stand a third beyond the wall: the arm's outer edge then touches the bore exactly.
 *
 * @param inward  its thickness, from the wall to the right [px]
 */
function arm({ wall, hub, top, bottom }: Arm, inward: number): string {
  const outer = hub + (wall - hub) / 0.75;
  const inner = hub + (wall + inward - hub) / 0.75;
  const lip = Math.min(Math.abs(inward), (bottom - top) * 0.1);
  const reach = (bottom - top) * 0.12;
  return (
    `M${pxText(hub)} ${pxText(top)}C${pxText(outer)} ${pxText(top + reach)} ${pxText(outer)} ${pxText(bottom - reach)} ${pxText(hub)} ${pxText(bottom)}` +
    `V${pxText(bottom - lip)}C${pxText(inner)} ${pxText(bottom - reach - lip)} ${pxText(inner)} ${pxText(top + reach + lip)} ${pxText(hub)} ${pxText(top + lip)}z`
  );
}

/** The arm that faces us. */
function lens(centre: number, half: number, top: number, bottom: number): string {
  const c = half / 0.75;
  return (
    `M${pxText(centre)} ${pxText(top)}C${pxText(centre + c)} ${pxText(top + 6)} ${pxText(centre + c)} ${pxText(bottom - 6)} ${pxText(centre)} ${pxText(bottom)}` +
    `C${pxText(centre - c)} ${pxText(bottom - 6)} ${pxText(centre - c)} ${pxText(top + 6)} ${pxText(centre)} ${pxText(top)}z`
  );
}

/** From afar: arms bowed from the pipe to the bore; a guard's are lighter. */
export function closedArms(part: PlacedPart, pen: Pen, centre: number): Shape {
  const { middle: y, tall } = onPaper(part, pen);
  const half = part.radius * pen.across - 1;
  const left = pxText(pen.x(0) - half);
  const right = pxText(pen.x(0) + half);
  const x = pxText(centre);
  const [head, at, foot] = [y - tall / 2, y, y + tall / 2].map(pxText);
  return path(
    part.key,
    `M${left} ${at}Q${left} ${head} ${x} ${head}T${right} ${at}Q${right} ${foot} ${x} ${foot}T${left} ${at}Z`,
    faced('none', pen.tones.tape, part.kind === 'guard' ? 1.4 : 2.2),
  );
}
