/** A drawing that follows another, from which one field alone differs: what is remembered of the first must not show. */
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { drawAtHouse } from '../../src/draw/details/house/atHouse.ts';
import { A4, createDrawer, draw, LETTER, type Drawer, type Scene, type View } from '../../src/draw/index.ts';
import { solve, withValue, type Plan, type Solution } from '../../src/model/index.ts';
import { short } from '../../src/words/en/short.ts';
import { planOf, rockWell, sample, SAMPLES } from '../plans/build.ts';
import { fieldsOf, hasPlace, otherIn, saidIn, says } from '../plans/fields.ts';
import { seeded } from '../plans/hostile.ts';
import { BAD } from '../wells/bad.ts';
import { SOUND } from '../wells/sound.ts';
import { GALLERY } from './gallery.ts';
import { SHEET } from './pictures.ts';

type Asked = (solution: Solution) => View;

const on = (view: Partial<View>): Asked => {
  return () => ({ ...SHEET, ...view });
};
/** A stretch of the section about a depth [m]. */
const about = (depth: number, length: number, view: Partial<View> = {}): View => ({
  ...SHEET,
  sheet: 'section',
  width: 700,
  window: { topDepth: depth - length / 2, bottomDepth: depth + length / 2 },
  ...view,
});

/** Every view of a well: the section whole and in part, both details, the lens at several depths, and paper. */
const VIEWS: Readonly<Record<string, Asked>> = {
  all: on({ width: 1400, height: 900 }),
  'all, dark': on({ theme: 'dark', units: 'metric' }),
  section: on({ sheet: 'section', width: 390, height: 640 }),
  'section of the top': () => about(1, 6),
  'section of the pump': ({ facts }) => about(facts.pump.setting, 5),
  'section of the pump, running': ({ facts }) =>
    about(facts.pump.setting, 12, { moment: { pumping: true, flow: 0.4 } }),
  'section of the water': ({ levels }) => about(levels.static ?? 10, 15, { sheet: 'all', width: 1100 }),
  'section of the bottom': ({ facts }) => about(facts.well.bottom, 9),
  'section with the lens': ({ facts }) => ({
    ...SHEET,
    lens: { topDepth: facts.pump.setting / 2, bottomDepth: facts.pump.setting / 2 + 1 },
  }),
  A: on({ sheet: 'top', width: 420, height: 500 }),
  'A in winter': on({ sheet: 'top', width: 420, height: 500, moment: { frostShare: 0.6 } }),
  B: on({ sheet: 'pump', width: 420, height: 700 }),
  'B, running': on({ sheet: 'pump', width: 420, height: 700, moment: { pumping: true, flow: 0.4 } }),
  'close-up of the adapter': ({ facts }) => ({
    ...SHEET,
    sheet: { at: facts.top.kind === 'pitless' ? facts.top.depth : 1 },
    width: 420,
    height: 500,
  }),
  'close-up of the water': ({ levels }) => ({ ...SHEET, sheet: { at: levels.static ?? 5 }, width: 420, height: 500 }),
  'close-up of the pipe': ({ facts }) => ({
    ...SHEET,
    sheet: { at: facts.pump.setting * 0.7 },
    width: 700,
    height: 500,
  }),
  'close-up of the bottom': ({ facts }) => ({ ...SHEET, sheet: { at: facts.well.bottom }, width: 420, height: 500 }),
  paper: on({ theme: 'print', paper: LETTER, caption: true, width: 0, height: 0 }),
  'all, black on white': on({ theme: 'contrast', caption: true }),
};

const SEEN = ['title', 'background', 'paper', 'shapes', 'scales', 'chips', 'marks', 'frames', 'hits'] as const;

/** What of a scene is not as if it had been drawn by itself. */
function unlike(scene: Scene, anew: Scene): string[] {
  const told = scene.describe() === anew.describe() ? [] : ['describe'];
  return [...SEEN.filter((part) => !isDeepStrictEqual(scene[part], anew[part])), ...told];
}

/** A well in one view, and the drawer that has just drawn it. */
interface Drawn {
  readonly plan: unknown;
  readonly name: string;
  readonly first: readonly [Solution, View];
  readonly drawer: Drawer;
  /** As drawn by itself. */
  readonly scene: Scene;
}

