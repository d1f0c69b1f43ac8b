/** Fields that a plan carries and that no figure or rule reads yet: they are kept, and listed. */
import type { Plan } from './schema.ts';

export function notUsed({ well, water, house }: Plan): string[] {
  const paths: readonly (readonly [path: string, value: unknown])[] = [
    ['well.tested', well.tested],
    ['water.pH', water.pH],
    ['water.conductivity', water.conductivity],
    ['water.sand', water.sand],
    ['water.gas', water.gas],
    ['house.fixtures', house.fixtures],
    ['house.people', house.people],
    ['house.stock', house.stock],
    ['house.irrigation', house.irrigation],
    ['house.branches', house.branches],
    ['house.kind', house.kind === 'pressure tank' ? undefined : house.kind],
    ['house.control', house.control === 'switch' ? undefined : house.control],
  ];
  return paths.filter(([, value]) => value !== undefined).map(([path]) => path);
}
