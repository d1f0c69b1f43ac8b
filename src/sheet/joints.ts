/** Every joint along the water: both ends, how it is made, sealed and tightened, what hangs on it and what is wrong with it. */
import { connectionsOf } from '../model/parts/connections.ts';
import type { Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { connections } from '../words/en/connections.ts';
import { en } from '../words/en/index.ts';
import { partsListWords } from '../words/en/partsList.ts';
import { sayConnections } from '../words/sayConnection.ts';
import { table } from './table.ts';
import { element, type Markup } from './html.ts';

export function jointsTable(solution: Solution, show: Show): readonly Markup[] {
  const words = { connections, list: partsListWords, judgement: en };
  const said = sayConnections(connectionsOf(solution), words, show);
  const { from, to, way, seal, load, wrong } = connections.columns;
  // Nobody reads an empty column.
  const anyWrong = said.some((each) => each.wrong.length > 0);
  const ways = [...new Set(said.map(({ by }) => by))];
  const list = table(
    ['', from, to, way, seal, load, ...(anyWrong ? [wrong] : [])],
    said.map((each) => [
      each.count === 1 ? '' : `${each.count} ×`,
      ...[each.from, each.to, each.way, each.seal, each.load],
      ...(anyWrong ? [element('strong', {}, each.wrong.join('. '))] : []),
    ]),
    'joints',
  );
  return [
    list,
    element('h3', {}, connections.columns.tight),
    element(
      'ul',
      {},
      ...ways.map((by) =>
        element('li', {}, element('strong', {}, `${connections.joined[by]}: `), connections.tightness[by]),
      ),
    ),
  ];
}
