/** What closes the well and leads water and wire away: pitless adapter with cap, or seal with tee; line, conduit, bond, spare loop. */
import { inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { PartKind, PlacedPart } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { group, path, rect } from '../shapes.ts';
import { drawBond } from '../parts/bond.ts';
import { drawBuriedLine, lineOnPaper } from '../parts/buriedLine.ts';
import { drawCap, drawVent } from '../parts/cap.ts';
import { conduitWidth, drawConduit } from '../parts/conduit.ts';
import { drawCoupling, drawNipple } from '../parts/nipple.ts';
import { tenth } from '../parts/outline.ts';
import { drawPitlessAdapter, outletEnd } from '../parts/pitlessAdapter.ts';
import type { PitlessPlace } from '../parts/pitlessAdapter.ts';
import { drawSeal } from '../parts/seal.ts';
import { branchEnd, drawPlug, drawTee } from '../parts/tee.ts';
import { pipeWall, place } from './stage.ts';
import type { Stage } from './stage.ts';

/** The cable's plumb run begins this far under the casing top; above it hangs the spare loop. */
const LOOP: Metres = inches(14);

export function drawTopWorks(stage: Stage): Shape[] {
  const {
    solution: { parts, facts },
    pen,
  } = stage;
  if (!parts.some((part) => TOP.has(part.kind) && part.bottom > pen.top && part.top < pen.bottom)) return [];
  return facts.top.kind === 'pitless' ? drawPitlessTop(stage) : drawSealTop(stage);
}

const TOP: ReadonlySet<PartKind> = new Set([
  'cap',
  'pitlessAdapter',
  'seal',
  'tee',
  'plug',
  'conduit',
  'bond',
  'buriedLine',
]);

const find = ({ solution }: Stage, kind: PartKind): PlacedPart | undefined =>
  solution.parts.find((part) => part.kind === kind);

interface Radii {
  readonly inside: Metres;
  readonly outside: Metres;
  readonly top: Metres;
}

function casingRadii({ solution: { facts } }: Stage): Radii {
  const casing = facts.well.casings[0];
  return {
    inside: (casing?.insideDiameter ?? 0.15) / 2,
    outside: (casing?.outsideDiameter ?? 0.16) / 2,
    top: -facts.well.casingHeight,
  };
}

function drawPitlessTop(stage: Stage): Shape[] {
  const {
    solution: { facts },
    pen,
    axis,
    right,
  } = stage;
  const radii = casingRadii(stage);
  const adapter = find(stage, 'pitlessAdapter');
  const line = find(stage, 'buriedLine');
  const cap = find(stage, 'cap');
  const shapes: Shape[] = [];
  if (adapter !== undefined && line !== undefined && adapter.top - 0.3 < pen.bottom && adapter.bottom + 0.3 > pen.top) {
    const paper = lineOnPaper(line, pen);
    const at: PitlessPlace = {
      offset: axis.pipe(adapter.bottom),
      pipeRadius: facts.dropPipe.outsideDiameter / 2,
      pipeBore: facts.dropPipe.insideDiameter / 2,
      casingInsideRadius: radii.inside,
      casingOutsideRadius: radii.outside,
      outletTop: paper.top,
      outletBottom: paper.bottom,
    };
    const end = outletEnd(adapter, pen, at);
    shapes.push(drawRestoredGrout(stage, radii.outside, paper.top, paper.bottom));
    shapes.push(drawLine(stage, line, end, right, true));
    shapes.push(drawPitlessAdapter(adapter, pen, at));
    place(
      stage,
      adapter,
      pen.x(at.offset - at.pipeRadius * 1.3),
      pen.x(radii.outside) + 14,
      Math.min(pen.y(adapter.top), paper.top - 15),
      Math.max(pen.y(adapter.bottom), paper.bottom + 10),
    );
    place(stage, line, end, right, paper.top, paper.bottom);
  }
  if (cap !== undefined) shapes.push(...drawCapAndWay(stage, cap, radii, line));
  shapes.push(...drawBondOf(stage, radii, cap?.bottom ?? radii.top));
  return shapes;
}

/** Cap, conduit out of it and loop under it; what hangs out of a cap over the window's edge is drawn all the same. */
function drawCapAndWay(stage: Stage, cap: PlacedPart, radii: Radii, line: PlacedPart | undefined): Shape[] {
  const { pen } = stage;
  const conduit = find(stage, 'conduit');
  const exit: readonly [number, number] = [
    pen.x(cap.radius) - 2,
    pen.y(cap.top) + (cap.bottom - cap.top) * pen.down * 0.45,
  ];
  const shapes: Shape[] = [];
  if (conduit !== undefined && conduit.top < pen.bottom && conduit.bottom > pen.top) {
    shapes.push(
      drawWayOut(stage, conduit, exit, line === undefined ? Infinity : lineOnPaper(line, pen).top, cap.radius),
    );
  }
  if (cap.bottom > pen.top && cap.top < pen.bottom) {
    shapes.push(drawCap(cap, pen, { casingTop: radii.top, casingOutsideRadius: radii.outside }));
    place(stage, cap, pen.x(-cap.radius), pen.x(cap.radius));
  }
  if (radii.top + LOOP > pen.top && cap.top < pen.bottom) shapes.push(drawSpareLoop(stage, radii, exit));
  return shapes;
}

/** Grout cut away for the adapter's hole and put back round it. */
function drawRestoredGrout({ solution, pen }: Stage, outside: Metres, top: number, bottom: number): Shape {
  if (solution.facts.well.groutBottom === null) return group('restoredGrout', []);
  const wall = pen.x(outside);
  return group('restoredGrout', [
    rect('patch', wall, top - 26, inches(1.6) * pen.across, bottom - top + 52, {
      fill: pen.tones.grout.fill,
      stroke: pen.tones.grout.ink,
      'stroke-width': 1,
      'stroke-dasharray': '3 2',
    }),
  ]);
}

function drawLine(stage: Stage, line: PlacedPart, from: number, to: number, bedding: boolean): Shape {
  const {
    solution: { facts },
    pen,
  } = stage;
  const pipe = facts.house.line ?? facts.dropPipe;
  return drawBuriedLine(line, pen, {
    from,
    to,
    wall: pipeWall(pipe.material, pen.tones),
    fitting: pipe.material === 'PE' ? pen.tones.steel : null,
    clamps: Math.min(4, Math.max(1, facts.string.clampsPerJoint)),
    bedding,
    shareOfBore: pipe.insideDiameter / pipe.outsideDiameter,
  });
}

/** The conduit runs in the same trench, just above the line. */
function drawWayOut(
  stage: Stage,
  conduit: PlacedPart,
  from: readonly [number, number],
  lineTop: number,
  reach: Metres,
): Shape {
  const { pen, right } = stage;
  const wide = conduitWidth(conduit, pen);
  const plumb = Math.max(pen.x(reach), pen.x(casingRadii(stage).outside)) + wide * 0.5 + 4;
  const deepest = pen.y(conduit.bottom);
  // Bedded over the line, never inside it.
  const trench =
    Number.isFinite(lineTop) && Math.abs(deepest - lineTop) < wide * 2
      ? Math.min(deepest, lineTop - wide / 2 - 7)
      : deepest;
  place(stage, conduit, plumb - wide / 2, plumb + wide / 2, from[1], trench);
  return drawConduit(conduit, pen, { from, plumb, trench, to: right });
}

/** Cable to spare, coiled under the cap, so that the pump can be drawn far enough to work on the top joint. */
function drawSpareLoop({ solution, pen, axis }: Stage, radii: Radii, exit: readonly [number, number]): Shape {
  const cable = solution.parts.find((part) => part.kind === 'cable');
  if (cable === undefined) return group('spareLoop', []);
  const start = radii.top + LOOP;
  const left = pen.x(axis.cable(start));
  const wide = pen.x(radii.inside * 0.72) - left;
  const y = (below: number): number => pen.y(radii.top) + below * LOOP * pen.down;
  const x = (share: number): number => left + wide * share;
  const d =
    `M${tenth(left)} ${tenth(y(1.02))}V${tenth(y(0.6))}C${tenth(left)} ${tenth(y(0.02))} ${tenth(x(0.42))} ${tenth(y(0.02))} ${tenth(x(0.42))} ${tenth(y(0.5))}` +
    `S${tenth(x(0.84))} ${tenth(y(1.15))} ${tenth(x(0.84))} ${tenth(y(0.5))}S${tenth(x(0.9))} ${tenth(exit[1])} ${tenth(exit[0])} ${tenth(exit[1])}`;
  const thick = Math.max(2.6, cable.radius * 2 * pen.across);
  return group('spareLoop', [
    path('jacket', d, { fill: 'none', stroke: pen.tones.cable, 'stroke-width': tenth(thick) }),
    path('glint', d, { fill: 'none', stroke: pen.tones.cableShine, 'stroke-width': tenth(thick * 0.26) }),
  ]);
}

function drawBondOf(stage: Stage, radii: Radii, capBottom: Metres): Shape[] {
  const bond = find(stage, 'bond');
  if (bond === undefined || bond.bottom < stage.pen.top || bond.top > stage.pen.bottom) return [];
  place(stage, bond, stage.pen.x(-radii.outside) - 8, stage.pen.x(-radii.outside));
  return [drawBond(bond, stage.pen, radii.outside, capBottom)];
}

function drawSealTop(stage: Stage): Shape[] {
  const {
    solution: { facts, parts },
    pen,
    axis,
    right,
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
  const ventX = pen.x(-radii.inside * 0.64);
  const sealTop = pen.y(seal.top);
  const stub = Math.max(4, inches(0.5) * pen.across);
  shapes.push(
    group('vent', [
      path(
        'pipe',
        `M${tenth(ventX - stub / 2)} ${tenth(pen.y(seal.bottom))}V${tenth(sealTop - stub * 2.4)}h${tenth(stub)}V${tenth(pen.y(seal.bottom))}z`,
        { fill: steel.base, stroke: steel.edge },
      ),
      ...drawVent(ventX + stub / 2, sealTop - stub * 2.2, stub, pen),
    ]),
  );
  if (conduit !== undefined)
    shapes.push(
      drawWayOut(
        stage,
        conduit,
        [pen.x(cableX), sealTop - conduitWidth(conduit, pen) * 0.75],
        Infinity,
        radii.outside + inches(1),
      ),
    );
  if (line !== undefined && tee !== undefined) {
    const paper = lineOnPaper(line, pen);
    const end = branchEnd(tee, pen);
    shapes.push(drawLine(stage, line, end, right, false));
    shapes.push(drawTee(tee, pen, steel, { branchTop: paper.top, branchBottom: paper.bottom }));
    place(stage, line, end, right, paper.top, paper.bottom);
    place(stage, tee, pen.x(-tee.radius), pen.x(tee.radius));
  }
  for (const part of parts) {
    if (part.key === 'nipple/top') shapes.push(drawNipple(part, pen, steel));
    if (part.key === 'coupling/top') shapes.push(drawCoupling(part, pen, steel));
  }
  if (plug !== undefined) {
    shapes.push(drawPlug(plug, pen, pen.tones.brass));
    place(stage, plug, pen.x(-plug.radius), pen.x(plug.radius));
  }
  shapes.push(
    drawSeal(seal, pen, {
      casingTop: radii.top,
      casingInsideRadius: radii.inside,
      casingOutsideRadius: radii.outside,
      pipeRadius: facts.dropPipe.outsideDiameter / 2,
      cableOffset: cableX,
      cableRadius: cable?.radius ?? 0.005,
    }),
  );
  // Pipe and cable pass the seal: they are drawn again over its rubber.
  for (const part of parts) if (part.key === 'nipple/seal') shapes.push(drawNipple(part, pen, steel));
  if (cable !== undefined) {
    const thick = Math.max(2.6, cable.radius * 2 * pen.across);
    shapes.push(
      path('cableThroughSeal', `M${tenth(pen.x(cableX))} ${tenth(pen.y(seal.bottom) + 2)}V${tenth(sealTop - 4)}`, {
        stroke: pen.tones.cable,
        'stroke-width': tenth(thick),
      }),
    );
  }
  place(stage, seal, pen.x(-radii.outside), pen.x(radii.outside));
  shapes.push(...drawBondOf(stage, radii, seal.top));
  return shapes;
}
