/**
 * Invented wells; built as common practice has it (no source).
 *
 * Each is one of the sound wells with exactly one thing wrong, and lists the rules that this fault breaks: its own first,
 * then those that it cannot but break as well. A note that the sound well beneath it has already is not listed again.
 */
import { SOUND } from './sound.ts';

export type Gravity = 'danger' | 'warning' | 'note' | 'depends';

export interface BadWell {
  readonly name: string;
  /** The one thing that is wrong. */
  readonly fault: string;
  /** Name of the sound well that it was before. */
  readonly on: string;
  /** A plan as it would come from a file. */
  readonly plan: unknown;
  /** Rules that the fault breaks, its own first. */
  readonly breaks: readonly [string, ...string[]];
  /** What its own rule says: "depends" where the bad end of an unknown fact breaks it. */
  readonly severity: Gravity;
}

type Changes = Readonly<Record<string, unknown>>;
type Fields = Record<string, unknown>;

/** A copy of a sound well's plan with other values at some paths ("well.casings.1.schedule"); undefined takes a field out. */
function but(on: string, changes: Changes): unknown {
  const sound = SOUND.find(({ name }) => name === on);
  if (sound === undefined) throw new Error(`no sound well is called ${on}`);
  const plan = JSON.parse(JSON.stringify(sound.plan)) as Fields;
  for (const [path, value] of Object.entries(changes)) {
    const keys = path.split('.');
    const last = keys.pop() ?? '';
    let group = plan;
    for (const key of keys) group = (group[key] ??= {}) as Fields;
    group[last] = value;
  }
  // Written out and read again, what is undefined is gone.
  return JSON.parse(JSON.stringify(plan));
}

function bad(
  name: string,
  fault: string,
  severity: Gravity,
  breaks: readonly [string, ...string[]],
  on: string,
  changes: Changes,
): BadWell {
  return { name, fault, on, plan: but(on, changes), breaks, severity };
}

