/** What the drawing shows at a step is what is built by then, whichever way one came there. */
import { describe, expect, test } from 'vitest';
import { solve, type Solution } from '../../../src/model/index.ts';
import { graphOf } from '../../../src/model/string/graph/graph.ts';
import { KINDS } from '../../../src/model/string/graph/kinds.ts';
import { atStep } from '../../../src/model/work/atStep.ts';
import { orderOfWork } from '../../../src/model/work/orderOfWork.ts';
import type { Kind, Step, StepId } from '../../../src/model/work/step.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';

const work = (solution: Solution, kind: Kind) => {
  const told = orderOfWork(solution, kind);
  if (told.kind === 'stop') throw new Error(`stopped: ${told.why}`);
  return told;
};
const STEEL = { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '21 ft' };
const WELLS: readonly (readonly [string, Solution])[] = [
  ...SAMPLES.map((name) => [name, solve(planOf(sample(name)))] as const),
  ['lengths of steel on a seal', solve(rockWell({ top: { kind: 'seal' }, dropPipe: STEEL }))],
  [
    'an open tank',
    solve(rockWell({ house: { kind: 'open tank', demand: '7 gpm', distance: '120 ft', rise: '10 ft' } })),
  ],
  [
    'a valve in place of a coupling',
    solve(rockWell({ dropPipe: STEEL, string: { checkValves: ['0 ft', '63 ft'], splices: ['80 ft'] } })),
  ],
];
const CASES = WELLS.flatMap(([name, solution]) =>
  (['new', 'replace'] as const).map((kind) => ({ name, solution, kind })),
);

const keysAt = (solution: Solution, kind: Kind, i: number, showing: 'lit' | 'ghosted'): readonly string[] => {
  const { pieces } = atStep(solution, work(solution, kind), i);
  return Object.keys(pieces).filter((key) => pieces[key] === showing);
};
const at = (solution: Solution, kind: Kind, id: StepId) => {
  const told = work(solution, kind);
  return atStep(
    solution,
    told,
    told.steps.findIndex((step) => step.id === id),
  );
};

describe.each(CASES)('$name, $kind', ({ solution, kind }) => {
  const { steps, there } = work(solution, kind);
  const each = (check: (step: Step, i: number) => void): void => steps.forEach(check);

  test('at the end nothing is pale', () => {
    expect(keysAt(solution, kind, steps.length - 1, 'ghosted')).toEqual([]);
  });

  test('what is lit is what the step puts on or is about', () => {
    const parts = new Map(graphOf(solution).pieces.map(({ key, part }) => [key, part]));
    const kinds = new Map<string, string>(solution.parts.map((part) => [part.key, part.kind]));
    each(({ puts, about }, i) => {
      const put = puts.map((key) => parts.get(key));
      for (const key of keysAt(solution, kind, i, 'lit'))
        expect(put.includes(key) || about.includes(key) || about.includes(kinds.get(key) ?? ''), key).toBe(true);
    });
  });

  test('all that a step puts on is lit where it is drawn by itself', () => {
    const drawn = new Set(solution.parts.map(({ key }) => key));
    each(({ puts }, i) => {
      const lit = keysAt(solution, kind, i, 'lit');
      expect(lit).toEqual(expect.arrayContaining(puts.filter((key) => drawn.has(key))));
    });
  });

  test('a part is pale until one of its pieces is there, and never again', () => {
    const pulled = steps.findIndex(({ id }) => id === 'pull');
    const own = (key: string): readonly string[] => {
      const part = solution.parts.find((other) => other.key === key);
      return graphOf(solution)
        .pieces.filter((piece) => piece.part === key && piece.kind === part?.kind)
        .map((piece) => piece.key);
    };
    const stepOf = new Map(steps.flatMap(({ puts }, i) => puts.map((key) => [key, i] as const)));
    each((_, i) => {
      if (i <= pulled) return;
      const pale = keysAt(solution, kind, i, 'ghosted');
      for (const { key } of solution.parts) {
        const pieces = own(key);
        if (pieces.length === 0) continue;
        const built = pieces.some((piece) => there.includes(piece) || (stepOf.get(piece) ?? Infinity) <= i);
        expect(pale.includes(key), `${key} at ${i + 1}`).toBe(!built);
      }
    });
  });

  test('what stands in the ground is never pale', () => {
    each((_, i) => {
      for (const key of keysAt(solution, kind, i, 'ghosted')) {
        const named = solution.parts.find((part) => part.key === key)?.kind ?? key;
        expect(KINDS[named as keyof typeof KINDS], named).not.toBeNull();
        expect(named).not.toBe('casing');
      }
    });
  });

  test('going back shows exactly what was before', () => {
    const told = work(solution, kind);
    const forth = steps.map((_, i) => JSON.stringify(atStep(solution, told, i)));
    const back = steps.map((_, i) => JSON.stringify(atStep(solution, told, steps.length - 1 - i)));
    expect(back.toReversed()).toEqual(forth);
  });
});

