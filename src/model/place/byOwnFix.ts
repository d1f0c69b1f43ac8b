/** The depth that a finding's own button writes: where no place with room is to be had, what is offered there is taken here. */
import { fixesOf } from '../fixes/fixesOf.ts';
import type { Solution } from '../solution.ts';
import type { Solver } from '../solve.ts';
import type { Draft } from './draft.ts';
import { withChange } from './draft.ts';
import { hungIn } from './hung.ts';
import type { WhyPlaced } from './told.ts';
import { tryPlace } from './tryPlace.ts';

const SETTING = 'pump.setting';
const PROBE = 'pump.lowLevelCutOff';

/**
 * @param draft     a pump that was left where it hangs
 * @param solution  of it
 * @returns  the draft with what the first finding offers that moves the pump to where it lifts; null where none does
 */
export function byOwnFix(draft: Draft, solution: Solution, solver: Solver): Draft | null {
  const offers = fixesOf(draft.plan, solution, solver);
  for (const [index, finding] of solution.findings.entries()) {
    const button = offers[index]?.button ?? null;
    const changes = button?.changes ?? [];
    if (finding.severity === 'note' || !changes.some(({ path }) => path === SETTING)) continue;
    const { rule, variant, numbers } = finding;
    const byFinding: WhyPlaced = { variant: 'finding', numbers: { finding: { rule, variant, numbers } } };
    const moved = changes.reduce((made, { path, to }) => withChange(made, path, to, rule, byFinding), draft);
    const told = button?.variant === 'hangWithCutOff' ? toldAsDrawnDown(moved, solver) : moved;
    const tried = tryPlace(told, solution, { lifting: true, solver });
    if (tried.kind === 'taken') return tried.draft;
  }
  return null;
}

/** As deep as it may, with a probe over the intake that holds water there, however far it falls. */
function toldAsDrawnDown(draft: Draft, { place }: Solver): Draft {
  const solved = place(draft.plan);
  const { setting, lowLevelCutOff } = solved.facts.pump;
  const changes = new Map(draft.changes);
  const pump = changes.get(SETTING);
  const probe = changes.get(PROBE);
  const fall = solved.lowest?.by === 'cutOff' ? 'pumpTakesMore' : 'known';
  if (pump !== undefined)
    changes.set(SETTING, {
      ...pump,
      why: { variant: 'hung', numbers: { from: { by: 'deepest' }, fall, hung: hungIn(solved) } },
    });
  if (probe !== undefined && typeof lowLevelCutOff === 'number')
    changes.set(PROBE, { ...probe, why: { variant: 'probeOverIntake', numbers: { above: setting - lowLevelCutOff } } });
  return { ...draft, changes };
}