const DEPTH: readonly BadWell[] = [
  bad('buried motor', 'sand has filled the hole to 3 ft under the motor', 'danger', ['PR-01'], 'Cumberland Bench', {
    'well.soundedDepth': '134.5 ft',
  }),
  bad('silted hole', 'the motor ends 7 ft 6 in off the bottom', 'warning', ['PR-01'], 'Cumberland Bench', {
    'well.soundedDepth': '139 ft',
  }),
  bad('little water', 'about 6 ft of water over the intake', 'warning', ['PR-02', 'PR-08'], 'Judith Bench', {
    'pump.setting': '101 ft',
  }),
  bad('sucks air', 'the intake is above the pumping level', 'danger', ['PR-02', 'PR-08'], 'Judith Bench', {
    'pump.setting': '85 ft',
  }),
  bad('hangs in air', 'the water at rest stands below the intake', 'danger', ['PR-02'], 'Oak Hammock', {
    'water.staticLevel': '70 ft',
  }),
  bad('dry hole', 'the water at rest stands below the bottom of the well', 'danger', ['PR-02'], 'Oak Hammock', {
    'water.staticLevel': '200 ft',
  }),
  bad(
    'probe nobody placed',
    'a cut-off of unknown depth, 8 ft of water',
    'depends',
    ['PR-02', 'PR-08'],
    'Judith Bench',
    {
      'pump.setting': '103 ft',
      'pump.lowLevelCutOff': true,
    },
  ),
  bad('in the screen', 'the motor hangs in the screen', 'danger', ['PR-03'], 'Prairie Center', {
    'pump.setting': '137.5 ft',
  }),
  bad(
    'wide sleeve',
    'its bore passes the casing, its outside does not',
    'danger',
    ['PR-17', 'PR-06'],
    'Mesquite Flat',
    {
      'pump.shroudDiameter': '7-3/4 in',
    },
  ),
  bad('falling water', 'the main inflow is above the pumping level', 'warning', ['PR-04'], 'Laurel Gap', {
    'well.inflows': [
      { depth: '90 ft', share: '70 %' },
      { depth: '176 ft', share: '30 %' },
    ],
  }),
  bad('still water', '3 hp below its only inflow, without a flow sleeve', 'warning', ['PR-05'], 'Box Elder Bench', {
    'well.inflows': [{ depth: '102 ft', share: '100 %' }],
  }),
  bad('wide casing', '3 hp in an 8 in casing without its flow sleeve', 'note', ['PR-06'], 'Mesquite Flat', {
    'pump.shroudDiameter': undefined,
  }),
  bad('greedy pump', 'takes 15 gpm from a well tested at 8', 'warning', ['PR-07', 'PR-08'], 'Dune Meadow', {
    'well.yield': '8 gpm',
    'water.pumping': { kind: 'test', flow: '8 gpm', drawdown: '3 ft', after: '4 h' },
  }),
  bad('nothing stops it', '17 ft of water and no low-level cut-off', 'note', ['PR-08'], 'Judith Bench', {
    'pump.setting': '112 ft',
  }),
  bad('probe at the intake', 'the cut-off acts 6 in above the intake', 'note', ['PR-08', 'PR-02'], 'Birch Hollow', {
    'pump.lowLevelCutOff': '230.5 ft',
  }),
  bad(
    'blown and hung by guess',
    '305 ft of rock, 6 gpm by air: a 3/4 hp pump cannot lift from where it hangs',
    'depends',
    ['PR-54', 'PR-46', 'PR-53', 'PR-02', 'PR-07', 'PR-08', 'PR-55'],
    'Birch Hollow',
    {
      'well.yield': '6 gpm',
      'pump.setting': '280 ft',
      'pump.power': '3/4 hp',
      'pump.lowLevelCutOff': undefined,
      'pump.flowLimiter': undefined,
    },
  ),
  bad(
    'deeper than it lifts',
    'with water at its low-level cut-off the pump never reaches cut-out pressure',
    'depends',
    ['PR-46'],
    'Birch Hollow',
    {
      'pump.setting': '281 ft',
      'pump.lowLevelCutOff': '275 ft',
    },
  ),
  bad(
    'unknown drawdown',
    'pumping level unknown, and nothing stops the pump',
    'warning',
    ['PR-53', 'PR-02', 'PR-08'],
    'Ledge End',
    { 'pump.lowLevelCutOff': undefined },
  ),
];

