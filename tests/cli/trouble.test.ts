/** `wellcut trouble`, as a person and as a program read it. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test, vi } from 'vitest';
import { standing } from '../../src/cli/standing.ts';
import { troubleCommand } from '../../src/cli/troubleCommand.ts';
import { solve } from '../../src/model/index.ts';
import { SYMPTOMS } from '../../src/model/matter/symptom.ts';
import { troubleOf } from '../../src/model/matter/trouble.ts';
import { show } from '../../src/model/units.ts';
import { en } from '../../src/words/en/index.ts';
import { matter } from '../../src/words/en/matter.ts';
import { sayTrouble } from '../../src/words/sayMatter.ts';
import { troubleText } from '../../src/words/troubleText.ts';
import { planOf, sample, SAMPLES } from '../plans/build.ts';

const printed: string[] = [];
vi.mock('../../src/cli/print.ts', () => ({ print: (text: string) => printed.push(text) }));
beforeEach(() => printed.splice(0));

const folder = mkdtempSync(join(tmpdir(), 'wellcut-trouble-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function trouble(plan: unknown, ...options: string[]): { text: string; status: number } {
  const path = join(folder, 'plan.json');
  writeFileSync(path, JSON.stringify(plan));
  const status = troubleCommand([path, ...options]);
  return { text: printed.join(''), status };
}

test('without a symptom it lists them, a line each, with the name to ask by', () => {
  const { text, status } = trouble(sample('tamarack-ridge'));
  expect(status).toBe(0);
  const lines = text.trimEnd().split('\n');
  expect(lines.map((line) => line.split(' ')[0])).toEqual([...SYMPTOMS]);
  expect(lines[0]).toMatch(/^no-water {2,}No water at all\. No tap in the house gives water\.$/);
});

describe('with one', () => {
  test.each(SAMPLES)('%s: the text is that which the page hands out, after how the well stands', (name) => {
    const plan = planOf(sample(name));
    const solution = solve(plan);
    const said = sayTrouble(troubleOf(solution, 'air'), matter, en, show(plan.units ?? 'us'));
    expect(trouble(sample(name), '--symptom', 'air').text).toBe(
      `${standing(solution).join('\n')}\n${troubleText({ title: plan.title, said }, matter)}`,
    );
  });
  test('each cause says where, what the well says, what to look at, what it tells and what then', () => {
    const { text, status } = trouble(sample('tamarack-ridge'), '--symptom', 'no-water');
    expect(status).toBe(0);
    expect(text).toContain('\n1. The breaker has gone off\n  May be. Where: Disconnect.\n  ! Open no cover');
    for (const head of ['First', '  In this well', '  Look', '  What it tells', '  Then'])
      expect(text).toContain(`${head}:\n`);
    expect(text).toMatch(/\n {4}Solved: with the water \d+ ft lower, /);
  });
  test('a metric reader gets no feet and no pounds', () => {
    for (const symptom of SYMPTOMS) {
      printed.splice(0);
      const { text } = trouble({ ...sample('tamarack-ridge'), units: 'metric' }, '--symptom', symptom);
      expect(text).not.toMatch(/\d ft\b|\d lb\b|\d psi\b|\d gpm\b|\d gal\b/);
    }
  });
});

describe('for programs', () => {
  test('the symptoms by name', () => {
    const { symptoms } = JSON.parse(trouble(sample('tamarack-ridge'), '--json').text) as {
      symptoms: { symptom: string }[];
    };
    expect(symptoms.map(({ symptom }) => symptom)).toEqual([...SYMPTOMS]);
  });
  test('causes in SI, with the parts where each is looked for, and the words', () => {
    const report = JSON.parse(trouble(sample('tamarack-ridge'), '--symptom', 'freezes', '--json').text) as {
      symptom: string;
      causes: { id: string; parts: string[]; says: { id: string; numbers: object }[]; words: { title: string } }[];
    };
    expect(report.symptom).toBe('freezes');
    const adapter = report.causes.find(({ id }) => id === 'frostAtTop')!;
    expect(adapter.parts).toEqual(['pitlessAdapter']);
    expect(adapter.words.title).toBe('The top of the well is frozen');
    // 6 ft and 48 in, as the sample has them.
    expect(adapter.says).toEqual([
      {
        id: 'frostAt',
        numbers: { depth: expect.closeTo(1.8288, 6) as number, frost: expect.closeTo(1.2192, 6) as number },
      },
    ]);
  });
});

test('what cannot be asked is refused in a sentence that names what can', () => {
  expect(() => trouble(sample('tamarack-ridge'), '--symptom', 'dry')).toThrow(
    /^--symptom is "dry"; use no-water, weak-flow, .* or freezes$/,
  );
  expect(() => troubleCommand([])).toThrow('trouble needs one plan');
  expect(() => troubleCommand(['a.json', 'b.json'])).toThrow('trouble needs one plan');
});
