/** Tape card and start-up card: expected beside what is measured. */
import type { Metres } from '../model/si.ts';
import { rowsOf } from '../model/asBuilt/asked.ts';
import { insulation } from '../model/asBuilt/insulation.ts';
import { compared, expectations } from '../model/asBuilt/measured.ts';
import type { Expected } from '../model/asBuilt/expected.ts';
import { READINGS, type Reading } from '../model/asBuilt/readings.ts';
import type { Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { startCard } from '../model/work/startCard.ts';
import { tapeCard } from '../model/work/tapeCard.ts';
import { asBuilt } from '../words/en/asBuilt.ts';
import type { InstallSheetWords } from '../words/en/installSheet.ts';
import { sayCompared, sayExpected, sayRow } from '../words/sayAsBuilt.ts';
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
  const say = words.start;
  const unknown = words.settings.notKnown;
  const { casingHeight } = solution.facts.well;
  const isPlate = startCard(solution).current?.said === true;
  const names: Readonly<Record<Reading, string>> = {
    ...asBuilt.readings,
    current: say.current(isPlate),
    staticLevel: say.staticLevel,
    pumpingLevel: say.level,
  };
  const told = new Map(compared(solution).map((each) => [each.reading, sayCompared(each, asBuilt, show)]));
  const rows = [...expectations(solution)].map(([reading, expected]) => {
    const read = told.get(reading);
    return [
      names[reading],
      expected === null ? unknown : sayExpectedHere(reading, expected, casingHeight),
      read === undefined ? '' : `${read.measured}, ${read.verdict}`,
    ];
  });
  const { what, expected, measured } = words.columns;
  const open = solution.facts.house.kind === 'open tank';
  return table(
    [what, expected, measured],
    [
      ...rows,
      [asBuilt.start.insulation, '', solution.plan.asBuilt?.measured?.insulation ?? ''],
      ...(open ? [] : [[say.leak, say.none, '']]),
    ],
  );

  /** A level is taped from the casing's top. */
  function sayExpectedHere(reading: Reading, value: Expected, above: Metres): string {
    const { least, most } = value;
    const isLevel = READINGS[reading] === 'length' && least === most;
    return isLevel
      ? say.fromBoth(show.depth(least), show.length(least + above))
      : sayExpected(READINGS[reading], value, asBuilt, show);
  }
}

/** What to think of where a reading is not as expected; the general list where nothing was measured, or all is well. */
export function startCauses(solution: Solution, words: InstallSheetWords, show: Show): readonly string[] {
  const said = compared(solution).map((each) => sayCompared(each, asBuilt, show));
  const { asBuilt: built } = solution.plan;
  const leaks = insulation(built?.measured?.insulation, solution.facts.pump.voltage);
  const own = said.flatMap(({ name, measured, verdict, causes }) =>
    causes.length === 0 ? [] : [`${name}: ${measured}, ${verdict}. ${causes.join(' ')}`],
  );
  const all = leaks?.low === true ? [asBuilt.start.insulationLow(leaks.least), ...own] : own;
  return all.length > 0 ? all : words.causes;
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
