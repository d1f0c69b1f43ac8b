/** Every material that a plan may name is known whole: what is asked of a pipe or casing finds an answer, whichever it is. */
import { describe, expect, test } from 'vitest';
import { readPlan, solve, type Plan } from '../../../src/model/index.ts';
import { FIFTY_YEARS, modulusOfPipe, thermalChange } from '../../../src/model/formulas/stretch.ts';
import { sheetsOf } from '../../../src/model/sheets/index.ts';
import { casingSizes } from '../../../src/model/tables/casings.ts';
import { PIPE_MATERIALS } from '../../../src/model/tables/pipeMaterials.ts';
import { classesOfSize, findPipe, pipeSizes, pipeStandards } from '../../../src/model/tables/pipes.ts';
import { rockWell } from '../../plans/build.ts';
import { jsonSchema } from '../../../src/model/plan/jsonSchema.ts';

const MATERIALS = Object.keys(PIPE_MATERIALS) as (keyof typeof PIPE_MATERIALS)[];

function enumIn(node: unknown, holds: string): readonly string[] | null {
  if (typeof node !== 'object' || node === null) return null;
  if ('enum' in node && Array.isArray(node.enum) && node.enum.includes(holds)) return node.enum as string[];
  for (const each of Object.values(node)) {
    const found = enumIn(each, holds);
    if (found !== null) return found;
  }
  return null;
}

test('a plan may name the materials that the table has, and no others', () => {
  expect(enumIn(jsonSchema(), 'PE')).toEqual(MATERIALS);
});

describe.each(MATERIALS)('%s', (material) => {
  const pipes = pipeStandards(material).flatMap((standard) =>
    pipeSizes(standard).flatMap((size) =>
      classesOfSize(standard, size).map((ratio) => ({
        material,
        standard,
        size,
        ratio: ratio.replace(/^schedule /, ''),
      })),
    ),
  );

  test('has pipe of some standard, and all of it has a wall, a mass and a modulus', () => {
    expect(pipes.length).toBeGreaterThan(3);
    for (const query of pipes) {
      const pipe = findPipe(query)!;
      expect(pipe.massPerLength).toBeGreaterThan(0);
      expect(modulusOfPipe(pipe, FIFTY_YEARS)).toBeGreaterThan(0);
      expect(thermalChange({ material, length: 30, change: 10 })).toBeGreaterThan(0);
    }
  });

  test('hung and buried it is solved, and no sheet refuses it', () => {
    for (const standard of pipeStandards(material)) {
      const size = pipeSizes(standard)[1]!;
      const plan: Plan = rockWell({
        dropPipe: { material, standard, size },
        house: { demand: '7 gpm', distance: '120 ft', rise: '10 ft', line: { material, standard, size } },
      });
      expect(readPlan(plan).ok).toBe(true);
      const solution = solve(plan);
      expect(solution.values.dropPipeToCut).toBeGreaterThan(0);
      expect(sheetsOf(solution).length).toBeGreaterThan(0);
    }
  });
});

test.each(['steel', 'PVC', 'stainless steel', 'concrete', 'other'] as const)('a casing of %s is solved', (material) => {
  const size = casingSizes(material)[0] ?? '6 in';
  const casing = { material, size, bottom: '60 ft', height: '12 in', insideDiameter: '24 in' };
  expect(() =>
    solve(rockWell({ well: { depth: '300 ft', casing, intake: { kind: 'open hole', diameter: '6 in' } } })),
  ).not.toThrow();
});
