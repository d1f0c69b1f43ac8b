/** docs/mutants.md: the score of every file, the survivors that are harmless and why, and those that are still to be killed. */
import { HARMLESS } from './harmless.mjs';
import { FAMILIES, filesOf } from './parts.mjs';

const NAMES = { formulas: 'Formulas', rules: 'Rules', fixes: 'What is offered against broken rules', draw: 'Drawing' };

const cell = (text) => text.replaceAll('|', '\\|').replaceAll('\n', ' ');
const code = (text) => (text === '' ? 'nothing' : `\`${cell(text).replaceAll('`', '´')}\``);
const row = (texts) => `| ${texts.join(' | ')} |`;
const table = (head, rows) => [row(head), row(head.map(() => '---')), ...rows.map(row), ''];

/** What the types turn away before any test runs, and then what somebody looked at. */
function whyHarmless(file, { line, from, to }) {
  if (to.startsWith('["Stryker')) return 'does not compile: no list here holds a text';
  if (from.includes('?.') && to === from.replace('?.', '.')) return 'does not compile: it may be missing';
  return HARMLESS[file]?.find((each) => line.includes(each.line) && (each.to === undefined || each.to === to))?.why;
}

function sums(scores) {
  const add = (of) => scores.reduce((sum, [file, score]) => sum + of(score, file), 0);
  const noticed = add(({ killed = 0, timedOut = 0 }) => killed + timedOut);
  const alive = add(({ alive: left = [] }) => left.length);
  const noTest = add((score) => (score.alive ?? []).filter((each) => each.noTest).length);
  const harmless = add((score, file) => (score.alive ?? []).filter((each) => whyHarmless(file, each)).length);
  const endless = add(({ timedOut = 0 }) => timedOut);
  return { noticed, endless, alive, noTest, harmless, all: noticed + alive };
}

/** "38 of 40" moved limits that a test noticed. */
function limitsOf(scores) {
  const moved = scores.reduce((sum, [, { limits }]) => sum + (limits?.moved ?? 0), 0);
  const alive = scores.reduce((sum, [, { limits }]) => sum + (limits?.alive.length ?? 0), 0);
  return moved === 0 ? '' : `${moved - alive} of ${moved}`;
}

const percent = (part, whole) => (whole === 0 ? '-' : `${Math.floor((100 * part) / whole)} %`);

function scoreRow(name, scores) {
  const { noticed, endless, alive, noTest, harmless, all } = sums(scores);
  return [
    name,
    percent(noticed, all),
    noticed - endless,
    endless,
    alive - noTest,
    noTest,
    harmless,
    limitsOf(scores),
  ].map(String);
}

/** Types and lists of names: tried, and no change was to be made. */
function hasNothing([, { killed, timedOut, alive, limits }]) {
  return killed === 0 && timedOut === 0 && alive.length === 0 && limits === undefined;
}

function chapter(family, kept) {
  const files = filesOf(family);
  const scores = files.flatMap((file) => (kept[file] ? [[file, kept[file]]] : []));
  const short = (file) =>
    file
      .replace(/^src\/(model\/)?/, '')
      .replace(/^(formulas|rules|fixes\/rules|draw)\//, '')
      .replace(/\.ts$/, '');
  const untried = files.filter((file) => kept[file]?.killed === undefined).map(short);
  const bare = scores.filter(hasNothing).map(([file]) => short(file));
  return [
    `## ${NAMES[family]}`,
    '',
    ...(scores.length === 0
      ? []
      : table(
          [
            'file',
            'noticed',
            'killed',
            'ran without end',
            'survived',
            'no test reached it',
            'of these harmless',
            'moved limits noticed',
          ],
          [
            scoreRow('**all of these**', scores),
            ...scores.filter((each) => !hasNothing(each)).map((each) => scoreRow(short(each[0]), [each])),
          ],
        )),
    ...(bare.length === 0 ? [] : [`With nothing in them to change: ${bare.join(', ')}.`, '']),
    ...(untried.length === 0
      ? []
      : [
          `Not tried yet${scores.some(([, { killed }]) => killed === undefined) ? ', but for their limits where these are told' : ''}: ${untried.join(', ')}.`,
          '',
        ]),
    ...survivors('Harmless survivors', scores, short, true),
    ...survivors('Survivors still to be killed', scores, short, false),
    ...limitsLeft(scores, short),
  ];
}

function limitsLeft(scores, short) {
  const rows = scores.flatMap(([file, { limits }]) =>
    (limits?.alive ?? [])
      .filter(({ line, from, to }) => whyHarmless(file, { line, to, from }) === undefined)
      .map(({ line, from, to }) => [short(file), code(line), from, to]),
  );
  return rows.length === 0
    ? []
    : ['### Moved limits that no test noticed', '', ...table(['file', 'limit', 'is', 'was made'], rows)];
}

function survivors(title, scores, short, harmless) {
  const rows = scores.flatMap(([file, { alive = [] }]) =>
    alive
      .filter((each) => (whyHarmless(file, each) !== undefined) === harmless)
      .map((each) => [short(file), code(each.from), code(each.to), ...(harmless ? [whyHarmless(file, each)] : [])]),
  );
  if (rows.length === 0) return [];
  return [`### ${title}`, '', ...table(['file', 'is', 'was made', ...(harmless ? ['why nobody can tell'] : [])], rows)];
}

export function mutantsPage(kept) {
  return [
    '# What the tests notice',
    '',
    'Made by `npm run mutants -- formulas` (or `rules`, `fixes`, `draw`, or a file of one: `rules/tank`); do not edit. A part is changed in',
    'a thousand small ways, one at a time: a sign, a limit, a branch, the side on which an edge counts. A change that makes a unit',
    'test fail is killed. One that survives is either a test that is missing or a change that nobody can tell.',
    '',
    'Tried against the unit tests of the part alone: those of the folder and the published figures, and for rules both sides of',
    'every limit and the sound and the bad wells; laws over plans made at random with their first ten plans. Texts are left as',
    'they are. A change that makes the program run without end counts as killed. And each figure of a constant is made a tenth more',
    'and a tenth less.',
    '',
    ...FAMILIES.flatMap((family) => chapter(family, kept)),
  ].join('\n');
}
