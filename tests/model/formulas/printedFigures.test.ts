/** Figures that formulas rest on and no worked example holds, as they are printed; what is common practice or assumed says so. */
import { expect, test } from 'vitest';
import { cableThickness } from '../../../src/model/formulas/cable.ts';
import { LEAD_FREE_LIMIT, waterClass } from '../../../src/model/formulas/corrosion.ts';
import { GUESSED_STORATIVITY } from '../../../src/model/formulas/drawdown.ts';
import { monthlyFreezingIndex } from '../../../src/model/formulas/freezingIndex.ts';
import { USUAL_FROST_MARGIN, WIDE_FROST_MARGIN } from '../../../src/model/formulas/frost.ts';
import { END_SHARE } from '../../../src/model/formulas/genericBand.ts';
import { PUMP_BUOYANCY } from '../../../src/model/formulas/hangLoad.ts';
import { HOIST_LOAD, NO_TEAM_LOAD } from '../../../src/model/formulas/lifting.ts';
import { SPECIFIC_GRAVITY } from '../../../src/model/formulas/pipeBody.ts';
import { DESIGN_FACTOR } from '../../../src/model/formulas/rope.ts';
import { LOCKED_ROTOR_POWER_FACTOR } from '../../../src/model/formulas/startingDip.ts';
import { STARTING_TORQUE_FACTOR, TWO_POLE_SPEED } from '../../../src/model/formulas/twist.ts';
import { WATER_RANGE } from '../../../src/model/formulas/water.ts';
import { PIPE_MATERIALS } from '../../../src/model/tables/pipeMaterials.ts';
import { toInches, toPoundsForce } from '../../../src/model/units.ts';

test.each([
  ['cover under the frost line by the International codes (IPC 305.4), in', toInches(USUAL_FROST_MARGIN), 6],
  ['cover under the frost line by the Uniform Plumbing Code, 609.1, in', toInches(WIDE_FROST_MARGIN), 12],
  ['lead in wetted surfaces, Safe Drinking Water Act, section 1417, per cent', 100 * LEAD_FREE_LIMIT, 0.25],
  ['least factor of a rope, Cordage Institute CI 1401-06', DESIGN_FACTOR.least, 5],
  ['most usual factor of a rope, Cordage Institute CI 1401-06', DESIGN_FACTOR.most, 12],
  ['density of PE to water', SPECIFIC_GRAVITY.PE, 0.955],
  ['wave in a PVC wall, psi', PIPE_MATERIALS.PVC.suddenModulus, 400_000],
  ['wave in a steel wall, psi', PIPE_MATERIALS['galvanized steel'].suddenModulus, 30_000_000],
  ['turns a minute of a two-pole motor at 60 Hz', TWO_POLE_SPEED, 3450],
  ['torque at start, assumed', STARTING_TORQUE_FACTOR, 2.5],
  ['power factor of a motor at rest, assumed', LOCKED_ROTOR_POWER_FACTOR, 0.7],
  ['storativity of a confined aquifer, common practice', GUESSED_STORATIVITY, 1e-4],
  ['flow that is promised of a pump, of its rated one', END_SHARE, 1.4],
  // A sealed motor of 3.75 in by 12 in displaces 4.8 lb and weighs some 20 lb; 4.8 of 20 with its pump end is a fifth.
  ['weight of the pump that the water bears', PUMP_BUOYANCY, 0.2],
  ['load beyond which one takes a hoist, common practice, lb', toPoundsForce(HOIST_LOAD), 150],
  ['load that no team holds, common practice, lb', toPoundsForce(NO_TEAM_LOAD), 300],
  ['warmest water that the density is printed for, degC', WATER_RANGE.to, 40],
])('%s', (_, figure, printed) => {
  expect(figure).toBeCloseTo(printed, 9);
});

// Strands NFPA 70 (NEC), Chapter 9, Table 8; insulation and jacket UL 83, from memory: 30 and 30 mil up to 10 AWG, 45 mil
// and 45 at 8 AWG, 60 and 45 beyond.
test.each([
  [14, 0.073, 0.03, 0.03],
  [12, 0.092, 0.03, 0.03],
  [10, 0.116, 0.03, 0.03],
  [8, 0.146, 0.045, 0.045],
  [6, 0.184, 0.06, 0.045],
  [2, 0.292, 0.06, 0.045],
])(
  'flat cable of %d AWG is its strand of %d in, insulation of %d and jacket of %d thick',
  (gauge, strand, insulation, jacket) => {
    expect(toInches(cableThickness(gauge))).toBeCloseTo(strand + 2 * insulation + 2 * jacket, 9);
  },
);

test('each month counts by its days, February by those of a year in the middle', () => {
  const days = [31, 28.25, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
  days.forEach((count, month) => {
    const means = days.map((_, each) => (each === month ? -1 : 5));
    expect(monthlyFreezingIndex(means)).toBe(count);
  });
});

test('water is mild under 500 uS/cm and no more from there on', () => {
  const conducting = (microsiemens: number) => waterClass({ conductivity: microsiemens * 1e-4, acidity: 7.5 });
  expect([conducting(490), conducting(510)]).toEqual(['mild', 'between']);
  expect([conducting(1490), conducting(1510)]).toEqual(['between', 'aggressive']);
});
