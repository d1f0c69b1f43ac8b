/**
 * The string in a frame, back to front: lines behind, then pipe, joints, pump, and what is strapped to them. Near enough,
 * each part is cut open at its own size; from afar it is closed, and what is too small to be seen is a symbol.
 */
import { boreRadiusAt } from '../../model/bore.ts';
import { inches } from '../../model/units.ts';
import type { Metres } from '../../model/si.ts';
import type { PlacedPart, Solution } from '../../model/solution.ts';
import { drawCable, drawLead } from '../parts/cable.ts';
import { drawCableGuardStrip, stripUnder } from '../parts/cableGuardStrip.ts';
import { drawCheckValve } from '../parts/checkValve.ts';
import { bandsOf, drawClamp } from '../parts/clamp.ts';
import { drawDropPipe } from '../parts/dropPipe.ts';
import { drawFlowLimiter } from '../parts/flowLimiter.ts';
import { drawInsertFitting } from '../parts/insertFitting.ts';
import { drawIntake } from '../parts/intake.ts';
import { drawMotor, plugOf } from '../parts/motor.ts';
import { drawCoupling, drawNipple } from '../parts/nipple.ts';
import { drawProbe, drawProbeWires, type ProbePlace } from '../parts/probe.ts';
import { probePlace } from '../parts/probeBeside.ts';
import { drawPump, eyeOf } from '../parts/pump.ts';
import { drawRope, ropeRun, upperEnd } from '../parts/rope.ts';
import { drawShroud } from '../parts/shroud.ts';
import { drawSplice } from '../parts/splice.ts';
import { drawGuard, drawTie } from '../parts/tie.ts';
import type { StringKind } from '../kinds.ts';
import type { Ramp, Tones } from '../theme.ts';
import { drawTorqueArrestor } from '../parts/torqueArrestor.ts';
import type { Memory } from '../memory.ts';
import { valveOpenAt } from '../moment.ts';
import type { Shape } from '../scene.ts';
import { group } from '../shapes.ts';
import { BARB_UP, OF_THE_TOP } from './nearParts.ts';
import { pipeWall, place, placeRound, within, type Stage } from './stage.ts';

/** The cable's plumb run begins this far under the casing top, below its spare loop. */
const LOOP: Metres = inches(14);

/** What the parts of one string have in common. */
interface Strung extends Stage {
  readonly pipeRadius: Metres;
  readonly pumpRadius: Metres;
  readonly cableRadius: Metres;
  readonly fittings: Ramp;
  /** Middle of the pipe where a part sits. */
  readonly offset: (part: PlacedPart) => Metres;
}

type Drawer = (part: PlacedPart, strung: Strung) => Shape;

/** Back to front; null for what stands behind all of them. */
const DRAWERS: Readonly<Record<StringKind, Drawer | null>> = {
  dropPipe: (part, { solution, pen, axis }) =>
    drawDropPipe(part, pen, axis, {
      wall: pipeWall(solution.facts.dropPipe.material, pen.tones),
      bore: pen.tones.water,
      glint: pen.tones.waterShine,
    }),
  insertFitting: drawFitting,
  clamp: drawOneClamp,
  nipple: (part, { pen, offset }) => drawNipple(part, pen, pen.tones.steel, offset(part)),
  coupling: (part, { pen, offset }) => drawCoupling(part, pen, pen.tones.steel, offset(part)),
  checkValve: (part, { solution, pen, offset, moment }) =>
    drawCheckValve(part, pen, {
      arrow: solution.facts.string.arrow,
      open: valveOpenAt(moment, solution.facts.string.arrow),
      offset: offset(part),
      dash: assumedDash(solution, 'string.checkValves'),
    }),
  flowLimiter: (part, { pen }) => drawFlowLimiter(part, pen),
  pump: (part, { pen }) => drawPump(part, pen),
  intake: (part, { pen }) => drawIntake(part, pen),
  motor: drawMotorAndLead,
  cableGuardStrip: (part, { pen }) => drawCableGuardStrip(part, pen),
  torqueArrestor: (part, { solution, pen, offset, pipeRadius }) =>
    drawTorqueArrestor(
      part,
      pen,
      { offset: offset(part), pipeRadius, boreRadius: part.radius },
      assumedDash(solution, 'string.torqueArrestor'),
    ),
  splice: (part, { solution, pen, axis, cableRadius }) =>
    drawSplice(
      part,
      pen,
      { offset: axis.cable(middle(part)), cableRadius, conductors: solution.facts.pump.wires + 1 },
      assumedDash(solution, 'string.splices'),
    ),
  probe: (part, strung) => drawProbe(part, strung.pen, probeIn(strung, part)),
  guard: (part, { pen, offset }) => drawGuard(part, pen, offset(part)),
  tie: drawStrap,
  shroud: null,
  rope: null,
};

