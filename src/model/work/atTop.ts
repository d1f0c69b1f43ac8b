/** In the casing's wall and in the trench, before anything hangs; and over a seal once it does. */
import type { Metres } from '../si.ts';
import { lineLength } from '../string/lineLength.ts';
import { isBuriedOnBarbs, PIPE_MATERIALS } from '../tables/pipeMaterials.ts';
import type { Solved } from '../solution.ts';
import { step, type Draft, type Job } from './making.ts';
import type { Kind } from './step.ts';

/** Nothing is dug for a seal but what takes the cable. */
export function trenchSteps({ solved, pieces }: Job): readonly Draft[] {
  const { facts } = solved;
  if (facts.top.kind !== 'pitless') return [];
  const outlet = facts.top.depth;
  return [
    step('trench', { outlet }, { about: ['pitlessAdapter'], view: 'top', cautions: ['digging'] }),
    step(
      'hole',
      { outlet, fromCasingTop: outlet + facts.well.casingHeight },
      { about: ['pitlessAdapter'], view: 'top', cautions: ['digging', 'hygiene'] },
    ),
    step(
      'adapterBody',
      {},
      { puts: pieces.named('pitlessAdapter'), about: ['pitlessAdapter'], view: 'top', cautions: ['digging'] },
    ),
    lineStep({ solved, pieces }, false),
    conduitStep({ solved, pieces }),
  ];
}

/** Tee and plug, which come off with an old string, and the line from there. */
export function aboveSealSteps({ solved, pieces }: Job, kind: Kind): readonly Draft[] {
  const teeAndPlug = step(
    'aboveSeal',
    { rejoins: kind === 'replace' },
    { puts: pieces.named('nipple/top', 'tee', 'plug'), about: ['tee', 'plug'], view: 'top' },
  );
  if (kind === 'replace') return [teeAndPlug];
  return [teeAndPlug, lineStep({ solved, pieces }, true), conduitStep({ solved, pieces })];
}

function lineStep({ solved: { facts }, pieces }: Job, above: boolean): Draft {
  return step(
    'line',
    {
      length: lineLength(facts),
      way: lineWayOf(facts),
      clamps: facts.string.clampsPerJoint,
      above,
    },
    {
      puts: [
        ...pieces.named('lineEnd/bushing'),
        ...pieces.withClamps('line/well', 'lineEnd/well', 'buriedLine'),
        ...(above ? pieces.ofKinds('union', 'tap', 'support') : []),
      ],
      about: ['buriedLine'],
      view: 'top',
      cautions: above ? [] : ['digging'],
    },
  );
}

export function lineWayOf({ house, dropPipe }: Solved['facts']): 'barb' | 'socket' | 'thread' {
  const pipe = house.line ?? dropPipe;
  return isBuriedOnBarbs(pipe) ? 'barb' : PIPE_MATERIALS[pipe.material].buried;
}

function conduitStep({ solved: { facts }, pieces }: Job): Draft {
  return step(
    'conduit',
    { run: runOf(pieces), depth: facts.wire.conduitDepth, bonded: bondedOf(facts, pieces) },
    {
      puts: pieces.ofKinds('conduit', 'houseCable', 'bond'),
      about: ['conduit', 'bond'],
      view: 'top',
      cautions: facts.wire.conduitDepth > 0 ? ['electric', 'digging'] : ['electric'],
    },
  );
}

/** Null while nobody said what the casing is made of: a metal one is bonded. */
function bondedOf({ well }: Solved['facts'], pieces: Job['pieces']): boolean | null {
  if (pieces.has('bond')) return true;
  return well.casings[0]?.materialKnown === false ? null : false;
}

function runOf({ graph }: Job['pieces']): Metres | null {
  return graph.pieces.find(({ kind }) => kind === 'houseCable')?.cut ?? null;
}
