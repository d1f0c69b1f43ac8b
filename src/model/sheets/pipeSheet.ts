/** Drop pipe and buried line: strength, friction, water hammer, sizes. */
import { contextOf } from '../explain/context.ts';
import type { Context } from '../explain/context.ts';
import { noDemand, noDistance, noLine, noPumpCurve, noRise } from '../explain/missing.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { PipeFacts } from '../facts.ts';
import { velocityIn } from '../formulas/friction.ts';
import type { Solution, Solved } from '../solution.ts';
import { solvedAll } from './figure.ts';
import { known } from './known.ts';
import { lineLowPressure, valveFigures } from './pipe/checkValve.ts';
import { fittingTable, frictionFigures } from './pipe/friction.ts';
import { ratingTable } from './pipe/ratings.ts';
import { sizeTable } from './pipe/sizes.ts';
import { strengthFigures } from './pipe/strength.ts';
import type { PipeAtWork } from './pipe/strength.ts';
import type { Sheet } from './sheet.ts';

export function pipeSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  const works = [dropPipeAtWork(context), lineAtWork(context)].filter((each) => each !== null);
  return {
    key: 'pipe',
    title: 'Pipe',
    figures: [
      ...works.flatMap((work) => [
        ...frictionFigures(context, work.key, work.name, work.pipe),
        ...strengthFigures(context, work),
      ]),
      ...solvedAll(
        context,
        'dropPipeToCut',
        'dropPipeCutLength',
        'frictionDropPipe',
        'frictionDropPipeHazenWilliams',
        'frictionLine',
        'frictionLineHazenWilliams',
        'frictionFittings',
        'rise',
      ),
      ...valveFigures(context),
    ],
    tables: [
      fittingTable(context),
      ...works.map((work) => sizeTable(context, work)),
      ...works.map((work) => ratingTable(context, work)).filter((table) => table !== null),
    ],
    notes: [
      'Size names are names: 1 in pipe of three standards has three bores. Ask for standard, resin and wall ratio.',
      ...(context.facts.house.line === null
        ? [`The line is not in the plan: ${noLine(context)?.words ?? 'its pipe is not known'}.`]
        : []),
    ],
    cautions: [
      'A burst pipe throws parts: shut the pump off and let the pressure out before any joint is opened.',
      'Have buried lines marked before digging; a deep trench can bury a person: shore it as the local code asks.',
    ],
  };
}

/** The largest flow that the pump sends through, else the demand. */
function velocityOf({ facts, values }: Context, pipe: PipeFacts): number | null {
  const running = values.operatingFlowAtCutIn;
  const flow = running !== null && running > 0 ? running : facts.house.demand;
  return known([flow], (q) => velocityIn(q, pipe.insideDiameter));
}

function dropPipeAtWork(context: Context): PipeAtWork {
  const { facts, values } = context;
  return {
    key: 'dropPipe',
    place: 'dropPipe',
    name: 'drop pipe',
    pipe: facts.dropPipe,
    length: context.hangingLength,
    velocity: velocityOf(context, facts.dropPipe),
    velocityMissing: [noDemand(context)],
    pressure: values.shutOffPressureAtPump,
    pressureIs: 'shut-off pressure at the pump',
    pressureMissing: [noPumpCurve(context)],
  };
}

function lineAtWork(context: Context): PipeAtWork | null {
  const { facts, values } = context;
  const { line } = facts.house;
  if (line === null) return null;
  return {
    key: 'line',
    place: 'house.line',
    name: 'line to the house',
    pipe: line,
    length: facts.house.distance,
    velocity: velocityOf(context, line),
    velocityMissing: [noDemand(context), noDistance(context)],
    pressure: known([lineLowPressure(context), values.shutOffPressureAtTank], (low, tank) =>
      facts.house.kind === 'open tank' ? low : low + Math.max(tank - facts.house.cutOut, 0),
    ),
    pressureIs: 'pressure at its low end should the switch not stop the pump',
    pressureMissing: [
      noPumpCurve(context),
      noRise(context),
      { path: 'water.staticLevel', words: 'the water level at rest' },
    ],
  };
}
