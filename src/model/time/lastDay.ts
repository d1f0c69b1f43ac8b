import type { Seconds } from '../si.ts';

/** Thirty days: the end of what is told. */
export const LAST_DAY: Seconds = 30 * 86400;
