/** Efficiency, stages and power of the pump at its work. */
import { atSwitch } from '../../explain/atSwitch.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noPumpCurve } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { efficiencyAt } from '../../formulas/pumpCurve.ts';
import { shaftPower, stagesFor, waterPower } from '../../formulas/pumpPower.ts';
import type { Ratio, Watts } from '../../si.ts';
import { feet, horsepower, either } from '../../units.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { Missing, SheetFigure } from '../sheet.ts';
import { bestFlow, genericEfficiency } from './pumpAtWork.ts';

/** Head of one stage of a 4 in pump at its rated flow. Engineering range 18 to 28 ft, no publication found. */
export const STAGE_HEAD = feet(22);

/** Efficiency of the motor alone. Engineering ranges for 4 in motors, no publication found. */
const MOTOR_EFFICIENCY = { small: 0.55, usual: 0.675 } as const;
const SMALL_MOTOR: Watts = horsepower(0.5);
/** Of the whole, wire to water: engineering range for pumps of this size, no publication found. */
export const WIRE_TO_WATER_RANGE = { least: 0.25, most: 0.45 } as const;

const RANGES = 'engineering range, from memory; no publication found. The maker’s sheet overrules it';

export function motorEfficiency(power: Watts): Ratio {
  return power <= SMALL_MOTOR * 1.02 ? MOTOR_EFFICIENCY.small : MOTOR_EFFICIENCY.usual;
}

