import { describe, expect, test } from 'vitest';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { drawWellTop } from '../../../src/draw/details/wellTop.ts';
import type { DetailScene } from '../../../src/draw/view.ts';
import type { PartKind } from '../../../src/model/solution.ts';
import { frame, well, WELLS } from './wells.ts';

const BODIES: readonly PartKind[] = [
  'pump',
  'motor',
  'intake',
  'checkValve',
  'insertFitting',
  'pitlessAdapter',
  'seal',
];

/** Two pixels of a sign may lie over an edge, and four of its top: that is round, or comes to a point. */
const TOUCH = 2;
const POINT = 4;

function covered({ marks, hits }: DetailScene): string[] {
  return marks.flatMap(({ number, x, y, size }) =>
    hits
      .filter(({ kind }) => BODIES.includes(kind))
      .filter((part) => {
        const across = Math.min(part.x + part.width, x + size / 2) - Math.max(part.x, x - size / 2);
        const down = Math.min(part.y + part.height, y + size / 2) - Math.max(part.y, y - size / 2 + POINT - TOUCH);
        return across > TOUCH && down > TOUCH;
      })
      .map(({ part }) => `${number} on ${part}`),
  );
}

const MANY_FINDINGS = {
  'pump.setting': '217 ft',
  'string.checkValves': [],
  'string.torqueArrestor': 'none',
  'string.fittings': 'galvanized steel',
  'dropPipe.rating': '160 psi',
  'pump.power': '2 hp',
  rope: undefined,
};

describe('signs stand beside the parts that they speak of, not on them', () => {
  test.each(WELLS)('%s', (name) => {
    const solution = well(name);
    expect(covered(drawWellTop(solution, frame('A')))).toEqual([]);
    expect(covered(drawPumpEnd(solution, frame('B')))).toEqual([]);
  });

  test('where many meet at one pump', () => {
    const solution = well('tamarack-ridge', MANY_FINDINGS);
    const scene = drawPumpEnd(solution, frame('B', { width: 366, height: 402 }));
    expect(scene.marks.length).toBeGreaterThan(4);
    expect(covered(scene)).toEqual([]);
  });

  test('and in a casing too narrow for the pump, whose own sign stands outside it', () => {
    const solution = well('tamarack-ridge', {
      'well.casing': { material: 'steel', size: '2 in', bottom: '12 ft', height: '18 in' },
      'well.intake': { kind: 'driven point', diameter: '2 in', top: '12 ft', bottom: '15 ft' },
      'well.depth': '15 ft',
      'well.inflows': undefined,
      'well.layers': undefined,
      'well.groutBottom': undefined,
      'water.staticLevel': '6 ft',
      'water.pumping': { kind: 'test', flow: '5 gpm', drawdown: '2 ft', after: '1 h' },
      'top.depth': '3 ft',
      'pump.setting': '10 ft',
    });
    const scene = drawPumpEnd(solution, frame('B', { width: 366, height: 402 }));
    expect(scene.marks.length).toBeGreaterThan(4);
    expect(covered(scene)).toEqual([]);
    const number = solution.findings.findIndex(({ part }) => part === 'casing') + 1;
    const sign = scene.marks.find((mark) => mark.number === number)!;
    // Placed is its right wall: the sign stands left even of the left one.
    const wall = scene.hits.find(({ part }) => part === 'casing')!;
    const pipe = scene.hits.find(({ kind }) => kind === 'dropPipe')!;
    expect(sign.x + sign.size / 2).toBeLessThan(2 * (pipe.x + pipe.width / 2) - wall.x);
  });
});

// It is wrong where it passes the cap, so that is where its sign stands.
test('the sign of a rope that leaves through the cap stands by its knot over the cap', () => {
  const solution = well('tamarack-ridge', { 'rope.tied': 'through cap' });
  const scene = drawWellTop(solution, frame('A'));
  const number = solution.findings.findIndex(({ part }) => part === 'rope') + 1;
  expect(number).toBeGreaterThan(0);
  const cap = scene.hits.find(({ kind }) => kind === 'cap')!;
  const sign = scene.marks.find((mark) => mark.number === number)!;
  expect(sign.y).toBeLessThan(cap.y + cap.height / 2);
});