function drawn(plan: unknown, name: string, asked: Asked): Drawn {
  const solution = solve(planOf(plan));
  const first = [solution, asked(solution)] as const;
  const drawer = createDrawer();
  drawer(...first);
  return { plan, name, first, drawer, scene: draw(...first) };
}

/** A close-up of what the other well does not reach is one of its bottom. */
function inside(view: View, { facts }: Solution): View {
  const { sheet } = view;
  if (typeof sheet !== 'object') return view;
  return { ...view, sheet: { at: Math.min(Math.max(sheet.at, -facts.well.casingHeight), facts.well.bottom) } };
}

/** Draws another after it, and it once more after that. */
function faultsOf(
  what: string,
  { name, first, drawer, scene }: Drawn,
  [other, asked]: readonly [Solution, View],
): string[] {
  const second = [other, inside(asked, other)] as const;
  const there = unlike(drawer(...second), draw(...second)).map((part) => `${what}, ${name}: ${part}`);
  const back = unlike(drawer(...first), scene).map((part) => `${what}, and back, ${name}: ${part}`);
  return [...there, ...back];
}

/** They say what hardly any other does. */
const WORDY = {
  ...sample('tamarack-ridge'),
  pump: {
    setting: '180 ft',
    power: '1 hp',
    curve: {
      kind: 'points',
      points: [
        ['0 gpm', '330 ft'],
        ['6 gpm', '300 ft'],
        ['14 gpm', '170 ft'],
      ],
    },
  },
  ownPumps: [
    {
      name: 'Shed pump',
      power: '1 hp',
      points: [
        ['0 gpm', '330 ft'],
        ['14 gpm', '170 ft'],
      ],
    },
  ],
  house: {
    demand: '8 gpm',
    tank: '44 gal',
    distance: '120 ft',
    rise: '8 ft',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
    fixtures: { shower: 2, tap: 4 },
    stock: { horse: 2 },
    branches: [
      {
        name: 'barn',
        demand: '3 gpm',
        distance: '200 ft',
        rise: '4 ft',
        line: { material: 'PE', size: '1 in', rating: '160 psi' },
      },
    ],
  },
  disinfection: { strength: '6 %', target: '100 mg/L' },
  status: { 'pump.setting': 'installed', 'water.pumping': 'measured' },
  asBuilt: {
    date: '2026-06-01',
    by: 'the owner',
    installed: { 'pump.setting': '171 ft' },
    planned: { 'pump.setting': '168 ft' },
    measured: {
      ...{ staticLevel: '62 ft', voltage: '236 V', current: '8 A', flow: '11 gpm', precharge: '38 psi' },
      ...{ cutIn: '40 psi', cutOut: '60 psi', pumpingLevel: '95 ft', run: '2 min', insulation: '> 200' },
    },
    pulled: {
      ...{ date: '2026-05-30', intake: '165 ft', pump: '3/4 hp', pipe: 'PE, 1 in' },
      ...{ soundedDepth: '214 ft', found: 'worn wheels' },
    },
  },
};

const STEPPED = {
  ...WORDY,
  site: { freezing: { index: '1200 degF d', soil: 'silt loam', surface: 'lawn' } },
  water: {
    staticLevel: '62 ft',
    pumping: {
      kind: 'steps',
      steps: [
        { flow: '4 gpm', drawdown: '12 ft', after: '1 h' },
        { flow: '8 gpm', drawdown: '30 ft', after: '2 h' },
      ],
    },
  },
  pump: {
    ...WORDY.pump,
    curve: {
      kind: 'points',
      points: [
        ['0 gpm', '300 ft'],
        ['12 gpm', '180 ft'],
      ],
    },
  },
  ownPumps: [
    {
      name: 'Barn pump',
      points: [
        ['1 gpm', '200 ft'],
        ['9 gpm', '120 ft'],
      ],
    },
  ],
  house: { ...WORDY.house, fixtures: { tap: 2 }, stock: { cow: 3 } },
  top: { kind: 'seal', heated: true, housed: false },
  disinfection: { strength: '10 %' },
  status: { 'well.depth': 'reported' },
  asBuilt: {
    ...{ date: '2026-06-02', by: 'a neighbour', installed: { 'pump.setting': '140 ft' } },
    planned: { 'pump.setting': '150 ft' },
    measured: {
      ...{ staticLevel: '60 ft', voltage: '230 V', current: '9 A', flow: '9 gpm', precharge: '28 psi' },
      ...{ cutIn: '30 psi', cutOut: '50 psi', pumpingLevel: '99 ft', run: '1 min', insulation: '20' },
    },
    pulled: {
      ...{ date: '2026-05-29', intake: '150 ft', pump: '1 hp', pipe: 'steel' },
      ...{ soundedDepth: '210 ft', found: 'a hole' },
    },
  },
};
const LINED = {
  ...WORDY,
  site: { freezing: { station: 'Duluth', soil: 'sand', surface: 'snow' } },
  well: {
    depth: '220 ft',
    casings: [
      { material: 'steel', size: '6 in', bottom: '90 ft', height: '12 in' },
      { material: 'PVC', insideDiameter: '4.5 in', top: '50 ft', bottom: '220 ft' },
    ],
    intake: { kind: 'screen', screens: [{ top: '200 ft', bottom: '220 ft' }] },
  },
  water: {
    staticLevel: '62 ft',
    pumping: { kind: 'aquifer', transmissivity: '20 m2/d', storativity: '0.0002', radius: '3 in' },
  },
};

