/** Pieces that no plan places and no joint closes without, where the parts beside them show that they are needed. */
import type { Metres } from '../../si.ts';
import type { PlacedPart, Solved } from '../../solution.ts';
import { isBuriedOnBarbs, PIPE_MATERIALS } from '../../tables/pipeMaterials.ts';
import { threadSize } from '../../tables/threadSizes.ts';
import { WIRE_LOOP } from '../../figures/allowances.ts';
import { clampsOver } from '../clamps.ts';

import { dischargeDepth } from '../pumpDepths.ts';
import { threadAt } from '../threads.ts';
import { runToWell } from '../wireLengths.ts';
import type { Place } from './place.ts';

export function fittingPlaces(solved: Solved): readonly Place[] {
  return [...atOutlet(solved), ...atAdapter(solved), ...atTheLine(solved), ...wires(solved)];
}

/** Between an outlet and a pipe of two threads: outer thread in the outlet, inner thread for the pipe's nipple. */
function atOutlet({ facts, parts }: Solved): readonly Place[] {
  const nipple = parts.find(({ key }) => key === 'nipple');
  if (nipple === undefined || !threadAt('pump', facts).differs) return [];
  const at = dischargeDepth(facts.pump);
  return [{ key: 'bushing', kind: 'bushing', top: at, bottom: at, radius: nipple.radius, cut: null, part: 'nipple' }];
}

/** In an adapter that was threaded for another pipe than hangs on it. */
function atAdapter({ facts, parts }: Solved): readonly Place[] {
  const adapter = parts.find(({ key }) => key === 'pitlessAdapter');
  if (adapter === undefined || !threadAt('adapter', facts).differs) return [];
  const { bottom: at, radius } = adapter;
  return [{ key: TOP_BUSHING, kind: 'bushing', top: at, bottom: at, radius, cut: null, part: 'pitlessAdapter' }];
}

export const TOP_BUSHING = 'bushing/top';

/**
 * The line has no thread of its own but that of steel: a fitting at either end, and an elbow up to the tank. The adapter's
 * thread is that of the drop pipe: barbed fittings come for a pipe of another size, others want a bushing.
 */
function atTheLine({ facts, parts }: Solved): readonly Place[] {
  const line = parts.find(({ key }) => key === 'buriedLine');
  const riser = parts.find(({ kind }) => kind === 'riser');
  if (line === undefined) return [];
  const pipe = facts.house.line ?? facts.dropPipe;
  const at = (key: string, kind: Place['kind'], { top, bottom }: Pick<PlacedPart, 'top' | 'bottom'>): Place => ({
    key,
    kind,
    top,
    bottom,
    radius: line.radius,
    cut: null,
    part: 'buriedLine',
  });
  const ends = [
    { name: 'well', place: line },
    ...(riser === undefined ? [] : [{ name: 'house', place: { top: riser.bottom, bottom: riser.bottom } }]),
  ];
  const elbow = riser === undefined ? [] : [at('elbow', 'elbow', { top: riser.bottom, bottom: riser.bottom })];
  if (isBuriedOnBarbs(pipe)) {
    const { clampsPerJoint } = facts.string;
    const clamps = (name: string, place: Pick<PlacedPart, 'top' | 'bottom'>): readonly Place[] =>
      clampsOver(`line/${name}`, place.top, 1, clampsPerJoint, pipe.outsideDiameter / 2).map((clamp) =>
        at(clamp.key, 'clamp', place),
      );
    return [
      ...ends.flatMap(({ name, place }) => [at(lineEnd(name), 'insertFitting', place), ...clamps(name, place)]),
      ...elbow,
    ];
  }
  const own = threadSize(pipe.nominalSize) ?? pipe.nominalSize;
  const leaves = threadAt('adapter', facts).size;
  const reducing = own === leaves ? [] : [at(lineEnd('bushing'), 'bushing', line)];
  if (PIPE_MATERIALS[pipe.material].buried === 'thread') return [...reducing, ...elbow];
  return [...reducing, ...ends.map(({ name, place }) => at(lineEnd(name), 'threadAdapter', place)), ...elbow];
}

/** The fitting at one end of the line to the house: "well", "house". */
export function lineEnd(name: string): string {
  return `${LINE_END}${name}`;
}

const LINE_END = 'lineEnd/';

/** What joins the line at its far end. */
export function isAtHouse(key: string): boolean {
  return key === lineEnd('house') || key.startsWith('clamp/line/house/');
}

export function isLineEnd(key: string): boolean {
  return key.startsWith(LINE_END);
}

/** What leads away from the well: to the house, and from a probe to its relay there. */
function wires({ facts, parts }: Solved): readonly Place[] {
  const cable = parts.find(({ kind }) => kind === 'cable');
  const wall = parts.find(({ kind }) => kind === 'disconnect');
  if (cable === undefined || wall === undefined) return [];
  const { lowLevelCutOff } = facts.pump;
  const probe = parts.find(({ kind }) => kind === 'probe');
  const along = (key: Place['key'], kind: Place['kind'], from: Metres, to: Metres, part: string, cut: Metres | null) =>
    ({ key, kind, top: from, bottom: to, radius: 0, cut, part }) satisfies Place;
  const run = runToWell(facts);
  return [
    {
      ...along('houseCable', 'houseCable', cable.top, facts.wire.conduitDepth, 'cable', null),
      // Not the cable that hangs in the well: it lies in what leads away from it.
      ...(parts.some(({ key }) => key === 'conduit') ? { drawn: 'conduit' } : {}),
    },
    ...(lowLevelCutOff === true || typeof lowLevelCutOff === 'number'
      ? [along('relay', 'relay', wall.top, wall.bottom, 'disconnect', null)]
      : []),
    ...(probe === undefined
      ? []
      : [
          along(
            'probeWires',
            'probeWires',
            cable.top,
            probe.top,
            'probe',
            run === null ? null : probe.top - cable.top + WIRE_LOOP + run,
          ),
        ]),
  ];
}
