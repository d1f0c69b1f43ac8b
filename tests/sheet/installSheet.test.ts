/** The sheet to work from: all of it is on it, and nothing that a stranger typed is markup. */
import { describe, expect, test } from 'vitest';
import { A4, LETTER } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { partsList } from '../../src/model/parts/partsList.ts';
import { orderOfWork } from '../../src/model/work/orderOfWork.ts';
import { installSheetHtml } from '../../src/sheet/installSheet.ts';
import { show } from '../../src/model/units.ts';
import { work } from '../../src/words/en/work.ts';
import { partsListWords } from '../../src/words/en/partsList.ts';
import { sayPart } from '../../src/words/sayParts.ts';
import { sayStep } from '../../src/words/sayWork.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';

const sheet = (plan: unknown, options = {}) => installSheetHtml(solve(planOf(plan)), options);
/** What a reader reads: without tags, entities as signs. */
const text = (html: string) =>
  html
    .replace(/<style>.*?<\/style>|<svg.*?<\/svg>/gs, ' ')
    .replace(/<[^>]*>/g, '\n')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');
const lines = (html: string) => text(html).split('\n');

describe.each(SAMPLES)('of %s', (name) => {
  const plan = planOf(sample(name));
  const solution = solve(plan);
  const html = installSheetHtml(solution);
  const units = show(solution.facts.units);

  test('every part, every step and every caution of a step is on it', () => {
    const list = partsList(solution);
    const done = orderOfWork(solution);
    if (list.kind === 'stop' || done.kind === 'stop') throw new Error('stopped');
    const read = text(html);
    for (const line of list.lines) expect(read).toContain(sayPart(line, partsListWords, units).note);
    for (const step of done.steps) {
      const { title, does, cautions } = sayStep(step, work, units);
      for (const words of [title, ...does, ...cautions]) expect(read).toContain(words);
    }
  });
  test('every open finding, what could not be checked and what is assumed is on it', () => {
    const read = lines(html);
    solution.findings.forEach((_, i) => expect(read.some((line) => line.startsWith(`${i + 1} `))).toBe(true));
    if (solution.notJudged.length > 0) expect(read).toContain('Could not be checked');
    if (solution.assumed.length > 0) expect(read).toContain('Assumed: check each before you buy');
  });
  test('tags open and close in pairs', () => {
    const open: string[] = [];
    for (const [, close, tag, own] of html.matchAll(/<(\/?)([a-z][a-zA-Z0-9]*)[^>]*?(\/?)>/g)) {
      if (own === '/' || tag === 'meta') continue;
      if (close === '') open.push(tag!);
      else expect(open.pop()).toBe(tag);
    }
    expect(open).toEqual([]);
  });
});

test('what a stranger typed is words, in the page, in its title and at its foot', () => {
  const html = sheet({
    ...rockWell(),
    title: '</style><script>alert(1)</script>"\\',
    place: '<img src=x onerror=alert(2)>',
  });
  expect(html).not.toMatch(/<script|<img/);
  expect(html.match(/<\/style>/g)).toHaveLength(html.match(/<style/g)!.length);
});

test('the drawing has a page of its own at its true size', () => {
  for (const paper of [LETTER, A4]) {
    const html = sheet(sample('tamarack-ridge'), { paper });
    expect(html).toContain(`@page drawing { size: ${paper.width}mm ${paper.height}mm; margin: 0;`);
    expect(html).toContain(`<svg`);
    expect(html.match(/width="([\d.]+)mm"/)?.[1]).toBe(String(paper.width));
  }
});

test('the short form keeps drawing, settings and findings, and leaves the rest', () => {
  const solution = solve(planOf(sample('tamarack-ridge')));
  const html = sheet(sample('tamarack-ridge'), { short: true });
  const read = lines(html);
  expect(read).toContain('Pump intake');
  expect(read).not.toContain('Order of the work');
  expect(text(html)).toContain(`${solution.assumed.length} values are assumed`);
  expect(html).toContain('<svg');
  // To the scale that it states: as wide on the page as it is drawn.
  expect(html).toContain(`width="${LETTER.width - 25.4}mm"`);
});

test('a date is printed where it is given, and no clock is read', () => {
  expect(text(sheet(sample('tamarack-ridge'), { date: '2026-05-03' }))).toContain('Date: 2026-05-03');
  expect(sheet(rockWell())).toBe(sheet(rockWell()));
});

test('of a flowing well it tells no parts and no steps, and who decides', () => {
  const plan = { ...rockWell(), water: { ...rockWell().water, staticLevel: '-2 ft' } };
  const read = text(sheet(plan));
  expect(read).toContain('licensed contractor');
  expect(read).not.toContain('Parts and lengths to cut');
});
