/** Pressure while the pump turns and nothing flows, from the pump to the tank. */
import { waterWeightTerm } from '../../explain/context.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noPumpCurve, noRise, noStaticLevel } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { figure, solved } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';
import { pumpCurveOf } from '../../figures/curves.ts';
import { either } from '../../units.ts';

export function pressureFigures(context: Context): SheetFigure[] {
  const { facts, values, waterWeight, suspension } = context;
  const shutOff = pumpCurveOf(facts, context.system.water.density, 'most')?.shutOffHead ?? null;
  const level = facts.water.staticLevel;
  const atTop = known([shutOff, level], (head, depth) => waterWeight * (head - depth + suspension));
  const spare = known([values.shutOffPressureAtTankLeast], (pressure) => pressure - facts.house.cutOut);
  const top = facts.top.kind === 'pitless' ? 'pitless adapter' : 'seal';
  return [
    solved(context, 'shutOffPressureAtPump'),
    figure(
      context,
      {
        key: 'shutOffPressureAtTop',
        title: `Shut-off pressure at the ${top}`,
        symbol: 'p_t',
        value: atTop,
        as: 'pressure',
        missing: [noPumpCurve(context), noStaticLevel(context)],
      },
      () => ({
        terms: [
          waterWeightTerm(context),
          term('H_0', 'head of the pump at no flow', shutOff, 'length'),
          term('h_s', 'water level at rest', level, 'length'),
          term('z', `depth of the ${top}`, suspension, 'length'),
        ],
        steps: [step('p_t', 'γ × (H_0 − h_s + z)', atTop, 'pressure')],
        range: within('no flow, water at its level at rest; a lower level takes the difference off', true),
        source: 'hydrostatics',
      }),
    ),
    solved(context, 'shutOffPressureAtTank'),
    solved(context, 'shutOffPressureAtTankLeast'),
    figure(
      context,
      {
        key: 'shutOffOverCutOut',
        title: 'Shut-off pressure at the tank over cut-out',
        symbol: 'Δp',
        value: spare,
        as: 'pressure',
        missing: [noPumpCurve(context), noStaticLevel(context), noRise(context)],
      },
      () => ({
        terms: [
          term('p_0', 'shut-off pressure at the tank, at the least', values.shutOffPressureAtTankLeast, 'pressure'),
          term('p_o', 'cut-out pressure', facts.house.cutOut, 'pressure'),
        ],
        steps: [step('Δp', 'p_0 − p_o', spare, 'pressure')],
        range: within(
          `below zero the pump never stops; ${either(context.units, '10 psi', '0.7 bar')} to spare is usual`,
          spare === null ? null : spare > 0,
        ),
        source: `hydrostatics; ${either(context.units, '10 psi', '0.7 bar')} to spare: common practice, no source`,
      }),
    ),
  ];
}
