/** What the command line says of itself: of each command what it does, its options, an example. */

export interface CommandHelp {
  /** What stands behind the command's name. */
  readonly usage: string;
  readonly about: string;
  /** By name without its dashes: what it takes, and what it does. */
  readonly options: Readonly<Record<string, readonly [takes: string, does: string]>>;
  readonly example: string;
}

const REPLACE = ['', 'as if an old pump is pulled: what stands already is left as it is'] as const;
const JSON_OUT = ['', 'the same for programs'] as const;

export const COMMANDS: Readonly<Record<string, CommandHelp>> = {
  draw: {
    usage: 'PLAN.json [-o out.svg|out.png] [options]',
    about:
      'Draws the well. Without -o the picture goes to standard output. A PNG of paper has 300 dots an inch. It exits 0 even with dangers.',
    options: {
      output: ['FILE', 'where the picture goes, as .svg or .png; -o for short, "-" for standard output'],
      view: ['VIEW', 'all (default), section, top, pump, house or at:DEPTH, for example "at:6 ft"'],
      theme: [
        'THEME',
        'light, dark, print, contrast (black on white) or contrast-dark (white on black); print on paper, otherwise light',
      ],
      paper: [
        'SIZE',
        'letter, legal, tabloid, a4 or a3: the depths of the section to a standard scale that the title block states, when printed at 100 %',
      ],
      landscape: ['', 'turns the sheet of paper on its side'],
      'no-signs': ['', 'leaves the signs of the findings out, and what they colour; the title block still counts them'],
      date: ['DATE', 'printed in the title block, for example 2026-05-03'],
      alt: ['', 'the caption and the words for those who cannot see the picture, in place of it'],
    },
    example: 'wellcut draw well.json --paper letter -o sheet.svg',
  },
  check: {
    usage: 'PLAN.json … [--json | --brief] [--choose]',
    about:
      'Tells the figures, then what is wrong, could not be checked, is assumed and is OK, of one plan or of many. It exits 1 where there is a danger, and 2 where a plan cannot be read, after the others.',
    options: {
      json: ['', 'the same for programs; of several plans one line each, with its file'],
      brief: ['', 'one line a plan: how many dangers, warnings and notes, and the first of them'],
      choose: [
        '',
        'which pump, drop pipe and wire, and which tank, would do in this well, the best first, and why; with --json as "choose"',
      ],
    },
    example: 'wellcut check wells/*.json --brief',
  },
  parts: {
    usage: 'PLAN.json [--joints | --csv | --json] [--by kind|depth] [--new | --replace]',
    about:
      'Lists all that the plan takes: each piece with its size and ends, what is cut to which length, what it has to fit, then what is used up, spares and tools. It exits 1 where the work is not for an owner.',
    options: {
      joints: [
        '',
        'every joint from the pump to the tank: both ends, how tight, what hangs on it, what is wrong with it',
      ],
      csv: ['', 'for a spreadsheet'],
      json: JSON_OUT,
      by: ['kind|depth', 'in which order: by kind (default), or from the top of the well down'],
      new: ['', 'all of it, whatever stands already'],
      replace: REPLACE,
    },
    example: 'wellcut parts well.json --csv',
  },
  steps: {
    usage: 'PLAN.json [--json] [--replace]',
    about: 'Tells the order of the work, step by step. It exits 1 where the work is not for an owner.',
    options: { json: JSON_OUT, replace: REPLACE },
    example: 'wellcut steps well.json --replace',
  },
  trouble: {
    usage: 'PLAN.json [--symptom NAME] [--json]',
    about: 'Lists what one may notice of a well in use.',
    options: {
      symptom: [
        'NAME',
        'what to look at first, what each look tells, and what this well’s own figures say of each cause, for example no-water',
      ],
      json: JSON_OUT,
    },
    example: 'wellcut trouble well.json --symptom no-water',
  },
  sheet: {
    usage: 'PLAN.json [-o sheet.html|sheet.pdf] [--paper letter|a4] [--short] [--replace] [--date DATE] [--link URL]',
    about:
      'Puts drawing, settings, findings, parts, steps with boxes, joints and cards on one sheet to print. A PDF is made by a Chromium that is there (CHROMIUM_PATH names one).',
    options: {
      output: ['FILE', 'where the sheet goes, as .html or .pdf; -o for short, "-" for standard output'],
      paper: ['SIZE', 'letter or a4; as the units of the plan are, unless it says'],
      short: ['', 'one page: drawing, settings and findings'],
      replace: REPLACE,
      date: ['DATE', 'printed on it, for example 2026-05-03'],
      link: ['URL', 'the address of a page: a code for a camera is printed, which opens the plan there'],
    },
    example: 'wellcut sheet well.json -o sheet.pdf --short',
  },
  link: {
    usage: 'PLAN.json [--base URL]',
    about: 'Prints the whole well as an address. Every command takes such a link in place of a file.',
    options: { base: ['URL', 'the address of the page; without it, what stands behind its "#"'] },
    example: 'wellcut link well.json --base https://wells.example/',
  },
  read: {
    usage: 'REPORT.txt [-o plan.json] [--why]',
    about:
      'Takes the text of a driller’s report, a log or a letter, and prints the plan that it makes: what stands there, and nothing else. It exits 2 where that is no whole plan yet.',
    options: {
      output: ['FILE', 'where the plan goes; -o for short'],
      why: [
        '',
        'each value with the line that it came from, what is doubtful, what was not taken and why, what was not understood, and what is still to ask',
      ],
    },
    example: 'wellcut read report.txt --why',
  },
  batch: {
    usage: '[PLANS.ndjson|PLANS.csv] [--csv] [--draw DIR] [--jobs N]',
    about:
      'Checks a plan a line, as many as there are, and prints a line of JSON for each, in the same order: its line and title, the rules in danger, warning and note, how many rules could not be checked, and the figures in SI units. Without a file it reads standard input. A line that is no plan is told with its number, and the others go on; the exit is then 2, otherwise 1 where there is a danger.',
    options: {
      csv: [
        '',
        'a table, as with a file that ends in .csv: the heading names fields of a plan with their units, for example "well.depth (ft)"',
      ],
      draw: ['DIR', 'puts a picture of each plan there, named by its line, for example 12.svg'],
      jobs: ['N', 'how many threads; as many as there are cores, unless it says'],
    },
    example: 'wellcut batch plans.ndjson --draw pictures',
  },
};

