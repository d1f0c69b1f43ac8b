import { parseArgs } from 'node:util';
import { solve } from '../model/index.ts';
import { connectionsOf } from '../model/parts/connections.ts';
import type { PartLine } from '../model/parts/partLine.ts';
import { byDepth, partsList } from '../model/parts/partsList.ts';
import { show, type Show } from '../model/units.ts';
import { connections } from '../words/en/connections.ts';
import { en } from '../words/en/index.ts';
import { partsListWords as words } from '../words/en/partsList.ts';
import { partsCsv } from '../words/partsCsv.ts';
import { partSentence, partsText } from '../words/partsText.ts';
import { connectionsText, sayConnections, type SaidConnection } from '../words/sayConnection.ts';
import { sayPart } from '../words/sayParts.ts';
import { EXIT, Unreadable } from './exits.ts';
import { print } from './print.ts';
import { readInput } from './readInput.ts';
import { standing } from './standing.ts';

/** `wellcut parts PLAN.json [--joints | --csv | --json] [--by kind|depth] [--new | --replace]`: all that the plan takes. */
export function partsCommand(args: readonly string[]): number {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      csv: { type: 'boolean', default: false },
      json: { type: 'boolean', default: false },
      by: { type: 'string', default: 'kind' },
      replace: { type: 'boolean', default: false },
      new: { type: 'boolean', default: false },
      joints: { type: 'boolean', default: false },
    },
  });
  const path = positionals[0];
  if (path === undefined || positionals.length > 1)
    throw new Unreadable('parts needs one plan: wellcut parts PLAN.json');
  const { csv, json, by, replace, joints } = values;
  const forms = ['csv', 'json', 'joints'] as const;
  const [one, other] = forms.filter((form) => values[form]);
  if (one !== undefined && other !== undefined) throw new Unreadable(`--${one} and --${other}: choose one of them`);
  if (replace && values.new) throw new Unreadable('--new and --replace: choose one of them');
  if (by !== 'kind' && by !== 'depth') throw new Unreadable(`--by is "${by}"; use kind or depth`);
  const plan = readInput(path);
  const solution = solve(plan);
  const list = partsList(solution, replace ? 'replace' : values.new ? 'new' : undefined);
  const shown = show(plan.units ?? 'us');
  if (list.kind === 'stop') {
    print(
      json
        ? `${JSON.stringify({ kind: 'stop', why: list.why, message: words.stop[list.why] }, null, 2)}\n`
        : `${words.stop[list.why]}\n`,
    );
    return EXIT.danger;
  }
  const said = sayConnections(connectionsOf(solution), { connections, list: words, judgement: en }, shown);
  if (joints) {
    print(`${standing(solution).join('\n')}\n${connectionsText(said, connections)}`);
    return EXIT.good;
  }
  const lines = by === 'depth' ? byDepth(list.lines) : list.lines;
  print(
    json
      ? asJson(list.kind, lines, said, shown)
      : csv
        ? partsCsv(lines, words, shown)
        : `${standing(solution).join('\n')}\n${partsText({ title: plan.title, lines, by }, words, shown)}`,
  );
  return EXIT.good;
}

function asJson(kind: string, lines: readonly PartLine[], joints: readonly SaidConnection[], shown: Show): string {
  const all = lines.map((line) => {
    const { key, what, group, pieces, count, size, material, ends, cuts, buy, depth, numbers, assumed } = line;
    const said = sayPart(line, words, shown);
    return {
      ...{ key, what, group, count, name: said.name, size, ends, material, cuts, buy, depth, numbers, pieces, assumed },
      message: partSentence(said),
    };
  });
  return `${JSON.stringify({ kind, parts: all, joints }, null, 2)}\n`;
}
