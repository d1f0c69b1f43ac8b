/** English, whole. A drawing takes `short` alone. */
import type { Words } from '../words.ts';
import { long } from './long.ts';
import { short } from './short.ts';

export const en: Words = { short, long };
