/** The arrow on a check valve points as the plan has it, wherever the valve is drawn. */
import { describe, expect, test } from 'vitest';
import type { View } from '../../src/draw/index.ts';
import { feet } from '../../src/model/units.ts';
import { rockWell } from '../plans/build.ts';
import { pathPoints } from './parts/extent.ts';
import { flat, picture } from './pictures.ts';

const VALVES = ['0 ft', '60 ft'];
/** Middle of the upper one, and of the one on the pump's nipple. */
const IN_PIPE = feet(140 - 1.5 - 60);
const AT_PUMP = feet(140 - 1.5) - 0.1;

const around = (depth: number, half: number) => ({ topDepth: depth - half, bottomDepth: depth + half });

const VIEWS: readonly (readonly [string, Partial<View>])[] = [
  ['all', { sheet: 'all' }],
  ['the section', { sheet: 'section' }],
  ['the section on a phone', { sheet: 'section', width: 390, height: 700 }],
  ['the section from 60 to 100 ft', { sheet: 'section', window: { topDepth: feet(60), bottomDepth: feet(100) } }],
  ['the section close to the valve in the pipe', { sheet: 'section', window: around(IN_PIPE, 2) }],
  ['the section close to the valve at the pump', { sheet: 'section', window: around(AT_PUMP, 2) }],
  ['the pump end', { sheet: 'pump', width: 520, height: 700 }],
  ['the close-up of the valve in the pipe', { sheet: { at: IN_PIPE }, width: 520, height: 700 }],
  ['the close-up of the valve at the pump', { sheet: { at: AT_PUMP }, width: 520, height: 700 }],
  ['print', { sheet: 'all', theme: 'print' }],
];

/** Which way an arrow points: at its tip one corner stands alone, at its other end there are two or more. */
function pointing(d: string): 'up' | 'down' | 'nowhere' {
  const points = [...new Map(pathPoints(d).map((point) => [point.join(' '), point])).values()];
  const ys = points.map(([, y]) => y);
  const count = (end: number) => points.filter(([, y]) => Math.abs(y - end) < 0.05).length;
  const [top, bottom] = [count(Math.min(...ys)), count(Math.max(...ys))];
  if (top === 1 && bottom > 1) return 'up';
  return bottom === 1 && top > 1 ? 'down' : 'nowhere';
}

function arrowsIn(arrow: 'up' | 'down', view: Partial<View>) {
  const { scene } = picture(rockWell({ string: { checkValves: VALVES, arrow } }), view);
  return flat(scene.shapes)
    .filter(({ path, shape }) => shape.key === 'arrow' && /checkValve(\/\d+)? > arrow$/.test(path))
    .map(({ shape }) => pointing(shape.d ?? ''));
}

describe.each(['up', 'down'] as const)('planned %s', (arrow) => {
  test.each(VIEWS)('it is drawn so in %s', (_, view) => {
    const arrows = arrowsIn(arrow, view);
    expect(arrows.length).toBeGreaterThan(0);
    for (const drawn of arrows) expect(drawn).toBe(arrow);
  });
});
