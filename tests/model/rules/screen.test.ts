import { expect, test } from 'vitest';
import { ENTRANCE_VELOCITY } from '../../../src/model/rules/screen.ts';
import { pumpSheet } from '../../../src/model/sheets/pumpSheet.ts';
import { solve } from '../../../src/model/solve.ts';
import { toGpm } from '../../../src/model/units.ts';
import { changed } from './fixture.ts';

/** Two screens of unlike openings; 8 % and 2 % open, 5 and 15 ft long. */
const plan = changed({
  'well.inflows': undefined,
  'well.casing.bottom': '150 ft',
  'well.intake': {
    kind: 'screen',
    diameter: '5 in',
    screens: [
      { top: '150 ft', bottom: '155 ft', openArea: '8 %' },
      { top: '160 ft', bottom: '175 ft', openArea: '2 %' },
    ],
  },
});

test('the rule and the pump sheet tell one velocity, over half of the open area of all screens', () => {
  const solution = solve(plan);
  const told = [...solution.findings, ...solution.holding].find(({ rule }) => rule === 'PR-37')!;
  const { measured, flow } = told.numbers as { readonly measured: number; readonly flow: number };
  const sheet = pumpSheet(solution, 'us').figures.find(({ key }) => key === 'screenVelocity');
  expect(sheet?.value).toBe(measured);
  // Continuity: pi x 5 in x (5 ft x 8 % + 15 ft x 2 %) / 2 is 0.4581 ft2; 448.83 gpm are 1 ft3/s.
  const open = (Math.PI * (5 / 12) * (5 * 0.08 + 15 * 0.02)) / 2;
  expect(measured / (ENTRANCE_VELOCITY / 0.1)).toBeCloseTo(toGpm(flow) / 448.83 / open, 4);
});

const asked = (intake: Record<string, unknown>) =>
  solve(changed({ 'well.inflows': undefined, 'well.casing.bottom': '150 ft', 'well.intake': intake })).notJudged.find(
    ({ rule }) => rule === 'PR-37',
  );
const screens = [
  { top: '150 ft', bottom: '155 ft', openArea: '8 %' },
  { top: '160 ft', bottom: '175 ft' },
];

test('the open area is asked for at the screen that does not say it, and the width where that is unknown too', () => {
  const second = 'well.intake.screens.1.openArea';
  expect(asked({ kind: 'screen', diameter: '5 in', screens })?.fields).toEqual([second]);
  expect(asked({ kind: 'screen', screens })?.fields).toEqual([second, 'well.intake.diameter']);
});

test('a screen whose open area is said is asked for its width alone', () => {
  const open = screens.map((screen) => ({ ...screen, openArea: '8 %' }));
  expect(asked({ kind: 'screen', screens: open })).toMatchObject({
    fact: 'screenWidth',
    fields: ['well.intake.diameter'],
  });
});
