/** Tape card and start-up card: expected beside what is measured. */
import type { Metres } from '../model/si.ts';
import type { Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { startCard } from '../model/work/startCard.ts';
import { tapeCard } from '../model/work/tapeCard.ts';
import type { InstallSheetWords } from '../words/en/installSheet.ts';
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
  const rows: [string, string][] = [
    [say.staticLevel, card.staticLevel === null ? unknown : level(card.staticLevel)],
    [say.voltage, show.voltage(card.voltage)],
    [
      say.current(card.current?.said === true),
      card.current === null ? unknown : say.upTo(show.current(card.current.most)),
    ],
    [say.flow, card.flow === null ? unknown : say.between(show.flow(card.flow.least), show.flow(card.flow.most))],
    ...(card.switch === null
      ? []
      : ([
          [say.precharge, show.pressure(card.switch.precharge)],
          [say.cutIn, show.pressure(card.switch.cutIn)],
          [say.cutOut, show.pressure(card.switch.cutOut)],
        ] satisfies [string, string][])),
    [say.level, card.pumpingLevel === null ? unknown : level(card.pumpingLevel)],
    [say.run, show.time(card.leastRun)],
    ...(card.switch === null ? [] : ([[say.leak, say.none]] satisfies [string, string][])),
  ];
  const { what, expected, measured } = words.columns;
  return table(
    [what, expected, measured],
    rows.map(([name, value]) => [name, value, '']),
  );
}
