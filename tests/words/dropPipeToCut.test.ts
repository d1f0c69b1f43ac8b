/** Drawing, panel and report tell a person one length of drop pipe to cut. */
import { expect, test } from 'vitest';
import { lengthRows } from '../../src/app/panels/hangingRows.ts';
import { figureLines } from '../../src/cli/figureLines.ts';
import { lookOfLabel } from '../../src/draw/details/partLabels.ts';
import { solve, type Plan } from '../../src/model/index.ts';
import { feet, show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';

const plans: readonly (readonly [string, Plan])[] = [
  ...SAMPLES.map((name) => [name, planOf(sample(name))] as const),
  ['a valve in the pipe', rockWell({ string: { checkValves: ['0 ft', '60 ft'] } })],
];
test.each(plans)('the drawing, the panel and the report of %s tell the same', (_name, plan) => {
  const solution = solve(plan);
  const say = show(solution.facts.units);
  const told = say.length(solution.values.dropPipeToCut ?? NaN);
  const label = lookOfLabel('dropPipe', 'dropPipe')?.say(solution, en.short.partLabels, say, {
    key: 'dropPipe',
    part: undefined,
    shown: { top: 0, bottom: feet(10) },
  });
  expect(label?.note).toMatch(new RegExp(`cut ${told}$`));
  const row = lengthRows(solution).find(({ label: name }) => name === 'Drop pipe to cut');
  expect(row && say.length(solution.values[row.name] ?? NaN)).toBe(told);
  expect(figureLines(solution).find((line) => line.startsWith('Drop pipe to cut'))).toMatch(new RegExp(` {2}${told}$`));
});
test('and what hangs is named apart', () => {
  const solution = solve(rockWell());
  const lines = figureLines(solution).filter((line) => line.startsWith('Drop pipe'));
  expect(lines.map((line) => line.split(/ {2,}/)[0])).toEqual(['Drop pipe to cut', 'Drop pipe, hanging length']);
  expect(lengthRows(solution).map(({ name }) => name)).toContain('dropPipeCutLength');
});
