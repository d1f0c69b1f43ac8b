/** The depths, lengths and pressures that the work is done by. */
import type { Metres, Newtons } from '../model/si.ts';
import type { Solution } from '../model/solution.ts';
import { gearRating } from '../model/figures/gearRating.ts';
import type { Kind } from '../model/work/step.ts';
import type { Show } from '../model/units.ts';
import type { InstallSheetWords } from '../words/en/installSheet.ts';
import { element, type Markup } from './html.ts';

export function settingsTable(
  solution: Solution,
  { settings: say }: InstallSheetWords,
  show: Show,
  kind: Kind,
): Markup {
  const { facts, values } = solution;
  const gear = gearRating(solution, kind);
  const load = (value: Newtons | null): string => (value === null ? say.notKnown : show.hook(value));
  const level = (depth: Metres | null): string =>
    depth === null ? say.notKnown : depth < 0 ? say.above(show.depth(-depth)) : show.depth(depth);
  const length = (value: number | null): string => (value === null ? say.notKnown : show.length(value));
  const { house, well, top } = facts;
  const rows: [string, string][] = [
    [say.staticLevel, level(facts.water.staticLevel)],
    [say.pumpingLevel, level(values.pumpingWaterLevel)],
    [say.intake, level(values.intakeDepth)],
    ...(top.kind === 'pitless' ? ([[say.adapter, level(top.depth)]] satisfies [string, string][]) : []),
    [say.frost, level(values.frostDepth)],
    [say.bottom, level(well.bottom)],
    [say.casingHeight, show.small(well.casingHeight)],
    [say.dropPipe, length(values.dropPipeToCut)],
    [say.cable, length(values.wireLength)],
    ...(top.kind === 'pitless' ? ([[say.liftPipe, length(values.liftPipeLength)]] satisfies [string, string][]) : []),
    ...(house.kind === 'pressure tank'
      ? ([
          [say.switch, `${show.pressure(house.cutIn)} / ${show.pressure(house.cutOut)}`],
          [say.precharge, show.pressure(house.precharge)],
        ] satisfies [string, string][])
      : []),
    [say.hook, load(values.hangLoadAtRest)],
    [say.clear, load(values.hangLoadDry)],
    [say.gear, load(gear)],
  ];
  return element(
    'div',
    { class: 'keep facts' },
    element(
      'table',
      {},
      element(
        'tbody',
        {},
        ...rows.map(([name, value]) =>
          element('tr', {}, element('th', { scope: 'row' }, name), element('td', {}, value)),
        ),
      ),
    ),
    element('p', { class: 'note' }, say.fromGround),
  );
}