const WIDTH = 100;

const EXITS = `Exits 0 where all went well, 1 for a danger, 2 when the plan or the command cannot be read, 3 for a mistake of ours, 4
when what was made cannot be written.`;

/** @param command  one of `COMMANDS` */
export function commandHelp(command: string): string {
  const help = COMMANDS[command];
  if (help === undefined) throw new RangeError(`commandHelp: there is no command "${command}"`);
  const names = Object.entries(help.options).map(
    ([name, [takes, does]]) => [`--${name}${takes === '' ? '' : ` ${takes}`}`, does] as const,
  );
  const wide = Math.max(0, ...names.map(([name]) => name.length)) + 2;
  return [
    `wellcut ${command} ${help.usage}`,
    '',
    ...lines(help.about, WIDTH),
    '',
    ...names.flatMap(([name, does]) =>
      lines(does, WIDTH - wide - 2).map((line, i) => `  ${(i === 0 ? name : '').padEnd(wide)}${line}`),
    ),
    '',
    `For example: ${help.example}`,
    '"-" is standard input.',
    '',
  ].join('\n');
}

export function wholeHelp(): string {
  return [
    ...Object.entries(COMMANDS).map(([name, { usage }]) => `wellcut ${name} ${usage}`),
    '',
    'wellcut help COMMAND tells what a command does, with its options; wellcut --version which this is.',
    '"-" is standard input or output. A link that holds a well is taken in place of a file.',
    '',
    EXITS,
    'A planning aid: local code and licensed practice decide.',
    '',
  ].join('\n');
}

/** What was likely meant; null where nothing is near. */
export function nearest(typed: string, known: readonly string[]): string | null {
  const near = known.map((name) => ({ name, far: distance(typed, name) })).sort((a, b) => a.far - b.far)[0];
  return near !== undefined && near.far <= (typed.length < 4 ? 1 : 2) ? near.name : null;
}

/** Letters to put in, take out or change. Source: Levenshtein (1966), Soviet Physics Doklady 10, 707-710. */
function distance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, i) => i);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next.push(
        Math.min((row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1, (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1)),
      );
    row = next;
  }
  return row[b.length] ?? 0;
}

function lines(text: string, width: number): string[] {
  const all: string[] = [];
  for (const word of text.split(' ')) {
    const last = all.at(-1);
    if (last !== undefined && last.length + word.length < width) all[all.length - 1] = `${last} ${word}`;
    else all.push(word);
  }
  return all;
}
