/** The sound and the bad wells, judged: what each should show beside what it shows. */
import { readPlan } from '../../src/model/plan/readPlan.ts';
import type { Solution } from '../../src/model/solution.ts';
import { solve } from '../../src/model/solve.ts';
import { BAD, type BadWell } from './bad.ts';
import { SOUND } from './sound.ts';

export interface JudgedWell {
  readonly name: string;
  /** "sound", or what is wrong with it. */
  readonly fault: string;
  readonly wanted: string;
  readonly shown: string;
  readonly agrees: boolean;
}

/** Null where the reader turns the plan away. */
export function solutionOf(plan: unknown): Solution | null {
  const read = readPlan(plan);
  return read.ok ? solve(read.plan) : null;
}

/** "danger PR-01", the rules that are told together after a colon. */
function shownBy({ findings }: Solution): string[] {
  return findings.map(({ severity, rule, together }) => {
    const others = together.filter((each) => each.rule !== rule).map((each) => each.rule);
    return `${severity} ${rule}${others.length === 0 ? '' : `: ${others.join(' ')}`}`;
  });
}

/** Every rule that a person reads of: found, or told together with another. */
export function rulesShown({ findings }: Solution): ReadonlySet<string> {
  return new Set(findings.flatMap(({ rule, together }) => [rule, ...together.map((each) => each.rule)]));
}

export function judgedSoundWell({ name, plan }: (typeof SOUND)[number]): JudgedWell {
  const solution = solutionOf(plan);
  const findings = solution?.findings ?? [];
  return {
    name,
    fault: 'sound',
    wanted: 'no warning, one note at most',
    shown: solution === null ? 'not read' : shownBy(solution).join(', ') || 'nothing',
    agrees: solution !== null && findings.length <= 1 && findings.every(({ severity }) => severity === 'note'),
  };
}

export const judgedSound = (): readonly JudgedWell[] => SOUND.map(judgedSoundWell);
export const judgedBad = (): readonly JudgedWell[] => BAD.map(judgedBadWell);

export function judgedBadWell({ name, fault, plan, breaks, severity, on }: BadWell): JudgedWell {
  const base = solutionOf(SOUND.find((sound) => sound.name === on)?.plan);
  const solution = solutionOf(plan);
  const wanted = `${severity} ${breaks.join(' ')}`;
  if (solution === null) return { name, fault, wanted, shown: 'not read', agrees: false };
  const [own] = breaks;
  const shown = rulesShown(solution);
  const before = base === null ? new Set<string>() : rulesShown(base);
  const outside = [...shown].filter((rule) => !breaks.includes(rule) && !before.has(rule));
  const silent = breaks.filter((rule) => !shown.has(rule) && !isQuietNote(solution, rule));
  return {
    name,
    fault,
    wanted,
    shown: shownBy(solution).join(', '),
    agrees: solution.verdicts[own] === severity && outside.length === 0 && silent.length === 0,
  };
}

/** A note on how the string is held stands back behind other findings. */
function isQuietNote({ verdicts }: Solution, rule: string): boolean {
  return rule === 'PR-51' && verdicts[rule] === 'note';
}

const COLUMNS = ['well', 'what is wrong', 'should show', 'shows', 'agrees'];
const cells = ({ name, fault, wanted, shown, agrees }: JudgedWell) => [
  name,
  fault,
  wanted,
  shown,
  agrees ? 'yes' : 'NO',
];

function tally(wells: readonly JudgedWell[]): string {
  const off = wells.filter(({ agrees }) => !agrees).length;
  return `${wells.length} wells; ${off === 0 ? 'all agree' : `${off} disagree`}.`;
}

/** For the terminal. */
export function wellsText(wells: readonly JudgedWell[]): string {
  const widest = [22, 60, 34, 60, 6];
  const table = [COLUMNS, ...wells.map(cells)];
  const widths = COLUMNS.map((_, i) => Math.min(widest[i] ?? 0, Math.max(...table.map((row) => row[i]?.length ?? 0))));
  const cut = (text: string, width: number) =>
    text.length > width ? `${text.slice(0, width - 1)}…` : text.padEnd(width);
  const lines = table.map((row) =>
    row
      .map((text, i) => cut(text, widths[i] ?? 0))
      .join('  ')
      .trimEnd(),
  );
  return ['', 'Sound wells and wells with one thing wrong', ...lines, '', tally(wells), ''].join('\n');
}

/** A chapter of docs/checks.md. */
export function wellsChapter(wells: readonly JudgedWell[]): string {
  const line = (texts: readonly string[]) => `| ${texts.map((text) => text.replaceAll('|', '\\|')).join(' | ')} |`;
  return [
    '## Sound wells and wells with one thing wrong',
    '',
    'Invented wells as common practice builds them (no source). A sound one shows no warning and one note at most; each of',
    'the others has one fault and shows the rules that it breaks, its own first, and none besides.',
    '',
    tally(wells),
    '',
    line(COLUMNS),
    line(COLUMNS.map(() => '---')),
    ...wells.map((well) => line(cells(well))),
    '',
  ].join('\n');
}