const STRING: readonly BadWell[] = [
  bad('no valve', 'no check valve anywhere', 'danger', ['PR-09'], 'Dune Meadow', { 'string.checkValves': [] }),
  bad('high valve', 'the only check valve is 40 ft above the pump', 'warning', ['PR-09'], 'Pitch Pine Lane', {
    'string.checkValves': ['40 ft'],
  }),
  bad('hanging column', 'an upper valve 56 ft above the pumping level', 'warning', ['PR-09'], 'Judith Bench', {
    'string.checkValves': ['0 ft', '100 ft'],
  }),
  bad('valve in the line', 'a check valve between adapter and tank', 'warning', ['PR-10'], 'Snowbank Lake', {
    'string.valveBetweenTopAndTank': true,
  }),
  bad('arrow down', 'the check valve is upside down', 'danger', ['PR-11'], 'Larch Landing', { 'string.arrow': 'down' }),
  bad('twisting pipe', '1 hp on plastic pipe without a torque arrestor', 'warning', ['PR-12'], 'Judith Bench', {
    'string.torqueArrestor': 'none',
  }),
  bad('arrestor too high', 'the torque arrestor stands 8 ft above the pump', 'warning', ['PR-12'], 'Miami Bottoms', {
    'string.torqueArrestor': '8 ft',
  }),
  bad('loose cable', 'a tie every 30 ft', 'warning', ['PR-13'], 'Laurel Gap', { 'string.ties': '30 ft' }),
  bad('few guards', 'a cable guard every 80 ft', 'note', ['PR-14'], 'Spruce Cove', { 'string.guards': '80 ft' }),
  bad('second splice', 'a second splice halfway up', 'warning', ['PR-15'], 'Snowbank Lake', {
    'string.splices': ['4 ft', '60 ft'],
  }),
  bad('splice in the arms', 'the splice sits in the arms of the arrestor', 'warning', ['PR-15'], 'Laurel Gap', {
    'string.splices': ['2.5 ft'],
  }),
  bad('rope through the cap', 'the rope leaves through the cap', 'danger', ['PR-16'], 'Spruce Cove', {
    'rope.tied': 'through cap',
  }),
  bad('loose rope', 'the rope is tied to nothing', 'warning', ['PR-16'], 'Spruce Cove', { 'rope.tied': 'loose' }),
  bad('thin rope', 'a rope that breaks at 200 lb', 'warning', ['PR-16'], 'Spruce Cove', {
    'rope.breakingStrength': '200 lbf',
  }),
  bad('narrow liner', 'the liner leaves 0.03 in round the pump', 'danger', ['PR-17'], 'Limekiln Run', {
    'well.casings.1.schedule': 'schedule 80',
  }),
  bad('tight liner', 'the liner leaves 0.17 in round the pump', 'warning', ['PR-17'], 'Limekiln Run', {
    'well.casings.1.schedule': 'SDR 17',
  }),
  bad('weak pipe', '160 psi pipe under a pump that reaches 192', 'danger', ['PR-18', 'PR-48'], 'Limekiln Run', {
    'dropPipe.rating': '160 psi',
  }),
  bad('metric weak pipe', '8.6 bar pipe under a pump that reaches more', 'danger', ['PR-18', 'PR-48'], 'Fjellgrend', {
    'dropPipe.rating': '8.6 bar',
  }),
  bad('weak PN', 'PE 100 of PN 8 under a pump that reaches more', 'danger', ['PR-18', 'PR-48'], 'Lindenau', {
    'dropPipe.rating': 'PN 8',
  }),
  bad('thin metric wire', '1.5 mm2 over a long way from the panel', 'warning', ['PR-49'], 'Lindenau', {
    'wire.size': '1.5 mm2',
    'wire.run': '90 m',
  }),
  bad('low class', '125 psi drop pipe, enough for this pump only', 'warning', ['PR-18'], 'Dune Meadow', {
    'dropPipe.rating': '125 psi',
  }),
  bad('threaded schedule 40', 'threads cut into schedule 40 PVC', 'danger', ['PR-18', 'PR-48'], 'Cedar Brake', {
    'dropPipe.ratio': 'schedule 40',
  }),
  bad(
    'half of its rating',
    '1-1/2 in schedule 80 PVC: 471 psi plain, half of it threaded, under a pump that reaches 247',
    'danger',
    ['PR-18', 'PR-51'],
    'Quartz Gulch',
    {
      dropPipe: { material: 'PVC', size: '1-1/2 in', ratio: 'schedule 80', sectionLength: '20 ft' },
      // The wider pipe leaves less room for water.
      'house.demand': '4.2 gpm',
    },
  ),
  bad('nylon fittings', 'nylon insert fittings carry the string', 'danger', ['PR-18'], 'Dune Meadow', {
    'string.fittings': 'nylon',
  }),
  bad('one clamp', 'one clamp on each barb', 'danger', ['PR-18'], 'Ballinroe', { 'string.clampsPerJoint': 1 }),
  bad('rusting screws', 'clamps with carbon steel screws', 'warning', ['PR-18'], 'Pitch Pine Lane', {
    'string.clampScrew': 'carbon steel',
  }),
  bad('small line', '12 gpm through a 3/4 in line', 'warning', ['PR-47'], 'Miami Bottoms', {
    'house.line.size': '3/4 in',
  }),
  bad('hard-run pipe', 'cut-out turned up to 5 bar on pipe of 13.8', 'warning', ['PR-48'], 'Los Tarayes', {
    'house.cutOut': '5 bar',
  }),
  bad('heavy string', 'over 300 lb hang at rest', 'warning', ['PR-51'], 'Flint Pasture', { 'dropPipe.size': '2 in' }),
  bad('zinc on stainless', 'galvanized fittings on plastic pipe', 'warning', ['PR-52'], 'Dune Meadow', {
    'string.fittings': 'galvanized steel',
  }),
  bad('crossed threads', 'an outlet of the other thread system than the pipe', 'warning', ['PR-65'], 'Dune Meadow', {
    'pump.outlet': 'Rp 1 1/4',
  }),
  bad('loose barbs', 'pipe of another size system than the barbs', 'warning', ['PR-52'], 'Dune Meadow', {
    'dropPipe.standard': 'ASTM D3035',
  }),
];

