/** A dose that a kitchen measures is not told as a rounded gallon. */
import { expect, test } from 'vitest';
import { gallons, show } from '../../src/model/units.ts';
import { withArticle } from '../../src/words/en/phrases.ts';

// NIST Handbook 44, Appendix C: a gallon is 128 fluid ounces.
test.each([
  [0, '0 gal'],
  [0.0473, '6.1 fl oz'],
  [0.3, '38 fl oz'],
  [0.5, '0.5 gal'],
  [44, '44 gal'],
])('%f gal is told as %s', (volume, words) => {
  expect(show('us').volume(gallons(volume))).toBe(words);
});

test.each([
  [0.18, '180 mL'],
  [1.2, '1.2 L'],
  [160, '160 L'],
])('%f L is told as %s', (litres, words) => {
  expect(show('metric').volume(litres / 1000)).toBe(words);
});

test.each([
  'an 11.5 gpm',
  'an 8 gpm',
  'an 18 L/min',
  'an 80 L/min',
  'a 10 gpm',
  'a 1 gpm',
  'a 110 L/min',
  'a 180 L/min',
])('%s', (said) => {
  expect(withArticle(said.replace(/^an? /, ''))).toBe(said);
});
