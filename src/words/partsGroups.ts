/** The lines of the parts list under their heads: by what they are for, or by where they stand. */
import type { PartLine } from '../model/parts/partLine.ts';
import type { PartsListWords } from './en/partsList.ts';

export type PartsOrder = 'kind' | 'depth';

export interface PartsGroup {
  readonly title: string;
  readonly lines: readonly PartLine[];
}

/** @param lines  as the model has put them in that order: what has no depth comes last, group by group */
export function partsGroups(lines: readonly PartLine[], by: PartsOrder, words: PartsListWords): readonly PartsGroup[] {
  const groups = new Map<string, PartLine[]>();
  for (const line of lines) {
    const title = by === 'depth' && line.depth !== null ? words.fromTop : words.groups[line.group];
    const group = groups.get(title);
    if (group === undefined) groups.set(title, [line]);
    else group.push(line);
  }
  return [...groups].map(([title, each]) => ({ title, lines: each }));
}
