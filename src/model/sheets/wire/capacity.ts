/** Current that the wire may carry, and the ground wire that goes with it. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { step, term } from '../../explain/sum.ts';
import { groundingGauge, insulationResistanceFloor } from '../../formulas/copper.ts';
import { ampacity, CONTINUOUS_MOTOR_FACTOR, requiredAmpacity } from '../../formulas/wire.ts';
import { conductorOf, GAUGES } from '../../tables/conductors.ts';
import { METRIC_CONDUCTORS } from '../../tables/metricConductors.ts';
import { familyOf, isMetricWire, metricWire } from '../../tables/wireSizes.ts';
import type { MetricWire, WireSize } from '../../tables/wireSizes.ts';
import { figure } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';
import type { Circuit } from './circuit.ts';
import { either, wireName } from '../../units.ts';

/** Ground wire beside the thinnest wire that a current asks for. NFPA 70 (NEC), Table 250.122, from memory. */
const GROUND_OF: Readonly<Record<number, number>> = { 14: 14, 12: 12, 10: 10, 8: 10, 6: 10, 4: 8, 3: 8, 2: 8 };

const areaOf = (gauge: number | null) => known([gauge], (size) => conductorOf(size).areaCircularMils);

export function capacityFigures(context: Context, circuit: Circuit): SheetFigure[] {
  const { gauge } = context.facts.wire;
  const asked = known([circuit.tabled ?? circuit.current], requiredAmpacity);
  return [
    requiredFigure(context, circuit, asked),
    ...(isMetricWire(gauge)
      ? [metricAmpacity(context, gauge, asked), protectiveConductor(context, gauge)]
      : [
          gaugeAmpacity(context, gauge, 60, asked),
          gaugeAmpacity(context, gauge, 75, asked),
          groundWire(context, gauge, circuit, asked),
        ]),
    insulationFloor(context),
  ];
}

const carries = (value: number | null, asked: number | null) =>
  value === null || asked === null ? null : value >= asked;

const notTabled = (size: WireSize, units: 'us' | 'metric') => ({
  path: 'wire.size',
  words: `the ampacity of ${wireName(size, units)}, which is not in the table`,
});

function requiredFigure(context: Context, { tabled, current, noCurrent }: Circuit, asked: number | null) {
  const metric = familyOf(context.facts.wire.gauge) === 'mm2';
  return figure(
    context,
    {
      key: 'requiredAmpacity',
      title: 'Current that the wire must carry',
      symbol: 'I_n',
      value: asked,
      as: 'amperes',
      missing: [noCurrent],
    },
    () => ({
      terms: [
        term(
          'I',
          tabled === null ? 'full-load current of the nameplate' : 'full-load current by the code’s table',
          tabled ?? current,
          'amperes',
        ),
        term('k', 'one motor, running on', CONTINUOUS_MOTOR_FACTOR, 'number'),
      ],
      steps: [step('I_n', 'k × I', asked, 'amperes')],
      range: within('one motor on the circuit', true),
      source: 'NFPA 70 (NEC), 430.22; currents: Tables 430.248 and 430.250',
      ...(metric && {
        notes: ['IEC 60364-4-43, 433.1 asks for the rating of the breaker instead; the larger of the two holds.'],
      }),
    }),
  );
}

function gaugeAmpacity(context: Context, gauge: number, column: 60 | 75, asked: number | null) {
  const value = known([gauge], (size) => ampacity(size, column));
  return figure(
    context,
    {
      key: `ampacity${column}`,
      title:
        column === 60
          ? `${wireName(gauge, context.units)} carries, terminals of 60 °C`
          : `${wireName(gauge, context.units)} carries, everything marked 75 °C`,
      symbol: 'I_c',
      value,
      as: 'amperes',
      missing: [notTabled(gauge, context.units)],
    },
    () => ({
      terms: [
        term(
          'I_c',
          `ampacity of ${wireName(gauge, context.units)} copper, ${column} °C column`,
          value,
          'amperes' as const,
        ),
      ],
      steps: [step('I_c', 'I_c', value, 'amperes' as const)],
      formula: 'I_c = the code’s table',
      range: within(
        `three current-carrying wires at most, ${either(context.units, '86 °F', '30 °C')} around them; at least 125 % of the motor’s current`,
        carries(value, asked),
      ),
      source: `NFPA 70 (NEC), Table 310.16${column === 60 ? '; this column from memory' : ''}`,
      notes: ['Terminals up to 100 A count as 60 °C unless marked for 75 °C (NEC 110.14(C), from memory).'],
    }),
  );
}

