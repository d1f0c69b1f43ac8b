/** Water over the intake: against a vortex, and for the pump's inlet. */
import { waterWeightTerm } from '../../explain/context.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noDemand, noDrawdown, noStaticLevel } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { columnHeldByAir, netPositiveSuctionHead, VORTEX_FACTOR, vortexSubmergence } from '../../formulas/suction.ts';
import { atmosphericPressure, vapourPressure } from '../../formulas/water.ts';
import { figure, solved } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';
import { either } from '../../units.ts';

export function suctionFigures(context: Context): SheetFigure[] {
  const { facts, values, show } = context;
  const { altitude, waterTemperature: temperature } = facts.site;
  const { demand } = facts.house;
  const inlet = facts.pump.motorDiameter;
  const vortex = known([demand], (flow) => vortexSubmergence(inlet, flow));
  const suction = known([values.submergence], (submergence) =>
    netPositiveSuctionHead({ altitude, temperature, submergence, inletLoss: 0 }),
  );
  const here = known([altitude], (height) => columnHeldByAir({ altitude: height, temperature }));
  const sea = known([temperature], (warmth) => columnHeldByAir({ altitude: 0, temperature: warmth }));
  const lost = known([here, sea], (high, low) => low - high);
  const air = known([altitude], atmosphericPressure);
  const vapour = known([temperature], vapourPressure);
  return [
    solved(context, 'submergence'),
    solved(context, 'submergenceDry'),
    figure(
      context,
      {
        key: 'vortexSubmergence',
        title: 'Water over the intake that keeps a vortex off',
        symbol: 'S',
        value: vortex,
        as: 'small',
        missing: [noDemand(context)],
      },
      () => ({
        terms: [
          term('D', 'diameter of the inlet, taken as the motor’s', inlet, 'inches'),
          term('k', 'factor of the formula', VORTEX_FACTOR, 'vortexFactor'),
          term('Q', 'peak flow needed', demand, 'gallonsPerMinute'),
        ],
        steps: [step('S', 'D + k × Q / D^1.5', vortex, 'inches')],
        formula: `S = D + ${either(context.units, '0.574 × Q / D^1.5, inches and gallons', '493 × Q / D^1.5, millimetres and litres')} a minute`,
        range: within('a single inlet in still water', null),
        source: 'ANSI/HI 9.8, Pump Intake Design, from memory',
        notes: [
          `The ${either(context.units, '10 to 20 ft', '3 to 6 m')} of practice cover falls of the level, not vortices.`,
        ],
      }),
    ),
    figure(
      context,
      {
        key: 'suctionHead',
        title: 'Suction head at the intake while pumping (NPSH available)',
        symbol: 'h',
        value: suction,
        as: 'length',
        missing: [noStaticLevel(context), noDrawdown(context), noDemand(context)],
      },
      () => ({
        terms: [
          term('p_a', `pressure of the air at ${show.depth(altitude)} above the sea`, air, 'pressure'),
          term('p_v', 'pressure of water vapour', vapour, 'pressure'),
          waterWeightTerm(context),
          term('s', 'water over the intake', values.submergence, 'length'),
        ],
        steps: [step('h', '(p_a − p_v) / γ + s', suction, 'length')],
        range: within(
          'compare with what the pump’s sheet asks for; losses at the strainer left out',
          suction === null ? null : suction > 0,
        ),
        source: 'definition; ANSI/HI 9.6.1',
      }),
    ),
    figure(
      context,
      {
        key: 'altitudeLoss',
        title: 'Suction head that the altitude takes',
        symbol: 'Δh',
        value: lost,
        as: 'length',
        missing: [],
      },
      () => ({
        terms: [
          term('h_0', 'column that the air holds at sea level', sea, 'length'),
          term('h_z', 'the same here', here, 'length'),
        ],
        steps: [step('Δh', 'h_0 − h_z', lost, 'length')],
        range: within(
          `up to ${either(context.units, '36,000 ft', '11 km')}; the weather moves it by a few per cent`,
          true,
        ),
        source: 'US Standard Atmosphere (1976), from memory; hydrostatics',
        notes: ['Thin air lowers the highest place of a check valve too, and a pressure tank gives a little more.'],
      }),
    ),
  ];
}
