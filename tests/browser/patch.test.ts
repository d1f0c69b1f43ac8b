import { describe, expect, test } from 'vitest';
import { createPatcher } from '../../src/app/drawing/patch.ts';
import { draw, toSvg } from '../../src/draw/index.ts';
import type { Scene, View } from '../../src/draw/view.ts';
import type { Shape } from '../../src/draw/scene.ts';
import { moveHandle } from '../../src/model/move.ts';
import { readPlan } from '../../src/model/plan/readPlan.ts';
import type { Plan } from '../../src/model/plan/schema.ts';
import { solve } from '../../src/model/solve.ts';
import rock from '../../static/samples/tamarack-ridge.json';
import warm from '../../static/samples/palo-amargo.json';

const VIEW: View = { sheet: 'all', width: 1000, height: 900, units: 'us', theme: 'light' };

function planOf(json: unknown): Plan {
  const reading = readPlan(json);
  if (!reading.ok) throw new Error('the sample does not read');
  return reading.plan;
}

function moved(plan: Plan, handle: string, metres: number): Plan {
  return moveHandle(plan, solve(plan), handle, metres).plan;
}

function emptySvg(): SVGSVGElement {
  return document.createElementNS('http://www.w3.org/2000/svg', 'svg');
}

/** An element and all in it, attribute order set aside, as nested arrays. */
function treeOf(element: Element): unknown {
  const attributes = [...element.attributes].map(({ name, value }) => `${name}=${value}`).sort();
  const text = [...element.childNodes]
    .filter((node) => node.nodeType === Node.TEXT_NODE)
    .map((node) => node.textContent)
    .join('');
  return [element.tagName, attributes, text, [...element.children].map(treeOf)];
}

function parsed(scene: Scene): unknown[] {
  const root = new DOMParser().parseFromString(toSvg(scene), 'image/svg+xml').documentElement;
  return [...root.children].filter(({ tagName }) => tagName !== 'title' && tagName !== 'desc').map(treeOf);
}

describe('the live drawing equals the exported one', () => {
  const plan = planOf(rock);
  const scenes: readonly (readonly [string, Scene])[] = [
    ['a rock well', draw(solve(plan), VIEW)],
    ['its pump moved', draw(solve(moved(plan, 'pumpSetting', 40)), VIEW)],
    ['its pump moved out of the water', draw(solve(moved(plan, 'pumpSetting', 10)), VIEW)],
    ['another well with a seal on top', draw(solve(planOf(warm)), VIEW)],
    ['the same in the dark and in metres', draw(solve(planOf(warm)), { ...VIEW, theme: 'dark', units: 'metric' })],
    ['a part lit', draw(solve(plan), { ...VIEW, lit: 'pump' })],
    ['the first again', draw(solve(plan), VIEW)],
  ];
  const svg = emptySvg();
  const patcher = createPatcher(svg);
  for (const [name, scene] of scenes) {
    test(`after a patch to ${name}`, () => {
      patcher.patch(scene.shapes);
      expect([...svg.children].map(treeOf)).toEqual(parsed(scene));
    });
  }
});

describe('a patch touches only what changed', () => {
  const shape = (key: string, x: number, children?: readonly Shape[]): Shape => ({
    key,
    tag: children === undefined ? 'rect' : 'g',
    attrs: { x },
    ...(children === undefined ? {} : { children }),
  });

  async function changesOf(before: readonly Shape[], after: readonly Shape[]): Promise<MutationRecord[]> {
    const svg = emptySvg();
    const patcher = createPatcher(svg);
    patcher.patch(before);
    const observer = new MutationObserver(() => undefined);
    observer.observe(svg, { attributes: true, childList: true, characterData: true, subtree: true });
    patcher.patch(after);
    return observer.takeRecords();
  }

  test('equal shapes in new objects write nothing', async () => {
    expect(await changesOf([shape('a', 1), shape('b', 2)], [shape('a', 1), shape('b', 2)])).toHaveLength(0);
  });

  test('a number that writes as the same text writes nothing', async () => {
    expect(await changesOf([shape('a', 1)], [shape('a', 1.0001)])).toHaveLength(0);
  });

  test('one changed attribute deep inside is one write', async () => {
    const records = await changesOf(
      [shape('g', 0, [shape('a', 1), shape('b', 2)])],
      [shape('g', 0, [shape('a', 1), shape('b', 3)])],
    );
    expect(records.map(({ type, attributeName }) => [type, attributeName])).toEqual([['attributes', 'x']]);
  });

  test('a shape that left takes only its own element with it', async () => {
    const records = await changesOf([shape('a', 1), shape('b', 2), shape('c', 3)], [shape('a', 1), shape('c', 3)]);
    expect(records).toHaveLength(1);
    expect(records[0]!.removedNodes).toHaveLength(1);
  });

  test('order follows the list, and elements are kept when it turns', () => {
    const svg = emptySvg();
    const patcher = createPatcher(svg);
    patcher.patch([shape('a', 1), shape('b', 2), shape('c', 3)]);
    const [a, b, c] = svg.children;
    patcher.patch([shape('c', 3), shape('a', 1), shape('b', 2)]);
    expect([...svg.children]).toEqual([c, a, b]);
  });

  test('a key that changes its tag gets a new element', () => {
    const svg = emptySvg();
    const patcher = createPatcher(svg);
    patcher.patch([{ key: 'a', tag: 'rect', attrs: {} }]);
    patcher.patch([{ key: 'a', tag: 'circle', attrs: {} }]);
    expect(svg.children[0]!.tagName).toBe('circle');
  });

  test('text comes, changes and goes', () => {
    const svg = emptySvg();
    const patcher = createPatcher(svg);
    patcher.patch([{ key: 'a', tag: 'text', attrs: {}, text: '62 ft' }]);
    expect(svg.textContent).toBe('62 ft');
    patcher.patch([{ key: 'a', tag: 'text', attrs: {}, text: '<63> ft' }]);
    expect(svg.textContent).toBe('<63> ft');
    patcher.patch([{ key: 'a', tag: 'text', attrs: {} }]);
    expect(svg.textContent).toBe('');
  });
});
