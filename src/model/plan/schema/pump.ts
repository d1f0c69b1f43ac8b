/** Pump and motor. */
import * as z from 'zod/mini';
import { DEFAULTS } from '../defaults.ts';
import { choice, fact, flag, group, list, pair, quantity, quantityOrFlag, words } from '../field.ts';

const points = (flow: string, head: string) =>
  list(
    'Points',
    'Flow and head, flow rising.',
    pair(
      'Point',
      'A flow and its head.',
      [
        quantity('flow', flow, 'What the pump gives at that head.', { above: false }),
        quantity('length', head, 'How high it lifts that flow.', { to: '10000 ft' }),
      ],
      '[ "10 gpm", "200 ft" ]',
    ),
    { from: 2, to: 40 },
  );

const curve = z.discriminatedUnion('kind', [
  group('A generic curve', 'A usual pump of that flow and power.', {
    kind: z.literal('generic'),
    flow: z.optional(
      quantity('flow', 'Rated flow', 'The flow in the pump’s name: a 10 gpm pump.', {
        metricHelp: 'The flow in the pump’s name: a 40 L/min pump.',
        example: '"10 gpm" or "38 L/min"',
        default: DEFAULTS.ratedFlow,
      }),
    ),
  }),
  group('Your own points', 'From the maker’s sheet.', {
    kind: z.literal('points'),
    points: points('Flow', 'Head'),
  }),
]);

const body = { from: '0.1 in', to: '30 ft' } as const;

export const pump = group(
  'Pump',
  'The pump and its motor.',
  {
    setting: z.optional(
      quantity(
        'length',
        'Pump intake',
        'Depth of the ring where water goes in. The pump stands above it, the motor hangs below.',
        {
          example: '"180 ft" or "55 m"',
        },
      ),
    ),
    power: z.optional(fact('power', 'Power', 'Rated power of the motor.')),
    phase: z.optional(choice([1, 3], 'Phases', 'One in most houses.', { default: DEFAULTS.phase })),
    wires: z.optional(
      choice([2, 3], 'Power wires', 'Conductors to the motor without the ground.', { default: DEFAULTS.wires }),
    ),
    voltage: z.optional(quantity('voltage', 'Voltage', 'Of the motor’s supply.', { default: DEFAULTS.voltage })),
    frequency: z.optional(
      choice(['50 Hz', '60 Hz'], 'Frequency', 'Of the supply: 60 Hz in North America, 50 Hz in most other countries.'),
    ),
    current: z.optional(fact('current', 'Current', 'The highest on the motor’s nameplate.')),
    curve: z.optional(curve),
    diameter: z.optional(
      quantity('length', 'Diameter of the pump', 'Over the cable guard, where it is thickest.', {
        from: '1 in',
        to: '40 in',
        default: DEFAULTS.pumpDiameter,
        example: '"3.9 in" or "99 mm"',
      }),
    ),
    motorDiameter: z.optional(
      quantity('length', 'Diameter of the motor', 'Of its shell.', {
        from: '1 in',
        to: '40 in',
        default: DEFAULTS.motorDiameter,
        example: '"3.75 in" or "95 mm"',
      }),
    ),
    intakeToDischarge: z.optional(
      quantity('length', 'Intake to discharge', 'Length of the pump above its intake.', {
        ...body,
        default: DEFAULTS.intakeToDischarge,
        example: '"18 in" or "46 cm"',
      }),
    ),
    intakeToMotorBottom: z.optional(
      quantity('length', 'Intake to the motor’s bottom', 'Length of what hangs below the intake.', {
        ...body,
        default: DEFAULTS.motorLength,
        example: '"18 in" or "46 cm"',
      }),
    ),
    mass: z.optional(
      quantity('mass', 'Weight of pump and motor', 'From the maker’s sheet; taken from the power if you do not say.'),
    ),
    outlet: z.optional(words('Outlet of the pump', 'Size of its thread.', { default: DEFAULTS.outlet })),
    checkValveInside: z.optional(flag('Check valve in the pump', 'Whether the pump has one built in.')),
    shroudDiameter: z.optional(
      quantity(
        'length',
        'Diameter of the flow sleeve',
        'Inside diameter of a sleeve, or shroud, that leads water past the motor, if there is one.',
        { from: '1 in', to: '40 in', example: '"5 in" or "127 mm"' },
      ),
    ),
    shroudWall: z.optional(
      quantity('length', 'Wall of the flow sleeve', 'Thickness of the sleeve: its outside has to pass the well.', {
        above: true,
        to: '2 in',
        default: DEFAULTS.shroudWall,
        example: '"1/4 in" or "6 mm"',
      }),
    ),
    lowLevelCutOff: z.optional(
      quantityOrFlag(
        'length',
        'Dry-run protection (cut-off)',
        'The depth of its probe, or yes where it works by current.',
      ),
    ),
    flowLimiter: z.optional(
      quantityOrFlag('flow', 'Flow-limiting valve', 'The flow it holds, or yes if there is one.'),
    ),
  },
  { example: '{ "setting": "180 ft", "curve": { "kind": "generic", "flow": "10 gpm" } }' },
);

/** Pumps to choose among, besides the usual ratings: kept with the plan, judged when one is chosen. */
export const ownPumps = list(
  'Your own pumps',
  'Pumps that you may choose, by their makers’ points.',
  group('Own pump', 'A pump that you may choose.', {
    name: words('Name of an own pump', 'What you call it.', { example: '"Shed pump"' }),
    power: z.optional(quantity('power', 'Power of an own pump', 'Rated power of its motor.')),
    points: points('Flow of an own pump', 'Head of an own pump'),
  }),
  { to: 40 },
);
