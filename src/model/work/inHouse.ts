/** Where the line arrives: pipe up to the tank, what stands on it, and the boxes on the wall. */
import { lineWayOf } from './atTop.ts';
import { step, type Draft, type Job } from './making.ts';

const HOUSE = { view: 'house' } as const;

export function houseSteps({ solved: { facts }, pieces }: Job): readonly Draft[] {
  const { house, pump } = facts;
  const box = pieces.has('drive') ? 'drive' : pieces.has('controlBox') ? 'controlBox' : null;
  const open = house.kind === 'open tank';
  return [
    step(
      'riser',
      { way: lineWayOf(facts) },
      {
        puts: [...pieces.withClamps('line/house', 'lineEnd/house'), ...pieces.ofKinds('elbow', 'riser')],
        about: ['riser'],
        ...HOUSE,
      },
    ),
    ...(open
      ? [step('openTank', {}, { puts: pieces.ofKinds('tank', 'float', 'shutOff'), about: ['tank', 'float'], ...HOUSE })]
      : [
          step(
            'tankTee',
            { relief: pieces.has('reliefValve'), drive: house.control === 'variable speed' },
            {
              puts: pieces.ofKinds('tankTee', 'gauge', 'switch', 'reliefValve', 'reliefPipe', 'drain', 'shutOff'),
              about: ['tankTee', 'gauge', 'switch', 'reliefValve', 'drain', 'shutOff'],
              ...HOUSE,
              cautions: ['pressure'],
            },
          ),
          step(
            'tank',
            { precharge: house.precharge, cutIn: house.cutIn, stands: false },
            { puts: pieces.ofKinds('tank'), about: ['tank'], ...HOUSE, cautions: ['pressure'] },
          ),
        ]),
    step(
      'boxes',
      { box, relay: pieces.has('relay'), phase: pump.phase },
      {
        puts: pieces.ofKinds('disconnect', 'controlBox', 'drive', 'relay'),
        about: ['disconnect', 'controlBox', 'drive'],
        ...HOUSE,
        cautions: ['electric'],
      },
    ),
  ];
}
