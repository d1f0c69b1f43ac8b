/** A line of the parts list in words. */
import type { BoughtEnd, PartLine } from '../model/parts/partLine.ts';
import type { Metres } from '../model/si.ts';
import { feet, wireName } from '../model/units.ts';
import type { Show } from '../model/units.ts';
import type { PartsListWords } from './en/partsList.ts';

export interface SaidPart {
  readonly group: string;
  readonly count: number;
  readonly name: string;
  /** "1 in outer thread (NPT), barb for 1 in pipe"; empty where nothing is to be matched. */
  readonly size: string;
  readonly material: string;
  /** "cut to 138 ft 4 in"; empty for what is not cut. */
  readonly cut: string;
  readonly buy: string;
  readonly note: string;
  readonly depth: string;
  readonly assumed: string;
}

type Sayable = (numbers: never, show: Show) => { readonly name: string; readonly note: string };

export function sayPart(line: PartLine, words: PartsListWords, show: Show): SaidPart {
  const say = words.lines[line.what as keyof PartsListWords['lines']] as Sayable;
  const { name, note } = say(line.numbers as never, show);
  return {
    group: words.groups[line.group],
    count: line.count,
    name,
    size: sizeOf(line, words, show),
    material: line.material ?? '',
    cut: line.cuts.length === 0 ? '' : words.cutTo(alike(line.cuts, words, show)),
    buy: line.buy === null ? '' : words.buy(show.length(roundedUp(line.buy, show))),
    note,
    depth: line.depth === null ? '' : words.at(line.depth, show),
    assumed: line.assumed ? words.assumed : '',
  };
}

function sizeOf(line: PartLine, words: PartsListWords, show: Show): string {
  const { size, ends, what } = line;
  if (what === 'clamp') return words.over(show.bore(line.numbers.over));
  if (what === 'cable' || what === 'houseCable') {
    const gauge = size === null ? '' : size;
    const number = /^(\d+) AWG$/.exec(gauge)?.[1];
    return number === undefined ? gauge.replace('mm2', 'mm²') : wireName(Number(number), show.units);
  }
  const said = ends.map((end) => endText(end, words)).filter(Boolean);
  if (what === 'dropPipe' || what === 'buriedLine') return size ?? '';
  return said.length > 0 ? said.join('; ') : (size ?? '');
}

function endText({ way, size, sex, system }: BoughtEnd, { ends }: PartsListWords): string {
  if (size === null) return '';
  return way === 'thread' ? ends.thread(size, sex, system) : ends[way](size, sex);
}

/** Lengths that read alike are told once, with how many there are. */
function alike(cuts: readonly Metres[], words: PartsListWords, show: Show): readonly string[] {
  const counts = new Map<string, number>();
  for (const cut of cuts) {
    const text = show.length(cut);
    counts.set(text, (counts.get(text) ?? 0) + 1);
  }
  return [...counts].map(([text, count]) => (count === 1 ? text : words.cutAlike(count, text)));
}

/** What is bought is never a hair too short: whole feet, or tenths of a metre. */
function roundedUp(length: Metres, { units }: Show): Metres {
  const step = units === 'us' ? feet(1) : 0.1;
  return Math.ceil(length / step - 1e-9) * step;
}
