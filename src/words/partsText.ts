/** The parts list as plain text, for a message or a terminal: a line for each thing, one for each sentence about it. */
import type { PartLine } from '../model/parts/partLine.ts';
import type { Show } from '../model/units.ts';
import type { PartsListWords } from './en/partsList.ts';
import { partsGroups, type PartsOrder } from './partsGroups.ts';
import { sayPart, type SaidPart } from './sayParts.ts';

interface Listed {
  /** Of the plan. */
  readonly title: string | undefined;
  /** In the order in which they are told. */
  readonly lines: readonly PartLine[];
  readonly by: PartsOrder;
}

export function partsText({ title, lines, by }: Listed, words: PartsListWords, show: Show): string {
  const body = partsGroups(lines, by, words).flatMap((group) => [
    '',
    group.title,
    ...group.lines.flatMap((line) => {
      const said = sayPart(line, words, show);
      const at = by === 'depth' && said.depth !== '' ? `${said.depth}: ` : '';
      return [`${at}${said.count} × ${partSentence(said)}`, ...sentences(said.note).map((each) => `    ${each}`)];
    }),
  ]);
  const head = `${words.title}${title === undefined ? '' : `: ${title}`}`;
  return [head, ...body, '', ...sentences(words.caution)].join('\n') + '\n';
}

/** "Insert fitting, barb for 1 in pipe; 1 in outer thread (NPT), stainless steel; cut to 3 ft, buy 6 ft" */
export function partSentence({ name, size, material, cut, buy, assumed }: SaidPart): string {
  const what = [size, material].filter((each) => each !== '').join(', ');
  const lengths = [cut, buy].filter((each) => each !== '').join(', ');
  return `${name}${what === '' ? '' : `, ${what}`}${lengths === '' ? '' : `; ${lengths}`}${assumed === '' ? '' : ` (${assumed})`}`;
}

/** A message breaks its lines itself, wherever it is read: a sentence is never parted here. */
function sentences(text: string): readonly string[] {
  const each = text.split(/\. (?=[\p{Lu}\d])/u);
  return each.map((sentence, i) => (i < each.length - 1 ? `${sentence}.` : sentence));
}
