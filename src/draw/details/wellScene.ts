/**
 * The well as it stands inside a window, cut open: hole, casings, water and every part of the string, back to front.
 * The three details differ only in their window and their words.
 */
import { solidCasings } from './solidCasings.ts';
import type { Metres } from '../../model/si.ts';
import type { PartKind, PlacedPart, Solution } from '../../model/solution.ts';
import type { Shape } from '../scene.ts';
import { path, rect } from '../shapes.ts';
import type { Ink } from '../theme.ts';
import { drawCable } from '../parts/cable.ts';
import { drawCableGuardStrip } from '../parts/cableGuardStrip.ts';
import { drawCasing, wallCut } from '../parts/casing.ts';
import { drawCheckValve } from '../parts/checkValve.ts';
import { bandsOf, drawClamp } from '../parts/clamp.ts';
import { drawDropPipe } from '../parts/dropPipe.ts';
import { drawGravelPack, drawGrout } from '../parts/grout.ts';
import { drawInsertFitting } from '../parts/insertFitting.ts';
import { drawIntake } from '../parts/intake.ts';
import { drawMotor } from '../parts/motor.ts';
import { drawCoupling, drawNipple } from '../parts/nipple.ts';
import { drawOpenHole } from '../parts/openHole.ts';
import { block, tenth } from '../parts/outline.ts';
import type { Pen } from '../parts/pen.ts';
import { drawPump, eyeOf } from '../parts/pump.ts';
import { drawRope } from '../parts/rope.ts';
import { drawScreen } from '../parts/screen.ts';
import { drawShroud } from '../parts/shroud.ts';
import { drawSplice } from '../parts/splice.ts';
import { stringAxisOf } from '../parts/stringAxis.ts';
import { drawGuard, drawTie } from '../parts/tie.ts';
import type { Ramp, Tones } from '../parts/tones.ts';
import { drawTorqueArrestor } from '../parts/torqueArrestor.ts';
import { drawLevel } from './levels.ts';
import { pipeWall, place, within } from './stage.ts';
import type { Placed, Stage } from './stage.ts';
import { drawTopWorks } from './topWorks.ts';

const inch: Metres = 0.0254;
/** Thickness of the grouted ring where no one gives the drilled diameter: 1.5 in is the least that most codes ask. */
const ANNULUS: Metres = 1.6 * inch;

export interface WellDrawing {
  readonly shapes: readonly Shape[];
  readonly placed: readonly Placed[];
}

/** Outer edge of what is drilled, casing and annulus together, at the window's middle. */
export function drilledRadius({ facts, bore }: Solution, depth: Metres): Metres {
  const outer = facts.well.casings[0];
  if (outer !== undefined && (outer.bottom === null || depth < outer.bottom)) return outer.outsideDiameter / 2 + ANNULUS;
  const stretch = bore.find((each) => each.bottom >= depth) ?? bore[bore.length - 1];
  const radius = stretch?.outsideRadius ?? 0.08;
  return stretch?.kind === 'openHole' ? radius : radius + ANNULUS;
}

export function drawWell(solution: Solution, pen: Pen, ink: Ink, right: number): WellDrawing {
  const stage: Stage = { solution, pen, ink, axis: stringAxisOf(solution), right, placed: [] };
  const shapes = [
    ...drawAnnulus(stage), ...drawBore(stage), ...drawWalls(stage), ...drawWaterLevels(stage), ...drawString(stage), ...drawTopWorks(stage),
  ];
  return { shapes, placed: stage.placed };
}

function drawAnnulus(stage: Stage): Shape[] {
  const { solution: { facts, bore }, pen } = stage;
  const outer = facts.well.casings[0];
  if (outer === undefined) return [];
  const shapes: Shape[] = [];
  const ring = { insideRadius: outer.outsideDiameter / 2, outsideRadius: outer.outsideDiameter / 2 + ANNULUS };
  const screen = bore.find((stretch) => stretch.kind === 'screen');
  const grout = facts.well.groutBottom;
  const known = grout !== null ? grout : null;
  // Driven points and dug wells are not grouted; elsewhere what nobody reported is outlined, dashed.
  if (facts.well.intake.kind === 'open hole' || facts.well.intake.kind === 'screen') {
    if (within(stage, 0, known ?? outer.bottom ?? pen.bottom)) {
      shapes.push(drawGrout('grout', pen, { ...ring, top: 0, bottom: known }));
      stage.placed.push({ part: 'grout', kind: 'grout', left: pen.x(ring.insideRadius), right: pen.x(ring.outsideRadius), top: pen.y(0), bottom: pen.y(known ?? outer.bottom ?? pen.bottom) });
    }
  }
  if (screen !== undefined && facts.well.intake.kind === 'screen') {
    const packTop = Math.max(screen.top - 0.61, grout ?? screen.top - 0.61);
    const pack = { insideRadius: screen.outsideRadius, outsideRadius: ring.outsideRadius, top: packTop, bottom: facts.well.bottom };
    if (within(stage, pack.top, pack.bottom)) shapes.push(drawGravelPack('gravelPack', pen, pack));
  }
  return shapes;
}

