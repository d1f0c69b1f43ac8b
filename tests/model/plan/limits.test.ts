/** What is no plan is refused at once, in one sentence, however much of it there is. */
import { describe, expect, test } from 'vitest';
import { MOST_CHARACTERS, MOST_OF_ANYTHING, MOST_PROBLEMS } from '../../../src/model/plan/limits.ts';
import { textOfPlan } from '../../../src/files/textOfPlan.ts';
import { readPlan, readPlanText, sayProblem } from '../../../src/model/plan/readPlan.ts';
import { sample } from '../../plans/build.ts';

const plan = sample('tamarack-ridge') as unknown as Record<string, Record<string, unknown>>;
const refusedOf = (reading: ReturnType<typeof readPlan>): string[] =>
  reading.ok ? [] : reading.problems.map(sayProblem);
const many = (count: number) => Object.fromEntries(Array.from({ length: count }, (_, i) => [`name${i}`, i]));

describe('too much', () => {
  test('text', () => {
    const text = JSON.stringify(plan).replace('{', `{${' '.repeat(MOST_CHARACTERS)}`);
    expect(refusedOf(readPlanText(text))).toEqual([
      'the text is longer than 1,000,000 characters, and a plan is not; check that it is the right file.',
    ]);
  });

  test.each([
    ['names of a plan', many(MOST_OF_ANYTHING + 1), 'the plan holds 1,001 names'],
    ['names of a group', { ...plan, status: many(5000) }, 'status holds 5,000 names'],
    [
      'entries of a list',
      { ...plan, well: { ...plan['well'], layers: Array(2000).fill({}) } },
      'well.layers holds 2,000',
    ],
  ])('%s', (_, json, said) => {
    const [told, ...others] = refusedOf(readPlan(json));
    expect(told).toContain(said);
    expect(others).toEqual([]);
  });

  test('depth', () => {
    const deep = `${'{"a":'.repeat(100_000)}1${'}'.repeat(100_000)}`;
    expect(refusedOf(readPlanText(deep))).toEqual([expect.stringContaining('holds groups within groups, 20 deep')]);
    expect(refusedOf(readPlanText('['.repeat(900_000)))).toHaveLength(1);
  });

  test('that is wrong: the first fifty are told and the rest counted', () => {
    const reading = readPlan({ ...plan, ...many(900) });
    expect(reading).toMatchObject({ ok: false, more: 900 - MOST_PROBLEMS });
    expect(refusedOf(reading)).toHaveLength(MOST_PROBLEMS);
  });

  test('a little wrong leaves nothing to count', () => {
    expect(readPlan({ ...plan, colour: 'red' })).toMatchObject({ ok: false, more: 0 });
  });
});

describe('a name that stands twice', () => {
  test('is named with its line, however it is spelled', () => {
    const text = '{\n "format": "wellcut-plan/1",\n "title": "one",\n "tit\\u006ce": "two"\n}';
    expect(refusedOf(readPlanText(text))).toEqual([
      '"title" stands twice in one group, the second time in line 4; keep the one that is right.',
    ]);
  });

  test('in another group or as a value is no repeat', () => {
    const text = JSON.stringify({ ...plan, title: 'title', notes: 'a "title": in, {words}' });
    const reading = readPlanText(text);
    expect(reading.ok || refusedOf(reading).join()).not.toContain('twice');
  });
});

describe('bytes', () => {
  const text = JSON.stringify(plan);
  const wide = (littleEndian: boolean) => {
    const view = new DataView(new ArrayBuffer(2 * text.length + 2));
    [0xfeff, ...[...text].map((each) => each.charCodeAt(0))].forEach((code, i) =>
      view.setUint16(2 * i, code, littleEndian),
    );
    return new Uint8Array(view.buffer);
  };

  test.each([
    ['UTF-8', new TextEncoder().encode(text)],
    ['UTF-8 with a mark', new TextEncoder().encode(`\uFEFF${text}`)],
    ['UTF-16', wide(true)],
    ['UTF-16, the other way round', wide(false)],
  ])('%s', (_, bytes) => {
    const read = textOfPlan(bytes);
    expect(read.ok && readPlanText(read.text).ok).toBe(true);
  });

  test('of a picture, or of an old encoding', () => {
    for (const bytes of [
      [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a],
      [0x7b, 0x22, 0xe9, 0x22, 0x7d],
    ]) {
      const read = textOfPlan(new Uint8Array(bytes));
      expect(read.ok ? '' : sayProblem(read.problem)).toContain('save it as UTF-8');
    }
  });
});

describe('numbers that measure nothing', () => {
  const pumped = (drawdown: unknown) =>
    refusedOf(
      readPlan({ ...plan, water: { staticLevel: '40 ft', pumping: { kind: 'test', drawdown, flow: '10 gpm' } } }),
    );

  test.each(['1e-320 ft', '0.0000000000001 ft', '1e300 ft'])('%s', (drawdown) => {
    expect(pumped(drawdown).join()).toMatch(/smaller than anything measured|larger than anything measured/);
  });

  test('a bare one without end is not offered again with a unit', () => {
    const [said = ''] = pumped(JSON.parse('1e999'));
    expect(said).toContain('larger than anything measured');
    expect(said).not.toContain('Infinity ft');
  });
});
