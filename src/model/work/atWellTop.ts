/** The string hangs: its top joint, what bears it, and what leaves the well there. */
import { dischargeDepth } from '../string/pumpDepths.ts';
import { suspensionDepth } from '../string/topDepths.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { TOP_BUSHING } from '../string/graph/fittings.ts';
import { SPOOL } from '../string/graph/graph.ts';
import { takenFrom, threadAt } from '../string/threads.ts';
import { aboveSealSteps } from './atTop.ts';
import { hookAt, onTheHook } from './hook.ts';
import { step, type Draft, type Job } from './making.ts';
import type { Kind } from './step.ts';
import type { Metres } from '../si.ts';
import type { WayUp } from './wayUp.ts';

export function hangingSteps(job: Job, { above }: Pick<WayUp, 'above'>, kind: Kind): readonly Draft[] {
  const { solved } = job;
  const { top } = solved.facts;
  return [
    // The eye that takes a rope is under the seal: it is out of reach once the seal sits on the casing.
    ...(top.kind === 'pitless'
      ? [...onAdapter(job, above, top.depth), ...ropeTied(job)]
      : [...ropeTied(job), ...onSeal(job, above)]),
    ...(top.kind === 'seal' ? aboveSealSteps(job, kind) : []),
    ...wiresAtTop(job),
    ...(job.pieces.has('cap')
      ? [step('cap', {}, { puts: job.pieces.ofKinds('cap'), about: ['cap'], view: 'top' })]
      : []),
  ];
}

const TOP = { view: 'top' } as const;

function onAdapter({ solved, pieces }: Job, above: readonly string[], outlet: Metres): readonly Draft[] {
  const { facts, values } = solved;
  const whole = dischargeDepth(facts.pump) - suspensionDepth(facts);
  // While its upper end is held over the casing's top, less of it hangs in water than once it is seated.
  const held = hookAt(solved, whole - facts.well.casingHeight);
  return [
    step(
      'topJoint',
      {
        way: isBarbed(facts.dropPipe) ? 'barb' : 'thread',
        clamps: facts.string.clampsPerJoint,
        bushing: takenFrom('adapter', facts),
        hook: onTheHook(solved, held),
      },
      {
        puts: [...above, ...pieces.withClamps('top', 'insertFitting/top'), ...pieces.named(TOP_BUSHING), SPOOL],
        about: ['insertFitting/top', 'pitlessAdapter'],
        ...TOP,
        cautions: ['lifting'],
      },
    ),
    step(
      'seat',
      {
        outlet,
        liftPipe: values.liftPipeLength,
        thread: threadAt('adapter', facts).size,
        hook: onTheHook(solved, held, values.hangLoadLowering ?? values.hangLoadDry),
      },
      { about: ['pitlessAdapter'], ...TOP, cautions: ['lifting', 'overhead'] },
    ),
  ];
}

function onSeal({ solved, pieces }: Job, above: readonly string[]): readonly Draft[] {
  const { facts, values } = solved;
  return [
    step(
      'seal',
      {
        way: isBarbed(facts.dropPipe) ? 'barb' : 'thread',
        clamps: facts.string.clampsPerJoint,
        hook: onTheHook(solved, values.hangLoadLowering ?? values.hangLoadDry),
      },
      {
        puts: [
          ...above,
          ...pieces.withClamps('top', 'insertFitting/top'),
          ...pieces.named('nipple/seal', 'seal', 'coupling/top'),
        ],
        about: ['seal', 'coupling/top', 'insertFitting/top'],
        ...TOP,
        cautions: ['lifting'],
      },
    ),
  ];
}

function ropeTied({ solved: { facts } }: Job): readonly Draft[] {
  if (facts.rope === null) return [];
  return [step('ropeTied', { tied: facts.rope.tied, kind: facts.top.kind }, { about: ['rope'], ...TOP })];
}

function wiresAtTop({ solved: { facts }, pieces }: Job): readonly Draft[] {
  const numbers = { joints: facts.pump.wires + 1, gauge: facts.wire.gauge, cap: pieces.has('capSplice') };
  return [
    step('capSplice', numbers, {
      puts: pieces.ofKinds('capSplice'),
      about: ['capSplice', 'conduit'],
      ...TOP,
      cautions: ['electric'],
    }),
  ];
}