const TOP: readonly BadWell[] = [
  bad('adapter in frost', 'the adapter at 5 ft, frost to 6 ft', 'danger', ['PR-19'], 'Snowbank Lake', {
    'top.depth': '5 ft',
  }),
  bad('adapter at the frost', 'the adapter 2 in below the frost', 'warning', ['PR-19'], 'Snowbank Lake', {
    'top.depth': '74 in',
  }),
  bad('deeper frost', 'frost to 1.2 m over an adapter at 0.9 m', 'danger', ['PR-19'], 'Ballinroe', {
    'site.frostDepth': '1.2 m',
  }),
  bad('drowned adapter', 'in spring the water stands above the adapter', 'danger', ['PR-20'], 'Dune Meadow', {
    'water.staticHighest': '4 ft',
  }),
  bad('adapter in the way', 'the pump does not pass the adapter', 'danger', ['PR-21'], 'Pine Plains', {
    'top.protrusion': '1 in',
  }),
  bad('adapter hardly passed', '0.15 in beside the adapter', 'warning', ['PR-21'], 'Snowbank Lake', {
    'top.protrusion': '1 in',
  }),
  bad(
    'unknown adapter',
    'a 5 in casing, and nobody said how far the adapter reaches in',
    'depends',
    ['PR-21'],
    'Snowbank Lake',
    {
      'top.protrusion': undefined,
    },
  ),
  bad('short casing', 'the casing stands 6 in above the ground', 'danger', ['PR-23'], 'Dune Meadow', {
    'well.casing.height': '6 in',
  }),
  bad('flood', 'floods stand 1 ft over the ground at the well', 'danger', ['PR-24'], 'Palmetto Bluff', {
    'site.floodHeight': '1 ft',
  }),
  bad('pit', 'the well head is in a pit', 'danger', ['PR-26'], 'Spruce Cove', { 'well.inPit': true }),
  bad('shallow grout', 'the grout ends at 10 ft', 'note', ['PR-35'], 'Laurel Gap', { 'well.grout.bottom': '10 ft' }),
  bad('barely in rock', 'the casing stands 0.5 m in rock', 'note', ['PR-36'], 'Ballinroe', {
    'well.layers.0.bottom': '20.5 m',
  }),
  bad('clogged screen', 'one per cent of the screen is open', 'warning', ['PR-37'], 'Palmetto Bluff', {
    'well.intake.screens.0.openArea': '1 %',
  }),
  bad('flowing well', 'the water stands above the ground', 'danger', ['PR-38', 'PR-20'], 'Waipuna Terrace', {
    'water.staticLevel': '-0.5 m',
  }),
  bad('near the septic tank', '40 ft to the septic tank, 75 asked', 'warning', ['PR-40'], 'Spruce Cove', {
    'site.septicTank.distance': '40 ft',
  }),
  bad('short test', 'tested for one hour', 'note', ['PR-42'], 'Dune Meadow', { 'water.pumping.after': '1 h' }),
  bad('seal in frost', 'a seal on top, frost to 18 in', 'danger', ['PR-43'], 'Oak Hammock', {
    'site.frostDepth': '18 in',
  }),
  bad('seal in light frost', 'a seal on top, frost to 5 in', 'warning', ['PR-43'], 'Palmetto Bluff', {
    'site.frostDepth': '5 in',
  }),
  bad('no cover', 'no frost, and the adapter under 20 cm of ground', 'warning', ['PR-64'], 'Waipuna Terrace', {
    'site.frostDepth': '0 m',
    'top.depth': '20 cm',
  }),
  bad('inches typed as feet', 'frost of 24 in typed as 24 ft, adapter at 25 ft', 'warning', ['PR-64'], 'Laurel Gap', {
    'site.frostDepth': '24 ft',
    'top.depth': '25 ft',
  }),
];