/** What fills the hole: air over the water, water under it. */
function drawBore(stage: Stage): Shape[] {
  const { solution: { bore, levels }, pen, ink } = stage;
  const surface = levels.pumping ?? levels.static;
  const shapes: Shape[] = [];
  for (const stretch of bore) {
    if (!within(stage, stretch.top, stretch.bottom)) continue;
    const cut = surface === null ? [stretch.top, stretch.bottom] : [stretch.top, Math.min(stretch.bottom, Math.max(stretch.top, surface)), stretch.bottom];
    for (let i = 0; i + 1 < cut.length; i++) {
      const top = cut[i]!;
      const bottom = cut[i + 1]!;
      if (bottom - top < 1e-6 || !within(stage, top, bottom)) continue;
      const wet = surface !== null && top >= surface - 1e-6;
      const fill = wet ? pen.tones.water : pen.tones.bore;
      const key = `${stretch.kind}/${wet ? 'water' : 'air'}/${stretch === bore[0] ? 'first' : tenth(stretch.top)}`;
      if (stretch.kind === 'openHole') {
        shapes.push(drawOpenHole(key, pen, { radius: stretch.insideRadius, top, bottom, known: stretch.known, last: i + 2 === cut.length && stretch === bore[bore.length - 1], fill, edge: ink.ground.rock.hatch }));
      } else {
        const from = pen.y(Math.max(top, pen.top - 0.1));
        const to = pen.y(Math.min(bottom, pen.bottom + 0.1));
        shapes.push(rect(key, pen.x(-stretch.insideRadius), from, stretch.insideRadius * 2 * pen.across, to - from, { fill }));
      }
    }
    stage.placed.push({
      part: stretch.kind === 'casing' ? 'casing' : stretch.kind, kind: stretch.kind,
      left: pen.x(stretch.insideRadius), right: pen.x(stretch.outsideRadius), top: pen.y(stretch.top), bottom: pen.y(stretch.bottom),
    });
  }
  return shapes;
}

function drawWalls(stage: Stage): Shape[] {
  const { solution, pen } = stage;
  const shapes: Shape[] = [];
  for (const casing of solidCasings(solution)) {
    if (!within(stage, casing.top, casing.bottom ?? Infinity)) continue;
    shapes.push(drawCasing(casing.key, pen, { ...casing, cut: wallCut(casing.material, pen) }));
  }
  for (const stretch of solution.bore) {
    if (stretch.kind === 'screen' && within(stage, stretch.top, stretch.bottom)) shapes.push(drawScreen(`screen/${tenth(stretch.top)}`, pen, stretch));
  }
  const { bottom } = solution.facts.well;
  const last = solution.bore[solution.bore.length - 1];
  if (last !== undefined && last.kind !== 'openHole' && within(stage, bottom - 0.1, bottom + 0.1)) {
    const y = pen.y(bottom);
    shapes.push(path('bottomPlate', block(pen.x(-last.outsideRadius), y - 3, pen.x(last.outsideRadius), y), { fill: pen.tones.metalWall.fill, stroke: pen.tones.metalWall.ink }));
  }
  return shapes;
}

function drawWaterLevels({ solution: { levels, bore }, pen, ink, placed }: Stage): Shape[] {
  const shapes: Shape[] = [];
  for (const [key, depth, colour] of [['staticLevel', levels.static, ink.static], ['pumpingLevel', levels.pumping, ink.pumping]] as const) {
    if (depth === null || depth <= pen.top || depth >= pen.bottom) continue;
    const stretch = bore.find((each) => each.bottom >= depth);
    const radius = stretch?.insideRadius ?? 0.08;
    shapes.push(drawLevel(key, pen, depth, pen.x(-radius), pen.x(radius), colour, ink.paper));
    placed.push({ part: key, kind: key, left: pen.x(-radius), right: pen.x(radius), top: pen.y(depth) - 6, bottom: pen.y(depth) + 6 });
  }
  return shapes;
}

