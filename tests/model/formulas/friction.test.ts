import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  darcyFactor,
  darcyHead,
  haaland,
  hazenWilliamsHead,
  insertFittingLoss,
  LAMINAR_TO,
  reynoldsNumber,
  swameeJain,
  TURBULENT_FROM,
  velocityIn,
} from '../../../src/model/formulas/friction.ts';
import { kinematicViscosity } from '../../../src/model/formulas/water.ts';
import { feet, gpm, inches, toFeet } from '../../../src/model/units.ts';
import { between, SEED } from '../laws.ts';

const pipe = {
  flow: gpm(10),
  length: feet(100),
  insideDiameter: inches(1.049),
  roughness: 1.5e-6,
  kinematicViscosity: kinematicViscosity(10),
};
const reynolds = fc.double({ min: 3.61, max: 8, noNaN: true }).map((power) => 10 ** power);
const roughness = between(0, 0.05);

/** Colebrook-White solved in closed form: x = a W(exp(A/(aB))/(aB)) - A/B, with w + ln w solved by Newton. */
function closedForm(re: number, relative: number): number {
  const [A, B, a] = [relative / 3.7, 2.51 / re, 2 / Math.LN10];
  const right = A / (a * B) - Math.log(a * B);
  let w = right - Math.log(Math.max(right, 1));
  for (let step = 0; step < 60; step++) w -= (w + Math.log(w) - right) / (1 + 1 / w);
  return 1 / (a * w - A / B) ** 2;
}

test('the turbulent factor is the closed form of Colebrook-White by the Lambert function', () => {
  fc.assert(
    fc.property(reynolds, roughness, (re, relative) => {
      expect(Math.abs(darcyFactor(re, relative) / closedForm(re, relative) - 1)).toBeLessThan(1e-10);
    }),
    SEED,
  );
});

test('Haaland stays within 1.4 % and Swamee-Jain within 3.4 % of Colebrook-White from Re 4000 to a million', () => {
  fc.assert(
    fc.property(between(4000, 1e6), roughness, (re, relative) => {
      const factor = darcyFactor(re, relative);
      expect(Math.abs(haaland(re, relative) / factor - 1)).toBeLessThan(0.014);
      expect(Math.abs(swameeJain(re, relative) / factor - 1)).toBeLessThan(0.034);
    }),
    SEED,
  );
});

test('the factor is 64/Re in laminar flow and has no step at either end of the cubic', () => {
  expect(darcyFactor(1000, 0.001)).toBe(0.064);
  for (const relative of [0, 1e-5, 1e-3, 0.03]) {
    for (const join of [LAMINAR_TO, TURBULENT_FROM]) {
      const [before, after] = [darcyFactor(join - 1e-6, relative), darcyFactor(join + 1e-6, relative)];
      expect(Math.abs(after / before - 1)).toBeLessThan(1e-8);
      const [steepBefore, steepAfter] = [
        before - darcyFactor(join - 1, relative),
        darcyFactor(join + 1, relative) - after,
      ];
      expect(Math.abs(steepAfter - steepBefore)).toBeLessThan(1e-7);
    }
  }
});

test('head grows with flow, from a trickle through every regime', () => {
  fc.assert(
    fc.property(between(1e-7, 4e-3), between(1.0001, 1.5), between(0, 2e-4), (flow, more, height) => {
      const at = (q: number) => darcyHead({ ...pipe, flow: q, roughness: height });
      expect(at(flow * more)).toBeGreaterThan(at(flow));
    }),
    SEED,
  );
});

test('head grows in proportion to length and falls with a wider bore, by either formula', () => {
  fc.assert(
    fc.property(
      between(1e-5, 3e-3),
      between(1, 300),
      between(0.015, 0.08),
      between(1.001, 1.5),
      (flow, length, bore, wider) => {
        for (const head of [
          (L: number, d: number) => darcyHead({ ...pipe, flow, length: L, insideDiameter: d }),
          (L: number, d: number) => hazenWilliamsHead({ flow, length: L, insideDiameter: d, coefficient: 140 }),
        ]) {
          expect(head(2 * length, bore) / head(length, bore)).toBeCloseTo(2, 12);
          expect(head(length, bore * wider)).toBeLessThan(head(length, bore));
        }
      },
    ),
    SEED,
  );
});

// Illinois Administrative Code, Title 77, Part 906, Appendix A, Exhibit I, C = 150: ft per 100 ft, two decimals. The
// entries above 1 ft; the smaller ones are rounded coarser than the formula is wrong.
// prettier-ignore
test.each([
  [5, 1.049, 1.52], [10, 1.049, 5.5], [10, 1.38, 1.46], [20, 1.38, 5.23], [20, 1.61, 2.46], [30, 1.61, 5.22],
  [30, 2.067, 1.54], [50, 2.067, 3.98],
])('%d gpm in %d in plastic loses %d ft in 100 ft, as the Illinois code tables', (flow, bore, tabled) => {
  const head = toFeet(hazenWilliamsHead({ flow: gpm(flow), length: feet(100), insideDiameter: inches(bore), coefficient: 150 }));
  expect(Math.abs(head - tabled)).toBeLessThanOrEqual(0.01 * tabled);
});

test('an insert fitting loses more the narrower it is, and nothing at full bore', () => {
  expect(insertFittingLoss(1)).toBe(0);
  for (let ratio = 0.99; ratio > 0.4; ratio -= 0.01)
    expect(insertFittingLoss(ratio)).toBeGreaterThan(insertFittingLoss(ratio + 0.01));
});

test('no flow loses no head, and flow without meaning is refused by name', () => {
  expect(darcyHead({ ...pipe, flow: 0 })).toBe(0);
  expect(() => darcyHead({ ...pipe, flow: -1 })).toThrow('darcyHead: flow is -1');
  expect(() => darcyHead({ ...pipe, insideDiameter: 0 })).toThrow(RangeError);
  expect(() => darcyFactor(NaN, 0)).toThrow(RangeError);
  expect(() => hazenWilliamsHead({ flow: 1, length: 1, insideDiameter: 1, coefficient: 0 })).toThrow('coefficient');
});

test('a rough wall counts by its height against the bore', () => {
  // Galvanized steel, 0.15 mm in 1 in: e/d is 0.0056, and the loss more than half over that of a smooth wall.
  const rough = { ...pipe, roughness: 1.5e-4 };
  const velocity = velocityIn(pipe.flow, pipe.insideDiameter);
  const factor = darcyFactor(reynoldsNumber(pipe), 1.5e-4 / pipe.insideDiameter);
  expect(darcyHead(rough)).toBeCloseTo(
    (factor * (pipe.length / pipe.insideDiameter) * velocity ** 2) / (2 * 9.80665),
    12,
  );
  expect(darcyHead(rough) / darcyHead(pipe)).toBeGreaterThan(1.3);
});
