/**
 * What is asked before something is added to the record: of each list, part and curve the few fields that it cannot do
 * without. They start empty; an example only shows how one types it.
 */
import type { FieldInfo } from '../../model/plan/fields.ts';
import { ASKED, PARTS } from './layout.ts';
import { ITEMS, named } from './names.ts';

export interface Asked {
  /** Under the new entry: "bottom", "steps.0.flow"; empty where the entry is a bare value. */
  readonly key: string;
  readonly field: FieldInfo;
  readonly label: string;
  /** As one would type it, in feet and gallons and in metres and litres; null for a choice. */
  readonly example: Readonly<Record<'us' | 'metric', string>> | null;
  /** How "not known" is told: by the word itself, by leaving the field out, or not at all. */
  readonly notKnown: 'written' | 'left out' | null;
}

export interface Entry {
  /** The list that takes another item, or the part that comes into the plan. */
  readonly path: string;
  readonly isItem: boolean;
  /** On the button that opens it, and the name of its step. */
  readonly add: string;
  readonly title: string;
  /** What whoever opened it has said by that alone: the kind of a curve. Null for the rest. */
  readonly said: { readonly kind: string } | null;
  /** In order. Of a test it hangs on the kind that is chosen; empty where none is. */
  readonly asks: (kind: string) => readonly Asked[];
  /** The key under which the items of a list rise from one to the next; null where their order says nothing. */
  readonly rising: string | null;
}

type Row = readonly [
  key: string,
  example: string | readonly [us: string, metric: string] | null,
  notKnown?: 'written' | 'left out',
];

const CASING_BOTTOM = ['90 ft', '27 m'] as const;
const SCREEN_TOP = ['100 ft', '30 m'] as const;
const SCREEN_BOTTOM = ['115 ft', '35 m'] as const;
const TEST_FLOW = ['8 gpm', '30 L/min'] as const;
const DRAWDOWN = ['42 ft', '13 m'] as const;

const ITEM_ROWS: Readonly<Record<string, { readonly rows: readonly Row[]; readonly rising?: string }>> = {
  'well.casings': {
    rows: [
      ['material', null, 'left out'],
      ['size', ['4 in', '110 mm'], 'left out'],
      ['bottom', CASING_BOTTOM, 'written'],
    ],
  },
  'well.intake.screens': {
    rows: [
      ['top', SCREEN_TOP, 'written'],
      ['bottom', SCREEN_BOTTOM, 'written'],
    ],
    rising: 'top',
  },
  'well.inflows': { rows: [['depth', ['140 ft', '43 m']]], rising: 'depth' },
  'well.layers': {
    rows: [
      ['material', 'clay'],
      ['bottom', ['30 ft', '9 m']],
    ],
    rising: 'bottom',
  },
  'water.pumping.steps': {
    rows: [
      ['flow', TEST_FLOW, 'written'],
      ['drawdown', DRAWDOWN, 'written'],
    ],
    rising: 'flow',
  },
  'pump.curve.points': {
    rows: [
      ['0', ['10 gpm', '40 L/min']],
      ['1', ['270 ft', '80 m']],
    ],
    rising: '0',
  },
  'string.checkValves': { rows: [['', ['100 ft', '30 m']]] },
  'string.splices': { rows: [['', ['4 ft', '1.2 m']]] },
};

const PART_ROWS: Readonly<Record<string, readonly Row[]>> = {
  'well.grout': [['bottom', ['40 ft', '12 m'], 'written']],
  'water.pumping': [['kind', null]],
  'house.line': [
    ['material', null],
    ['size', ['1 in', '32 mm']],
  ],
  rope: [['material', 'polypropylene']],
};

const TEST_ROWS: Readonly<Record<string, readonly Row[]>> = {
  test: [
    ['flow', TEST_FLOW, 'written'],
    ['drawdown', DRAWDOWN, 'written'],
  ],
  level: [
    ['level', ['104 ft', '32 m'], 'written'],
    ['flow', TEST_FLOW, 'written'],
  ],
  steps: [
    ['steps.0.flow', TEST_FLOW, 'written'],
    ['steps.0.drawdown', DRAWDOWN, 'written'],
  ],
  aquifer: [
    ['transmissivity', ['800 ft2/d', '75 m2/d'], 'written'],
    ['storativity', '0.0001', 'written'],
  ],
};

/** A line needs two. */
const POINT_ROWS: readonly Row[] = [
  ['points.0.0', ['0 gpm', '0 L/min']],
  ['points.0.1', ['350 ft', '105 m']],
  ['points.1.0', ['10 gpm', '40 L/min']],
  ['points.1.1', ['270 ft', '80 m']],
];

/** For a list that may take another item. */
export function entryOfItem(list: string): Entry | null {
  const asked = ITEM_ROWS[list];
  const name = ITEMS[list];
  if (asked === undefined || name === undefined) return null;
  const asks = asked.rows.map((row) => askedOf(`${list}.*`, row, `the new ${name.one}`));
  return {
    path: list,
    isItem: true,
    add: `Add ${name.another}`,
    title: `New ${name.one}`,
    said: null,
    asks: () => asks,
    rising: asked.rising ?? null,
  };
}

/** For a part that is not in the plan. */
export function entryOfPart(part: string): Entry | null {
  const rows = PART_ROWS[part];
  const name = PARTS[part];
  if (rows === undefined || name === undefined) return null;
  const asks = (kind: string): readonly Asked[] =>
    [...rows, ...(part === 'water.pumping' ? (TEST_ROWS[kind] ?? []) : [])].map((row) => askedOf(part, row, null));
  return { path: part, isItem: false, add: `Add ${name.the}`, title: name.label, said: null, asks, rising: null };
}

/** For a choice that cannot stand without values of its own; null where it can. */
export function entryOfKind(parent: string, kind: string): Entry | null {
  if (parent !== 'pump.curve' || kind !== 'points') return null;
  const asks = POINT_ROWS.map((row) =>
    askedOf(parent, row, row[0].startsWith('points.0') ? 'the first point' : 'the second point'),
  );
  return {
    path: parent,
    isItem: false,
    add: 'Take points from the maker’s sheet',
    title: 'Points from the maker’s sheet',
    said: { kind },
    asks: () => asks,
    rising: null,
  };
}

/** @param of  what the label says it is of, in place of what the field's own label says */
function askedOf(owner: string, [key, example, notKnown]: Row, of: string | null): Asked {
  const path = (key === '' ? owner : `${owner}.${key}`).replace(/\.(?:steps|points)\.\d/, (found) =>
    found.replace(/\d$/, '*'),
  );
  const field = ASKED.find((each) => each.path === path);
  if (field === undefined) throw new Error(`askedOf: the record has no field ${path}; see the plan's schema`);
  const whose =
    of ?? (owner === 'house.line' ? 'the line to the house' : key.startsWith('steps') ? 'the first step' : null);
  const [us, metric] = typeof example === 'string' ? [example, example] : (example ?? ['', '']);
  return {
    key,
    field,
    label: whose === null ? field.label : named(field.label, whose),
    example: example === null ? null : { us, metric },
    notKnown: notKnown ?? null,
  };
}
