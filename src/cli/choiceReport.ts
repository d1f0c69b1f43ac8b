/** The same tables as programs read them: SI throughout, `null` for what cannot be known. docs/check-json.md names all of it. */
import { choosePump } from '../model/choose/choosePump.ts';
import { chooseTank } from '../model/choose/chooseTank.ts';
import type { Change } from '../model/solution.ts';
import type { Plan } from '../model/plan/schema.ts';
import { readFacts } from '../model/plan/readFacts.ts';
import { show } from '../model/units.ts';
import { choose } from '../words/en/choose.ts';
import { en } from '../words/en/index.ts';
import { sayAsk, sayInTheWay, sayTold, sayPumpRow, sayWhyChoice } from '../words/sayChoice.ts';
import { sayWhyLeft } from '../words/sayPlacement.ts';

export function choiceReport(plan: Plan) {
  return { pumps: pumpsOf(plan), tanks: tanksOf(plan) };
}

function pumpsOf(plan: Plan) {
  const units = show(readFacts(plan).facts.units);
  const table = choosePump(plan);
  if (table.kind === 'refused')
    return { refused: sayWhyLeft(table.why, en, units), inTheWay: [], sand: null, assumed: [], rows: [] };
  return {
    refused: null,
    inTheWay: table.inTheWay.map((each) => sayInTheWay(each, { ...en, choose }, units)),
    sand: table.sand,
    assumed: table.assumed,
    rows: table.rows.map((row) => {
      const { facts, values } = row.solution;
      const { dropPipe, pump } = facts;
      const said = sayPumpRow(row, { ...en, choose }, units);
      const { parts } = row;
      return {
        name: said.name,
        inPlan: row.isPlans,
        does: row.does,
        why: said.why,
        ratedFlow: row.rated,
        power: row.power,
        ...row.figures,
        intakeDepth: pump.setting,
        movedFrom: row.movedFrom,
        asks: row.asks.map((ask) => sayAsk(ask, { ...en, choose }, units)),
        told: row.told.map((each) => sayTold(each, { ...en, choose }, units)),
        supplyFrom: row.supplyFrom,
        pipe: {
          material: dropPipe.material,
          size: dropPipe.nominalSize,
          wallClass: dropPipe.wallClass,
          rating: dropPipe.rating,
        },
        wire: { said: said.wire, voltage: pump.voltage, phase: pump.phase, wires: pump.wires },
        controlBox:
          pump.power === null ? null : pump.phase === 1 && pump.wires === 3 && facts.house.control !== 'variable speed',
        weightAtRest: values.hangLoadAtRest,
        tank: row.tank,
        changes: {
          pump: written(parts.pump),
          depth: written(parts.depth),
          pipe: written(parts.pipe),
          wire: written(parts.wire),
        },
      };
    }),
  };
}

function tanksOf(plan: Plan) {
  const units = show(readFacts(plan).facts.units);
  const table = chooseTank(plan);
  const none = { precharge: null, reach: null, rating: null, relief: null, rows: [] };
  if (table.kind === 'refused') return { refused: choose.tanks.refused[table.why], ...none };
  const { precharge, reach, rating, relief } = table;
  return {
    refused: null,
    precharge,
    reach,
    rating,
    relief,
    rows: table.rows.map((row) => ({
      name: row.key,
      inPlan: row.isPlans,
      does: row.does,
      why: sayWhyChoice(row, { ...en, choose }, units),
      volume: row.volume,
      water: row.water,
      run: row.run,
      startsAnHour: Number.isFinite(row.startsAnHour) ? row.startsAnHour : null,
      startsADay: row.startsADay,
      changes: written(row.changes),
    })),
  };
}

/** A field that is taken out stands with `null`: JSON leaves `undefined` away. */
function written(changes: readonly Change[]) {
  return changes.map(({ path, to }) => ({ path, to: to === undefined ? null : to }));
}
