/** Fields that a plan carries and that no figure or rule reads yet: they are kept, and listed. */
import type { Plan } from './schema.ts';

export function notUsed({ well }: Plan): string[] {
  return well.tested === undefined ? [] : ['well.tested'];
}
