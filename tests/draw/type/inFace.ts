import { CHARACTERS } from '../../../src/draw/type/advances.ts';

const SIGNS: ReadonlySet<string> = new Set(CHARACTERS);

/** Does the drawing's face hold every sign of these words? What it lacks is drawn as a path. */
export const inFace = (words: string): boolean => [...words].every((sign) => SIGNS.has(sign));