/** A dash for what was taken for granted. */
function assumedDash({ assumed }: Solution, where: string): Readonly<Record<string, string>> {
  return assumed.some(({ path: each }) => each === where) ? { 'stroke-dasharray': '3 2' } : {};
}

function fittingRamp(solution: Solution, tones: Tones): Ramp {
  const material = solution.facts.string.fittings;
  if (material === 'brass' || material === 'bronze') return tones.brass;
  return material === 'plastic' || material === 'nylon' ? tones.rubber : tones.steel;
}

/** Drawn with the seal that they pass. */
const OF_THE_TOP: ReadonlySet<string> = new Set(['nipple/top', 'coupling/top', 'nipple/seal']);

function drawString(stage: Stage): Shape[] {
  const { solution, pen, axis } = stage;
  const { facts, parts } = solution;
  const tones = pen.tones;
  const fittings = fittingRamp(solution, tones);
  const pipe = parts.find((part) => part.kind === 'dropPipe');
  const pump = parts.find((part) => part.kind === 'pump');
  const strip = parts.find((part) => part.kind === 'cableGuardStrip');
  const shown = parts.filter(({ key, kind, top, bottom }) => kind !== 'cable' && kind !== 'rope' && !OF_THE_TOP.has(key) && within(stage, top, bottom));
  const of = (...kinds: readonly PartKind[]): PlacedPart[] => shown.filter(({ kind }) => kinds.includes(kind));
  const offset = (part: PlacedPart): Metres => axis.pipe((part.top + part.bottom) / 2);
  const note = (part: PlacedPart, reach = part.radius): void =>
    place(stage, part, pen.x(offset(part) - reach), pen.x(offset(part) + reach));
  const shapes: Shape[] = [];

  for (const shroud of of('shroud')) {
    shapes.push(drawShroud(shroud, pen, pump?.radius ?? shroud.radius * 0.8));
    place(stage, shroud, pen.x(-shroud.radius), pen.x(shroud.radius));
  }
  shapes.push(...drawLines(stage, pump, strip));
  for (const part of of('dropPipe')) {
    shapes.push(drawDropPipe(part, pen, axis, { wall: pipeWall(facts.dropPipe.material, tones), bore: tones.water, glint: '#fff' }));
    const from = pen.y(Math.max(part.top, pen.top));
    const to = pen.y(Math.min(part.bottom, pen.bottom));
    const at = axis.pipe(pen.top + ((from + to) / 2 - pen.y(pen.top)) / pen.down);
    place(stage, part, pen.x(at - part.radius), pen.x(at + part.radius), from, to);
  }
  for (const part of of('insertFitting')) {
    const up = /\/(pump|above)$/.test(part.key);
    // Half of a fitting is barb: its shoulder is where the pipe ends.
    const joint = joinOf(part, pipe, up);
    shapes.push(drawInsertFitting(part, pen, fittings, {
      shoulder: joint, barbUp: up, pipeInsideRadius: part.radius, pipeRadius: pipe?.radius ?? part.radius * 1.25, offset: offset(part),
    }));
    note(part, (pipe?.radius ?? part.radius) * 1.22);
  }
  for (const [joint, clamps] of joints(of('clamp'))) {
    bandsOf(clamps, pen).forEach((band, i) => {
      const part = clamps[0]!;
      shapes.push(drawClamp(band, pen.x(offset(part)), (pipe?.radius ?? part.radius) * pen.across, (i + (joint === 'top' ? 0 : 1)) % 2 === 0, pen));
    });
    for (const part of clamps) note(part, part.radius * 1.3);
  }
  for (const part of of('nipple')) {
    shapes.push(drawNipple(part, pen, tones.steel, offset(part)));
    note(part);
  }
  for (const part of of('coupling')) {
    shapes.push(drawCoupling(part, pen, tones.steel, offset(part)));
    note(part);
  }
  for (const part of of('checkValve')) {
    shapes.push(drawCheckValve(part, pen, tones.brass, facts.string.arrow, offset(part), assumedDash(solution, 'string.checkValves')));
    note(part);
  }
  for (const part of of('pump')) {
    shapes.push(drawPump(part, pen));
    note(part);
  }
  for (const part of of('intake')) {
    shapes.push(drawIntake(part, pen));
    note(part);
  }
  for (const part of of('motor')) {
    shapes.push(drawMotor(part, pen));
    note(part);
  }
  for (const part of of('cableGuardStrip')) shapes.push(drawCableGuardStrip(part, pen, part.radius));
  for (const part of of('torqueArrestor')) {
    shapes.push(drawTorqueArrestor(part, pen, { offset: offset(part), pipeRadius: pipe?.radius ?? 0.017, boreRadius: part.radius }, assumedDash(solution, 'string.torqueArrestor')));
    note(part);
  }
  for (const part of of('splice')) {
    const at = axis.cable((part.top + part.bottom) / 2);
    shapes.push(drawSplice(part, pen, { offset: at, cableRadius: part.radius / 1.6, conductors: facts.pump.wires + 1 }, assumedDash(solution, 'string.splices')));
    place(stage, part, pen.x(at - part.radius * 1.5), pen.x(at + part.radius));
  }
  for (const part of of('guard')) {
    shapes.push(drawGuard(part, pen, offset(part)));
    note(part);
  }
  for (const part of of('tie')) {
    const depth = (part.top + part.bottom) / 2;
    const cable = parts.find(({ kind }) => kind === 'cable')?.radius ?? 0.005;
    const left = Math.min(axis.cable(depth) - cable, axis.pipe(depth) - part.radius);
    shapes.push(drawTie(part, pen, left, Math.max(axis.cable(depth) + cable, axis.pipe(depth) + part.radius)));
    note(part);
  }
  return shapes;
}

