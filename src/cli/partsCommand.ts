import { parseArgs } from 'node:util';
import { solve, type Plan } from '../model/index.ts';
import type { PartLine } from '../model/parts/partLine.ts';
import { byDepth, partsList } from '../model/parts/partsList.ts';
import { show, type Show } from '../model/units.ts';
import { partsListWords as words } from '../words/en/partsList.ts';
import { sayPart, type SaidPart } from '../words/sayParts.ts';
import { csvLine } from './csv.ts';
import { EXIT, Unreadable } from './exits.ts';
import { print } from './print.ts';
import { readInput } from './readInput.ts';
import { standing } from './standing.ts';
import { wrapped } from './wrapped.ts';

/** `wellcut parts PLAN.json [--csv | --json] [--by kind|depth] [--replace]`: all that the plan takes. */
export function partsCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      csv: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
      by: { type: 'string', default: 'kind' },
      replace: { type: 'boolean', default: false },
    },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('parts needs one plan: wellcut parts PLAN.json');
  const { csv, json, by, replace } = values;
  if (csv && json) throw new Unreadable('--csv and --json: choose one of them');
  if (by !== 'kind' && by !== 'depth') throw new Unreadable(`--by is "${by}"; use kind or depth`);
  const plan = readInput(path);
  const solution = solve(plan);
  const list = partsList(solution, replace ? 'replace' : undefined);
  const shown = show(plan.units ?? 'us');
  if (list.kind === 'stop') {
    print(
      json
        ? `${JSON.stringify({ kind: 'stop', why: list.why, message: words.stop[list.why] }, null, 2)}\n`
        : `${words.stop[list.why]}\n`,
    );
    return EXIT.danger;
  }
  const lines = by === 'depth' ? byDepth(list.lines) : list.lines;
  print(
    json
      ? asJson(list.kind, lines, shown)
      : csv
        ? asCsv(lines, shown)
        : `${standing(solution).join('\n')}\n${asText(plan, lines, by, shown)}`,
  );
  return EXIT.good;
}

function asJson(kind: string, lines: readonly PartLine[], shown: Show): string {
  const all = lines.map((line) => {
    const { key, what, group, pieces, count, size, material, ends, cuts, buy, depth, numbers, assumed } = line;
    const said = sayPart(line, words, shown);
    return {
      ...{ key, what, group, count, name: said.name, size, ends, material, cuts, buy, depth, numbers, pieces, assumed },
      message: sentence(said),
    };
  });
  return `${JSON.stringify({ kind, parts: all }, null, 2)}\n`;
}

function asCsv(lines: readonly PartLine[], shown: Show): string {
  const { count, name, size, cut, note, depth } = words.heads;
  const head = [
    words.heads.group,
    count,
    name,
    size,
    words.heads.material,
    cut,
    words.heads.buy,
    depth,
    note,
    words.heads.assumed,
  ];
  const rows = lines.map((line) => {
    const said = sayPart(line, words, shown);
    return [
      said.group,
      String(said.count),
      said.name,
      said.size,
      said.material,
      said.cut,
      said.buy,
      said.depth,
      said.note,
      said.assumed,
    ];
  });
  return [head, ...rows].map(csvLine).join('');
}

function asText(plan: Plan, lines: readonly PartLine[], by: 'kind' | 'depth', shown: Show): string {
  const said = lines.map((line) => sayPart(line, words, shown));
  const title = `${words.title}${plan.title === undefined ? '' : `: ${plan.title}`}`;
  const body = said.flatMap((each, i) => {
    const heads = by === 'kind' && each.group !== said[i - 1]?.group ? ['', each.group] : [];
    const at = by === 'depth' && each.depth !== '' ? `${each.depth}: ` : '';
    return [...heads, `  ${each.count} × ${at}${sentence(each)}`, ...wrapped(each.note, 96, '      ')];
  });
  return [title, ...body, '', ...wrapped(words.caution, 100, '')].join('\n') + '\n';
}

/** "Insert fitting: 1 in outer thread (NPT), barb for 1 in pipe, stainless steel; cut to 3 ft, buy 6 ft" */
function sentence({ name, size, material, cut, buy, assumed }: SaidPart): string {
  const what = [size, material].filter((each) => each !== '').join(', ');
  const lengths = [cut, buy].filter((each) => each !== '').join(', ');
  return `${name}${what === '' ? '' : `, ${what}`}${lengths === '' ? '' : `; ${lengths}`}${assumed === '' ? '' : ` (${assumed})`}`;
}
