/** From what the lines say, one by one, to values for a plan: traps, and lines that tell of the same thing. */
import type { Facts } from './facts.ts';
import type { Aside, Reading } from './reading.ts';
import { Book } from './resolve/book.ts';
import { casingHeight, casings } from './resolve/casings.ts';
import { datum, depth } from './resolve/depth.ts';
import { grout, layers, zones } from './resolve/ground.ts';
import { intake } from './resolve/intake.ts';
import { staticLevel } from './resolve/levels.ts';
import { pitless, pump } from './resolve/pump.ts';
import { test } from './resolve/test.ts';
import { inReport } from './writer.ts';

export interface Resolved {
  readonly readings: readonly Reading[];
  readonly asides: readonly Aside[];
}

/** @param saysUnits  whether any line names a unit */
export function resolve(facts: Facts, units: 'us' | 'metric', saysUnits: boolean): Resolved {
  const book = new Book(facts, inReport(units, saysUnits));
  const height = casingHeight(book);
  datum(book);
  depth(book, height);
  casings(book, height);
  intake(book);
  layers(book);
  zones(book);
  grout(book);
  staticLevel(book, height);
  test(book);
  pump(book);
  for (const each of book.of('firstWater')) book.aside('firstWater', each.piece);
  for (const each of book.of('artesianFlow')) book.aside('artesianFlow', each.piece);
  pitless(book);
  for (const each of book.of('recommendedRate')) book.aside('recommendedRate', each.piece);
  return { readings: book.readings, asides: book.asides };
}
