import { expect, test } from 'vitest';
import { genericEfficiency } from '../../../src/model/sheets/pump/pumpAtWork.ts';
import { solve } from '../../../src/model/solve.ts';
import { feet, gpm, horsepower, toFeet, toGpm, toInches } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { figureOf, numberAt, rowOf, sheetOf, tableOf, valueOf } from './find.ts';

/** Pumping level at 100 ft, intake ten feet under it, at sea level, water of 10 °C. */
const shallow = rockWell({
  site: { frostDepth: '36 in', waterTemperature: '10 degC', altitude: '0 ft' },
  pump: { setting: '110 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  house: {
    demand: '10 gpm',
    tank: '44 gal',
    reliefValve: true,
    distance: '120 ft',
    rise: '10 ft',
    line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
  },
});

// US Standard Atmosphere (1976) at sea level and the saturation pressure of Wagner & Pruss (2002) at 10 °C: 33.91 − 0.41 ft
// of water, and ten feet of submergence.
test('ten feet of water over the intake leave 43.5 ft of suction head at sea level', () => {
  expect(toFeet(valueOf(sheetOf(shallow, 'pump'), 'suctionHead'))).toBeCloseTo(43.498, 1);
});

// ANSI/HI 9.8, Pump Intake Design, from memory: 3.75 + 0.574 × 10 / 3.75^1.5 = 4.54 in.
test('an inlet of 3.75 in wants 4.5 in of water against a vortex at 10 gpm', () => {
  expect(toInches(valueOf(sheetOf(shallow, 'pump'), 'vortexSubmergence'))).toBeCloseTo(4.54, 2);
});

// Continuity: 0.25 ft/s past a 3.75 in motor in a 6.065 in casing (ASME B36.10M, schedule 40) is 13.9 gpm.
test('a six-inch casing wants 13.9 gpm to cool a four-inch motor', () => {
  const cooling = tableOf(sheetOf(shallow, 'pump'), 'cooling');
  const casing = cooling.rows.find(({ cells }) => cells[0]!.startsWith('casing'))!;
  expect(toGpm(numberAt(cooling, casing, 'flow')!)).toBeCloseTo(13.906, 1);
  expect(casing.mark).toBe('this plan');
});

test('a shroud as wide as told gives the least velocity', () => {
  const widest = valueOf(sheetOf(shallow, 'pump'), 'widestShroud');
  const plan = rockWell({
    house: { demand: '10 gpm' },
    pump: {
      setting: '110 ft',
      power: '1 hp',
      curve: { kind: 'generic', flow: '10 gpm' },
      shroudDiameter: `${widest} m`,
    },
  });
  expect(valueOf(sheetOf(plan, 'pump'), 'velocityPastMotor')).toBeCloseTo(feet(0.25), 6);
});

// Affinity laws, EPANET 2.2 User Manual, ch. 3: 50/60 of the flow, its square of the head, its cube of the power.
test('at 50 Hz the pump has 0.833 of its flow, 0.694 of its head and 0.579 of its power', () => {
  const speed = tableOf(sheetOf(shallow, 'pump'), 'speed');
  const [full, slow] = [rowOf(speed, '60 Hz'), rowOf(speed, '50 Hz')];
  const ratio = (column: string) => numberAt(speed, slow, column)! / numberAt(speed, full, column)!;
  expect(ratio('rated')).toBeCloseTo(0.833, 3);
  expect(ratio('shutOff')).toBeCloseTo(0.694, 3);
  expect(ratio('power')).toBeCloseTo(0.579, 3);
  // With a static lift the operating flow falls faster than the speed.
  expect(ratio('flow')).toBeLessThan(0.833);
});

test('flow at cut-out falls with the frequency', () => {
  const speed = tableOf(sheetOf(shallow, 'pump'), 'speed');
  const flows = speed.rows.map((row) => numberAt(speed, row, 'flow')!);
  for (let i = 1; i < flows.length; i++) expect(flows[i]!).toBeLessThanOrEqual(flows[i - 1]!);
});

