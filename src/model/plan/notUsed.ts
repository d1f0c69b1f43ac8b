/** Fields that a plan carries and that no figure or rule reads yet: they are kept, and listed. */
import type { Plan } from './schema.ts';

export function notUsed({ well, water }: Plan): string[] {
  const paths: readonly (readonly [path: string, value: unknown])[] = [
    ['well.tested', well.tested],
    ['water.sand', water.sand],
    ['water.gas', water.gas],
  ];
  return paths.filter(([, value]) => value !== undefined).map(([path]) => path);
}
