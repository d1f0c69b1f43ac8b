/** What air blew out of a whole hole flows in only where the hole is drawn down: a pump that hangs high is not counted on for it. */
import { describe, expect, test } from 'vitest';
import { withValue } from '../../../src/model/plan/editPlan.ts';
import { openYield } from '../../../src/model/rules/openFacts.ts';
import { solve } from '../../../src/model/solve.ts';
import { toGpm } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';

/** 365 ft of rock, water at 34 ft, 6 gpm blown with air. */
const hungAt = (setting: string, probe?: string) =>
  solve(
    rockWell({
      well: {
        depth: '365 ft',
        casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '18 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
        yield: '6 gpm',
        yieldFrom: 'air lift',
      },
      water: { staticLevel: '34 ft', pumping: { kind: 'yield only' } },
      house: { demand: '8 gpm', people: 4, distance: '60 ft', rise: '5 ft', tank: '44 gal' },
      pump: {
        setting,
        power: '1-1/2 hp',
        curve: { kind: 'generic', flow: '10 gpm' },
        ...(probe === undefined ? {} : { lowLevelCutOff: probe }),
      },
    }),
  );
const sure = (setting: string, probe?: string) => toGpm(openYield(hungAt(setting, probe))?.bad ?? NaN);

describe('at its worst the well gives', () => {
  // Common practice, no source: half of what was blown, where the pump draws the water down by two thirds of what stands
  // in the hole (331 ft); in proportion where it reaches less.
  test('half to a pump that hangs deep', () => {
    expect(sure('300 ft')).toBeCloseTo(3, 6);
    expect(sure('340 ft')).toBeCloseTo(3, 6);
  });

  test('less to one that hangs high', () => {
    expect(sure('154 ft')).toBeCloseTo((3 * 120) / ((331 * 2) / 3), 2);
    expect(sure('60 ft')).toBeCloseTo((3 * 26) / ((331 * 2) / 3), 2);
  });

  test('as little where a probe ends the fall as high', () => {
    expect(sure('300 ft', '154 ft')).toBeCloseTo(sure('154 ft'), 6);
  });
});

test('whether its store carries a peak is not known before the pump is', () => {
  const plan = withValue(hungAt('300 ft', '298 ft').plan, 'pump.power', undefined);
  const found = solve(plan).findings.find(({ rule }) => rule === 'PR-55');
  expect(found).toMatchObject({ variant: 'peakUnsure', severity: 'note' });
});
