/** The pressure tank: what it gives, its air, the smallest that does. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noTank } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { drawdownFactor, smallestTank } from '../../formulas/tank.ts';
import { atmosphericPressure } from '../../formulas/water.ts';
import { horsepower, psi, either } from '../../units.ts';
import { figure, solved } from '../figure.ts';
import { known } from '../known.ts';
import { fillingFlow } from '../pump/pumpAtWork.ts';
import type { SheetFigure } from '../sheet.ts';

export function tankFigures(context: Context): SheetFigure[] {
  const { facts } = context;
  const { cutIn, cutOut, precharge, tank } = facts.house;
  const atmosphere = known([facts.site.altitude], atmosphericPressure);
  const factor = known([atmosphere], (air) => drawdownFactor({ precharge, cutIn, cutOut, atmosphere: air }));
  const flow = fillingFlow(context);
  const minutes = facts.pump.power !== null && facts.pump.power > horsepower(1) * 1.02 ? 2 : 1;
  const smallest = known([flow, atmosphere], (q, air) =>
    q > 0 ? smallestTank({ flow: q, runTime: 60 * minutes, precharge, cutIn, cutOut, atmosphere: air }) : null,
  );
  const right = cutIn - psi(2);
  return [
    solved(context, 'tankDrawdown'),
    figure(
      context,
      {
        key: 'drawdownFactor',
        title: 'Share of the tank that it gives',
        symbol: 'f',
        value: factor,
        as: 'percent',
        missing: [{ path: 'house.cutOut', words: 'a cut-out above the cut-in' }, noTank(context)],
      },
      () => ({
        terms: [
          term('p_c', 'pre-charge', precharge, 'readPressure'),
          term('p_i', 'cut-in', cutIn, 'readPressure'),
          term('p_o', 'cut-out', cutOut, 'readPressure'),
          term('p_a', 'pressure of the air at this altitude', atmosphere, 'readPressure'),
        ],
        steps: [
          step(
            'f',
            precharge <= cutIn
              ? '(p_c + p_a) / (p_i + p_a) − (p_c + p_a) / (p_o + p_a)'
              : '1 − (p_c + p_a) / (p_o + p_a)',
            factor,
            'percent',
          ),
        ],
        range: within('slow filling; a pre-charge above cut-in leaves a gap without water', precharge <= cutIn),
        source: 'Boyle’s law',
      }),
    ),
    figure(
      context,
      {
        key: 'precharge',
        title: 'Pre-charge that suits this cut-in',
        symbol: 'p_c',
        value: right > 0 ? right : null,
        as: 'readPressure',
        missing: [{ path: 'house.cutIn', words: `a cut-in above ${either(context.units, '2 psi', '0.14 bar')}` }],
      },
      () => ({
        terms: [term('p_i', 'cut-in', cutIn, 'readPressure'), term('p_2', 'usual difference', psi(2), 'readPressure')],
        steps: [step('p_c', 'p_i − p_2', right, 'readPressure')],
        range: within('set with the tank empty of water', null),
        source: 'common practice of tank makers',
      }),
    ),
    figure(
      context,
      {
        key: 'smallestTank',
        title: `Smallest tank for a run of ${minutes === 1 ? 'one minute' : 'two minutes'}`,
        symbol: 'V',
        value: smallest,
        as: 'volume',
        missing: [{ path: null, words: 'the flow of the pump between cut-in and cut-out' }],
      },
      () => ({
        terms: [
          term('Q', 'mean flow between cut-in and cut-out', flow, 'flow'),
          term('t', 'least run', 60 * minutes, 'seconds'),
          term('f', 'share of the tank that it gives', factor, 'percent'),
        ],
        steps: [step('V', 'Q × t / f', smallest, 'volume')],
        range: within(
          'total volume, shell and air; the tank of the plan is judged by it',
          tank === null || smallest === null ? null : tank >= smallest,
        ),
        source: `Boyle’s law; one minute of running, two above about ${either(context.units, '1 hp', '0.75 kW')}: common practice, no source`,
      }),
    ),
  ];
}