/** Where the pipe ends on this fitting. */
function joinOf(part: PlacedPart, pipe: PlacedPart | undefined, up: boolean): Metres {
  const end = up ? pipe?.bottom : pipe?.top;
  if (end !== undefined && end > part.top && end < part.bottom) return end;
  return (part.top + part.bottom) / 2;
}

/** Clamps by joint: "clamp/pump/1" and "clamp/pump/2" sit on one. */
function joints(clamps: readonly PlacedPart[]): Map<string, PlacedPart[]> {
  const found = new Map<string, PlacedPart[]>();
  for (const clamp of clamps) {
    const joint = clamp.key.split('/').slice(1, -1).join('/');
    found.set(joint, [...(found.get(joint) ?? []), clamp]);
  }
  return found;
}

/** Rope and cable, behind the pipe. */
function drawLines(stage: Stage, pump: PlacedPart | undefined, strip: PlacedPart | undefined): Shape[] {
  const { solution, pen, axis } = stage;
  const { facts, parts } = solution;
  const shapes: Shape[] = [];
  const casingInsideRadius = (facts.well.casings[0]?.insideDiameter ?? 0.15) / 2;
  const bendsTo = axis.centredFrom;
  const rope = parts.find((part) => part.kind === 'rope');
  const cable = parts.find((part) => part.kind === 'cable');
  if (rope !== undefined && facts.rope !== null && pump !== undefined && within(stage, rope.top, rope.bottom)) {
    shapes.push(drawRope(rope, pen, axis, { eye: eyeOf(pump), casingInsideRadius, tied: facts.rope.tied, bendsTo }));
    const at = axis.rope(Math.max(rope.top, pen.top + 0.2));
    place(stage, rope, pen.x(at) - 3, pen.x(at) + 3, pen.y(Math.max(rope.top, pen.top)), pen.y(Math.min(rope.bottom, pen.bottom)));
  }
  if (cable !== undefined && pump !== undefined && within(stage, cable.top, pump.bottom)) {
    shapes.push(drawCable(cable, pen, axis, {
      top: cable.top + (facts.top.kind === 'pitless' ? 14 * inch : -1 * inch), discharge: pump.top, motorHead: pump.bottom, pumpRadius: strip?.radius ?? pump.radius, bendsTo,
      splices: parts.filter((part) => part.kind === 'splice'),
    }));
    const at = axis.cable(Math.max(cable.top + 14 * inch, pen.top + 0.3));
    place(stage, cable, pen.x(at) - 3, pen.x(at) + 3, pen.y(Math.max(cable.top, pen.top)), pen.y(Math.min(cable.bottom, pen.bottom)));
  }
  return shapes;
}

