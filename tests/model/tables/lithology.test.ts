/** Numbers and names: FGDC-STD-013-2006, section 37, lithologic patterns. Which word takes which: our own choice. */
import { expect, test } from 'vitest';
import { lithologicPattern } from '../../../src/model/tables/lithology.ts';

test.each([
  ['limestone', '627', 'Limestone'],
  ['chalk', '626', 'Chalk'],
  ['peat', '657', 'Peat'],
  ['schist', '705', 'Schist'],
  ['clay', '620', 'Clay or clay shale'],
])('%s is pattern %s, %s', (word, number, name) => {
  expect(lithologicPattern(word)).toEqual({ number, name });
});

test.each([
  ['Boulder clay, grey', '681'],
  ['sand and gravel', '601'],
  ['hard dolomitic limestone', '641'],
  ['SILTY CLAY', '619'],
  ['broken granite (ledge)', '719'],
])('the longest word wins: %s is %s', (material, number) => {
  expect(lithologicPattern(material)?.number).toBe(number);
});

test('bedrock alone is igneous rock, but never where the report says which rock', () => {
  expect(lithologicPattern('bedrock')?.number).toBe('721');
  expect(lithologicPattern('shale bedrock')?.number).toBe('620');
});

test('what is not in the list, part of a word, topsoil and fill have no pattern', () => {
  for (const material of ['', 'cheese', 'thousand', 'constructor', 'topsoil', 'fill']) {
    expect(lithologicPattern(material)).toBeNull();
  }
});
