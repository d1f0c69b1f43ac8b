/** Where the string hangs and how the water leaves the well: pitless adapter with cap, or sanitary seal with tee. */
import type { Facts } from '../facts.ts';
import type { Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { inches } from '../units.ts';
import {
  CAP,
  CAP_SPLICE_FROM,
  CAP_SPLICE_TO,
  COUPLING,
  FITTING_BARB,
  FITTING_SHOWING,
  NIPPLE_SHOWING,
  PITLESS_BODY,
  PLUG,
  SEAL,
  SUPPORT_RADIUS,
  TAP,
  TEE,
  UNION_SHARE,
} from './lengths.ts';
import { clampsOver } from './clamps.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { isConducting } from '../tables/casings.ts';

export interface TopWorks {
  readonly parts: readonly PlacedPart[];
  /** Depth at which everything below hangs: the pitless outlet, or the casing top for a seal. */
  readonly suspension: Metres;
  /** Upper end of the drop pipe. */
  readonly pipeTop: Metres;
}

export function placeTopWorks(facts: Facts): TopWorks {
  return facts.top.kind === 'pitless' ? placePitless(facts, facts.top.depth) : placeSeal(facts);
}

function placePitless(facts: Facts, outletTop: Metres): TopWorks {
  const { dropPipe, house, well } = facts;
  const line = house.line ?? dropPipe;
  const outletRadius = line.outsideDiameter / 2;
  // The plan's datum: the depth is that of the top of the outlet pipe, which freezes first.
  const centre = outletTop + outletRadius;
  const bodyTop = centre - PITLESS_BODY / 2;
  const bodyBottom = centre + PITLESS_BODY / 2;
  const casingTop = -well.casingHeight;
  const parts: PlacedPart[] = [
    part(
      'cap',
      'cap',
      casingTop - CAP * 0.75,
      casingTop + CAP * 0.25,
      (well.casings[0]?.outsideDiameter ?? 0) / 2 + inches(0.75),
    ),
    part('capSplice', 'capSplice', casingTop + CAP_SPLICE_FROM, casingTop + CAP_SPLICE_TO, inches(0.5)),
    part('pitlessAdapter', 'pitlessAdapter', bodyTop, bodyBottom, inches(2)),
    part(
      'buriedLine',
      'buriedLine',
      outletTop,
      outletTop + line.outsideDiameter,
      outletRadius,
      line.insideDiameter / 2,
    ),
    ...wayOut(facts),
  ];
  const joint = topJoint(facts, bodyBottom);
  return { parts: [...parts, ...joint.parts], suspension: outletTop, pipeTop: joint.pipeTop };
}

function placeSeal(facts: Facts): TopWorks {
  const { dropPipe, house, well } = facts;
  const casingTop = -well.casingHeight;
  const sealTop = casingTop - inches(1);
  const sealBottom = sealTop + SEAL;
  const collarTop = sealTop - COUPLING;
  const teeBottom = collarTop - NIPPLE_SHOWING;
  const teeTop = teeBottom - TEE;
  const pipeRadius = dropPipe.outsideDiameter / 2;
  const line = house.line ?? dropPipe;
  const lineCentre = (teeTop + teeBottom) / 2;
  const parts: PlacedPart[] = [
    part('plug', 'plug', teeTop - PLUG, teeTop, pipeRadius),
    part('tee', 'tee', teeTop, teeBottom, pipeRadius * 1.35, dropPipe.insideDiameter / 2),
    part('nipple/top', 'nipple', collarTop - NIPPLE_SHOWING, collarTop, pipeRadius, dropPipe.insideDiameter / 2),
    part('coupling/top', 'coupling', collarTop, sealTop, pipeRadius * 1.35, dropPipe.insideDiameter / 2),
    part('seal', 'seal', sealTop, sealBottom, (well.casings[0]?.outsideDiameter ?? 0) / 2),
    part(
      'buriedLine',
      'buriedLine',
      lineCentre - line.outsideDiameter / 2,
      lineCentre + line.outsideDiameter / 2,
      line.outsideDiameter / 2,
      line.insideDiameter / 2,
    ),
    ...onTheLine(lineCentre, line.outsideDiameter / 2),
    ...wayOut(facts),
  ];
  if (!isBarbed(dropPipe)) return { parts, suspension: casingTop, pipeTop: collarTop };
  // With PE the rigid nipple, not the pipe, passes the seal's rubber; the collar above it carries the weight.
  parts.push(
    part('nipple/seal', 'nipple', sealTop, sealBottom + NIPPLE_SHOWING, pipeRadius, dropPipe.insideDiameter / 2),
  );
  const joint = topJoint(facts, sealBottom + NIPPLE_SHOWING);
  return { parts: [...parts, ...joint.parts], suspension: casingTop, pipeTop: joint.pipeTop };
}

/** What a line above the ground has beside its tee: a union to undo, a tap to draw from, and what it rests on. */
function onTheLine(centre: Metres, radius: Metres): PlacedPart[] {
  const union = radius * UNION_SHARE;
  const foot = centre + radius;
  return [
    part('union', 'union', centre - union, centre + union, union, radius),
    part('tap', 'tap', centre - TAP, centre, inches(1)),
    ...(foot < 0 ? [part('support', 'support', foot, 0, SUPPORT_RADIUS)] : []),
  ];
}

/** The joint that carries the whole string: insert fitting and clamps under the spool or the nipple; rigid pipe screws in. */
function topJoint({ dropPipe, string }: Facts, from: Metres): { parts: PlacedPart[]; pipeTop: Metres } {
  if (!isBarbed(dropPipe)) return { parts: [], pipeTop: from };
  const pipeTop = from + FITTING_SHOWING;
  const parts = [
    part('insertFitting/top', 'insertFitting', from, pipeTop + FITTING_BARB, dropPipe.insideDiameter / 2),
    ...clampsOver('top', pipeTop, 1, string.clampsPerJoint, dropPipe.outsideDiameter / 2),
  ];
  return { parts, pipeTop };
}

/** Below the hook inside, so that nothing looks as if it went through the wall. */
const BOND_FROM = inches(6);

/** Conduit for the cable and the bond to a metal casing. */
function wayOut({ well, wire }: Facts): PlacedPart[] {
  const casingTop = -well.casingHeight;
  const parts = [part('conduit', 'conduit', casingTop - CAP / 2, wire.conduitDepth, inches(0.53), inches(0.41))];
  const outer = well.casings[0];
  if (outer !== undefined && isConducting(outer)) {
    const bond = casingTop + BOND_FROM;
    parts.push(part('bond', 'bond', bond, bond + inches(2), inches(0.5)));
  }
  return parts;
}

function part(
  key: string,
  kind: PlacedPart['kind'],
  top: Metres,
  bottom: Metres,
  radius: Metres,
  insideRadius?: Metres,
): PlacedPart {
  return insideRadius === undefined
    ? { key, kind, top, bottom, radius }
    : { key, kind, top, bottom, radius, insideRadius };
}
