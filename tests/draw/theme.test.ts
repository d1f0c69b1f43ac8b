import { describe, expect, test } from 'vitest';
import { THEMES, type Ink } from '../../src/draw/theme.ts';
import { contrast, sixDigits, deltaE2000, labOf, lineariseds, seenBy, VISIONS } from './colour.ts';

const SCREENS = ['light', 'dark'] as const;

function fillsOf(ink: Ink): string[] {
  return [
    ink.paper,
    ink.panel,
    sixDigits(ink.tones.water),
    ink.frostFill,
    ...Object.values(ink.ground).map((ground) => ground.fill),
  ];
}

// W3C, Web Content Accessibility Guidelines 2.2, criterion 1.4.3 (text 4.5:1) and 1.4.11 (needed graphics 3:1).
describe.each([...SCREENS, 'contrast', 'contrast-dark'] as const)('contrast in the %s theme', (name) => {
  const ink = THEMES[name];
  test.each(['ink', 'ink2'] as const)('text in %s has 4.5:1 on every fill', (key) => {
    for (const fill of fillsOf(ink)) expect(contrast(ink[key], fill), `${key} on ${fill}`).toBeGreaterThanOrEqual(4.5);
  });
  test.each([
    'hair',
    'static',
    'pumping',
    'frost',
    'casing',
    'dropPipe',
    'wire',
    'rope',
    'pump',
    'danger',
    'note',
    'allowed',
  ] as const)('lines in %s have 3:1 on every fill', (key) => {
    for (const fill of fillsOf(ink)) expect(contrast(ink[key], fill), `${key} on ${fill}`).toBeGreaterThanOrEqual(3);
  });
  test('numbers on the signs have 4.5:1', () => {
    expect(contrast(ink.onDanger, ink.danger)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(ink.onWarning, ink.warning)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(ink.note, ink.paper)).toBeGreaterThanOrEqual(4.5);
  });
  test('what the water weighs reads: the allowed band is named in its own ink on paper', () => {
    expect(contrast(ink.allowed, ink.paper)).toBeGreaterThanOrEqual(4.5);
  });
});

const SETS: Readonly<Record<string, readonly (keyof Ink)[]>> = {
  levels: ['static', 'pumping', 'frost', 'ink'],
  parts: ['casing', 'dropPipe', 'wire', 'rope', 'pump'],
  severity: ['danger', 'warning', 'note'],
};

describe.each(SCREENS)('inks of one set stay apart in the %s theme', (name) => {
  const ink = THEMES[name];
  test.each(VISIONS)('for %s vision by 12 or more in CIEDE2000', (vision) => {
    for (const [set, keys] of Object.entries(SETS)) {
      keys.forEach((a, i) =>
        keys.slice(i + 1).forEach((b) => {
          const distance = deltaE2000(labOf(seenBy(vision, ink[a] as string)), labOf(seenBy(vision, ink[b] as string)));
          expect(distance, `${set}: ${a} and ${b}`).toBeGreaterThanOrEqual(12);
        }),
      );
    }
  });
});

// Fills up to an eighth of black keep fine hatching and small text readable on an office printer: common practice, no source.
test('the print theme is black and greys, and no ground, water or body is darker than 12 %', () => {
  const { ground, frostFill, tones } = THEMES.print;
  const { water, grout, gravel, bore, steel, rubber, pump } = tones;
  const fills = [water, frostFill, grout.fill, gravel.fill, bore, ...Object.values(ground).map((each) => each.fill)];
  for (const body of [steel, rubber, pump]) fills.push(body.light, body.base, body.shade, body.shadow);
  for (const fill of fills.map(sixDigits)) {
    const [r, g, b] = [1, 3, 5].map((at) => parseInt(fill.slice(at, at + 2), 16)) as [number, number, number];
    expect(r === g && g === b, fill).toBe(true);
    expect(1 - r / 255, fill).toBeLessThanOrEqual(0.12);
  }
});

// Sharma, Wu & Dalal (2005), The CIEDE2000 color-difference formula, Color Research & Application 30, table 1:
// pairs 1, 4, 7, 17 and 25; from memory.
test.each([
  [[50, 2.6772, -79.7751], [50, 0, -82.7485], 2.0425],
  [[50, -1.3802, -84.2814], [50, 0, -82.7485], 1.0],
  [[50, 0, 0], [50, -1, 2], 2.3669],
  [[50, 2.5, 0], [73, 25, -18], 27.1492],
  [[60.2574, -34.0099, 36.2677], [60.4626, -34.1751, 39.4387], 1.2644],
] as const)('the colour distance of %j and %j is %d, as printed', (a, b, printed) => {
  expect(deltaE2000(a, b)).toBeCloseTo(printed, 4);
});

test('white is 21 times as light as black', () => {
  expect(contrast('#FFFFFF', '#000000')).toBeCloseTo(21, 9);
  expect(lineariseds('#FFFFFF')).toEqual([1, 1, 1]);
});
