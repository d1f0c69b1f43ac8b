/** A top with a sanitary seal: plates and rubber, riser with tee and plug, vent, conduit, line above the ground. */
import { isFlowing } from '../../model/rules/highestStatic.ts';
import type { PlacedPart } from '../../model/solution.ts';
import { SEAL_EYE } from '../../model/string/lengths.ts';
import { inches } from '../../model/units.ts';
import { lineOnPaper } from '../parts/buriedLine.ts';
import { drawVent } from '../parts/cap.ts';
import { drawCoupling, drawNipple } from '../parts/nipple.ts';
import { block, stroke, tenth } from '../parts/outline.ts';
import { drawSeal } from '../parts/seal.ts';
import { drawPlug, drawTee } from '../parts/tee.ts';
import type { Shape } from '../scene.ts';
import { group, inked, path } from '../shapes.ts';
import { drawSealLine } from './sealLine.ts';
import { placeRound, type Stage } from './stage.ts';
import { casingRadii, drawBondOf, drawWayOut, find, type Radii } from './wayOut.ts';

export function drawSealTop(stage: Stage): Shape[] {
  const {
    solution: { facts, parts },
    pen,
    axis,
  } = stage;
  const radii = casingRadii(stage);
  const { steel } = pen.tones;
  const seal = find(stage, 'seal');
  const tee = find(stage, 'tee');
  const plug = find(stage, 'plug');
  const line = find(stage, 'buriedLine');
  const conduit = find(stage, 'conduit');
  const cable = find(stage, 'cable');
  if (seal === undefined) return [];
  const shapes: Shape[] = [];
  const cableX = axis.cable(seal.bottom);
  const sealTop = pen.y(seal.top);
  if (!isFlowing(stage.solution)) shapes.push(drawSealVent(stage, seal, radii));
  if (conduit !== undefined) {
    const from: readonly [number, number] = [pen.x(cableX), sealTop];
    shapes.push(
      drawWayOut(stage, conduit, {
        from,
        up: true,
        lineTop: Infinity,
        reach: radii.outside + inches(0.5),
        clear: -Infinity,
      }),
    );
  }
  if (line !== undefined && tee !== undefined) {
    const paper = lineOnPaper(line, pen);
    shapes.push(...drawSealLine(stage, line, tee));
    shapes.push(drawTee(tee, pen, steel, { branchTop: paper.top, branchBottom: paper.bottom }));
    placeRound(stage, tee, tee.radius);
  }
  for (const part of parts) {
    if (part.key === 'nipple/top') shapes.push(drawNipple(part, pen, steel));
    if (part.key === 'coupling/top') shapes.push(drawCoupling(part, pen, steel));
  }
  if (plug !== undefined) {
    shapes.push(drawPlug(plug, pen, pen.tones.brass));
    placeRound(stage, plug, plug.radius);
  }
  shapes.push(
    drawSeal(seal, pen, {
      casingTop: radii.top,
      casingInsideRadius: radii.inside,
      casingOutsideRadius: radii.outside,
      pipeRadius: facts.dropPipe.outsideDiameter / 2,
      cableOffset: cableX,
      cableRadius: cable?.radius ?? 0.005,
      eye: facts.rope?.tied === 'casing hook' ? seal.bottom + SEAL_EYE : null,
    }),
  );
  shapes.push(...drawPassing(stage, seal));
  placeRound(stage, seal, radii.outside);
  shapes.push(...drawBondOf(stage, radii, seal.top));
  return shapes;
}

/** Pipe and cable pass the seal: they are drawn again over its rubber. */
function drawPassing({ solution: { parts }, pen, axis }: Stage, seal: PlacedPart): Shape[] {
  const nipple = parts.find(({ key }) => key === 'nipple/seal');
  const cable = parts.find(({ kind }) => kind === 'cable');
  const shapes = nipple === undefined ? [] : [drawNipple(nipple, pen, pen.tones.steel)];
  if (cable !== undefined) {
    const thick = Math.max(2.6, cable.radius * 2 * pen.across);
    const x = pen.x(axis.cable(seal.bottom));
    const d = stroke(x, pen.y(seal.bottom) + 2, x, pen.y(seal.top) - 3);
    shapes.push(
      group('cableThroughSeal', [
        path('jacket', d, inked(pen.tones.cable, tenth(thick))),
        path('glint', d, inked(pen.tones.cableShine, tenth(thick * 0.26))),
      ]),
    );
  }
  return shapes;
}

/** A pipe through the seal that turns down behind a screen. */
function drawSealVent({ pen }: Stage, seal: PlacedPart, radii: Radii): Shape {
  const { steel } = pen.tones;
  const x = pen.x(-radii.inside * 0.64);
  const wide = Math.max(4, inches(0.5) * pen.across);
  const top = pen.y(seal.top);
  const pipe = block(x - wide / 2, top - wide * 2.4, x + wide / 2, pen.y(seal.bottom));
  return group('vent', [
    path('pipe', pipe, { fill: steel.base, stroke: steel.edge }),
    ...drawVent(x + wide / 2, top - wide * 2.2, wide, pen),
  ]);
}