function metricAmpacity(context: Context, size: MetricWire, asked: number | null) {
  const value = ampacity(size, 60);
  return figure(
    context,
    {
      key: 'ampacity',
      title: `${wireName(size, context.units)} carries`,
      symbol: 'I_c',
      value,
      as: 'amperes',
      missing: [],
    },
    () => ({
      terms: [
        term(
          'I_c',
          `ampacity of ${wireName(size, context.units)} copper, cable in a conduit`,
          value,
          'amperes' as const,
        ),
      ],
      steps: [step('I_c', 'I_c', value, 'amperes' as const)],
      formula: 'I_c = the standard’s table',
      range: within(
        'PVC, three loaded wires, 30 °C around them; at least 125 % of the motor’s current',
        carries(value, asked),
      ),
      source: 'IEC 60364-5-52 (2009), Table B.52.4, method B2',
      notes: ['Heat, bundles and other ways of laying change it. The national code and the electrician decide.'],
    }),
  );
}

/** As thick as the line wire up to 16 mm2, 16 mm2 up to 35. */
function protectiveConductor(context: Context, size: MetricWire) {
  const area = Math.min(METRIC_CONDUCTORS.find((row) => metricWire(row.area) === size)?.area ?? 16, 16);
  return figure(
    context,
    {
      key: 'groundWire',
      title: 'Ground wire, at the least',
      symbol: 'G',
      value: area,
      as: 'number',
      text: (least) => `${least} mm²`,
      missing: [],
    },
    () => ({
      terms: [term('G', 'as thick as the wire of the plan, and 16 at the most', area, 'number')],
      steps: [step('G', 'G', area, 'number')],
      formula: 'G = S up to 16 mm², 16 mm² up to 35 mm²',
      range: within('of the same copper; pump cable has its ground in it', null),
      source: 'IEC 60364-5-54, Table 54.2, from memory',
      notes: ['The green and yellow wire joins motor, metal casing and house earth. Never take it off.'],
    }),
  );
}

function groundWire(context: Context, gauge: number, { noCurrent }: Circuit, asked: number | null) {
  const least = known([asked], (amperes) => GAUGES.find((size) => ampacity(size, 60) >= amperes) ?? null);
  // A wire thinner than the least is wrong in itself; its ground is then that of the least.
  const ground = known([least], (thinnest) => {
    const own = GROUND_OF[thinnest];
    return own === undefined
      ? null
      : gauge >= thinnest
        ? own
        : groundingGauge({ least: thinnest, installed: gauge, ground: own });
  });
  return figure(
    context,
    {
      key: 'groundWire',
      title: 'Ground wire, at the least',
      symbol: 'G',
      value: ground,
      as: 'number',
      text: (size) => wireName(size, context.units),
      missing: [noCurrent, { path: null, words: 'a wire in the table that carries this current' }],
    },
    () => ({
      terms: [
        term(
          'A_0',
          'area of the ground wire beside the thinnest wire for the current, circular mils',
          areaOf(least === null ? null : (GROUND_OF[least] ?? null)),
          'number',
        ),
        term('A_n', 'area of the wire of the plan, circular mils', areaOf(gauge), 'number'),
        term('A_1', 'area of that thinnest wire, circular mils', areaOf(least), 'number'),
      ],
      steps: [
        step(
          'A',
          'A_0 × A_n / A_1',
          known(
            [areaOf(least === null ? null : (GROUND_OF[least] ?? null)), areaOf(gauge), areaOf(least)],
            (own, installed, thinnest) => (own * installed) / thinnest,
          ),
          'number',
        ),
      ],
      formula: 'A = A_0 × A_n / A_1, next size up; that of the thinnest wire where the plan’s is thinner still',
      range: within(
        'the protective device decides it: the electrician sets both. Pump cable has its ground in it',
        null,
      ),
      source: 'NFPA 70 (NEC), 250.122 and 250.122(B), from memory; areas Chapter 9, Table 8',
      notes: ['The green wire joins motor, metal casing and house earth. Never take it off.'],
    }),
  );
}

function insulationFloor(context: Context) {
  return figure(
    context,
    {
      key: 'insulationFloor',
      title: 'Insulation resistance to ground, at the least',
      symbol: 'R_i',
      value: insulationResistanceFloor(context.facts.pump.voltage),
      as: 'number',
      text: (ohms) => `${(ohms / 1e6).toFixed(2)} megohm`,
      missing: [],
    },
    () => ({
      terms: [term('V', 'supply voltage, in kilovolts', context.facts.pump.voltage / 1000, 'number')],
      steps: [step('R_i', '1 + V', insulationResistanceFloor(context.facts.pump.voltage) / 1e6, 'number')],
      formula: 'R_i = 1 megohm + 1 megohm for each kilovolt',
      range: within('a floor for old work: new cable and motor read far more', null),
      source: 'IEEE 43 (1974)',
    }),
  );
}
