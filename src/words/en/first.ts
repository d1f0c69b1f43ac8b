/** English as a page needs it with its first drawing; reasons, sources and whole sentences come after it. */
import type { FirstWords } from '../words.ts';
import { findings } from './findings.ts';
import { long as levels } from './levels.ts';
import { short } from './short.ts';
import { sayWell } from './well.ts';

export const first: FirstWords = { short, long: { findings, levels, well: sayWell } };