const HOUSE: readonly BadWell[] = [
  bad(
    'no relief',
    'nothing relieves a tank of 100 psi under a pump that reaches 142',
    'danger',
    ['PR-44'],
    'Oak Hammock',
    {
      'house.reliefValve': false,
    },
  ),
  bad('barely cut out', 'cut-out turned up until 5 psi are left', 'warning', ['PR-46'], 'Laurel Gap', {
    'house.cutOut': '60 psi',
  }),
  bad('never cuts out', 'cut-out turned up over what the pump reaches', 'danger', ['PR-46'], 'Laurel Gap', {
    'house.cutOut': '75 psi',
  }),
  bad(
    'drawn down too far',
    '5 gpm with 200 ft of drawdown: with the water down the pump reaches cut-out only as it comes back',
    'warning',
    ['PR-46'],
    'Birch Hollow',
    {
      'well.yield': '5 gpm',
      'well.yieldFrom': 'pump',
      'water.staticLevel': '40 ft',
      'water.pumping': { kind: 'test', flow: '5 gpm', drawdown: '200 ft', after: '6 h' },
      'pump.setting': '285 ft',
      'pump.power': '3/4 hp',
      'pump.lowLevelCutOff': '275 ft',
      'pump.flowLimiter': undefined,
    },
  ),
  bad('thin wire', '700 ft from the panel on 10 AWG', 'warning', ['PR-49'], 'Judith Bench', { 'wire.size': '10 AWG' }),
  bad('hot wire', '3 hp on 14 AWG', 'danger', ['PR-50', 'PR-49'], 'Box Elder Bench', { 'wire.size': '14 AWG' }),
  bad('too little', 'the pump gives three quarters of what the house wants', 'warning', ['PR-54'], 'Waipuna Terrace', {
    'house.demand': '86 L/min',
  }),
  bad('far too weak', '1/2 hp cannot lift to cut-in at all', 'danger', ['PR-54', 'PR-46'], 'Piñon Bench', {
    'pump.power': '1/2 hp',
  }),
  bad(
    'more than it gives',
    'the house wants 12 gpm of a well that gives 8, and nothing is stored',
    'warning',
    ['PR-55', 'PR-07', 'PR-08'],
    'Miami Bottoms',
    {
      'well.yield': '8 gpm',
      'water.pumping': { kind: 'test', flow: '8 gpm', drawdown: '6 ft', after: '4 h' },
    },
  ),
  bad('not even the day', 'four people on 0.1 gpm: 144 gallons a day', 'danger', ['PR-55'], 'Quartz Gulch', {
    'house.people': 4,
    'well.yield': '0.1 gpm',
    'water.pumping': { kind: 'test', flow: '0.1 gpm', drawdown: '140 ft', after: '6 h' },
  }),
  bad('short cycling', 'a 5 gal tank on a 10 gpm pump', 'warning', ['PR-56'], 'Laurel Gap', { 'house.tank': '5 gal' }),
  bad('short cycling in litres', 'a 24 L tank on a 40 L/min pump', 'warning', ['PR-56'], 'Heidekamp', {
    'house.tank': '24 L',
  }),
  bad('hard tank', 'pre-charge 5 psi over cut-in', 'warning', ['PR-57'], 'Spruce Cove', {
    'house.precharge': '45 psi',
  }),
  bad('tank takes nothing', 'pre-charge at cut-out', 'danger', ['PR-57', 'PR-56'], 'Spruce Cove', {
    'house.precharge': '60 psi',
  }),
  bad('soft tank', 'pre-charge 12 psi under cut-in', 'note', ['PR-57'], 'Spruce Cove', { 'house.precharge': '28 psi' }),
  bad('drive with a hard tank', 'pre-charge near the pressure that the drive holds', 'note', ['PR-57'], 'Palouse Rim', {
    'house.precharge': '57 psi',
  }),
  bad('run-out', 'an open tank at ground level lets the pump run past its curve', 'note', ['PR-58'], 'Dune Meadow', {
    'house.kind': 'open tank',
  }),
  bad('past its last point', 'the pump runs past the last point of its sheet', 'note', ['PR-58'], 'Camas Prairie', {
    'pump.curve.points': [
      ['0 gpm', '275 ft'],
      ['8 gpm', '262 ft'],
      ['16 gpm', '224 ft'],
      ['20 gpm', '192 ft'],
    ],
  }),
  bad('low voltage', '3/4 hp on 115 V', 'warning', ['PR-59'], 'Pine Plains', { 'pump.power': '3/4 hp' }),
  bad('wrong supply', '1-1/2 hp on 115 V', 'warning', ['PR-59', 'PR-49'], 'Camas Prairie', { 'pump.voltage': '115 V' }),
  bad('two wires', '3 hp single phase on two conductors', 'danger', ['PR-59'], 'Box Elder Bench', { 'pump.wires': 2 }),
  bad('three phases on two', 'a three-phase motor on two conductors', 'danger', ['PR-59'], 'Mesquite Flat', {
    'pump.wires': 2,
  }),
  bad('gas', 'gas comes with the water', 'warning', ['PR-60'], 'Dune Meadow', { 'water.gas': true }),
  bad('gas in the well house', 'gas, and a house over the well', 'danger', ['PR-60'], 'Oak Hammock', {
    'water.gas': true,
    'top.housed': true,
  }),
  bad('sand', 'the well gives sand', 'note', ['PR-60'], 'Brzozowy Las', { 'water.sand': true }),
  bad(
    'sand from the screen',
    'sand, and the pump hangs in the screen',
    'warning',
    ['PR-60', 'PR-03'],
    'Prairie Center',
    {
      'water.sand': true,
      'pump.setting': '137.5 ft',
    },
  ),
  bad('weak line', 'a buried line of 125 psi', 'warning', ['PR-61'], 'Dune Meadow', { 'house.line.rating': '125 psi' }),
  bad('weak metric line', 'a buried line of 8.6 bar', 'warning', ['PR-61'], 'Brzozowy Las', {
    'house.line.rating': '8.6 bar',
  }),
  bad(
    'line under the pump',
    'a line of 125 psi, no relief, and a pump that puts 146 on it',
    'danger',
    ['PR-61'],
    'Elk Saddle',
    {
      'house.line.rating': '125 psi',
    },
  ),
  bad('hot water', 'water of 100 degF round the motor', 'warning', ['PR-63'], 'Dune Meadow', {
    'site.waterTemperature': '100 degF',
  }),
];

