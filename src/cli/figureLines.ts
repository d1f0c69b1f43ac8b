/** The figures that `check` tells before its findings, in the plan's units. */
import { isHeld } from '../model/figures/heldLevel.ts';
import { restsOnAssumedDepth } from '../model/figures/restsOnDepth.ts';
import type { Solution, ValueName } from '../model/solution.ts';
import { decimals, show } from '../model/units.ts';
import { en } from '../words/en/index.ts';

/** One line a figure, names and values in two columns. */
export function figureLines(solution: Solution): string[] {
  const rows = rowsOf(solution);
  const wide = Math.max(...rows.map(([name]) => name.length)) + 2;
  return rows.map(([name, text]) => `${name.padEnd(wide)}${text}`);
}

type Row = readonly [name: string, text: string];

function rowsOf(solution: Solution): Row[] {
  const { values, facts, curves } = solution;
  const say = show(facts.units);
  const told = (name: ValueName, words: (value: number) => string): string => {
    const value = values[name];
    if (value === null) return 'not known';
    return restsOnAssumedDepth(solution, name) ? `${words(value)}, assumed` : words(value);
  };
  const level = (depth: number): string => (depth < 0 ? `${say.depth(-depth)} above the ground` : say.depth(depth));
  const held = isHeld(solution);
  const rest = facts.water.staticLevel;
  const demand = values.demandFlow === null ? '' : ` at ${say.flow(values.demandFlow)}`;
  const flow = (name: ValueName): string => told(name, say.flow);
  const open = facts.house.kind === 'open tank';
  const flows: readonly Row[] = open ? intoTank() : underPressure();
  function intoTank(): readonly Row[] {
    return curves.generic
      ? [
          ['Flow into the open tank, weaker pump of its rating', flow('operatingFlowAtCutIn')],
          ['Flow into the open tank, stronger pump of its rating', flow('operatingFlowAtCutInMost')],
        ]
      : [['Flow into the open tank', flow('operatingFlowAtCutIn')]];
  }
  function underPressure(): readonly Row[] {
    return curves.generic
      ? [
          ['Flow at cut-in, weaker pump of its rating', flow('operatingFlowAtCutIn')],
          ['Flow at cut-in, stronger pump of its rating', flow('operatingFlowAtCutInMost')],
          ['Flow at cut-out, weaker pump of its rating', flow('operatingFlowAtCutOut')],
        ]
      : [
          ['Flow at cut-in', flow('operatingFlowAtCutIn')],
          ['Flow at cut-out', flow('operatingFlowAtCutOut')],
        ];
  }
  return [
    ['Static level', rest === null ? 'not known' : level(rest)],
    [`Pumping level${demand}`, held ? told('pumpingWaterLevel', level) : en.long.levels.notHeld],
    ['Lowest pumping level', told('lowestPumpingWaterLevel', level)],
    ['Pump intake', told('intakeDepth', level)],
    [
      `Head the pump works against${demand}${open ? '' : ' and cut-out'}`,
      held ? told('totalDynamicHead', say.head) : en.long.levels.notHeld,
    ],
    ...flows,
    ['Drop pipe to cut', told('dropPipeToCut', say.length)],
    ['Drop pipe, hanging length', told('dropPipeCutLength', say.length)],
    ...(facts.top.kind === 'pitless' ? [['Lift-out pipe', told('liftPipeLength', say.length)] as const] : []),
    ['Wire in the well', told('wireLength', say.length)],
    ...(facts.rope === null ? [] : [['Rope', told('ropeLength', say.length)] as const]),
    ['Weight on the hook at rest', told('hangLoadAtRest', say.hook)],
    ['Water in the well', told('wellVolume', say.volume)],
    [`Chlorine product of ${decimals(facts.disinfection.strength * 100, 2)} %`, told('chlorineDose', say.volume)],
  ];
}