// 3960 gpm feet to the horsepower, as printed in hydraulics handbooks; 0.1 % for the water's weight.
test('power that the water gains is Q H / 3960 horsepower', () => {
  const { values } = solve(shallow);
  const printed = (toGpm(values.operatingFlowAtCutOut!) * toFeet(values.operatingHeadAtCutOut!)) / 3960;
  expect(valueOf(sheetOf(shallow, 'pump'), 'waterPower') / horsepower(printed)).toBeCloseTo(1, 2);
});

test('a generic pump takes its rated power at its rated flow, and more beyond it', () => {
  const rated = gpm(10);
  const shaft = (flow: number) => (flow * (4 - (flow / rated) ** 2)) / genericEfficiency(flow, rated);
  expect(shaft(rated * 1.2)).toBeGreaterThan(shaft(rated));
  expect(shaft(rated * 0.5) / shaft(rated)).toBeCloseTo((2 + 0.5) / 3, 9);
  expect(genericEfficiency(rated, rated)).toBeGreaterThan(genericEfficiency(rated * 1.3, rated));
});

test('wire to water is the product of both efficiencies', () => {
  const sheet = sheetOf(shallow, 'pump');
  const [shaft, input] = [valueOf(sheet, 'shaftPower'), valueOf(sheet, 'inputPower')];
  expect(valueOf(sheet, 'wireToWater')).toBeCloseTo((valueOf(sheet, 'pumpEfficiency') * shaft) / input, 9);
  expect(shaft).toBeGreaterThan(valueOf(sheet, 'waterPower'));
  expect(input).toBeGreaterThan(shaft);
});

test('a maker’s points tell no efficiency, and the sheet says so', () => {
  const points = [
    ['0 gpm', '300 ft'],
    ['10 gpm', '240 ft'],
    ['16 gpm', '120 ft'],
  ];
  const sheet = sheetOf(
    rockWell({ pump: { setting: '140 ft', power: '1 hp', curve: { kind: 'points', points } } }),
    'pump',
  );
  expect(figureOf(sheet, 'pumpEfficiency').value).toBeNull();
  expect(figureOf(sheet, 'pumpEfficiency').unknown.join()).toContain('efficiency');
  expect(figureOf(sheet, 'upthrustAtCutIn').title).toContain('last point');
});

// The worst demand is half the pump's flow: 15 Q/Vd an hour, gallons and minutes (time to empty and time to fill).
test('most starts an hour are 15 Q/V', () => {
  const { values } = solve(shallow);
  const flow = (toGpm(values.operatingFlowAtCutIn!) + toGpm(values.operatingFlowAtCutOut!)) / 2;
  const gallons = values.tankDrawdown! / 0.003785411784;
  expect(valueOf(sheetOf(shallow, 'pump'), 'mostStartsAnHour') * 3600).toBeCloseTo((15 * flow) / gallons, 6);
});

// US Standard Atmosphere (1976): 632 mmHg, 12.23 psi at 5,000 ft, which is 2.47 psi or 5.7 ft of water less than at sea level.
test('five thousand feet of altitude take 5.7 ft of suction head', () => {
  const high = rockWell({ site: { altitude: '5000 ft', frostDepth: '36 in' } });
  expect(toFeet(valueOf(sheetOf(high, 'pump'), 'altitudeLoss'))).toBeCloseTo(5.69, 1);
});

test('shut-off pressure falls from the pump to the pitless adapter to the tank', () => {
  const sheet = sheetOf(shallow, 'pump');
  expect(valueOf(sheet, 'shutOffPressureAtPump')).toBeGreaterThan(valueOf(sheet, 'shutOffPressureAtTop'));
  expect(valueOf(sheet, 'shutOffPressureAtTop')).toBeGreaterThan(valueOf(sheet, 'shutOffPressureAtTank'));
});
