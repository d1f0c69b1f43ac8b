import { describe, expect, test } from 'vitest';
import { GLOSSARY, glossed } from '../../src/words/en/glossary.ts';
import { gradeOf } from './reading.ts';

describe('words of the trade', () => {
  test('each is told once, shortly, and at the eighth grade or lower', () => {
    const forms = GLOSSARY.flatMap((each) => each.forms.map((form) => form.toLowerCase()));
    expect(forms.filter((form, i) => forms.indexOf(form) !== i)).toEqual([]);
    expect(gradeOf(GLOSSARY.map(({ means }) => means))).toBeLessThanOrEqual(6);
    for (const { means } of GLOSSARY) {
      expect(means).toMatch(/\.$/);
      expect(means.split(/\s+/).length).toBeLessThanOrEqual(24);
    }
  });

  test('the longest form counts, each meaning once in a text, and nothing is lost of it', () => {
    const text =
      'The static water level is 62 ft; at rest the static level shows what the Yield was. A headache is none.';
    const pieces = glossed(text);
    expect(pieces.map((piece) => piece.text).join('')).toBe(text);
    expect(pieces.filter(({ means }) => means !== null).map((piece) => piece.text)).toEqual([
      'static water level',
      'Yield',
    ]);
  });

  test('a word with two meanings is told in neither', () => {
    for (const text of ['Read the gauge.', 'The motor’s head is wet.', 'Close the shut-off.'])
      expect(glossed(text).every(({ means }) => means === null)).toBe(true);
  });

  test.each(GLOSSARY.map(({ forms }) => forms[0] ?? ''))('“%s” is found in a sentence', (form) => {
    expect(glossed(`See the ${form}, here.`).some(({ text, means }) => text === form && means !== null)).toBe(true);
  });
});
