import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { expect, test } from 'vitest';

const SRC = join(import.meta.dirname, '../../src');
/** Imports and exports of values: types are gone once it is built. */
const FROM = /^\s*(?:import|export)\s+(?!type\b)(?:[^;']*?\sfrom\s+)?'(\.[^']+)'/gm;

/** Every file of ours that is fetched with these, and what asks for it. */
function fetchedWith(...entries: readonly string[]): ReadonlyMap<string, string> {
  const askedBy = new Map<string, string>();
  const follow = (file: string, by: string): void => {
    if (askedBy.has(file)) return;
    askedBy.set(file, by);
    for (const [, path = ''] of readFileSync(join(SRC, file), 'utf8').matchAll(FROM))
      follow(relative(SRC, join(SRC, dirname(file), path)), file);
  };
  for (const entry of entries) follow(entry, 'the test');
  return askedBy;
}

/** "words/en/rules/tank.ts, for words/en/short.ts" */
function unwanted(fetched: ReadonlyMap<string, string>, where: RegExp): string[] {
  return [...fetched].filter(([file]) => where.test(file)).map(([file, by]) => `${file}, for ${by}`);
}

test('the folders that nothing is to be fetched from are there', () => {
  for (const folder of ['words/en/rules', 'words/en/brief', 'model/fixes/rules', 'model/sheets', 'model/explain'])
    expect(existsSync(join(SRC, folder)), folder).toBe(true);
});

test('a drawing is fetched without a rule, a fix, a reason or a sentence of one', () => {
  const fetched = fetchedWith('draw/index.ts');
  expect(fetched.has('words/en/brief/tank.ts')).toBe(true);
  expect(
    unwanted(
      fetched,
      /^words\/en\/(?:rules\/|long|parts|places)|^model\/(?:fixes|rules\/list|sheets|explain|choose|place)/,
    ),
  ).toEqual([]);
});

test('solving is fetched without words, fixes, sheets, or the winters that no estimate goes by', () => {
  const fetched = fetchedWith('model/solve.ts');
  expect(fetched.has('model/rules/tank.ts')).toBe(true);
  expect(unwanted(fetched, /^words|^model\/(?:fixes|sheets|explain|choose|place\/|tables\/freezingStations)/)).toEqual(
    [],
  );
});

test('a page that opens a kept well waits for no panel, no fix and no reason', () => {
  const fetched = fetchedWith('app/Desk.svelte', 'app/state/bench.ts');
  expect(fetched.has('app/drawing/Stage.svelte')).toBe(true);
  expect(
    unwanted(
      fetched,
      /^app\/panels\/(?:Panel|Find|fixes)|^words\/en\/(?:rules\/|long|parts|places)|^model\/fixes\/(?:rules|list)/,
    ),
  ).toEqual([]);
});
