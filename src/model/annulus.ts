import type { Metres } from './si.ts';
import { inches } from './units.ts';

/**
 * Ring between a casing and the hole that was drilled for it, where no report tells the hole's width. Drawn alone: no figure
 * rests on it.
 *
 * Source  Administrative Rules of Montana 36.21.656(1)(a): the upper drill hole is 3 in wider than the casing. Codes ask for
 *         2 to 4 in (New York 10 NYCRR Appendix 5-B, Table 2).
 */
export const ANNULUS: Metres = inches(1.5);
