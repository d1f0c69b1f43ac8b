/** Every joint along the water: both ends, how it is made, sealed and tightened, and what hangs on it. */
import type { Newtons } from '../model/si.ts';
import type { Solution } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import { graphOf } from '../model/string/graph/graph.ts';
import type { End, Joint, PieceKind, Way } from '../model/string/graph/piece.ts';
import type { InstallSheetWords } from '../words/en/installSheet.ts';
import type { PartsListWords } from '../words/en/partsList.ts';
import { parts } from '../words/en/parts.ts';
import { span } from '../words/en/phrases.ts';
import { table } from './table.ts';
import type { Markup } from './html.ts';

export function jointsTable(
  solution: Solution,
  { sheet, list }: { readonly sheet: InstallSheetWords; readonly list: PartsListWords },
  show: Show,
): Markup {
  const { joints, pieces } = graphOf(solution);
  const kinds = new Map(pieces.map(({ key, kind }) => [key, kind]));
  const depth = new Map(pieces.map(({ key, top }) => [key, top]));
  const nameOf = (key: string): string => pieceName(kinds.get(key) ?? 'pump', sheet);
  const rows = joints
    .filter(
      ({ a, b, way }) =>
        OF_THE_WATER.has(way.by) && [a, b].every(({ piece }) => !BESIDE.has(kinds.get(piece) ?? 'pump')),
    )
    // From the pump up, and on to the tank.
    .toSorted((one, other) => (depth.get(other.b.piece) ?? 0) - (depth.get(one.b.piece) ?? 0))
    .map(({ a, b, way, seal, load }): Row => ({
      cells: [
        withEnd(nameOf(b.piece), b, way, list),
        withEnd(nameOf(a.piece), a, way, list),
        sayWay(way, sheet),
        seal === null ? '' : sheet.seals[seal],
        sheet.tightness[way.by],
      ],
      loads: [mostOf(load)].filter((each) => each !== null),
    }));
  const { from, to, way, seal, tight, load } = sheet.columns;
  return table(
    ['', from, to, way, seal, tight, load],
    folded(rows).map(({ count, cells, loads }) => [
      count === 1 ? '' : `${count} ×`,
      ...cells,
      loads.length === 0 ? '' : span(Math.min(...loads), Math.max(...loads), show.hook),
    ]),
    'joints',
  );
}

const OF_THE_WATER: ReadonlySet<Way['by']> = new Set(['thread', 'barb', 'socket', 'slide', 'rest', 'bolts']);

export function pieceName(kind: PieceKind, { pieces }: InstallSheetWords): string {
  return kind in pieces ? pieces[kind as keyof typeof pieces] : parts[kind as keyof typeof parts].name;
}

function withEnd(name: string, { size, sex, system }: End, way: Way, { ends }: PartsListWords): string {
  if (size === null || (way.by !== 'thread' && way.by !== 'barb' && way.by !== 'socket')) return name;
  const end = way.by === 'thread' ? ends.thread(size, sex, system) : ends[way.by](size, sex);
  return `${name}, ${end}`;
}

function sayWay(way: Way, { ways }: InstallSheetWords): string {
  return (ways[way.by] as (way: Way) => string)(way);
}

/** The most that it ever bears. */
function mostOf(load: Joint['load']): Newtons | null {
  if (load === null) return null;
  const most = Math.max(...[load.atRest, load.pumping, load.dry].map((each) => each ?? 0));
  return most > 0 ? most : null;
}

interface Row {
  readonly cells: readonly string[];
  readonly loads: readonly Newtons[];
}

/** Joints that read alike are told once: a string of rigid pipe has dozens. */
function folded(rows: readonly Row[]): readonly (Row & { readonly count: number })[] {
  const found = new Map<string, Row & { readonly count: number }>();
  for (const { cells, loads } of rows) {
    const key = cells.join('|');
    const before = found.get(key);
    found.set(key, { cells, loads: [...(before?.loads ?? []), ...loads], count: (before?.count ?? 0) + 1 });
  }
  return [...found.values()];
}

/** Neither holds water nor hangs from what does. */
const BESIDE: ReadonlySet<PieceKind> = new Set(['cable', 'support', 'casing', 'cap']);
