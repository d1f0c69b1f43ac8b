/** Pull in the pipe wall and on the joint, against what the pipe may carry for years. */
import type { Context } from '../../explain/context.ts';
import { handbookWaterTerm } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noPumpCurve, noPumpMass, noStaticLevel } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { pumpWeight } from '../../formulas/hangLoad.ts';
import { allowablePull, axialStress, jointForce, wallTension } from '../../formulas/pipeTension.ts';
import { psi, either } from '../../units.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import { curveOf } from '../pump/pumpAtWork.ts';
import type { Missing, SheetFigure } from '../sheet.ts';
import { designStress, stringOf, waterBelow } from './hanging.ts';

/** PE pipe grades yield at 3,000 to 3,500 psi; the lower end. From memory. */
const YIELD = psi(3000);
const TWELVE_HOURS = 0.95;

export function stressFigures(context: Context): SheetFigure[] {
  const { facts, values, waterWeight, suspension } = context;
  const string = stringOf(context);
  const bore = (Math.PI / 4) * facts.dropPipe.insideDiameter ** 2;
  const wall = (Math.PI / 4) * facts.dropPipe.outsideDiameter ** 2 - bore;
  const level = facts.water.staticLevel;
  const shutOff = curveOf(context)?.shutOffHead ?? null;
  const pressure = known([shutOff, level], (head, depth) => Math.max(waterWeight * (head - depth + suspension), 0));
  const load = values.hangLoadDry;
  const tension = known([load, pressure], (weight, inside) =>
    wallTension({ load: weight, pressure: inside, boreArea: bore }),
  );
  const stress = known([tension], (pull) => axialStress({ tension: pull, wallArea: wall }));
  const allowed = designStress(context);
  const share = known([stress, allowed], (has, may) => has / may);
  const water = waterBelow(context);
  const weight = string === null ? null : known([water], (depth) => pumpWeight({ ...string, waterDepth: depth }));
  const joint = known([weight, pressure, water], (below, inside, depth) =>
    jointForce({ weightBelow: below, pressureTop: inside, waterDepth: depth, boreArea: bore }),
  );
  const ratio = facts.dropPipe.outsideDiameter / ((facts.dropPipe.outsideDiameter - facts.dropPipe.insideDiameter) / 2);
  const pull = known([facts.dropPipe.material === 'PE' ? ratio : null], (dimensionRatio) =>
    allowablePull({
      outsideDiameter: facts.dropPipe.outsideDiameter,
      dimensionRatio,
      yieldStrength: YIELD,
      timeFactor: TWELVE_HOURS,
    }),
  );
  const missing = [noPumpMass(context), noPumpCurve(context), noStaticLevel(context)];
  const noStress: Missing | null =
    allowed === null
      ? {
          path: facts.dropPipe.material === 'PE' ? 'dropPipe.resin' : null,
          words:
            facts.dropPipe.material === 'PE'
              ? 'the resin of the pipe'
              : 'a stress for years: steel does not creep, and its threads give way first',
        }
      : null;
  const notPlastic: Missing | null =
    facts.dropPipe.material === 'PE' ? null : { path: null, words: 'polyethylene: the formula is for it alone' };
  return [
    figure(
      context,
      {
        key: 'wallTension',
        title: 'Pull in the pipe wall at the top, pump at shut-off',
        symbol: 'N',
        value: tension,
        as: 'force',
        missing,
      },
      () => ({
        terms: [
          term('T', 'hanging load, pipe full and well empty', load, 'force'),
          term('p', 'pressure inside at the top, no flow', pressure, 'pressure'),
          term('A_i', 'bore area', bore, 'area'),
        ],
        steps: [step('N', 'T + p × A_i', tension, 'force')],
        range: within('the worst of everything at once', true),
        source: 'balance of forces on the closed string',
        notes: ['Pressure pulls on the wall, not on the hook.'],
      }),
    ),
    figure(
      context,
      {
        key: 'wallStress',
        title: 'Stress along the pipe wall at the top',
        symbol: 'σ',
        value: stress,
        as: 'pressure',
        missing,
      },
      () => ({
        terms: [term('N', 'pull in the wall', tension, 'force'), term('A_w', 'wall area', wall, 'area')],
        steps: [step('σ', 'N / A_w', stress, 'pressure')],
        range: within('least wall of the class', facts.dropPipe.wallClass !== null),
        source: 'definition',
      }),
    ),
    figure(
      context,
      {
        key: 'stressShare',
        title: 'Stress against what the pipe may carry for years',
        symbol: 'r',
        value: share,
        as: 'percent',
        missing: [noStress, ...missing],
      },
      () => ({
        terms: [
          term('σ', 'stress along the wall', stress, 'pressure'),
          term('σ_d', 'hydrostatic design stress of the resin', allowed, 'pressure'),
        ],
        steps: [step('r', 'σ / σ_d', share, 'percent')],
        range: within(
          'below 100 %; the pipe is rarely the weak point, its joints are',
          share === null ? null : share <= 1,
        ),
        source: `design stress by the last digits of the designation code: ${either(context.units, 'PE4710 1,000 psi, PE3608 800 psi; PVC 1120 2,000 psi', 'PE4710 6.9 MPa, PE3608 5.5 MPa; PVC 1120 13.8 MPa')} (ASTM D1785)`,
      }),
    ),
    figure(
      context,
      {
        key: 'jointForce',
        title: 'Force that pulls the joint at the pump apart',
        symbol: 'F',
        value: joint,
        as: 'force',
        missing,
      },
      () => ({
        terms: [
          term('W', 'pump and motor as they hang in the water', weight, 'force'),
          term('p', 'pressure inside at the top, no flow', pressure, 'pressure'),
          handbookWaterTerm,
          term('h', 'water at rest below the suspension', water, 'length'),
          term('A_i', 'bore area', bore, 'area'),
        ],
        steps: [step('F', 'W + (p + γ × h) × A_i', joint, 'force')],
        range: within('it does not grow with the depth of the pump', true),
        source: 'balance of forces on the closed end below the joint',
        notes: ['No pull-out strength of clamped barbs is published: metal barbs, two clamps a joint.'],
      }),
    ),
    figure(
      context,
      {
        key: 'allowablePull',
        title: 'Pull that the pipe itself stands for twelve hours',
        symbol: 'F_a',
        value: pull,
        as: 'force',
        missing: [notPlastic],
      },
      () => ({
        terms: [
          term('f_y', 'design factor', 0.4, 'number'),
          term('f_t', 'factor for twelve hours', TWELVE_HOURS, 'number'),
          term('T_y', 'yield strength, low end', YIELD, 'pressure'),
          term('D', 'outside diameter', facts.dropPipe.outsideDiameter, 'bore'),
          term('R', 'outside diameter over wall', ratio, 'number'),
        ],
        steps: [step('F_a', 'f_y × f_t × T_y × π × D² × (1 / R − 1 / R²)', pull, 'force')],
        range: within(`${either(context.units, '73 °F', '23 °C')}; the pipe body only, not its joints`, null),
        source: 'ASTM F1804; factors and yield from memory',
      }),
    ),
  ];
}
