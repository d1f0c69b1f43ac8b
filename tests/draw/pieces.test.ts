/** Parts of a drawing that are left out, pale or ringed: all else stands where it stood. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createDrawer, draw, toSvg, type Pieces, type Scene, type View } from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { planOf, sample } from '../plans/build.ts';
import { flat, SHEET } from './pictures.ts';

const TAMARACK = solve(planOf(sample('tamarack-ridge')));
const PALO = solve(planOf(sample('palo-amargo')));
const shown = (pieces: Pieces, solution = TAMARACK, view: Partial<View> = {}): Scene =>
  draw(solution, { ...SHEET, ...view, pieces });
const written = ({ shapes }: Scene): Map<string, string> =>
  new Map(
    flat(shapes)
      .filter(({ shape }) => shape.children === undefined)
      .map(({ path, shape: { tag, d, attrs, text } }) => {
        // How pale it is is told elsewhere.
        const place = { ...attrs, opacity: 1 };
        return [path, JSON.stringify({ tag, d, place, text })];
      }),
  );
const keysOf = (scene: Scene): string[] => flat(scene.shapes).map(({ path }) => path);

describe('a part that is absent', () => {
  const scene = shown({ rope: 'absent', pump: 'absent', motor: 'absent', intake: 'absent', tie: 'absent' });

  test('is in no view, nor is its label, nor what the pointer would find of it', () => {
    const before = keysOf(shown({}));
    for (const part of ['rope', 'pumpBody', 'ties', 'motor']) {
      expect(
        before.some((path) => path.split(' > ').includes(part)),
        part,
      ).toBe(true);
      expect(
        keysOf(scene).some((path) => path.split(' > ').includes(part)),
        part,
      ).toBe(false);
    }
    expect(keysOf(scene).some((path) => path.includes('label') && path.endsWith('rope'))).toBe(false);
    expect(scene.hits.map(({ part }) => part)).not.toContain('pump');
  });

  test('by its own key leaves the others of its kind', () => {
    const one = keysOf(shown({ 'clamp/pump/1': 'absent' }));
    expect(one.some((path) => path.includes('clamp/pump/1'))).toBe(false);
    expect(one.some((path) => path.includes('clamp/pump/2'))).toBe(true);
  });

  test('of a kind that is absent, one is shown by its own key', () => {
    const rest = keysOf(shown({ clamp: 'absent', 'clamp/pump/2': 'lit' }));
    expect(rest.some((path) => path.includes('clamp/pump/1'))).toBe(false);
    expect(rest.some((path) => path.includes('clamp/pump/2'))).toBe(true);
  });
});

test('one sign that stands for several parts is there while one of them is', () => {
  expect(keysOf(shown({ pump: 'absent', intake: 'absent' })).some((path) => path.endsWith('string > pumpBody'))).toBe(
    true,
  );
});

test('pipe and wires go with what they lead to', () => {
  const none = Object.fromEntries(TAMARACK.parts.map(({ kind }) => [kind, 'absent' as const]));
  const left = (view: Partial<View>, group: string): string[] =>
    keysOf(shown(none, TAMARACK, view))
      .filter((path) => path.includes(`${group} > `))
      .map((path) => path.slice(path.indexOf(`${group} > `) + group.length + 3));
  expect(left({ sheet: 'house' }, 'atHouse')).toEqual(['floor/slab', 'floor/top', 'floor/foot']);
  expect(left({ sheet: 'section' }, 'house')).toEqual(['walls', 'roof']);
});

test('a ghost is pale, and whole', () => {
  const pale = flat(shown({ cap: 'ghosted' }).shapes).filter(({ shape }) => shape.attrs['opacity'] !== undefined);
  expect(pale.map(({ shape }) => shape.key)).toEqual(['cap', 'cap']);
  for (const { shape } of pale) expect(Number(shape.attrs['opacity'])).toBeLessThan(0.4);
});

test('several that are lit are ringed each by its own key', () => {
  const { shapes } = draw(TAMARACK, { ...SHEET, lit: ['pump', 'checkValve', 'pitlessAdapter'] });
  const rings = shapes.map(({ key }) => key).filter((key) => key.startsWith('lit/'));
  expect(rings.filter((key) => key.startsWith('lit/O'))).toHaveLength(2);
  expect(new Set(rings).size).toBe(rings.length);
  // The label of each is lit as well: it is drawn as for that one alone.
  const labels = (lit: View['lit']): string =>
    JSON.stringify(draw(TAMARACK, { ...SHEET, ...(lit === undefined ? {} : { lit }) }).details[1]?.scene.shapes);
  expect(labels(['checkValve', 'cap'])).toBe(labels('checkValve'));
  expect(labels(['checkValve', 'cap'])).not.toBe(labels(undefined));
});

test('what is lit is ringed in every view that shows it', () => {
  const rings = (scene: Scene): string[] => scene.shapes.map(({ key }) => key).filter((key) => key.startsWith('lit/'));
  expect(rings(shown({ pitlessAdapter: 'lit' }))).toEqual(['lit/O', 'lit/A']);
  expect(rings(shown({ seal: 'lit' }, PALO))).toEqual(['lit/O', 'lit/A']);
  expect(rings(shown({}))).toEqual([]);
  // A page that patches its drawing knows a shape by its key alone.
  const several = rings(shown({ conduit: 'lit', bond: 'lit', cap: 'lit' }, TAMARACK, { sheet: 'top' }));
  expect(several).toHaveLength(3);
  expect(new Set(several).size).toBe(3);
});

test('whatever is left out of any well, all else keeps its place to a tenth of a pixel', () => {
  const kinds = [
    'dropPipe',
    'cable',
    'rope',
    'pump',
    'motor',
    'tie',
    'clamp',
    'checkValve',
    'cap',
    'seal',
    'buriedLine',
  ];
  fc.assert(
    fc.property(
      anyPlan,
      fc.dictionary(fc.constantFrom(...kinds), fc.constantFrom('absent' as const, 'ghosted' as const)),
      (plan, pieces) => {
        const solution = solve(plan);
        const whole = shown({}, solution);
        const some = shown(pieces, solution);
        expect(some.frames).toEqual(whole.frames);
        expect(some.chips).toEqual(whole.chips);
        const before = written(whole);
        // Leaders and boxes of all labels are one path.
        for (const [path, text] of written(some))
          if (!/leaders|boxes|callouts|more|labels > assumed/.test(path)) expect(text, path).toBe(before.get(path));
      },
    ),
    { seed: 71, numRuns: 40 },
  );
});

test('a drawer that remembers shows what a fresh drawing shows', () => {
  const drawer = createDrawer();
  for (const pieces of [{}, { rope: 'absent' }, { rope: 'ghosted' }, { cable: 'absent' }, {}] as Pieces[]) {
    const view = { ...SHEET, pieces };
    expect(toSvg(drawer(TAMARACK, view))).toBe(toSvg(draw(TAMARACK, view)));
  }
});
