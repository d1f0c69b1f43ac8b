/** Highest place of a check valve, and the pressure at the low end of the line. */
import type { Context } from '../../explain/context.ts';
import { waterWeightTerm } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noDemand, noDrawdown, noRise, noStaticLevel } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { columnHeldByAir } from '../../formulas/suction.ts';
import { atmosphericPressure, vapourPressure } from '../../formulas/water.ts';
import type { Pascals } from '../../si.ts';
import { valveAboveWaterLimit } from '../../rules/checkValve.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';
import { either } from '../../units.ts';

/** Pressure in the line at the well while the tank stands at cut-out; more than in the house where the house is higher. */
export function lineLowPressure({ facts, waterWeight, suspension }: Context): Pascals | null {
  const { cutOut, kind } = facts.house;
  return known(
    [facts.house.rise],
    (rise) => (kind === 'open tank' ? 0 : cutOut) + waterWeight * Math.max(rise + suspension, 0),
  );
}

export function valveFigures(context: Context): SheetFigure[] {
  const { facts, values, show } = context;
  const { altitude, waterTemperature: temperature } = facts.site;
  const held = known([altitude], (height) => columnHeldByAir({ altitude: height, temperature }));
  const most = valveAboveWaterLimit(context);
  const highest = known([values.lowestPumpingWaterLevel], (level) => level - most);
  const low = lineLowPressure(context);
  return [
    figure(
      context,
      {
        key: 'columnHeldByAir',
        title: 'Tallest column of water that the air holds',
        symbol: 'h',
        value: held,
        as: 'length',
        missing: [],
      },
      () => ({
        terms: [
          term(
            'p_a',
            `pressure of the air at ${show.depth(altitude)} above the sea`,
            known([altitude], atmosphericPressure),
            'pressure',
          ),
          term('p_v', 'pressure of water vapour', known([temperature], vapourPressure), 'pressure'),
          waterWeightTerm(context),
        ],
        steps: [step('h', '(p_a − p_v) / γ', held, 'length')],
        range: within(
          'a valve higher than this above the pumping level leaves a gap, and the next start slams into it',
          null,
        ),
        source: 'hydrostatics',
      }),
    ),
    figure(
      context,
      {
        key: 'highestCheckValve',
        title: 'Highest place of an upper check valve, as a depth',
        symbol: 'z_c',
        value: highest,
        as: 'length',
        missing: [noStaticLevel(context), noDrawdown(context), noDemand(context)],
      },
      () => ({
        terms: [
          term('h_p', 'lowest pumping level', values.lowestPumpingWaterLevel, 'length'),
          term(
            'h_m',
            `most above it: ${either(context.units, '25 ft', '7.6 m')}, less by what thin air holds up less`,
            most,
            'length',
          ),
        ],
        steps: [step('z_c', 'h_p − h_m', highest, 'length')],
        range: within('the first valve stands on the pump or in it; this bounds the next', null),
        source: `hydrostatics; ${either(context.units, '25 ft', '7.6 m')}: common practice, no source`,
      }),
    ),
    figure(
      context,
      {
        key: 'lineLowPressure',
        title: 'Pressure in the line at the well, tank at cut-out',
        symbol: 'p_l',
        value: low,
        as: 'pressure',
        missing: [noRise(context)],
      },
      () => {
        const rise = known([facts.house.rise], (up) => Math.max(up + context.suspension, 0));
        return {
          terms: [
            term('p_o', 'pressure at the tank', facts.house.kind === 'open tank' ? 0 : facts.house.cutOut, 'pressure'),
            waterWeightTerm(context),
            term('r', 'from the line at the well up to the tank', rise, 'length'),
          ],
          steps: [step('p_l', 'p_o + γ × r', low, 'pressure')],
          range: within('no flow', true),
          source: 'hydrostatics',
        };
      },
    ),
  ];
}