/** @param from  all besides the parts that they are drawn from */
export function drawString(stage: Stage, memory: Memory, from: readonly unknown[]): Shape[] {
  const { recall } = memory;
  const { solution, pen, axis } = stage;
  const { parts, facts } = solution;
  const strung: Strung = {
    solution,
    pen,
    ink: stage.ink,
    axis,
    right: stage.right,
    fractures: stage.fractures,
    placed: stage.placed,
    moment: stage.moment,
    pipeRadius: facts.dropPipe.outsideDiameter / 2,
    pumpRadius: facts.pump.diameter / 2,
    cableRadius: parts.find(({ kind }) => kind === 'cable')?.radius ?? 0.005,
    fittings: fittingRamp(solution, pen.tones),
    offset: (part) => axis.pipe(middle(part)),
  };
  const shown = parts.filter(({ key, top, bottom }) => !OF_THE_TOP.has(key) && within(stage, top, bottom));
  const shapes = [...drawSleeve(shown, strung), ...drawLines(strung, memory, from)];
  for (const [kind, draw] of Object.entries(DRAWERS)) {
    if (draw === null) continue;
    for (const part of shown) {
      if (part.kind !== kind) continue;
      const own = kind === 'checkValve' ? [valveOpenAt(stage.moment, facts.string.arrow)] : neighboursOf(part, parts);
      shapes.push(recall(`part/${part.key}`, [part, ...own, ...from], () => draw(part, strung)));
      note(part, strung);
    }
  }
  return shapes;
}

/** A fitting is drawn after the pipe's end that it sits in, a clamp after the clamps beside it, a motor's lead after its strip. */
function neighboursOf({ kind }: PlacedPart, parts: readonly PlacedPart[]): readonly unknown[] {
  if (kind === 'probe') return parts.filter((each) => each.kind !== 'tie' && each.kind !== 'guard');
  if (kind === 'clamp') return parts.filter((each) => each.kind === 'clamp');
  if (kind === 'motor') return [parts.find((each) => each.kind === 'cableGuardStrip')];
  return kind === 'insertFitting' ? [parts.find((each) => each.kind === 'dropPipe')] : [];
}

const middle = ({ top, bottom }: PlacedPart): Metres => (top + bottom) / 2;

/** How far a part reaches from the pipe's middle, where that is not its own radius. */
function reachOf(part: PlacedPart, { pipeRadius }: Strung): Metres {
  if (part.kind === 'insertFitting') return pipeRadius * 1.22;
  return part.kind === 'clamp' ? part.radius * 1.3 : part.radius;
}

/** Where the part came to stand, within the window. */
function note(part: PlacedPart, strung: Strung): void {
  const { pen, axis } = strung;
  if (part.kind === 'cableGuardStrip') return;
  if (part.kind === 'dropPipe') {
    putLong(strung, part, axis.pipe);
  } else if (part.kind === 'probe') {
    const at = probeIn(strung, part).offset;
    place(strung, part, { left: pen.x(at - part.radius), right: pen.x(at + part.radius) });
  } else if (part.kind === 'splice') {
    const at = axis.cable(middle(part));
    place(strung, part, { left: pen.x(at - part.radius * 1.5), right: pen.x(at + part.radius) });
  } else {
    const at = strung.offset(part);
    const reach = reachOf(part, strung);
    place(strung, part, { left: pen.x(at - reach), right: pen.x(at + reach) });
  }
}

function probeIn({ solution, axis }: Strung, part: PlacedPart): ProbePlace {
  const { facts, bore, parts } = solution;
  // Past the cable's spare loop, up to what closes the casing.
  const room = { boreRadius: boreRadiusAt(bore, part.bottom), top: -facts.well.casingHeight };
  return probePlace(part, parts, axis, room);
}

/** What runs through the window from edge to edge, and perhaps not plumb. */
function putLong(
  { pen, placed }: Strung,
  part: PlacedPart,
  run: (depth: Metres) => Metres,
  { from = part.top, signAt }: { readonly from?: Metres; readonly signAt?: number | undefined } = {},
): void {
  const top = Math.max(from, pen.top);
  const bottom = Math.min(part.bottom, pen.bottom);
  const at = pen.x(run((top + bottom) / 2));
  const half = Math.max(3, part.radius * pen.across);
  placed.push({
    part: part.key,
    kind: part.kind,
    left: at - half,
    right: at + half,
    top: pen.y(top),
    bottom: pen.y(bottom),
    middleAt: (y) => pen.x(run(pen.top + (y - pen.y(pen.top)) / pen.down)),
    ...(signAt === undefined ? {} : { signAt }),
  });
}

/** A dash for what was taken for granted. */
function assumedDash({ assumed }: Solution, where: string): Readonly<Record<string, string>> {
  return assumed.some(({ path }) => path === where) ? { 'stroke-dasharray': '3 2', 'fill-opacity': '0.55' } : {};
}

function fittingRamp({ facts }: Solution, tones: Tones): Ramp {
  const material = facts.string.fittings;
  if (material === 'brass' || material === 'bronze') return tones.brass;
  return material === 'plastic' || material === 'nylon' ? tones.rubber : tones.steel;
}

