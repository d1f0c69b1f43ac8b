/** Whatever text is handed over as a plan: an answer in sentences, or a plan that can be solved and drawn. */
import { expect, test } from 'vitest';
import { draw, toSvg } from '../../../src/draw/index.ts';
import { readPlanText, sayProblem } from '../../../src/model/plan/readPlan.ts';
import { solve } from '../../../src/model/solve.ts';
import { SHEET } from '../../draw/pictures.ts';
import { SAMPLES, sample } from '../../plans/build.ts';
import { groupsIn, hostile, seeded } from '../../plans/hostile.ts';

test('a thing that cannot be read as text is asked about, wherever it stands', () => {
  const mute = { toString: 'NaN ft', valueOf: 'NaN ft' };
  for (const name of SAMPLES) {
    const plan = JSON.stringify(sample(name));
    for (let place = 0; place < groupsIn(JSON.parse(plan)).length; place++) {
      const keys = Object.keys(groupsIn(JSON.parse(plan))[place] ?? {});
      for (const key of keys) {
        const json: unknown = JSON.parse(plan);
        Reflect.set(groupsIn(json)[place] ?? {}, key, mute);
        const reading = readPlanText(JSON.stringify(json));
        expect(reading.ok, `${name}: ${key}`).toBe(false);
      }
    }
  }
});

test('two thousand texts', () => {
  const plans = SAMPLES.map((name) => JSON.stringify(sample(name)));
  const random = seeded(1109);
  let [read, refused] = [0, 0];
  for (let i = 0; i < 2000; i++) {
    const text = hostile(plans, random);
    const reading = readPlanText(text);
    if (reading.ok) {
      read++;
      const drawn = toSvg(draw(solve(reading.plan), SHEET));
      expect(drawn, text).not.toMatch(/NaN|Infinity|undefined|<img|<script/);
    } else {
      refused++;
      expect(reading.problems.length, text).toBeGreaterThan(0);
      for (const problem of reading.problems) expect(sayProblem(problem), text).toMatch(/\S[.?]$/);
    }
  }
  // Both ways are tried often.
  expect(Math.min(read, refused)).toBeGreaterThan(150);
});
