/** Wells whose pictures are kept: each for a reason, each looked at. */
import { A4, LETTER, type View } from '../../src/draw/index.ts';
import { withValue } from '../../src/model/index.ts';
import type { Plan } from '../../src/model/index.ts';
import { planOf, sample } from '../plans/build.ts';

export interface Picture {
  readonly name: string;
  /** What this picture would show that no other does. */
  readonly why: string;
  readonly plan: Plan;
  readonly view: Partial<View>;
}

type Changes = Readonly<Record<string, unknown>>;

const tamarack = (changes: Changes = {}): Plan => changed('tamarack-ridge', changes);

function changed(name: string, changes: Changes): Plan {
  const plan = Object.entries(changes).reduce((made, [path, to]) => withValue(made, path, to), planOf(sample(name)));
  return planOf(JSON.parse(JSON.stringify(plan)));
}

const smallWell = (title: string, change: Record<string, unknown>): Plan =>
  planOf({
    format: 'wellcut-plan/1',
    title,
    units: 'us',
    site: { frostDepth: '30 in', frostFrom: 'local code' },
    water: { staticLevel: '6 ft', pumping: { kind: 'test', flow: '5 gpm', drawdown: '2 ft', after: '1 h' } },
    house: {
      demand: '4 gpm',
      distance: '30 ft',
      rise: '3 ft',
      line: { material: 'PE', size: '1 in', rating: '160 psi' },
      reliefValve: true,
    },
    top: { kind: 'pitless', depth: '3 ft' },
    pump: { setting: '10 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '5 gpm' } },
    dropPipe: { material: 'PE', size: '1 in', rating: '160 psi' },
    wire: { size: '12 AWG' },
    ...change,
  });

const driven = {
  depth: '15 ft',
  casing: { material: 'steel', size: '2 in', bottom: '12 ft', height: '18 in' },
  intake: { kind: 'driven point', diameter: '2 in', top: '12 ft', bottom: '15 ft' },
};
const dug = {
  depth: '28 ft',
  casing: { material: 'concrete', size: '36 in', bottom: '28 ft', height: '18 in' },
  intake: { kind: 'dug', diameter: '36 in' },
  layers: [
    { material: 'topsoil', bottom: '2 ft' },
    { material: 'till', bottom: '20 ft' },
    { material: 'gravel', bottom: '28 ft' },
  ],
};
const bare = {
  depth: '180 ft',
  casing: { material: 'steel', size: '6 in', bottom: 'unknown', height: '12 in' },
  intake: { kind: 'open hole' },
};

const layers = (unit: 'ft' | 'm', ...bottoms: readonly (readonly [material: string, bottom: number])[]) =>
  bottoms.map(([material, bottom]) => ({ material, bottom: `${bottom} ${unit}` }));

const BEDDED = layers(
  'ft',
  ['topsoil', 3],
  ['silt', 20],
  ['till', 45],
  ['weathered shale', 70],
  ['shale', 100],
  ['dolomite', 140],
  ['sandstone', 180],
  ['limestone', 220],
);
const LOOSE = layers(
  'm',
  ['loam', 1],
  ['sandy clay', 9],
  ['fine sand', 18],
  ['sand', 27],
  ['coarse sand', 36],
  ['sand and gravel', 46],
  ['gravel', 61],
  ['clay', 62],
);
const ROCKS = layers(
  'ft',
  ['clay', 25],
  ['weathered granite', 55],
  ['granite', 90],
  ['basalt', 120],
  ['schist', 150],
  ['conglomerate', 185],
  ['rock', 220],
);

const picture = (name: string, why: string, plan: Plan, view: Partial<View> = {}): Picture => ({
  name,
  why,
  plan,
  view,
});

export const GALLERY: readonly Picture[] = [
  picture('rock-light', 'a rock well with pitless adapter, all in order', tamarack()),
  picture('rock-dark', 'the same in the dark theme', tamarack(), { theme: 'dark' }),
  picture('rock-print', 'the same in black and white', tamarack(), { theme: 'print', caption: true }),
  picture('rock-metric', 'the same in metres', tamarack({ units: 'metric' }), { units: 'metric' }),
  picture('rock-narrow', 'the narrowest sheet that still holds section and details', tamarack(), {
    width: 760,
    height: 900,
  }),
  picture('rock-phone', 'the section on a phone', tamarack(), { sheet: 'section', width: 390, height: 700 }),
  picture('rock-320', 'the section on the smallest phone', tamarack(), { sheet: 'section', width: 320, height: 640 }),
  picture('screened', 'PVC casing, screen, gravel pack and sump, in metres', changed('heron-flats', {}), {
    units: 'metric',
  }),
  picture('metric-sizes', 'pipe, casing and wire in mm, 50 Hz', changed('willow-dale', {}), {
    units: 'metric',
  }),
  picture('screened-phone', 'crowded lower chips on a phone', changed('heron-flats', {}), {
    sheet: 'section',
    width: 390,
    height: 700,
    units: 'metric',
  }),
  picture('seal-on-top', 'sanitary seal, tee and plug, rigid pipe with couplings', changed('palo-amargo', {}), {
    units: 'metric',
  }),
  picture('seal-print', 'the same for an install guide, with legend', changed('palo-amargo', {}), {
    units: 'metric',
    theme: 'print',
    caption: true,
  }),
  picture('deep-and-poor', '845 ft, air lift only: hatched zone, level unknown', changed('slate-hollow', {})),
  picture('deep-dark-phone', 'the same, dark, on a phone', changed('slate-hollow', {}), {
    sheet: 'section',
    width: 390,
    height: 700,
    theme: 'dark',
  }),
  picture(
    'two-dangers',
    'adapter in the frost zone and pump near the bottom',
    tamarack({ 'top.depth': '3 ft', 'pump.setting': '214 ft' }),
  ),
  picture('limited', 'a flow-limiting valve on the pump’s outlet', tamarack({ 'pump.flowLimiter': '6 gpm' }), {
    sheet: 'pump',
    width: 520,
    height: 620,
  }),
  picture('runs-dry', 'the dry-season level falls below the intake', tamarack({ 'pump.setting': '105 ft' })),
  picture(
    'driven-point',
    '15 ft deep: no width factor to speak of',
    smallWell('Shore point', {
      well: driven,
      water: { staticLevel: '6 ft', pumping: { kind: 'test', flow: '5 gpm', drawdown: '2 ft', after: '24 h' } },
      dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' },
    }),
  ),
  picture(
    'dug-well',
    'a wide, shallow bore under a seal',
    smallWell('Old orchard', {
      well: dug,
      top: { kind: 'seal', housed: true },
      pump: { setting: '22 ft', power: '1/2 hp', curve: { kind: 'generic', flow: '5 gpm' } },
    }),
  ),
  picture(
    'thousand-feet',
    '1,000 ft deep',
    changed('slate-hollow', { 'well.depth': '1000 ft', 'well.soundedDepth': '990 ft', 'pump.setting': '940 ft' }),
  ),
  picture(
    'flowing',
    'water stands above the ground',
    tamarack({ 'water.staticLevel': '-3 ft', 'well.flowControl': true }),
  ),
  picture(
    'nothing-known',
    'dashed and with question marks, nothing guessed',
    smallWell('Found in the grass', {
      site: {},
      well: bare,
      water: { staticLevel: 'unknown' },
      house: { demand: '5 gpm' },
      pump: { setting: '120 ft', curve: { kind: 'generic', flow: '7 gpm' } },
    }),
  ),
  picture(
    'two-valves',
    'a second valve and a second splice in the pipe',
    tamarack({ 'string.checkValves': ['0 ft', '80 ft'], 'string.splices': ['4 ft', '60 ft'] }),
  ),
  picture(
    'bare-string',
    'no valve, no arrestor, no rope',
    tamarack({ 'string.checkValves': [], 'string.torqueArrestor': 'none', rope: undefined }),
  ),
  picture('in-the-screen', 'the pump hangs inside the screen', changed('heron-flats', { 'pump.setting': '34 m' }), {
    units: 'metric',
  }),
  picture(
    'shroud',
    'a sleeve leads the water past the motor',
    tamarack({ 'pump.shroudDiameter': '4 in', 'pump.shroudWall': '1/4 in' }),
  ),
  picture(
    'liner',
    'a 4 in liner inside 6 in casing',
    tamarack({
      'well.casings': [
        { material: 'steel', size: '6 in', bottom: '90 ft', height: '16 in' },
        { material: 'PVC', size: '4 in', top: '80 ft', bottom: '215 ft' },
      ],
    }),
  ),
  picture(
    'two-screens',
    'blank pipe between two screens',
    changed('heron-flats', {
      'well.intake': {
        kind: 'screen',
        diameter: '4 in',
        screens: [
          { top: '28 m', bottom: '30 m' },
          { top: '33 m', bottom: '36 m' },
        ],
      },
      'well.casing.bottom': '28 m',
    }),
    { units: 'metric' },
  ),
  picture(
    'steel-and-guards',
    'galvanized pipe, couplings, guards every 40 ft',
    tamarack({ dropPipe: { material: 'galvanized steel', size: '1-1/4 in' }, 'string.guards': '40 ft' }),
  ),
  picture(
    'aquifer',
    'cone of depression from transmissivity and storativity',
    tamarack({ 'water.pumping': { kind: 'aquifer', transmissivity: '4 m2/d', storativity: '0.0001' } }),
  ),
  picture(
    'deep-frost',
    'frost to 96 in: detail A grows with the adapter',
    tamarack({ 'site.frostDepth': '96 in', 'top.depth': '9 ft' }),
  ),
  picture('seal-in-frost', 'an unheated seal where frost goes 48 in deep', tamarack({ top: { kind: 'seal' } })),
  picture('rope-through-cap', 'the rope leaves through the cap', tamarack({ 'rope.tied': 'through cap' })),
  picture('valve-upside-down', 'the check valve points down', tamarack({ 'string.arrow': 'down' })),
  picture('contrast', 'ink on paper only, heavy lines', tamarack(), { theme: 'contrast' }),
  picture('contrast-dark', 'the seal in white on black, heavy lines', changed('palo-amargo', {}), {
    theme: 'contrast-dark',
    units: 'metric',
  }),
  picture('letter', 'on a sheet of letter paper, to a standard scale, with legend and title block', tamarack(), {
    theme: 'print',
    paper: LETTER,
    caption: true,
  }),
  picture('a4', 'the same for a screened well on A4, in metres', changed('heron-flats', {}), {
    theme: 'print',
    paper: A4,
    caption: true,
    units: 'metric',
  }),
  picture(
    'open-tank',
    'a poor well fills a tank open to the air, above bedded ground, seal on top, in print',
    tamarack({
      top: { kind: 'seal', housed: true },
      'house.kind': 'open tank',
      'house.tank': '1000 gal',
      'well.layers': BEDDED,
    }),
    { theme: 'print', caption: true },
  ),
  picture(
    'variable-speed',
    'a drive on the wall instead of a switch, loose ground of every kind, dark, in metres',
    changed('palo-amargo', { 'house.control': 'variable speed', 'well.layers': LOOSE, 'site.frostDepth': '60 cm' }),
    { theme: 'dark', units: 'metric' },
  ),
  picture('rocks', 'every kind of rock, told apart without colour, high contrast', tamarack({ 'well.layers': ROCKS }), {
    theme: 'contrast',
  }),
  picture('detail-top', 'the well top alone', tamarack(), { sheet: 'top', width: 480, height: 520 }),
  picture('detail-pump', 'the pump end alone', tamarack(), { sheet: 'pump', width: 480, height: 560 }),
  picture('house', 'what stands in the house, its tank at 60 psi', tamarack(), {
    sheet: 'house',
    width: 480,
    height: 620,
  }),
  picture(
    'house-drive',
    'a drive, a small tank of a low rating, no relief valve; dark, on a phone',
    tamarack({
      'house.control': 'variable speed',
      'house.tank': '4 gal',
      'house.tankRating': '60 psi',
      'house.reliefValve': false,
    }),
    { sheet: 'house', width: 390, height: 520, theme: 'dark' },
  ),
  picture(
    'house-open-tank',
    'the line turns over the rim of a tank open to the air; in print',
    tamarack({ 'house.kind': 'open tank', 'house.tank': '500 gal', 'house.rise': 'unknown' }),
    { sheet: 'house', width: 480, height: 620, theme: 'print' },
  ),
  picture('lens-adapter', 'the adapter at true proportion', tamarack(), {
    sheet: { at: 1.83 },
    width: 480,
    height: 520,
  }),
  picture('lens-joint', 'check valve and insert fitting at true proportion', tamarack(), {
    sheet: { at: 54.3 },
    width: 480,
    height: 520,
  }),
];
