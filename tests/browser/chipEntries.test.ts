import { expect, test } from 'vitest';
import { createChipEntries } from '../../src/app/drawing/chipEntries.ts';
import type { HeardLevel } from '../../src/app/drawing/heardLevels.svelte.ts';
import { draw } from '../../src/draw/index.ts';
import type { Scene } from '../../src/draw/view.ts';
import { handlesOf, type Handle } from '../../src/model/handles.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import { solve } from '../../src/model/solve.ts';
import { en } from '../../src/words/en/index.ts';
import { nameLevel } from '../../src/words/sayLevel.ts';
import rock from '../../static/samples/tamarack-ridge.json';

const reading = readPlan(rock);
if (!reading.ok) throw new Error('the sample does not read');
const well = solve(reading.plan);
const scene = draw(well, { sheet: 'all', width: 1000, height: 900, units: 'us', theme: 'light' });

/** Made anew, as by every solution. */
const levels = (change: (handle: Handle) => Partial<Handle> = () => ({})): HeardLevel[] =>
  handlesOf(well).map((handle) => ({
    handle: { ...handle, ...change(handle) },
    words: nameLevel(handle.label, en.short),
  }));

const copied = (dy: number, of: string): Scene => ({
  ...scene,
  chips: scene.chips.map((chip) => ({ ...chip, y: chip.y + (chip.handle === of ? dy : 0) })),
});

test('equal levels in new objects leave every chip as it stands', () => {
  const entriesOf = createChipEntries();
  const before = entriesOf(levels(), scene);
  const after = entriesOf(levels(), copied(0, 'pumpSetting'));
  expect(before.length).toBeGreaterThan(3);
  expect(after.every((entry, i) => entry === before[i])).toBe(true);
});

test('of a chip that moved, the others stand', () => {
  const entriesOf = createChipEntries();
  const before = entriesOf(levels(), scene);
  const after = entriesOf(levels(), copied(-4, 'pumpSetting'));
  expect(after.filter((entry, i) => entry !== before[i]).map(({ handle }) => handle.id)).toEqual(['pumpSetting']);
});

test('a level that says the same and has other limits is not the level it was', () => {
  const entriesOf = createChipEntries();
  entriesOf(levels(), scene);
  const max = 12.5;
  const after = entriesOf(
    levels(({ id }) => (id === 'pumpSetting' ? { max } : {})),
    scene,
  );
  expect(after.find(({ handle }) => handle.id === 'pumpSetting')?.handle.max).toBe(max);
});

test('chips come in the order of the levels, wherever they stand', () => {
  const entriesOf = createChipEntries();
  const ids = entriesOf(levels(), { ...scene, chips: [...scene.chips].reverse() }).map(({ handle }) => handle.id);
  expect(ids).toEqual(
    handlesOf(well)
      .map(({ id }) => id)
      .filter((id) => scene.chips.some((chip) => chip.handle === id)),
  );
});