function drawFitting(part: PlacedPart, { solution, pen, fittings, pipeRadius, offset }: Strung): Shape {
  const barbUp = BARB_UP.test(part.key);
  const pipe = solution.parts.find(({ kind }) => kind === 'dropPipe');
  const end = barbUp ? pipe?.bottom : pipe?.top;
  // A valve within the pipe has the pipe on both sides: there the shoulder is half way along the fitting.
  const shoulder = end !== undefined && end > part.top && end < part.bottom ? end : middle(part);
  return drawInsertFitting(part, pen, fittings, {
    shoulder,
    barbUp,
    pipeInsideRadius: part.radius,
    pipeRadius,
    offset: offset(part),
  });
}

/** Its place is worked out with the others of its joint: "clamp/pump/1" and "clamp/pump/2" share one. */
function drawOneClamp(part: PlacedPart, { solution, pen, pipeRadius, offset }: Strung): Shape {
  const joint = part.key.slice(0, part.key.lastIndexOf('/') + 1);
  const bands = bandsOf(
    solution.parts.filter(({ key }) => key.startsWith(joint)),
    pen,
  );
  const at = bands.findIndex(({ key }) => key === part.key);
  const band = bands[at] ?? { key: part.key, top: pen.y(part.top), bottom: pen.y(part.bottom) };
  const grip = { centre: pen.x(offset(part)), half: pipeRadius * pen.across, right: at % 2 === 1 };
  return drawClamp(band, grip, pen);
}

/** Round pipe and cable, whichever side the cable is on. */
function drawStrap(part: PlacedPart, { pen, axis, cableRadius }: Strung): Shape {
  const cable = axis.cable(middle(part));
  const pipe = axis.pipe(middle(part));
  return drawTie(
    part,
    pen,
    Math.min(cable - cableRadius, pipe - part.radius),
    Math.max(cable + cableRadius, pipe + part.radius),
  );
}

/** The lead comes out from under the strip, which is drawn over it. */
function drawMotorAndLead(part: PlacedPart, { solution, pen }: Strung): Shape {
  const motor = drawMotor(part, pen);
  const strip = solution.parts.find(({ kind }) => kind === 'cableGuardStrip');
  if (strip === undefined) return motor;
  const lead = drawLead(pen, stripUnder(strip.radius, pen), strip.bottom, plugOf(part));
  return group(part.key, [...(motor.children ?? []), lead]);
}

/** Behind the pump that it surrounds. */
function drawSleeve(shown: readonly PlacedPart[], strung: Strung): Shape[] {
  return shown
    .filter(({ kind }) => kind === 'shroud')
    .map((part) => {
      placeRound(strung, part, part.radius);
      return drawShroud(part, strung.pen, strung.pumpRadius);
    });
}

/** Rope and cable, behind the pipe. */
function drawLines(strung: Strung, { recall, same }: Memory, from: readonly unknown[]): Shape[] {
  const {
    solution: { facts, parts },
    pen,
    axis,
  } = strung;
  const pump = parts.find(({ kind }) => kind === 'pump');
  const rope = parts.find(({ kind }) => kind === 'rope');
  const cable = parts.find(({ kind }) => kind === 'cable');
  const shapes: Shape[] = [];
  if (rope !== undefined && facts.rope !== null && pump !== undefined && within(strung, rope.top, rope.bottom)) {
    const casingInsideRadius = (facts.well.casings[0]?.insideDiameter ?? 0.15) / 2;
    const { tied } = facts.rope;
    const casingTop = -facts.well.casingHeight;
    const cover = parts.find(({ kind }) => kind === 'cap' || kind === 'seal');
    const underSeal = cover?.kind === 'seal' ? cover.bottom : null;
    const coverTop = cover?.top ?? casingTop;
    const hung = { eye: eyeOf(pump), casingInsideRadius, coverTop, casingTop, underSeal, tied };
    shapes.push(recall('rope', [rope, pump, coverTop, underSeal, ...from], () => drawRope(rope, pen, axis, hung)));
    // What is wrong with a rope that leaves through the cap is wrong there.
    const out = tied === 'through cap' ? pen.y(upperEnd(rope, hung)) : undefined;
    putLong(strung, rope, ropeRun(rope, axis, hung), { signAt: rope.top > pen.top ? out : undefined });
  }
  if (cable !== undefined && pump !== undefined && within(strung, cable.top, pump.bottom)) {
    const top = cable.top + (facts.top.kind === 'pitless' ? LOOP : -inches(1));
    const splices = same(
      'splices',
      parts.filter(({ kind }) => kind === 'splice'),
    );
    shapes.push(
      recall('cable', [cable, pump, splices, ...from], () =>
        drawCable(cable, pen, axis, {
          top,
          discharge: pump.top,
          strip: stripUnder(facts.pump.diameter / 2, pen),
          bendsTo: axis.centredFrom,
          splices,
        }),
      ),
    );
    putLong(strung, cable, axis.cable, { from: top });
  }
  const probe = parts.find(({ kind }) => kind === 'probe');
  if (probe !== undefined && pen.top < probe.bottom)
    shapes.push(
      recall('probe/wires', [probe, ...neighboursOf(probe, parts), ...from], () =>
        drawProbeWires(probe, pen, axis, probeIn(strung, probe)),
      ),
    );
  return shapes;
}
