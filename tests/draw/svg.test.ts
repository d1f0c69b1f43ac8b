import { Resvg } from '@resvg/resvg-js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { draw, LETTER, toSvg, type View } from '../../src/draw/index.ts';
import { digits } from '../../src/draw/shapes.ts';
import { escape } from '../../src/draw/svg.ts';
import { inFace } from './type/inFace.ts';
import { solve } from '../../src/model/index.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';
import { flat, picture, SHEET } from './pictures.ts';

const VIEWS: readonly Partial<View>[] = [
  {},
  { theme: 'dark', units: 'metric' },
  { theme: 'print', caption: true },
  { theme: 'print', caption: true, paper: LETTER },
  { theme: 'contrast' },
  { sheet: 'section', width: 320, height: 560 },
  { sheet: 'top', width: 390, height: 500 },
  { sheet: 'pump', width: 390, height: 500 },
  { sheet: { at: 2 }, width: 400, height: 400 },
  { width: 760, height: 700 },
];

describe.each(SAMPLES)('%s as SVG', (name) => {
  const plan = planOf(sample(name));

  test.each(VIEWS)('is read by a strict reader and the same twice: %j', (view) => {
    const svg = toSvg(picture(plan, view).scene);
    expect(toSvg(picture(plan, view).scene)).toBe(svg);
    expect(() => new Resvg(svg, { font: { loadSystemFonts: false } })).not.toThrow();
  });

  test.each(VIEWS)('holds nothing that leaks into a page or is refused by one: %j', (view) => {
    const svg = toSvg(picture(plan, view).scene);
    const tags = new Set([...svg.matchAll(/<([a-zA-Z]+)/g)].map(([, tag]) => tag));
    for (const tag of tags)
      expect(['svg', 'g', 'path', 'rect', 'line', 'circle', 'text', 'tspan', 'title', 'desc']).toContain(tag);
    expect(svg).not.toMatch(/ (id|class|style|href|xlink:href|filter|mask|clip-path|onload)=/);
    expect(svg).not.toMatch(/url\(|NaN|Infinity|undefined|null/);
  });

  test('section and details together stay under 60 kB, on a wide sheet within a twentieth of it', () => {
    expect(toSvg(picture(plan).scene).length).toBeLessThan(60_000);
    expect(toSvg(picture(plan, { width: 1400, height: 1000 }).scene).length).toBeLessThan(63_000);
  });

  test.each(VIEWS)('every sign is in the drawing’s own face: %j', (view) => {
    for (const { shape } of flat(picture(plan, view).scene.shapes))
      if (shape.text !== undefined) expect(inFace(shape.text), shape.text).toBe(true);
  });

  test.each([760, 1000, 1400, 1900])('hatching all together stays under 25 kB at %d px', (width) => {
    const { scene } = picture(plan, { width, height: 1000 });
    const hatching = flat(scene.shapes).filter(
      ({ shape }) => shape.tag === 'path' && shape.attrs['stroke-opacity'] !== undefined,
    );
    expect(hatching.length).toBeGreaterThan(0);
    expect(hatching.reduce((sum, { shape }) => sum + (shape.d ?? '').length, 0)).toBeLessThan(25_000);
  });

  test('keys are words, unique among their siblings', () => {
    const { scene } = picture(plan);
    const siblings = [
      scene.shapes,
      ...flat(scene.shapes).flatMap(({ shape }) => (shape.children === undefined ? [] : [shape.children])),
    ];
    for (const keys of siblings.map((shapes) => shapes.map((shape) => shape.key)))
      expect(new Set(keys).size, keys.join(', ')).toBe(keys.length);
  });
});

test('any plan whatever makes a picture that a strict reader takes', () => {
  fc.assert(
    fc.property(anyPlan, fc.constantFrom(...VIEWS), (plan, view) => {
      const svg = toSvg(draw(solve(plan), { ...SHEET, ...view }));
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(() => new Resvg(svg, { font: { loadSystemFonts: false } })).not.toThrow();
    }),
    { seed: 11, numRuns: 120 },
  );
});

test('a stranger’s title is text and nothing else', () => {
  const title = '<script>alert("1")</script> & \u0000 \uD800 co.';
  const svg = toSvg(picture({ ...rockWell(), title } as ReturnType<typeof rockWell>).scene);
  expect(svg).not.toContain('<script>');
  expect(svg).toContain('&lt;script&gt;');
  expect(() => new Resvg(svg, { font: { loadSystemFonts: false } })).not.toThrow();
});

test('numbers have two decimals at most and no negative zero', () => {
  expect([0, -0.001, 12, 12.5, 12.345, -3.999, 0.05, 1234.567].map(digits)).toEqual([
    '0',
    '0',
    '12',
    '12.5',
    '12.35',
    '-4',
    '0.05',
    '1234.57',
  ]);
  fc.assert(
    fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
      expect(Math.abs(Number(digits(value)) - value)).toBeLessThanOrEqual(0.005 + 1e-9);
      expect(digits(value)).toMatch(/^-?\d+(\.\d{1,2})?$/);
    }),
    { seed: 5 },
  );
});

test('signs that XML 1.0 forbids are replaced', () => {
  expect(escape('a\u0008b\uFFFFc')).toBe('a\uFFFDb\uFFFDc');
  expect(escape('<a href="x">&</a>')).toBe('&lt;a href=&quot;x&quot;&gt;&amp;&lt;/a&gt;');
});

test('title and description come first and tell depth, levels and dangers', () => {
  const svg = toSvg(picture(rockWell({ site: { frostDepth: '72 in' } })).scene);
  expect(svg).toMatch(/^<svg [^>]*><title>[^<]+<\/title><desc>[^<]+<\/desc>/);
  const desc = /<desc>([^<]*)<\/desc>/.exec(svg)?.[1] ?? '';
  for (const words of ['Static water level 40 ft', 'Pump intake 140 ft', 'well bottom 200 ft', 'Danger'])
    expect(desc).toContain(words);
});
