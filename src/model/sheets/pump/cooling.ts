/** Water past the motor: where it comes from and how fast it goes by. */
import { widestBetween } from '../../bore.ts';
import { screenEntrance } from '../../figures/screenEntrance.ts';
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noDemand } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { flowForMotorVelocity, velocityPastMotor, widestShroud } from '../../formulas/flowPast.ts';
import type { Metres, MetresPerSecond } from '../../si.ts';
import { LARGE_MOTOR, LEAST_VELOCITY, LEAST_VELOCITY_LARGE } from '../../rules/cooling.ts';
import { ENTRANCE_VELOCITY } from '../../rules/screen.ts';
import { figure, solved } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure, SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import { either } from '../../units.ts';
import { motorBottomDepth } from '../../string/pumpDepths.ts';

const PRACTICE = 'continuity; the least velocity: common practice, no source. The motor’s own instructions overrule it';

const leastVelocity = ({ facts }: Context): MetresPerSecond =>
  facts.pump.motorDiameter > LARGE_MOTOR ? LEAST_VELOCITY_LARGE : LEAST_VELOCITY;

export function coolingFigures(context: Context): SheetFigure[] {
  const { facts } = context;
  const least = leastVelocity(context);
  const { demand } = facts.house;
  const { motorDiameter } = facts.pump;
  const shroud = known([demand], (flow) => widestShroud(flow, motorDiameter, least));
  const below = shareFromBelow(context);
  return [
    solved(context, 'velocityPastMotor'),
    figure(
      context,
      {
        key: 'widestShroud',
        title: 'Widest flow sleeve that cools the motor',
        symbol: 'D',
        value: shroud,
        as: 'bore',
        missing: [noDemand(context)],
      },
      () => ({
        terms: [
          term('d_m', 'diameter of the motor', motorDiameter, 'bore'),
          term('Q', 'peak flow needed', demand, 'flow'),
          term('v', 'least velocity', least, 'velocity'),
        ],
        steps: [step('D', '√(d_m² + 4 × Q / (π × v))', shroud, 'bore')],
        range: within('a flow sleeve closed above the intake, so that all water comes from below', null),
        source: PRACTICE,
      }),
    ),
    figure(
      context,
      {
        key: 'shareFromBelow',
        title: 'Share of the inflow that enters below the motor',
        symbol: 'x',
        value: below,
        as: 'percent',
        missing: [{ path: 'well.inflows', words: 'where water enters the well, and with what shares' }],
      },
      () => ({
        terms: [term('x', 'sum of the shares of inflows below the motor’s lower end', below, 'percent')],
        steps: [step('x', 'x', below, 'percent')],
        formula: 'x = shares of the inflows below the motor / all shares',
        range: within(
          'as good as the report; water that enters higher cools the motor only inside a flow sleeve',
          null,
        ),
        source: 'the plan',
      }),
    ),
    ...screenFigure(context),
  ];
}

function shareFromBelow({ facts }: Context): number | null {
  const { inflows } = facts.well;
  const motorBottom = motorBottomDepth(facts.pump);
  if (inflows === null || inflows.length === 0) return null;
  if (inflows.length === 1) return (inflows[0]?.depth ?? 0) > motorBottom ? 1 : 0;
  let [all, lower] = [0, 0];
  for (const { depth, share } of inflows) {
    if (share === null) return null;
    all += share;
    if (depth > motorBottom) lower += share;
  }
  return all > 0 ? lower / all : null;
}

function screenFigure(context: Context): SheetFigure[] {
  const entrance = screenEntrance(context.solution);
  if (entrance === null) return [];
  const { flow, diameter, length, openShare, velocity } = entrance;
  return [
    figure(
      context,
      {
        key: 'screenVelocity',
        title: 'Velocity into the screen, half of it blocked',
        symbol: 'v_s',
        value: velocity,
        as: 'velocity',
        missing: [
          flow === null ? noDemand(context) : null,
          diameter === null ? { path: 'well.intake.diameter', words: 'the diameter of the screen' } : null,
          openShare === null
            ? { path: 'well.intake.screens.0.openArea', words: 'the open share of the screen’s surface' }
            : null,
        ],
      },
      () => ({
        terms: [
          term('Q', 'peak flow needed, or what the pump gives at cut-in where that is more', flow, 'flow'),
          term('D', 'diameter of the screen', diameter, 'bore'),
          term('L', 'length of the screen', length, 'length'),
          term('a', 'open share of the surface, half of it counted', openShare, 'percent'),
        ],
        steps: [step('v_s', 'Q / (π × D × L × a)', velocity, 'velocity')],
        range: within(
          `${either(context.units, '0.1 ft/s', '3 cm/s')} is the usual most`,
          velocity === null ? null : velocity <= ENTRANCE_VELOCITY,
        ),
        source: 'continuity; limit: Montana Administrative Rules 36.21.652',
      }),
    ),
  ];
}

/** Every wall that the motor could hang behind, with what it would mean. */
export function coolingTable(context: Context): SheetTable {
  const { facts, solution, show } = context;
  const { pump, house } = facts;
  const least = leastVelocity(context);
  const end = motorBottomDepth(pump);
  const places: { what: string; diameter: Metres | null; here: boolean }[] = [];
  if (pump.shroudDiameter !== null) places.push({ what: 'shroud', diameter: pump.shroudDiameter, here: true });
  for (const { kind, top, bottom, insideRadius, known: said } of solution.bore) {
    const here = pump.shroudDiameter === null && bottom > pump.setting && top < end;
    places.push({
      what: `${NAMES[kind]} ${show.depth(top)} to ${show.depth(bottom)}`,
      // What is drawn for a width that nobody said is no width to reckon with.
      diameter: said ? 2 * insideRadius : null,
      here,
    });
  }
  if (places.length === 0)
    places.push({ what: 'bore', diameter: 2 * widestBetween(solution.bore, pump.setting, end), here: true });
  return {
    key: 'cooling',
    title: 'Water past the motor in each part of the well',
    columns: columns(
      ['place', 'Place'],
      ['bore', 'Bore'],
      ['velocity', 'Velocity at the peak flow'],
      ['flow', 'Flow for enough'],
    ),
    rows: places.map(({ what, diameter, here }) => {
      const speed = known([house.demand, diameter], (flow, insideDiameter) =>
        velocityPastMotor({ flow, insideDiameter, motorDiameter: pump.motorDiameter }),
      );
      const flow = known([diameter], (insideDiameter) =>
        flowForMotorVelocity({ velocity: least, insideDiameter, motorDiameter: pump.motorDiameter }),
      );
      return row(
        here ? 'this plan' : null,
        what,
        cell(diameter, show.bore),
        cell(speed, (v) => show.slow(v)),
        cell(flow, show.flow),
      );
    }),
    source: PRACTICE,
    note: `Enough is ${show.slow(least)}, all of it from below the motor. A dash: the motor does not fit, or bore or peak flow is unknown.`,
  };
}

const NAMES = { casing: 'casing', screen: 'screen', openHole: 'open hole' } as const;
