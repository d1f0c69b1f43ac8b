import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type PartKind, type PlacedPart, type Plan } from '../../../src/model/index.ts';
import { feet, inches, toFeet } from '../../../src/model/units.ts';
import { rockWell } from '../../plans/build.ts';
import { anyString } from './anyString.ts';

const KEPT_OFF: readonly PartKind[] = ['checkValve', 'insertFitting', 'clamp', 'torqueArrestor', 'splice', 'guard'];

const tiesOf = (plan: Plan): readonly PlacedPart[] => solve(plan).parts.filter(({ kind }) => kind === 'tie');
const middle = ({ top, bottom }: PlacedPart): number => (top + bottom) / 2;

/** Heights of the ties above the pump's discharge [ft], from the pump up. */
function heights(plan: Plan): number[] {
  const { values } = solve(plan);
  return tiesOf(plan).map((tie) => Number(toFeet((values.pumpDischargeDepth ?? NaN) - middle(tie)).toFixed(3)));
}

/** A tie at a tenth foot or other multiple that something else takes. */
const whereTaken: readonly (readonly [string, Record<string, unknown>, number])[] = [
  ['a valve in the pipe', { checkValves: ['0 ft', '50 ft'] }, 50],
  ['a guard', { guards: '40 ft' }, 40],
  ['the arrestor', { torqueArrestor: '10 ft' }, 10],
  ['a splice', { splices: ['20 ft'] }, 20],
];

describe('ties every ten feet', () => {
  test('stand at tens of feet where nothing is in the way', () => {
    const plan = rockWell({ string: { splices: [], torqueArrestor: 'none' } });
    expect(heights(plan)).toEqual([10, 20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 130]);
  });
  test.each(whereTaken)('lie across no %s', (_name, string, at) => {
    const plan = rockWell({ string: { splices: [], torqueArrestor: 'none', ...string } });
    const near = heights(plan).filter((height) => Math.abs(height - at) < 5);
    expect(near).not.toContain(at);
    expect(near.length).toBeGreaterThan(0);
    for (const height of near) expect(Math.abs(height - at)).toBeLessThanOrEqual(1);
  });
  test('one that finds no place within a foot is left out', () => {
    const string = { splices: [], torqueArrestor: '49 ft', checkValves: ['0 ft', '50 ft', '51 ft'] };
    expect(heights(rockWell({ string })).filter((height) => Math.abs(height - 50) < 5)).toEqual([]);
  });
});

test('in any string a tie lies on nothing and on no other tie, and within a foot of where it is planned', () => {
  fc.assert(
    fc.property(anyString, (plan) => {
      const { parts, facts, values } = solve(plan);
      const others = parts.filter(({ kind }) => KEPT_OFF.includes(kind));
      const ties = tiesOf(plan);
      const discharge = values.pumpDischargeDepth ?? NaN;
      for (const tie of ties) {
        const hit = [...others, ...ties.filter((other) => other !== tie)].filter(
          (part) => Math.min(part.bottom, tie.bottom) - Math.max(part.top, tie.top) > 1e-9,
        );
        expect(hit).toEqual([]);
        const height = discharge - middle(tie);
        const { ties: spacing, splices } = facts.string;
        const planned = [
          Math.max(Math.round(height / spacing), 1) * spacing,
          ...splices.flatMap((splice) => [splice - inches(6), splice + inches(6)]),
        ];
        expect(Math.min(...planned.map((each) => Math.abs(each - height)))).toBeLessThanOrEqual(feet(1) + 1e-9);
      }
    }),
    { numRuns: 400, seed: 8 },
  );
});
