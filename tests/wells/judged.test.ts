// Invented wells, built as common practice has it (no source): what the rules say of them as a whole.
import { describe, expect, test } from 'vitest';
import { BAD } from './bad.ts';
import { judgedBadWell, judgedSoundWell } from './judged.ts';
import { SOUND } from './sound.ts';

test('at least thirty sound wells and forty bad ones, in both unit systems', () => {
  expect(SOUND.length).toBeGreaterThanOrEqual(30);
  expect(BAD.length).toBeGreaterThanOrEqual(40);
  const units = ({ plan }: { readonly plan: unknown }) => (plan as { units?: string }).units ?? 'us';
  expect(new Set(SOUND.map(units))).toEqual(new Set(['us', 'metric']));
  expect(new Set(BAD.map(units))).toEqual(new Set(['us', 'metric']));
});

describe('a sound, ordinary well has no warning and at most one note', () => {
  test.each(SOUND)('$name', (well) => {
    const { shown, agrees } = judgedSoundWell(well);
    expect(agrees, shown).toBe(true);
  });
});

describe('a well with one thing wrong shows the rules that this breaks, and none besides', () => {
  test.each(BAD)('$name: $fault', (well) => {
    const { wanted, shown, agrees } = judgedBadWell(well);
    expect(agrees, `wanted ${wanted}; shown ${shown}`).toBe(true);
  });
});
