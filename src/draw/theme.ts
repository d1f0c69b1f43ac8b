/**
 * Inks of the themes. The first group is checked by a test that recomputes contrast on every fill and the
 * distance of colours under three kinds of colour blindness; fills and shades only help the eye along: what they say,
 * hatch, edge and words say too.
 */
import { dark } from './theme/dark.ts';
import { light } from './theme/light.ts';
import type { Ink } from './theme/ink.ts';
import { print } from './theme/print.ts';
import { twoInks } from './theme/twoInks.ts';
import type { View } from './view.ts';

export type { Cut, GroundInk, GroundName, Ink, Ramp, Tones } from './theme/ink.ts';

export const THEMES: Readonly<Record<View['theme'], Ink>> = {
  light,
  dark,
  print,
  contrast: twoInks('#fff', '#000'),
  'contrast-dark': twoInks('#000', '#fff'),
};

/** Strong contrast on a screen, either way round. */
export function isContrast(theme: View['theme']): boolean {
  return theme === 'contrast' || theme === 'contrast-dark';
}

/** Two tones: hatching is drawn whole, and what colour filled is outlined. */
export function isTwoTone(theme: View['theme']): boolean {
  return theme === 'print' || isContrast(theme);
}

/** Line widths in px: narrow for leaders, dimensions and hatch; wide for cut parts and levels; ground for its surface. */
export const LINE = { hatch: 0.7, narrow: 1, wide: 2, ground: 3.5 } as const;

/** Font sizes in px. */
export const TYPE = { small: 11, note: 12, label: 14, viewTitle: 16, title: 22 } as const;
