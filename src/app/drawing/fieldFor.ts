/** Where the record takes what a level that cannot be dragged waits for. */
import type { Block } from '../../model/handleNames.ts';
import type { Handle } from '../../model/handles.ts';

/** Path of the field; null for a level that waits for nothing. */
export function fieldFor({ locked, path }: Pick<Handle, 'locked' | 'path'>): string | null {
  if (locked === null) return null;
  return FIELDS[locked] ?? path;
}

const FIELDS: Readonly<Partial<Record<Block, string>>> = {
  staticLevelNotKnown: 'water.staticLevel',
  followsFromAquifer: 'water.pumping.transmissivity',
  followsFromStepTest: 'water.pumping.steps',
  airLiftTellsNoDrawdown: 'water.pumping.kind',
};
