/** Before anything is bought, dug or lifted. */
import type { Solved } from '../solution.ts';
import { RIGID_SECTION } from '../string/lengths.ts';
import { lengthToCut, pipeRun } from '../string/pipeRun.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { pullingHook } from './hook.ts';
import { step, type Draft, type Job } from './making.ts';
import { motorBottomDepth } from '../string/pumpDepths.ts';
import type { Caution, Kind } from './step.ts';
import { widestOf } from './widest.ts';

export function beforeSteps(job: Job, kind: Kind): readonly Draft[] {
  const { facts } = job.solved;
  const { pump, well, water } = facts;
  const digs = kind === 'new' && (facts.top.kind === 'pitless' || facts.wire.conduitDepth > 0);
  return [
    step('permits', {}),
    step('services', { digs }, { cautions: [...(digs ? (['digging'] as const) : []), 'overhead'] }),
    step(
      'breakerOff',
      { voltage: pump.voltage, wired: kind === 'replace' },
      { about: ['disconnect'], view: 'house', cautions: ['electric'] },
    ),
    // An old string is in the way of it, and is sounded under when it is out.
    ...(kind === 'replace'
      ? []
      : [
          step(
            'measure',
            {
              depth: well.bottom,
              staticLevel: water.staticLevel,
              casingHeight: well.casingHeight,
              widest: widestOf(facts),
            },
            { about: ['casing', 'staticLevel'], cautions: ['gas', ...pitCaution(facts), 'hygiene'] },
          ),
        ]),
    ...(kind === 'replace' ? [] : [layOutStep(job)]),
  ];
}

/** The old string comes out, and the well is measured while it is empty. */
export function pullingSteps(job: Job): readonly Draft[] {
  const { solved } = job;
  const { facts, values } = solved;
  const { kind } = facts.top;
  const { old, ...hook } = pullingHook(solved);
  return [
    step(
      'houseShut',
      { open: facts.house.kind === 'open tank' },
      { about: ['shutOff', 'gauge'], view: 'house', cautions: ['pressure'] },
    ),
    step(
      'openTop',
      { kind },
      {
        about: [kind === 'pitless' ? 'cap' : 'seal'],
        view: 'top',
        cautions: ['electric', 'gas', ...pitCaution(facts)],
      },
    ),
    step(
      'unseat',
      { kind, liftPipe: values.liftPipeLength, hook },
      { about: [kind === 'pitless' ? 'pitlessAdapter' : 'seal'], view: 'top', cautions: ['lifting', 'overhead'] },
    ),
    step('pull', { hook, old }, { about: ['dropPipe'], cautions: ['lifting', 'overhead', 'stuck'] }),
    step(
      'sound',
      { depth: facts.well.bottom, motorBottom: motorBottomDepth(facts.pump), casingHeight: facts.well.casingHeight },
      { about: ['casing', 'openHole'], cautions: ['gas', 'hygiene'] },
    ),
    // Nothing is cut before the empty well has been sounded.
    layOutStep(job),
  ];
}

function layOutStep({ solved: { facts }, pieces }: Job): Draft {
  const coil = isBarbed(facts.dropPipe);
  const section = facts.dropPipe.sectionLength ?? RIGID_SECTION;
  const shortest = Math.min(...pieces.ofKinds('dropPipe').map((key) => pieces.piece(key).cut ?? section));
  const odd = coil || !(shortest < section - 1e-6) ? null : shortest;
  return step(
    'layOut',
    { coil, pipe: lengthToCut(pipeRun(facts)), odd },
    { cautions: coil ? ['coil', 'hygiene'] : ['hygiene'] },
  );
}

/** Nobody is told to work on a top that is known to be in a pit; of the others one hears while nobody has said. */
function pitCaution({ well }: Solved['facts']): readonly Caution[] {
  return well.inPit === null ? ['pit'] : [];
}