const wells: readonly unknown[] = [
  WORDY,
  STEPPED,
  LINED,
  ...SAMPLES.map(sample),
  ...GALLERY.map(({ plan }) => plan),
  ...SOUND.map(({ plan }) => plan),
  ...BAD.map(({ plan }) => plan),
].map((plan) => JSON.parse(JSON.stringify(plan)) as unknown);
/** Between them they have nearly every part. */
const BASES = [
  WORDY,
  STEPPED,
  LINED,
  ...SAMPLES.map(sample),
  ...GALLERY.map(({ plan }) => JSON.parse(JSON.stringify(plan)) as unknown),
];

/** What may be asked otherwise, for every field of a view: a new one does not compile until it is here. */
const OTHERWISE: {
  readonly [Name in keyof View]-?: (view: View, solution: Solution, scene: Scene) => readonly Required<View>[Name][];
} = {
  sheet: (_view, { facts }) => ['all', 'section', 'top', 'pump', { at: facts.pump.setting }, { at: 1.5 }],
  width: ({ width }) => [width + 1, width * 0.8 + 80],
  height: ({ height }) => [height + 1, height * 0.9 + 40],
  units: () => ['us', 'metric'],
  // Another language has a law of its own.
  words: () => [{ ...short }],
  theme: () => ['light', 'dark', 'print', 'contrast', 'contrast-dark'],
  frozen: (_view, _solution, { scales: { windows, chips } }) => [
    { windows, chips },
    { windows: {}, chips },
    { windows, chips: [] },
  ],
  looks: (_view, _solution, { scales: { looks } }) => [looks],
  window: (_view, { facts }) => [
    { topDepth: 0, bottomDepth: 4 },
    { topDepth: facts.pump.setting - 1, bottomDepth: facts.pump.setting + 2 },
  ],
  lens: (_view, { facts }) => [
    { topDepth: 1, bottomDepth: 2 },
    { topDepth: facts.pump.setting - 1, bottomDepth: facts.pump.setting },
  ],
  held: (_view, { facts }) => [
    { handle: 'pumpSetting', start: facts.pump.setting - 3 },
    { handle: 'staticLevel', start: 4 },
    { handle: 'wellBottom', start: facts.well.bottom - 2 },
  ],
  lit: () => ['pump', 'dropPipe', '1'],
  pieces: () => [{ rope: 'absent' }, { cable: 'ghosted' }, { pump: 'lit' }],
  marks: () => [true, false],
  // A drawer without it draws no house.
  atHouse: () => [drawAtHouse],
  moment: (_view, { levels }) => [
    { pumping: true, flow: 0.3 },
    { pumping: true, flow: 0.31 },
    { pumping: false },
    { pumping: false, water: (levels.static ?? 5) + 1 },
    { frostShare: 0.4 },
    { frostShare: 1, thawShare: 0.5 },
    { pumping: true, valveOpen: 0.5 },
  ],
  paper: () => [LETTER, A4],
  spare: () => [1, 1.25],
  caption: () => [true, false],
  imprint: () => [{ date: '2026-04-20' }, { version: '2' }],
};
/** Of these something is always said. */
const IS_ASKED: ReadonlySet<keyof View> = new Set<keyof View>(['sheet', 'width', 'height', 'units', 'theme']);

