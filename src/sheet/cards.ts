/** Tape card and start-up card: expected beside what is measured. */
import type { Metres } from '../model/si.ts';
import { rowsOf } from '../model/asBuilt/asked.ts';
import { compared, type Reading } from '../model/asBuilt/measured.ts';
import type { Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { startCard } from '../model/work/startCard.ts';
import { tapeCard } from '../model/work/tapeCard.ts';
import { asBuilt } from '../words/en/asBuilt.ts';
import type { InstallSheetWords } from '../words/en/installSheet.ts';
import { sayCompared, sayRow } from '../words/sayAsBuilt.ts';
import { element, type Markup } from './html.ts';
import { table } from './table.ts';

export function tapeTable(solution: Solution, words: InstallSheetWords, show: Show): Markup {
  const rows = tapeCard(solution).map(({ height, marks, hook }) => [
    show.length(height),
    marks.map((mark) => words.marks[mark]).join(', '),
    hook === null ? '' : show.hook(hook),
    element('span', { class: 'box' }),
  ]);
  const { tape, what, hook, done } = words.columns;
  return element('div', { class: 'two' }, table([tape, what, hook, done], rows));
}

export function startTable(solution: Solution, words: InstallSheetWords, show: Show): Markup {
  const card = startCard(solution);
  const say = words.start;
  const unknown = words.settings.notKnown;
  const level = (depth: Metres): string =>
    say.fromBoth(show.depth(depth), show.length(depth + solution.facts.well.casingHeight));
  const told = new Map(compared(solution).map((each) => [each.reading, sayCompared(each, asBuilt, show)]));
  type Line = readonly [reading: Reading | null, name: string, expected: string];
  const rows: readonly Line[] = [
    ['staticLevel', say.staticLevel, card.staticLevel === null ? unknown : level(card.staticLevel)],
    ['voltage', say.voltage, show.voltage(card.voltage)],
    [
      'current',
      say.current(card.current?.said === true),
      card.current === null ? unknown : say.upTo(show.current(card.current.most)),
    ],
    [
      'flow',
      say.flow,
      card.flow === null ? unknown : say.between(show.flow(card.flow.least), show.flow(card.flow.most)),
    ],
    ...(card.switch === null
      ? []
      : ([
          ['precharge', say.precharge, show.pressure(card.switch.precharge)],
          ['cutIn', say.cutIn, show.pressure(card.switch.cutIn)],
          ['cutOut', say.cutOut, show.pressure(card.switch.cutOut)],
        ] satisfies Line[])),
    ['pumpingLevel', say.level, card.pumpingLevel === null ? unknown : level(card.pumpingLevel)],
    ['run', say.run, show.time(card.leastRun)],
    ...(card.switch === null ? [] : ([[null, say.leak, say.none]] satisfies Line[])),
  ];
  const { what, expected, measured } = words.columns;
  return table(
    [what, expected, measured],
    rows.map(([reading, name, value]) => {
      const read = reading === null ? undefined : told.get(reading);
      return [name, value, read === undefined ? '' : `${read.measured}, ${read.verdict}`];
    }),
  );
}

/** What to think of where a reading is not as expected; the general list where nothing was measured, or all is well. */
export function startCauses(solution: Solution, words: InstallSheetWords, show: Show): readonly string[] {
  const said = compared(solution).map((each) => sayCompared(each, asBuilt, show));
  const own = said.flatMap(({ name, measured, verdict, causes }) =>
    causes.length === 0 ? [] : [`${name}: ${measured}, ${verdict}. ${causes.join(' ')}`],
  );
  return own.length > 0 ? own : words.causes;
}

/** Planned beside what was put in: boxes to write in where nobody did. */
export function asBuiltTable(solution: Solution, show: Show): Markup {
  const { installed } = asBuilt;
  const rows = rowsOf(solution).map((row) => sayRow(row, asBuilt, show));
  return element(
    'div',
    { class: 'two' },
    table(
      ['', installed.planned, installed.value],
      rows.map(({ name, planned, installed: put, differs }) => [
        name,
        planned,
        differs === '' ? put : element('strong', {}, `${put} (${differs})`),
      ]),
    ),
  );
}
