import { describe, expect, test } from 'vitest';
import { readFacts } from '../../../src/model/plan/readFacts.ts';
import { isOpenRock } from '../../../src/model/rules/openRock.ts';
import { changed, judged, verdictOf } from './fixture.ts';

const screenIn = (upper: string, bottom: string, lower: string) => ({
  'well.inflows': undefined,
  'well.casing.bottom': '150 ft',
  'well.intake': { kind: 'screen', diameter: '5 in', screens: [{ top: '150 ft', bottom: '170 ft' }] },
  'well.layers': [
    { material: upper, bottom },
    { material: lower, bottom: '200 ft' },
  ],
});
const openRock = (changes: object) => isOpenRock(readFacts(changed(changes as Record<string, unknown>)).facts);

describe('a perforated liner', () => {
  test('in granite is open rock, the same pipe in sand a screen', () => {
    expect(openRock(screenIn('clay', '40 ft', 'granite'))).toBe(true);
    expect(openRock(screenIn('clay', '40 ft', 'sand'))).toBe(false);
  });

  test('partly in gravel is a screen, and so is one of which nobody told the ground', () => {
    expect(openRock(screenIn('gravel', '151 ft', 'granite'))).toBe(false);
    expect(openRock({ ...screenIn('clay', '40 ft', 'granite'), 'well.layers': undefined })).toBe(false);
  });

  test('lets the pump hang among its openings, but not on the bottom', () => {
    const among = { ...screenIn('clay', '40 ft', 'granite'), 'pump.setting': '165 ft' };
    expect(verdictOf('PR-03', among)).toBe('not judged');
    expect(verdictOf('PR-03', { ...among, 'well.layers': undefined })).toBe('warning');
    const end = judged(among).bands.find(({ setting }) => setting === 'pump.setting')!.toEnd;
    expect(end.rule).toBe('PR-01');
  });
});
