/** Where a well is: kept as typed, and no figure or verdict rests on it. */
import { describe, expect, test } from 'vitest';
import { fieldAt } from '../../../src/model/plan/fields.ts';
import { readPlan, sayProblem, solve, type Plan } from '../../../src/model/index.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';

const PLACE = 'Old Mill Lane, lot 7';
const TURNED = `Mill\u202E enaL\u0007\n\u001B[2J lot 7`;

describe('in a plan', () => {
  test('is a text that may be left out, asked for beside the name', () => {
    expect(fieldAt('place')).toMatchObject({ kind: 'text', label: 'Where it is', required: false });
    expect(solve(rockWell()).facts.place).toBe('');
    expect(solve(rockWell({ place: PLACE })).facts.place).toBe(PLACE);
  });

  test('is kept to the letter, and may be as long as a name and no longer', () => {
    for (const place of ['', PLACE, TURNED, 'x'.repeat(4000)]) expect(rockWell({ place }).place).toBe(place);
    for (const field of ['title', 'place']) {
      const reading = readPlan({ ...sample('tamarack-ridge'), [field]: 'x'.repeat(4001) });
      expect(reading.ok ? [] : reading.problems.map(sayProblem)).toEqual([expect.stringMatching(`^${field} `)]);
    }
  });

  test.each([7, true, null, ['road'], { road: 'Mill Lane' }])('is refused by its name where it is %j', (place) => {
    const reading = readPlan({ ...sample('tamarack-ridge'), place });
    expect(reading.ok ? [] : reading.problems.map(sayProblem)).toEqual([expect.stringMatching(/^place /)]);
  });

  test.each(SAMPLES)('%s comes out the same with and without it', (name) => {
    const told = (plan: Plan) => {
      const { plan: typed, facts, ...rest } = solve(plan);
      const [{ place: ownPlace, ...others }, { place, ...same }] = [typed, facts];
      return { ...rest, others, same, places: [ownPlace ?? '', place] };
    };
    const plain = told(planOf(sample(name)));
    const placed = told(planOf({ ...sample(name), place: PLACE }));
    expect(placed.places).toEqual([PLACE, PLACE]);
    expect({ ...placed, places: [] }).toEqual({ ...plain, places: [] });
  });
});
