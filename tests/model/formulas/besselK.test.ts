import { expect, test } from 'vitest';
import { besselK } from '../../../src/model/formulas/besselK.ts';

// Abramowitz & Stegun (1964), Table 9.8, columns exp(x) K0(x) and exp(x) K1(x), from memory to nine digits and checked
// against the integral 9.6.24 worked apart from this project.
test.each([
  [0.1, 2.682326102, 10.890182683],
  [1, 1.14446308, 1.636153486],
  [2, 0.841568215, 1.033476847],
  [5, 0.547807564, 0.600273859],
  [10, 0.391631934, 0.410766571],
])('K0(%d) and K1(%d) are as tabled by Abramowitz & Stegun', (x, order0, order1) => {
  const computed = besselK(x);
  expect(Math.abs(computed.order0 - order0)).toBeLessThan(1e-9 * 10);
  expect(Math.abs(computed.order1TimesX / x - order1)).toBeLessThan(1e-9 * 10);
});

test('both forms meet at their join', () => {
  const [below, above] = [besselK(2), besselK(2 * (1 + 1e-13))];
  expect(Math.abs(below.order0 / above.order0 - 1)).toBeLessThan(1e-12);
  expect(Math.abs(below.order1TimesX / above.order1TimesX - 1)).toBeLessThan(1e-12);
});

test('far out both tend to sqrt(pi/(2x)), where the functions themselves are under the least double', () => {
  const { order0, order1TimesX } = besselK(5000);
  const limit = Math.sqrt(Math.PI / 10000);
  expect(Math.abs(order0 / limit - 1)).toBeLessThan(1e-4);
  expect(Math.abs(order1TimesX / 5000 / limit - 1)).toBeLessThan(1e-4);
});

test('an argument without meaning is refused by name', () => {
  expect(() => besselK(0)).toThrow('x is 0');
});