const ASKED = Object.entries(VIEWS);
/** Each well in some of the views, between them all in all. */
const DRAWN: readonly Drawn[] = BASES.flatMap((plan, i) =>
  [0, 1, 2].map((n) => drawn(plan, ...ASKED[(i * 3 + n) % ASKED.length]!)),
);

const PLASTIC = { dropPipe: { material: 'PVC', size: '1-1/4 in' } };
const WIDE = {
  depth: '200 ft',
  casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '12 in' },
  intake: { kind: 'open hole', diameter: '12 in' },
};
/** What some piece hangs on, and nearly always changes together with something else that it hangs on: here alone. */
const ALONE: readonly (readonly [what: string, plan: Plan, path: string, to: unknown])[] = [
  ['snow ends at a casing, which in a wide hole is thinner', rockWell({ well: WIDE }), 'well.casing.size', '4 in'],
  ['the pump leaves its band', rockWell(), 'pump.setting', '197 ft'],
  ['pipe of the same size is of another material', rockWell(PLASTIC), 'dropPipe.material', 'galvanized steel'],
  [
    'a rope is tied elsewhere',
    rockWell({ rope: { material: 'polypropylene', tied: 'casing hook' } }),
    'rope.tied',
    'through cap',
  ],
];

/** How often each field is changed. */
const TRIED = 4;

describe('what is drawn is as if drawn anew', () => {
  test('whichever one field of a plan changes', () => {
    const random = seeded(20);
    const faults: string[] = [];
    const untried: string[] = [];
    const fields = fieldsOf();
    const said = saidIn(wells, fields);
    for (const field of fields) {
      const havePlace = DRAWN.filter(({ plan }) => hasPlace(plan, field));
      const sayIt = havePlace.filter(({ plan }) => says(plan, field));
      let count = 0;
      for (let i = 0; i < 4 * TRIED && count < TRIED && havePlace.length > 0; i++) {
        // As often where it changes or goes as where it comes.
        const bases = i % 2 === 0 && sayIt.length > 0 ? sayIt : havePlace;
        const base = bases[Math.floor(random() * bases.length)]!;
        const other = otherIn(base.plan, field, said.get(field.path) ?? [], random);
        if (other === null) continue;
        faults.push(...faultsOf(other.what, base, [solve(other.plan), base.first[1]]));
        count++;
      }
      if (count === 0) untried.push(field.path);
    }
    expect(faults).toEqual([]);
    // There is one form of plan, and a kind changes with all that belongs to it.
    expect(untried.filter((path) => !path.endsWith('.kind'))).toEqual(['format']);
  }, 120_000);

  test.each(ALONE)('where hardly anything changes: %s', (what, plan, path, to) => {
    const other = solve(planOf(withValue(plan, path, to)));
    const faults: string[] = [];
    let moved = 0;
    for (const [name, asked] of ASKED) {
      const base = drawn(plan, name, asked);
      const [, view] = base.first;
      if (unlike(base.scene, draw(other, view)).length > 0) moved++;
      faults.push(...faultsOf(what, base, [other, view]));
    }
    expect(faults).toEqual([]);
    expect(moved).toBeGreaterThan(0);
  });

  test('whichever one thing is asked of it otherwise', () => {
    const random = seeded(21);
    const pick = <T>(from: readonly T[]): T => from[Math.floor(random() * from.length)]!;
    const faults: string[] = [];
    for (const name of Object.keys(OTHERWISE) as (keyof View)[]) {
      for (let i = 0; i < 4 * TRIED; i++) {
        const base = pick(DRAWN);
        const [solution, view] = base.first;
        const others: Partial<View>[] = OTHERWISE[name](view, solution, base.scene).map((value) => ({ [name]: value }));
        // Left out in one of a few, where it may be.
        const { [name]: now, ...rest } = view;
        if (now !== undefined && !IS_ASKED.has(name)) others.push({});
        const other = { ...rest, ...pick(others) } as View;
        faults.push(...faultsOf(`${name}: ${JSON.stringify(other[name])?.slice(0, 80)}`, base, [solution, other]));
      }
    }
    expect(faults).toEqual([]);
  }, 120_000);
});