const RECORD: readonly BadWell[] = [
  bad('dry season above today', 'the lowest level is typed above today’s', 'warning', ['PR-62'], 'Prairie Center', {
    'water.staticLowest': '38 ft',
  }),
  bad('casing below the sounding', 'the casing ends below the sounded bottom', 'warning', ['PR-62'], 'Snowbank Lake', {
    'well.soundedDepth': '130 ft',
  }),
  bad('casing below the bottom', 'the casing ends below the well', 'warning', ['PR-62'], 'Prairie Center', {
    'well.depth': '136 ft',
    'well.intake': { kind: 'screen' },
  }),
  // A level that cannot be true tells nothing of how far the water falls.
  bad(
    'level above rest',
    'the pumping level is above the level at rest',
    'warning',
    ['PR-62', 'PR-53', 'PR-02', 'PR-08'],
    'Miami Bottoms',
    { 'water.pumping.level': '21 ft' },
  ),
  bad(
    'pump below the bottom',
    'the pump is set 10 ft under the bottom',
    'warning',
    ['PR-62', 'PR-01'],
    'Cumberland Bench',
    {
      'pump.setting': '230 ft',
    },
  ),
];

export const BAD: readonly BadWell[] = [...DEPTH, ...STRING, ...TOP, ...HOUSE, ...RECORD];
