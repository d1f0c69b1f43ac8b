/** The first water, what is read of it, and what has to be done before anybody drinks it. */
import { step, type Draft, type Job } from './making.ts';
import type { Kind } from './step.ts';

export function startSteps({ solved, pieces }: Job, kind: Kind): readonly Draft[] {
  const { facts, values } = solved;
  const { house, pump, top } = facts;
  const open = house.kind === 'open tank';
  const dug = kind === 'new' && top.kind === 'pitless';
  return [
    // A new motor on the old one's box burns out.
    ...(kind === 'replace'
      ? [
          step(
            'boxCheck',
            { box: pieces.has('drive') ? 'drive' : pieces.has('controlBox') ? 'controlBox' : null, power: pump.power },
            { about: ['controlBox', 'drive', 'disconnect'], view: 'house', cautions: ['electric'] },
          ),
        ]
      : []),
    // Its air can be read only while it is empty: so it is once the house has been drained for the pulling.
    ...(kind === 'replace' && !open
      ? [
          step(
            'tank',
            { precharge: house.precharge, cutIn: house.cutIn, stands: true },
            { about: ['tank'], view: 'house', cautions: ['pressure'] },
          ),
        ]
      : []),
    step(
      'firstRun',
      { open, phase: pump.phase },
      { about: ['shutOff', 'drain'], view: 'house', cautions: ['electric'] },
    ),
    ...(open
      ? []
      : [
          step(
            'pressureTest',
            { cutOut: house.cutOut, trench: dug },
            // With the trench open its joints are looked at; else the gauge tells.
            dug
              ? { about: ['pitlessAdapter', 'buriedLine'], view: 'top', cautions: ['pressure', 'digging'] }
              : { about: ['gauge'], view: 'house', cautions: ['pressure'] },
          ),
        ]),
    ...(dug ? [step('backfill', {}, { about: ['buriedLine'], view: 'top', cautions: ['digging'] })] : []),
    step(
      'readings',
      { cutIn: house.cutIn, cutOut: house.cutOut, level: values.pumpingWaterLevel, open },
      { about: ['pumpingLevel'], view: 'section', cautions: ['electric'] },
    ),
  ];
}

export function afterSteps({ solved: { facts, values }, pieces }: Job): readonly Draft[] {
  const open = facts.house.kind === 'open tank';
  return [
    step(
      'disinfect',
      {
        product: values.chlorineDose,
        strength: facts.disinfection.strength,
        opens: facts.top.kind === 'pitless' ? 'cap' : 'seal',
        open,
      },
      { about: ['cap', 'seal'], view: 'section', cautions: ['chlorine', 'electric'] },
    ),
    step('flush', { open }, { about: ['tap'], view: pieces.has('tap') ? 'top' : 'section', cautions: ['chlorine'] }),
    step('sample', {}, { cautions: ['hygiene'] }),
    step('record', {}),
  ];
}
