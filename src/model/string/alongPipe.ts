/** What sits on or in the drop pipe between pump and top: further valves, arrestor, splices, ties, guards, joints. */
import { cableDisplacedArea } from '../formulas/wire.ts';
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { inches } from '../units.ts';
import { clampsOver } from './clamps.ts';
import {
  ARRESTOR,
  CHECK_VALVE,
  COUPLING,
  FITTING_BARB,
  FITTING_SHOWING,
  GUARD,
  RIGID_SECTION,
  SPLICE,
  TIE,
} from './lengths.ts';
import { VALVE_AT_PUMP } from './pumpEnd.ts';

interface Span {
  readonly pipeTop: Metres;
  readonly pipeBottom: Metres;
  readonly discharge: Metres;
}

export function placeAlongPipe(facts: Facts, span: Span, boreRadiusAt: (depth: Metres) => Metres): PlacedPart[] {
  const { dropPipe, string } = facts;
  const { pipeTop, pipeBottom, discharge } = span;
  const pipeRadius = dropPipe.outsideDiameter / 2;
  const parts: PlacedPart[] = [
    {
      key: 'dropPipe',
      kind: 'dropPipe',
      top: pipeTop,
      bottom: pipeBottom,
      radius: pipeRadius,
      insideRadius: dropPipe.insideDiameter / 2,
    },
  ];
  string.checkValves
    .filter((height) => height > VALVE_AT_PUMP)
    .forEach((height, i) =>
      parts.push(
        ...valveInPipe(
          facts,
          discharge - height,
          string.checkValves.length === 1 ? 'checkValve' : `checkValve/${i + 2}`,
        ),
      ),
    );
  if (string.torqueArrestor !== null) {
    const centre = discharge - string.torqueArrestor;
    parts.push({
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
    parts.push({
      key: i === 0 ? 'splice' : `splice/${i + 1}`,
      kind: 'splice',
      top: centre - SPLICE / 2,
      bottom: centre + SPLICE / 2,
      radius,
    });
  });
  parts.push(...ties(facts, span), ...guards(facts, span, boreRadiusAt), ...couplings(facts, span));
  return parts;
}

/** A valve cut into the pipe: on PE it brings an insert fitting and clamps at both ends. */
function valveInPipe({ dropPipe, string }: Facts, centre: Metres, key: string): PlacedPart[] {
  const pipeRadius = dropPipe.outsideDiameter / 2;
  const bore = dropPipe.insideDiameter / 2;
  const top = centre - CHECK_VALVE / 2;
  const bottom = centre + CHECK_VALVE / 2;
  const valve: PlacedPart = { key, kind: 'checkValve', top, bottom, radius: pipeRadius * 1.5, insideRadius: bore };
  if (dropPipe.material !== 'PE') return [valve];
  return [
    valve,
    {
      key: `insertFitting/${key}/above`,
      kind: 'insertFitting',
      top: top - FITTING_SHOWING - FITTING_BARB,
      bottom: top,
      radius: bore,
    },
    ...clampsOver(`${key}/above`, top - FITTING_SHOWING, -1, string.clampsPerJoint, pipeRadius),
    {
      key: `insertFitting/${key}/below`,
      kind: 'insertFitting',
      top: bottom,
      bottom: bottom + FITTING_SHOWING + FITTING_BARB,
      radius: bore,
    },
    ...clampsOver(`${key}/below`, bottom + FITTING_SHOWING, 1, string.clampsPerJoint, pipeRadius),
  ];
}

/** Ties at the planned spacing, and one above and below each splice; none over a part that is in the way. */
function ties({ dropPipe, string }: Facts, { pipeTop, pipeBottom, discharge }: Span): PlacedPart[] {
  const depths: Metres[] = [];
  const last = pipeTop + inches(6);
  if (string.ties > 0) for (let depth = discharge - string.ties; depth > last; depth -= string.ties) depths.push(depth);
  for (const height of string.splices) {
    for (const side of [-1, 1]) depths.push(discharge - height + side * (SPLICE / 2 + inches(2)));
  }
  const inTheWay = (depth: Metres) =>
    depth > pipeBottom - inches(3) ||
    depth < last ||
    string.splices.some((height) => Math.abs(depth - (discharge - height)) < SPLICE / 2) ||
    (string.torqueArrestor !== null && Math.abs(depth - (discharge - string.torqueArrestor)) < ARRESTOR / 2);
  return depths
    .filter((depth) => !inTheWay(depth))
    .sort((a, b) => b - a)
    .map((depth, i) => ({
      key: `tie/${i + 1}`,
      kind: 'tie',
      top: depth - TIE / 2,
      bottom: depth + TIE / 2,
      radius: dropPipe.outsideDiameter / 2,
    }));
}

function guards(
  { string }: Facts,
  { pipeTop, discharge }: Span,
  boreRadiusAt: (depth: Metres) => Metres,
): PlacedPart[] {
  if (string.guards === null || !(string.guards > 0)) return [];
  const parts: PlacedPart[] = [];
  for (let depth = discharge - string.guards, i = 1; depth > pipeTop + GUARD; depth -= string.guards, i++) {
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
function couplings({ dropPipe }: Facts, { pipeTop, pipeBottom }: Span): PlacedPart[] {
  if (dropPipe.material === 'PE') return [];
  const section = dropPipe.sectionLength ?? RIGID_SECTION;
  const parts: PlacedPart[] = [];
  for (let depth = pipeBottom - section, i = 1; depth > pipeTop + COUPLING && i <= 200; depth -= section, i++) {
    parts.push({
      key: `coupling/${i}`,
      kind: 'coupling',
      top: depth - COUPLING / 2,
      bottom: depth + COUPLING / 2,
      radius: (dropPipe.outsideDiameter / 2) * 1.25,
      insideRadius: dropPipe.insideDiameter / 2,
    });
  }
  return parts;
}
