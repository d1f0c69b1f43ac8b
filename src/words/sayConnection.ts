/** The joints of a string in words; those that read alike are told once. */
import type { Connection, Met } from '../model/parts/connections.ts';
import type { Newtons } from '../model/si.ts';
import type { Show } from '../model/units.ts';
import type { ConnectionWords } from './en/connections.ts';
import { parts } from './en/parts.ts';
import type { PartsListWords } from './en/partsList.ts';
import { span } from './en/phrases.ts';
import { sayFinding } from './sayJudgement.ts';
import type { Words } from './words.ts';

export interface SaidConnection {
  readonly count: number;
  /** "Insert fitting, barb for 1 in pipe" */
  readonly from: string;
  readonly to: string;
  readonly way: string;
  /** Of that way, whatever it is made of: what its tightness is told by. */
  readonly by: Connection['way']['by'];
  /** Empty where nothing seals it. */
  readonly seal: string;
  readonly tight: string;
  /** "223 to 231 lb"; empty beside the way of the load. */
  readonly load: string;
  /** "Danger: one clamp a joint", each on its own. */
  readonly wrong: readonly string[];
}

interface Said {
  readonly connections: ConnectionWords;
  readonly list: PartsListWords;
  readonly judgement: Words;
}

export function sayConnections(all: readonly Connection[], words: Said, show: Show): readonly SaidConnection[] {
  const found = new Map<string, { readonly said: SaidConnection; readonly loads: readonly Newtons[] }>();
  for (const connection of all) {
    const said = sayConnection(connection, words, show);
    // What hangs on a joint of the string hangs on none of the line.
    const key = [connection.load === null, ...Object.values(said).flat()].join('|');
    const before = found.get(key);
    found.set(key, {
      said: { ...said, count: (before?.said.count ?? 0) + 1 },
      loads: [...(before?.loads ?? []), ...(connection.load === null ? [] : [connection.load])],
    });
  }
  return [...found.values()].map(({ said, loads }) => ({
    ...said,
    load: loads.length === 0 ? '' : span(Math.min(...loads), Math.max(...loads), show.hook),
  }));
}

function sayConnection({ from, to, way, seal, findings }: Connection, words: Said, show: Show): SaidConnection {
  const { connections, judgement } = words;
  return {
    count: 0,
    // Neither of two ports has a thread that a plan tells: it is said once.
    from: endText(from, way.by, words, ''),
    to: endText(to, way.by, words, connections.ownThread),
    by: way.by,
    way: (connections.ways[way.by] as (of: typeof way) => string)(way),
    // The clamps are told with the barb.
    seal: seal === null || seal === 'clamps' ? '' : connections.seals[seal],
    tight: connections.tightness[way.by],
    load: '',
    wrong: findings.map((finding) => {
      const severity = judgement.long.findings.severities[finding.severity];
      return `${severity}: ${sayFinding(finding, judgement, show).title}`;
    }),
  };
}

function endText(
  { kind, size, sex, system }: Met,
  by: Connection['way']['by'],
  { connections, list }: Said,
  unknown: string,
): string {
  const name = pieceName(kind, connections);
  if (by !== 'thread' && by !== 'barb' && by !== 'socket') return name;
  if (size === null) return by === 'thread' ? `${name}${unknown}` : name;
  return `${name}, ${by === 'thread' ? list.ends.thread(size, sex, system) : list.ends[by](size, sex)}`;
}

function pieceName(kind: Met['kind'], { pieces }: ConnectionWords): string {
  return kind in pieces ? pieces[kind as keyof typeof pieces] : parts[kind as keyof typeof parts].name;
}

/** For a message or a terminal: a line a joint, and under it how it is made and what is wrong with it. */
export function connectionsText(
  all: readonly SaidConnection[],
  { title, into, sealedBy, bears }: ConnectionWords,
): string {
  const lines = all.flatMap(({ count, from, to, way, seal, tight, load, wrong }) => [
    `${count} × ${into(from, to)}`,
    `    ${[way, ...(seal === '' ? [] : [sealedBy(seal)]), ...(load === '' ? [] : [bears(load)])].join('; ')}.`,
    `    ${tight}`,
    ...wrong.map((each) => `    ${each}.`),
  ]);
  return `${[title, '', ...lines].join('\n')}\n`;
}
