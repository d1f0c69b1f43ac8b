/** The names that docs/check-json.md explains are the names that the report has, no more and no fewer. */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { reportOf } from '../../src/cli/checkCommand.ts';
import { choiceReport } from '../../src/cli/choiceReport.ts';
import { solve, withValue } from '../../src/model/index.ts';
import { rock } from '../model/choose/jobs.ts';
import { rockWell } from '../plans/build.ts';

const text = readFileSync(new URL('../../docs/check-json.md', import.meta.url), 'utf8');

/** Names in the first column of the table under a heading; a row may explain several. */
function named(heading: string): string[] {
  const [, after = ''] = text.split(`## ${heading}\n`);
  const [own = ''] = after.split('\n## ');
  return own
    .split('\n')
    .filter((line) => line.startsWith('| `'))
    .flatMap((line) => [...(line.split(' | ')[0] ?? '').matchAll(/`(\w+)`/g)].map(([, name]) => name ?? ''));
}

const report = reportOf(solve(rockWell({ top: { kind: 'pitless', depth: '2 ft' } })));

test('every figure is explained, in the order in which it is printed', () => {
  expect(named('Figures')).toEqual(Object.keys(report.values));
});

test('every field of a finding is explained', () => {
  expect(named('A finding')).toEqual(Object.keys(report.findings[0]!));
});

test('every field of a line of headroom, and of where it ends, is explained', () => {
  const line = report.headroom.lines[0]!;
  expect(named('How far it may go')).toEqual(Object.keys(line));
  const [, own = ''] = text.split('Of `warning` and `danger`:');
  for (const name of Object.keys(line.danger!)) expect(own).toContain(`\`${name}\``);
});

test('every field of the report is explained', () => {
  const [head = ''] = text.split('## A finding');
  const names = [...head.matchAll(/^\| `(\w+)`/gm)].map(([, name]) => name);
  expect(names).toEqual(Object.keys(report));
});

test('every figure says its unit', () => {
  const rows = text
    .split('## Figures')[1]!
    .split('\n## ')[0]!
    .split('\n')
    .filter((line) => line.startsWith('| `'));
  for (const row of rows) expect(row.split(' | ')[1]).toMatch(/^(m|m³|m³\/s|m²\/s|m\/s|Pa|N|s|1)$/);
});

test('every field of a pump to choose is explained', () => {
  const { pumps } = choiceReport(rock);
  const names = named('What to choose: `--choose`');
  expect(names.toSorted()).toEqual(['assumed', 'inTheWay', 'sand', ...Object.keys(pumps.rows[0]!)].toSorted());
});

test('what is said of a pump is what its changes come to, read back by the plan’s own reader', () => {
  const { pumps } = choiceReport(rock);
  const [best] = pumps.rows;
  const { pump, depth, pipe, wire } = best!.changes;
  const plan = [...pump, ...depth, ...pipe, ...wire].reduce(
    (made, { path, to }) => withValue(made, path, to ?? undefined),
    rock,
  );
  const { values, facts } = solve(plan);
  expect(values.hangLoadAtRest).toBe(best!.weightAtRest);
  expect(facts.pump.setting).toBe(best!.intakeDepth);
  expect(facts.pump.power).toBe(best!.power);
});
