/** What stands in the house, where the line from the well arrives: above no depth of the well and in no hole. */
import type { PartKind } from '../solution.ts';

export const HOUSE_KINDS = [
  'riser',
  'tankTee',
  'gauge',
  'switch',
  'reliefValve',
  'reliefPipe',
  'drain',
  'shutOff',
  'tank',
  'float',
  'disconnect',
  'controlBox',
  'drive',
] as const satisfies readonly PartKind[];

export type HouseKind = (typeof HOUSE_KINDS)[number];

const KINDS: ReadonlySet<PartKind> = new Set(HOUSE_KINDS);

export function isInHouse(kind: PartKind): kind is HouseKind {
  return KINDS.has(kind);
}
