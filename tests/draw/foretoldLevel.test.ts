/** The water never falls below the intake: where a test foretells that, no label calls it the level that it takes. */
import { describe, expect, test } from 'vitest';
import { rockWell } from '../plans/build.ts';
import { picture, textBoxes } from './pictures.ts';

/** A test at 10 gpm drew the water to 160 ft; the pump is hung elsewhere. */
const hungAt = (setting: string) =>
  rockWell({
    water: { staticLevel: '40 ft', pumping: { kind: 'level', level: '160 ft', flow: '10 gpm' } },
    house: { demand: '10 gpm' },
    pump: { setting, power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
  });

const heard = (setting: string): string => {
  const { scene } = picture(hungAt(setting));
  return [...textBoxes(scene.shapes).map(({ words }) => words), scene.describe()].join(' | ').replaceAll('\u00A0', ' ');
};

describe('a pump hung above the level of the test', () => {
  test('is told that the water falls to its intake', () => {
    const words = heard('140 ft');
    expect(words).toContain('While pumping, the water falls to the intake.');
    expect(words).toContain('20 ft too high for 10 gpm');
    expect(words).toContain('where 10 gpm would draw it');
    expect(words).not.toMatch(/Pumping level 160 ft\.|above the water|drawdown at/);
  });

  test('and below it what the test says', () => {
    const words = heard('180 ft');
    expect(words).toContain('Pumping level 160 ft.');
    expect(words).toContain('120 ft drawdown at 10 gpm');
    expect(words).not.toMatch(/would draw|too high/);
  });
});