describe('step by step', () => {
  const tamarack = solve(planOf(sample('tamarack-ridge')));

  test('before the first step of a new well only ground, water and casing are there', () => {
    const pale = keysAt(tamarack, 'new', 0, 'ghosted');
    expect(tamarack.parts.filter(({ key }) => !pale.includes(key))).toEqual([]);
  });
  test('where the adapter is to come is sought before it is there', () => {
    expect(at(tamarack, 'new', 'trench')).toMatchObject({
      sought: 'pitlessAdapter',
      pieces: { pitlessAdapter: 'ghosted' },
    });
    expect(at(tamarack, 'new', 'adapterBody')).toMatchObject({ sought: null, pieces: { pitlessAdapter: 'lit' } });
  });
  test('the cable to the house is laid, and none hangs in the well yet', () => {
    expect(at(tamarack, 'new', 'conduit').pieces).toMatchObject({ conduit: 'lit', cable: 'ghosted' });
    expect(at(tamarack, 'new', 'leads').pieces['cable']).toBe('lit');
  });
  test('over a seal the cable to the house is laid beside one that hangs, and the conduit alone is lit', () => {
    const pieces = at(solve(planOf(sample('palo-amargo'))), 'new', 'conduit').pieces;
    expect(pieces).toMatchObject({ conduit: 'lit' });
    expect(pieces['cable']).toBeUndefined();
  });
  test('ties that this step puts on are lit, and not those that were there', () => {
    const probed = solve(planOf(sample('slate-hollow')));
    const told = work(probed, 'new');
    const i = told.steps.findIndex(({ key }) => key === 'lower/2');
    const lit = keysAt(probed, 'new', i, 'lit').filter((key) => key.startsWith('tie/'));
    expect(lit.length).toBeGreaterThan(0);
    expect([...lit].sort()).toEqual(told.steps[i]?.puts.filter((key) => key.startsWith('tie/')).toSorted());
  });
  test('an old string is there until it is pulled, its cap until it is opened', () => {
    expect(at(tamarack, 'replace', 'openTop').pieces).toEqual({ cap: 'lit' });
    expect(at(tamarack, 'replace', 'unseat').pieces).toMatchObject({ cap: 'ghosted', pitlessAdapter: 'lit' });
    expect(at(tamarack, 'replace', 'pull').pieces).toMatchObject({ cap: 'ghosted', dropPipe: 'lit' });
    expect(at(tamarack, 'replace', 'pull').pieces['pump']).toBeUndefined();
    const { pieces } = at(tamarack, 'replace', 'sound');
    expect(pieces).toMatchObject({ pump: 'ghosted', dropPipe: 'ghosted', cable: 'ghosted' });
    for (const key of ['buriedLine', 'conduit', 'tank']) expect(pieces[key], key).toBeUndefined();
  });
  test('tee and plug come off with the seal', () => {
    const sealed = solve(planOf(sample('palo-amargo')));
    expect(at(sealed, 'replace', 'unseat').pieces).toEqual({ seal: 'lit' });
    expect(at(sealed, 'replace', 'pull').pieces).toMatchObject({ seal: 'ghosted', tee: 'ghosted', plug: 'ghosted' });
  });
  test('a step that there is not throws', () => {
    expect(() => atStep(tamarack, work(tamarack, 'new'), 99)).toThrow('no step 99');
  });
});
