/** A pumping test as it is typed: what stands in the cells, and what is kept of it. */
import { describe, expect, test } from 'vitest';
import { fitPumpingTest } from '../../src/model/aquifer/index.ts';
import { pastedPairs } from '../../src/app/pumpingTest/pasted.ts';
import { isFine, leftOut, numberIn, readingsOf } from '../../src/app/pumpingTest/readings.ts';
import { blankDraft, isBlank, readDraft, type TestDraft } from '../../src/app/pumpingTest/testDraft.ts';
import { publishedAnswer, publishedTest } from '../model/aquifer/published.ts';

const rows = (...pairs: readonly (readonly [string, string])[]) =>
  pairs.map(([time, drawdown], key) => ({ key, time, drawdown }));

describe('a cell', () => {
  test.each([
    ['0.28', 0.28],
    ['0,28', 0.28],
    [' 12 ', 12],
    ['.5', 0.5],
    ['-0.1', -0.1],
    ['1e2', 100],
    ['1,000.5', null],
    ['12 min', null],
    ['', null],
  ])('"%s" reads as %s', (typed, number) => expect(numberIn(typed)).toBe(number));

  test('an empty one is fine, a word is not', () => {
    expect(isFine('')).toBe(true);
    expect(isFine('about 3')).toBe(false);
  });
});

describe('pasted columns', () => {
  test.each([
    ['tabs and a heading', 'min\tft\n1\t0.5\n2\t0.8', 1],
    ['semicolons with decimal commas', '1;0,5\n2;0,8', 0],
    ['spaces', '1   0.5\n\n2 0.8\n', 0],
    ['commas', '1,0.5\r\n2,0.8', 0],
    ['commas and spaces', '1, 0.5\n2, 0.8\nend of test', 1],
  ])('%s', (_, text, skipped) => {
    const pasted = pastedPairs(text);
    expect(pasted?.skipped).toBe(skipped);
    expect(pasted?.pairs.map(({ time, drawdown }) => [numberIn(time), numberIn(drawdown)])).toEqual([
      [1, 0.5],
      [2, 0.8],
    ]);
  });

  test('text for one cell is left to it', () => {
    expect(pastedPairs('12.5')).toBeNull();
    expect(pastedPairs('one\ntwo')).toBeNull();
  });
});

describe('rows turned to readings', () => {
  test('in the units of their columns; half-filled rows are left out and counted', () => {
    const typed = rows(['1', '2'], ['3', ''], ['x', '1'], ['', '']);
    expect(readingsOf(typed, 'h', 'cm', null)).toEqual({ readings: [{ time: 3600, drawdown: 0.02 }] });
    expect(leftOut(typed)).toBe(2);
  });

  test('after the pump stopped they are the recovery, counted from the stop', () => {
    const read = readingsOf(rows(['30', '1'], ['60', '1.5'], ['70', '0.6']), 'min', 'm', 3600);
    expect(read.readings.map(({ time }) => time)).toEqual([1800, 3600]);
    expect(read.recovery).toEqual([{ sinceStop: 600, drawdown: 0.6 }]);
    expect(read.pumpedFor).toBe(3600);
  });

  /** Todd (1980), Groundwater Hydrology, 2nd ed., ch. 4, recovery test: T = 1140 m²/d by the line, read off a plot by eye. */
  test('a published recovery, typed as times since the start, gives what it gives as published', () => {
    const published = publishedTest('recovery');
    const ran = published.pumpedFor ?? 0;
    const typed = (published.recovery ?? []).map(
      ({ sinceStop, drawdown }) => [String((ran + sinceStop) / 60), String(drawdown)] as const,
    );
    const fit = fitPumpingTest({ ...published, ...readingsOf(rows(...typed), 'min', 'm', ran) });
    if ('reason' in fit) throw new Error(fit.reason);
    const { T_m2_per_d = 0 } = publishedAnswer('recovery', 'recovery_line');
    expect(((fit.recoveryLine?.transmissivity.value ?? 0) * 86400) / T_m2_per_d).toBeCloseTo(1, 1);
    expect(fit).toEqual(fitPumpingTest(published));
  });
});

describe('a draft', () => {
  const draft: TestDraft = { ...blankDraft('us'), flow: '10 gpm', ranFor: '4 h', rows: [{ time: '1', drawdown: '2' }] };

  test('comes back as it was typed, half-filled rows and all', () => {
    const half = { ...draft, rows: [...draft.rows, { time: '2', drawdown: '' }] };
    expect(readDraft(JSON.stringify(half))).toEqual(half);
  });

  test.each([
    ['nothing', null],
    ['no JSON', '{'],
    ['another thing', '[1]'],
    ['a unit that is none', JSON.stringify({ ...draft, timeUnit: 'week' })],
    ['a row that is none', JSON.stringify({ ...draft, rows: [{ time: 1 }] })],
    ['a missing field', JSON.stringify({ ...draft, flow: undefined })],
  ])('%s is no draft', (_, text) => expect(readDraft(text)).toBeNull());

  test('is blank until something is typed', () => {
    expect(isBlank(blankDraft('metric'))).toBe(true);
    expect(isBlank({ ...blankDraft('us'), rows: [{ time: ' ', drawdown: '' }] })).toBe(true);
    expect(isBlank(draft)).toBe(false);
  });
});
