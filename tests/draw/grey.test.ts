/** The same picture without its colours: what lies beside one another stays apart, by its tint or by a line between. */
import { Resvg } from '@resvg/resvg-js';
import { describe, expect, test } from 'vitest';
import { draw, toSvg, type View } from '../../src/draw/index.ts';
import { THEMES } from '../../src/draw/theme.ts';
import { solve } from '../../src/model/index.ts';
import { planOf, sample } from '../plans/build.ts';
import { contrast } from './colour.ts';

/**
 * Printed scales of grey show ten steps from white to black, and maps use five or six (Tyner, Principles of Map Design,
 * 2010, figure 4.4). Among light tints 1.25:1 is one of the ten: eight to nine of a hundred steps of CIE L*.
 */
const TINT = 1.25;
/** W3C, Web Content Accessibility Guidelines 2.2, criterion 1.4.11: graphics that are needed. */
const LINE = 3;

const TINTED = ['light', 'dark', 'print'] as const;
const tints = contrast;

describe.each(TINTED)('tints of the %s theme in grey', (theme) => {
  const ink = THEMES[theme];
  const tones = THEMES[theme].tones;
  const grounds = Object.entries(ink.ground).map(([name, { fill }]) => [name, fill] as const);

  test.each(grounds)('water and grout stand apart from %s, in the section and in the details', (_, fill) => {
    for (const each of [tones.water, tones.grout.fill])
      expect(tints(each, fill), `${each} on ${fill}`).toBeGreaterThanOrEqual(TINT);
  });

  test('water stands apart from the empty hole and from the air', () => {
    for (const empty of [tones.bore, tones.air]) expect(tints(tones.water, empty)).toBeGreaterThanOrEqual(TINT);
  });
});

describe.each(['light', 'dark'] as const)('walls of the %s theme in grey', (theme) => {
  const { casing } = THEMES[theme];
  const { metalWall, plasticWall, ...tones } = THEMES[theme].tones;
  test('stand apart from water, the empty hole and the grout', () => {
    for (const each of [tones.water, tones.bore, tones.grout.fill])
      expect(tints(casing, each)).toBeGreaterThanOrEqual(TINT);
    // A wall has an edge all round.
    for (const wall of [metalWall, plasticWall])
      for (const each of [tones.water, tones.bore, tones.grout.fill]) {
        const edge = Math.min(tints(wall.ink, each), tints(wall.ink, wall.fill));
        expect(tints(wall.fill, each) >= TINT || edge >= LINE, `${wall.fill} and ${each}`).toBe(true);
      }
  });
});

/** Pixels as relative luminance, twice as fine as the drawing; without words, since no face is loaded. */
function pixelsOf(view: View): {
  readonly at: (x: number, y: number) => number;
  readonly scene: ReturnType<typeof draw>;
} {
  const scene = draw(solution, view);
  const image = new Resvg(toSvg(scene), {
    fitTo: { mode: 'zoom', value: 2 },
    font: { loadSystemFonts: false },
  }).render();
  const { pixels, width } = image;
  const linear = (value: number): number => {
    const v = value / 255;
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
  };
  return {
    scene,
    at: (x, y) => {
      const i = 4 * (Math.round(y * 2) * width + Math.round(x * 2));
      const [r = 0, g = 0, b = 0] = [pixels[i], pixels[i + 1], pixels[i + 2]].map((each) => linear(each ?? 0));
      return 0.2126 * r + 0.7152 * g + 0.0722 * b;
    },
  };
}

const solution = solve(planOf(sample('tamarack-ridge')));
const ratio = (a: number, b: number): number => (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1] ?? NaN;

/**
 * Along scans from one area into the next: do their tints differ, or is there a line between that stands out from both?
 *
 * @param scans  luminances along each, a border in their middle
 */
function isTold(scans: readonly (readonly number[])[]): boolean {
  const ends = Math.max(2, Math.floor((scans[0]?.length ?? 0) / 5));
  const a = median(scans.flatMap((scan) => scan.slice(0, ends)));
  const b = median(scans.flatMap((scan) => scan.slice(-ends)));
  const hasLine = (scan: readonly number[]): boolean =>
    scan.some((each) => ratio(each, a) >= LINE && ratio(each, b) >= LINE);
  // Hatching crosses some scans by chance, a line of dashes half of them or more.
  return ratio(a, b) >= TINT || scans.filter(hasLine).length >= 0.5 * scans.length;
}

const half = 0.5;
const across = (at: (x: number, y: number) => number, x: number, reach: number, ys: readonly number[]): number[][] =>
  ys.map((y) => Array.from({ length: 4 * reach + 1 }, (_, i) => at(x - reach + i * half, y)));
const down = (at: (x: number, y: number) => number, y: number, reach: number, xs: readonly number[]): number[][] =>
  xs.map((x) => Array.from({ length: 4 * reach + 1 }, (_, i) => at(x, y - reach + i * half)));
const steps = (from: number, to: number, count: number): number[] =>
  Array.from({ length: count }, (_, i) => from + ((to - from) * (i + half)) / count);

describe.each(['light', 'dark', 'print', 'contrast', 'contrast-dark'] as const)(
  'in grey, the %s theme tells',
  (theme) => {
    const { at, scene } = pixelsOf({ sheet: 'section', width: 900, height: 1100, units: 'us', theme });
    const [frame] = scene.frames;
    if (frame === undefined) throw new Error('no section');
    const k = frame.height / (frame.bottomDepth - frame.topDepth);
    const y = (depth: number): number => frame.y + (depth - frame.topDepth) * k;
    const pump = scene.hits.find(({ kind }) => kind === 'pump');
    const [lined, open] = solution.bore;
    if (pump === undefined || lined === undefined || open === undefined)
      throw new Error('no pump, casing or open hole');
    const axis = pump.x + pump.width / 2;
    const x = (radius: number): number => axis + radius * k * frame.widthFactor;
    const { levels, facts } = solution;
    const bottom = facts.well.bottom;

    test('water from the rock beside it', () => {
      // The wall of an open hole is rough, and nothing hangs below the pump.
      const scans = across(at, x(open.outsideRadius), 9, steps(y(facts.pump.setting + 5), y(bottom - 1), 60));
      expect(isTold(scans)).toBe(true);
    });

    test('the casing from the air and the water within it, and from the grout round it', () => {
      for (const [from, to] of [
        [5, 15],
        [20, 27],
      ] as const) {
        const ys = steps(y(from), y(to), 40);
        expect(isTold(across(at, x(lined.insideRadius), 4, ys)), `within, ${from} to ${to} m`).toBe(true);
        expect(isTold(across(at, x(lined.outsideRadius), 4, ys)), `without, ${from} to ${to} m`).toBe(true);
      }
    });

    test('standing water from what was drawn down, and that from the air', () => {
      const xs = steps(x(-open.outsideRadius) + 2, x(open.outsideRadius) - 2, 90);
      for (const level of [levels.pumping ?? 0, levels.static ?? 0])
        expect(isTold(down(at, y(level), 7, xs)), `at ${level} m`).toBe(true);
    });
  },
);
