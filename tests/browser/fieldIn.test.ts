/** A link to a field finds where the record takes it, opens what it is folded into, and never leads nowhere near. */
import { afterEach, beforeEach, expect, test } from 'vitest';
import { fieldFor } from '../../src/app/drawing/fieldFor.ts';
import { fieldIn } from '../../src/app/form/fieldIn.ts';

let form: HTMLElement;

beforeEach(() => {
  form = document.createElement('div');
  form.innerHTML = `
    <details id="site"><div data-path="site.frostDepth"><select class="status"></select><div class="entry"><input id="frost" /></div></div></details>
    <details id="well">
      <div data-path="well.casings.0.bottom"><div class="entry"><input id="casing" /></div></div>
      <button data-path="well.casings">Add: casing</button>
      <button id="inflow" data-path="well.inflows">Add: inflow</button>
    </details>
    <fieldset data-path="house.line"><button id="add">Add it</button></fieldset>
    <fieldset data-path="water.pumping"><div data-path="water.pumping.kind"><div class="entry"><select id="kind"></select></div></div></fieldset>`;
  document.body.append(form);
});
afterEach(() => form.remove());

test.each([
  ['site.frostDepth', 'frost'],
  ['well.casing.bottom', 'casing'],
  // A list with items shows them, an empty one the button that adds one.
  ['well.casings', 'casing'],
  ['well.inflows', 'inflow'],
  ['well.inflows.0.depth', 'inflow'],
  // A part that is not in the plan yet, and one that is.
  ['house.line.rating', 'add'],
  ['water.pumping', 'kind'],
  ['water.pumping.flow', 'kind'],
])('%s is taken by %s', (path, id) => {
  expect(fieldIn(form, path)?.id).toBe(id);
});

test('what it is folded into opens', () => {
  const fold = form.querySelector('details')!;
  expect(fold.open).toBe(false);
  fieldIn(form, 'site.frostDepth');
  expect(fold.open).toBe(true);
});

test('a field that nothing takes is no place', () => {
  expect(fieldIn(form, 'disinfection.strength')).toBeNull();
});

test('a level that cannot be dragged leads to what it waits for', () => {
  expect(fieldFor({ locked: 'notKnown', path: 'water.staticLevel' })).toBe('water.staticLevel');
  expect(fieldFor({ locked: 'staticLevelNotKnown', path: 'water.pumping.drawdown' })).toBe('water.staticLevel');
  expect(fieldFor({ locked: 'airLiftTellsNoDrawdown', path: 'water.pumping.drawdown' })).toBe('water.pumping.kind');
  expect(fieldFor({ locked: null, path: 'pump.setting' })).toBeNull();
});
