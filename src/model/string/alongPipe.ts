/** What sits on or in the drop pipe between pump and top: further valves, arrestor, splices, ties, guards, joints. */
import { cableDisplacedArea } from '../formulas/wire.ts';
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { clampsOver } from './clamps.ts';
import { ARRESTOR, COUPLING, FITTING_BARB, GUARD, PROBE, PROBE_WIDTH, RIGID_SECTION, SPLICE } from './lengths.ts';
import { valveInPipe, valvesInPipe } from './pipeRun.ts';
import type { PipeRun } from './pipeRun.ts';
import { collarAt } from './pumpEnd.ts';
import { placeTies } from './ties.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

export function placeAlongPipe(
  facts: Facts,
  run: PipeRun,
  discharge: Metres,
  boreRadiusAt: (depth: Metres) => Metres,
): PlacedPart[] {
  const { dropPipe, string } = facts;
  const parts: PlacedPart[] = [
    {
      key: 'dropPipe',
      kind: 'dropPipe',
      top: run.top,
      bottom: run.bottom,
      radius: dropPipe.outsideDiameter / 2,
      insideRadius: dropPipe.insideDiameter / 2,
    },
  ];
  valvesInPipe(facts).forEach((height, i) =>
    parts.push(
      ...placeValve(facts, discharge - height, string.checkValves.length === 1 ? 'checkValve' : `checkValve/${i + 2}`),
    ),
  );
  const round: PlacedPart[] = [];
  if (string.torqueArrestor !== null) {
    const centre = discharge - string.torqueArrestor;
    round.push({
      key: 'torqueArrestor',
      kind: 'torqueArrestor',
      top: centre - ARRESTOR / 2,
      bottom: centre + ARRESTOR / 2,
      radius: boreRadiusAt(centre),
    });
  }
  string.splices.forEach((height, i) => {
    const centre = discharge - height;
    const radius = Math.sqrt(cableDisplacedArea(facts.wire.gauge, facts.pump.wires) / Math.PI) * 1.6;
    round.push({
      key: i === 0 ? 'splice' : `splice/${i + 1}`,
      kind: 'splice',
      top: centre - SPLICE / 2,
      bottom: centre + SPLICE / 2,
      radius,
    });
  });
  const guards = placeGuards(facts, run, discharge, boreRadiusAt);
  const probe = placeProbe(facts);
  const ties = placeTies(facts, run, discharge, [...round, ...guards]);
  return [...parts, ...round, ...probe, ...ties, ...guards, ...couplings(facts, run)];
}

/** A valve cut into the pipe: on PE it brings an insert fitting and clamps at both ends. */
function placeValve(facts: Facts, centre: Metres, key: string): PlacedPart[] {
  const { dropPipe, string } = facts;
  const pipeRadius = dropPipe.outsideDiameter / 2;
  const bore = dropPipe.insideDiameter / 2;
  const { body, gap } = valveInPipe(facts, centre);
  const valve: PlacedPart = { key, kind: 'checkValve', ...body, radius: pipeRadius * 1.5, insideRadius: bore };
  if (!isBarbed(dropPipe)) return [valve];
  return [
    valve,
    {
      key: `insertFitting/${key}/above`,
      kind: 'insertFitting',
      top: gap.top - FITTING_BARB,
      bottom: body.top,
      radius: bore,
    },
    ...clampsOver(`${key}/above`, gap.top, -1, string.clampsPerJoint, pipeRadius),
    {
      key: `insertFitting/${key}/below`,
      kind: 'insertFitting',
      top: body.bottom,
      bottom: gap.bottom + FITTING_BARB,
      radius: bore,
    },
    ...clampsOver(`${key}/below`, gap.bottom, 1, string.clampsPerJoint, pipeRadius),
  ];
}

/** Its lower end watches the level. Where nobody said how deep it hangs, or none is planned, it has no place. */
function placeProbe({ pump, well }: Facts): PlacedPart[] {
  const depth = pump.lowLevelCutOff;
  if (typeof depth !== 'number' || depth - PROBE < -well.casingHeight) return [];
  return [{ key: 'probe', kind: 'probe', top: depth - PROBE, bottom: depth, radius: PROBE_WIDTH / 2 }];
}

function placeGuards(
  { string }: Facts,
  { top }: PipeRun,
  discharge: Metres,
  boreRadiusAt: (depth: Metres) => Metres,
): PlacedPart[] {
  if (string.guards === null || !(string.guards > 0)) return [];
  const parts: PlacedPart[] = [];
  for (let depth = discharge - string.guards, i = 1; depth > top + GUARD; depth -= string.guards, i++) {
    parts.push({
      key: `guard/${i}`,
      kind: 'guard',
      top: depth - GUARD / 2,
      bottom: depth + GUARD / 2,
      radius: boreRadiusAt(depth) * 0.92,
    });
  }
  return parts;
}

/** Rigid pipe comes in sections: a coupling at each joint, counted from the pump up. */
function couplings({ dropPipe }: Facts, { top, bottom }: PipeRun): PlacedPart[] {
  if (isBarbed(dropPipe)) return [];
  const section = dropPipe.sectionLength ?? RIGID_SECTION;
  const parts: PlacedPart[] = [];
  for (let depth = bottom - section, i = 1; depth > top + COUPLING && i <= 200; depth -= section, i++) {
    parts.push({
      key: `coupling/${i}`,
      ...collarAt(depth, dropPipe.outsideDiameter / 2),
      insideRadius: dropPipe.insideDiameter / 2,
    });
  }
  return parts;
}
