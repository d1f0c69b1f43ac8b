/** docs/choosing-a-pump.md tells what the program chooses today (npm run choosing). */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { draw, toSvg } from '../../src/draw/index.ts';
import { choosePump } from '../../src/model/choose/choosePump.ts';
import { chooseTank } from '../../src/model/choose/chooseTank.ts';
import { choosing } from '../../src/model/choose/choosing.ts';
import { solve } from '../../src/model/index.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import { show } from '../../src/model/units.ts';
import { choose } from '../../src/words/en/choose.ts';
import { en } from '../../src/words/en/index.ts';
import { sayPumpRow } from '../../src/words/sayChoice.ts';
import { lowYield, rock, screened } from '../model/choose/jobs.ts';

const file = (name: string) => readFileSync(new URL(`../../docs/${name}`, import.meta.url), 'utf8');
/** As the page has them: cells padded or not. */
const plain = (text: string) => text.replaceAll(/\s+/g, ' ');
const page = plain(file('choosing-a-pump.md'));

test.each([
  ['rock-well', rock],
  ['low-yield-well', lowYield],
  ['screened-well', screened],
])('%s', (name, plan) => {
  expect(readPlan(JSON.parse(JSON.stringify(plan))).ok).toBe(true);
  const pumps = choosePump(plan);
  if (pumps.kind === 'refused') throw new Error('refused');
  const [best] = pumps.rows;
  if (best === undefined) throw new Error('no row');
  const cells = sayPumpRow(best, { ...en, choose }, show(plan.units ?? 'us'));
  const { does, flow, spare, left, range, depth, pipe, wire, tank } = cells;
  expect(page).toContain(`| ${[cells.name, does, flow, spare, left, range, depth, pipe, wire, tank].join(' | ')} |`);
  expect(page).toContain(cells.why);
  const withPump = choosing(plan, best).plan;
  const tanks = chooseTank(withPump);
  const size = tanks.kind === 'rows' ? tanks.rows[0] : undefined;
  if (size === undefined) throw new Error('no tank');
  const scene = draw(solve(choosing(withPump, size).plan), {
    sheet: 'all',
    width: 1040,
    height: 1000,
    units: plan.units ?? 'us',
    theme: 'light',
    caption: true,
  });
  expect(file(`choosing/${name}.svg`)).toBe(`${toSvg(scene)}\n`);
});