export function powerFigures(context: Context): SheetFigure[] {
  const { facts, values, waterWeight } = context;
  const at = atSwitch(context, 'cut-out');
  const flow = values.operatingFlowAtCutOut;
  const head = values.operatingHeadAtCutOut;
  const rated = bestFlow(context);
  const density = context.system.water.density;
  const onlyPoints: Missing | null =
    rated === null ? { path: 'pump.curve', words: 'the efficiency: a list of flows and heads does not tell it' } : null;
  const noDuty: Missing = { path: null, words: 'the point at which the pump works in this well' };
  const still: Missing | null =
    flow === 0
      ? {
          path: null,
          words: `a flow: the pump ${facts.house.kind === 'open tank' ? 'lifts no water into the open tank' : 'does not reach the cut-out pressure'}`,
        }
      : null;

  const efficiency = known([flow, rated], (q, best) => (q > 0 ? genericEfficiency(q, best) : null));
  const hydraulic = known([flow, head], (q, h) => waterPower({ flow: q, head: h, density }));
  const shaft = known([hydraulic, efficiency], (power, share) => shaftPower(power, share));
  const motor = known([facts.pump.power], motorEfficiency);
  const input = known([shaft, motor], (power, share) => power / share);
  const whole = known([hydraulic, input], (gained, drawn) => gained / drawn);
  const stages = known([values.totalDynamicHead], (asked) => stagesFor(asked, STAGE_HEAD));
  const noPower = noPumpCurve(context);
  const atWork = [still, noPower, onlyPoints, flow === null ? noDuty : null];

  return [
    figure(
      context,
      {
        key: 'pumpEfficiency',
        title:
          rated === null
            ? 'Efficiency of the pump without its motor'
            : `Efficiency of the pump without its motor ${at}, generic`,
        symbol: 'η',
        value: efficiency,
        as: 'percent',
        missing: atWork,
      },
      () => ({
        terms: [
          term('Q', `flow ${at}`, flow, 'readFlow'),
          term('Q_r', 'rated flow, at which a generic pump is best', rated, 'readFlow'),
          term('η_r', 'efficiency at the rated flow', known([rated], efficiencyAt), 'percent'),
        ],
        steps: [step('η', 'η_r × Q / Q_r × (2 − Q / Q_r)', efficiency, 'percent')],
        range: within(
          `generic ${either(context.units, '4 in pumps rated for 5 to 25 gpm', '100 mm pumps rated for 19 to 95 L/min')}, up to twice the rated flow`,
          null,
        ),
        source: RANGES,
        notes: ['Good pumps of this size lie within 5 points of it.'],
      }),
    ),
    figure(
      context,
      {
        key: 'stages',
        title: 'Stages for the total head',
        symbol: 'n',
        value: stages,
        as: 'number',
        text: (n) => `about ${n}`,
        missing: [{ path: null, words: 'the total dynamic head' }],
      },
      () => ({
        terms: [
          term('H', 'total dynamic head', values.totalDynamicHead, 'length'),
          term('H_1', 'head of one stage at the rated flow, generic', STAGE_HEAD, 'length'),
        ],
        steps: [
          step(
            'x',
            'H / H_1',
            known([values.totalDynamicHead], (asked) => asked / STAGE_HEAD),
            'number',
          ),
        ],
        formula: 'n = H / H_1, rounded up to the next whole stage',
        range: within(
          `one stage of a ${either(context.units, '4 in pump at full speed gives 18 to 28 ft', '100 mm pump at full speed gives 5.5 to 8.5 m')} at its rated flow`,
          null,
        ),
        source: RANGES,
      }),
    ),
    figure(
      context,
      {
        key: 'waterPower',
        title: `Power that the water gains ${at}`,
        symbol: 'P_w',
        value: hydraulic,
        as: 'power',
        missing: [noPower, flow === null ? noDuty : null],
      },
      () => ({
        terms: [
          term('γ', 'weight of water by volume', waterWeight, 'weightPerVolume'),
          term('Q', `flow ${at}`, flow, 'flow'),
          term('H', `head ${at}`, head, 'length'),
        ],
        steps: [step('P_w', 'γ × Q × H', hydraulic, 'power')],
        range: within('steady flow', true),
        source: 'definition: weight lifted a second by height',
      }),
    ),
    figure(
      context,
      {
        key: 'shaftPower',
        title: `Power at the shaft ${at}`,
        symbol: 'P',
        value: shaft,
        as: 'power',
        missing: atWork,
      },
      () => ({
        terms: [
          term('P_w', 'power that the water gains', hydraulic, 'power'),
          term('η', 'efficiency of the pump without its motor', efficiency, 'percent'),
        ],
        steps: [step('P', 'P_w / η', shaft, 'power')],
        range: within('as the efficiency', null),
        source: 'definition',
        notes: [
          `The motor is rated ${facts.pump.power === null ? 'at a power nobody said' : context.show.power(facts.pump.power)}.`,
        ],
      }),
    ),
    figure(
      context,
      {
        key: 'inputPower',
        title: `Power from the wire ${at}`,
        symbol: 'P_e',
        value: input,
        as: 'power',
        text: (watts) => `about ${Math.round(watts / 10) * 10} W`,
        missing: atWork,
      },
      () => ({
        terms: [
          term('P', 'power at the shaft', shaft, 'power'),
          term('η_m', 'efficiency of the motor, generic', motor, 'percent'),
        ],
        steps: [step('P_e', 'P / η_m', input, 'power')],
        range: within(
          `single-phase motors of ${either(context.units, '4 in wells: 50 to 60 % at 1/2 hp, 65 to 70 % from 1 hp', '100 mm wells: 50 to 60 % at 0.37 kW, 65 to 70 % from 0.75 kW')}`,
          null,
        ),
        source: RANGES,
      }),
    ),
    figure(
      context,
      {
        key: 'wireToWater',
        title: `Wire to water ${at}`,
        symbol: 'η_w',
        value: whole,
        as: 'percent',
        missing: atWork,
      },
      () => ({
        terms: [
          term('P_w', 'power that the water gains', hydraulic, 'power'),
          term('P_e', 'power from the wire', input, 'power'),
        ],
        steps: [step('η_w', 'P_w / P_e', whole, 'percent')],
        range: within(
          '25 to 45 % is usual',
          known([whole], (share) => share) === null
            ? null
            : (whole ?? 0) >= WIRE_TO_WATER_RANGE.least && (whole ?? 0) <= WIRE_TO_WATER_RANGE.most,
        ),
        source: RANGES,
      }),
    ),
  ];
}
