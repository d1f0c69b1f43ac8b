/** How much longer the pipe hangs than it was cut: by load and time, by temperature; the twist at start. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noPumpMass, noStaticLevel } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import {
  creepName,
  FIFTY_YEARS,
  lengtheningPerKelvin,
  modulusOfPipe,
  pipeStretch,
  thermalChange,
} from '../../formulas/stretch.ts';
import { motorTorque, pipeTwist, STARTING_TORQUE_FACTOR, TWO_POLE_SPEED } from '../../formulas/twist.ts';
import { PIPE_MATERIALS } from '../../tables/pipeMaterials.ts';
import { feet, psi, either } from '../../units.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';
import { stringOf, waterBelow } from './hanging.ts';

const HOUR = 3600;
const TIMES = [
  { key: 'stretch12h', title: 'Stretch after twelve hours', time: 12 * HOUR },
  { key: 'stretchYear', title: 'Stretch after a year', time: 8760 * HOUR },
  { key: 'stretch50Years', title: 'Stretch after fifty years', time: FIFTY_YEARS },
] as const;

/** A warm day on the ground, when the pipe is cut. Assumed. */
const CUT_AT = 27;
const SLACK = feet(1);
export function stretchOf(context: Context, time: number): number | null {
  const string = stringOf(context);
  return string === null
    ? null
    : known([waterBelow(context)], (waterDepth) =>
        pipeStretch({ ...string, waterDepth, modulus: modulusOfPipe(context.facts.dropPipe, time) }),
      );
}

export function stretchFigures(context: Context): SheetFigure[] {
  const { facts, hangingLength, show } = context;
  const { material, outsideDiameter, insideDiameter } = facts.dropPipe;
  const wall = (Math.PI / 4) * (outsideDiameter ** 2 - insideDiameter ** 2);
  const missing = [noPumpMass(context), noStaticLevel(context)];
  const change = facts.site.waterTemperature - CUT_AT;
  const thermal = known([hangingLength], (length) => thermalChange({ material, length, change }));
  const fifty = stretchOf(context, FIFTY_YEARS);
  const slack = known([fifty], (stretch) => stretch + SLACK);
  const { shortModulus, poisson } = PIPE_MATERIALS[material];
  const modulus = psi(shortModulus);
  const torque = known([facts.pump.power], (power) => motorTorque({ power }));
  const turns = known(
    [torque],
    (full) =>
      pipeTwist({
        torque: full * STARTING_TORQUE_FACTOR,
        length: hangingLength,
        modulus,
        poisson,
        outsideDiameter,
        insideDiameter,
      }) /
      (2 * Math.PI),
  );
  const rigid = modulus / (2 * (1 + poisson));
  return [
    ...TIMES.map(({ key, title, time }) => {
      const stretch = stretchOf(context, time);
      const soft = known([time], (seconds) => modulusOfPipe(facts.dropPipe, seconds));
      // The load falls in straight pieces along the pipe: its mean gives the same stretch.
      const mean = known([stretch, soft, hangingLength], (longer, stiffness, length) =>
        length > 0 ? (longer * stiffness * wall) / length : null,
      );
      return figure(context, { key, title, symbol: 'δ', value: stretch, as: 'small', missing }, () => ({
        terms: [
          term('T_m', 'load along the pipe, its mean, pipe full and water outside at rest', mean, 'force'),
          term('L', 'drop pipe', hangingLength, 'length'),
          term('E', `stiffness left after that time, ${creepName(facts.dropPipe)}`, soft, 'modulus'),
          term('A_w', 'wall area', wall, 'area'),
        ],
        steps: [step('δ', mean === null ? 'δ' : 'T_m × L / (E × A_w)', stretch, 'small')],
        range: within(`at ${either(context.units, '73 °F', '23 °C')}; colder pipe is stiffer and stretches less`, null),
        source:
          PIPE_MATERIALS[material].steadyModulus === null
            ? 'PPI Handbook of Polyethylene Pipe, chapter 3, Table B.1.1; Hooke’s law'
            : 'Hooke’s law; modulus from data sheets, from memory',
      }));
    }),
    figure(
      context,
      {
        key: 'thermalChange',
        title: `Change of length, cut at ${show.temperature(CUT_AT)} and hung in water of ${show.temperature(facts.site.waterTemperature)}`,
        symbol: 'ΔL',
        value: thermal,
        as: 'small',
        missing: [],
      },
      () => ({
        terms: [
          term('α', 'lengthening a kelvin', lengtheningPerKelvin(material), 'number'),
          term('L', 'drop pipe', hangingLength, 'length'),
          term('ΔT', 'change of temperature, in kelvins', change, 'number'),
        ],
        steps: [step('ΔL', 'α × L × ΔT', thermal, 'small')],
        range: within('a free pipe; below zero it gets shorter', true),
        source: 'published tables of thermal expansion of piping materials',
      }),
    ),
    figure(
      context,
      {
        key: 'slack',
        title: 'Slack that wire and rope need over the years',
        symbol: 'l_s',
        value: slack,
        as: 'small',
        missing,
      },
      () => ({
        terms: [term('δ', 'stretch after fifty years', fifty, 'small'), term('l_1', 'to spare', SLACK, 'small')],
        steps: [step('l_s', 'δ + l_1', slack, 'small')],
        range: within('wire tied without slack takes the load of the pipe, and breaks', true),
        source: `${either(context.units, '1 ft', '30 cm')} to spare: common practice, no source`,
        notes: ['Leave as much again between motor and bottom.'],
      }),
    ),
    figure(
      context,
      {
        key: 'twist',
        title: 'Turns of a free pipe as the motor starts',
        symbol: 'n',
        value: turns,
        as: 'number',
        text: (count) => `${count.toFixed(1)} turns`,
        missing: [facts.pump.power === null ? { path: 'pump.power', words: 'the power of the motor' } : null],
      },
      () => ({
        terms: [
          term('k', 'torque at start over that at full load, assumed', STARTING_TORQUE_FACTOR, 'number'),
          term('P', 'power of the motor', facts.pump.power, 'power'),
          term('t_1', 'time of one turn of the shaft', 60 / TWO_POLE_SPEED, 'seconds'),
          term('L', 'drop pipe', hangingLength, 'length'),
          term('G', 'shear modulus for a short load', rigid, 'modulus'),
          term('D', 'outside diameter', outsideDiameter, 'bore'),
          term('d', 'inside diameter', insideDiameter, 'bore'),
        ],
        steps: [step('n', 'k × P × t_1 / (2 × π) × L / (G × π / 32 × (D⁴ − d⁴)) / (2 × π)', turns, 'number')],
        range: within('no contact with the casing; torque arrestors keep it from happening', null),
        source: `textbook torsion of a tube, from memory; torque ${either(context.units, '5252 hp/rpm lb ft', '9549 kW/rpm N m')}; at start 1.5 to 4.5 times that, sources disagree`,
      }),
    ),
  ];
}
