/** How deep a pump may hang, and how deep it hangs with room, by all but the water. */
import type { Metres } from '../si.ts';
import type { EndName, Solved } from '../solution.ts';
import { RULES } from '../rules/list.ts';
import { screenTop } from '../rules/pumpDepth.ts';
import { rangesOf } from '../rules/ranges.ts';
import type { HungFrom } from './told.ts';
import { usualIn } from './usual.ts';
import { settingForMotorBottom } from '../string/pumpDepths.ts';

/** Bottom, screen and a hole that narrows. Hands, wire and pipe never limit a depth: they follow it. */
const FIRM: ReadonlySet<string> = new Set(['PR-01', 'PR-03', 'PR-17']);
/** A motor wants the water to come from below; where no place has that, a shroud does it. */
const INFLOW = 'PR-05';

export interface PumpRoom {
  /** Under the well's top and the water at rest. */
  readonly highest: Metres;
  /** As deep as the rules let it, and as deep as it hangs with room. */
  readonly deepest: { readonly depth: Metres; readonly end: EndName };
  readonly roomy: { readonly depth: Metres; readonly from: HungFrom };
  /** Above the lowest inflow, where the motor needs it. */
  readonly overInflow: { readonly depth: Metres; readonly from: HungFrom } | null;
}

export function pumpRoom(solved: Solved): PumpRoom {
  const { facts } = solved;
  const { pump, well } = facts;
  const range = rangesOf(
    solved,
    RULES.filter(({ number }) => FIRM.has(number)),
  )['pump.setting'];
  const deepest = { depth: range.to.depth, end: range.to.name };
  const usual = usualIn(facts.units);
  const top = screenTop(solved);
  const wanted =
    top !== null
      ? { depth: settingForMotorBottom(top - usual.overScreen, pump), from: { by: 'screen' } as const }
      : { depth: settingForMotorBottom(well.bottom - usual.offBottom, pump), from: { by: 'bottom' } as const };
  // Where a narrow hole ends it sooner, and in a dug well, there is no more room than the rules leave.
  const narrower = wanted.depth > deepest.depth;
  const dug = well.intake.kind === 'dug' && deepest.end.rule === 'PR-01';
  return {
    highest: range.from.depth,
    deepest,
    roomy: dug
      ? { depth: deepest.depth, from: { by: 'bottom' } }
      : narrower
        ? { depth: deepest.depth, from: { by: 'end', end: deepest.end } }
        : wanted,
    overInflow: overInflow(solved),
  };
}

function overInflow(solved: Solved): PumpRoom['overInflow'] {
  const rule = RULES.find(({ number }) => number === INFLOW);
  for (const { setting, to, variant, numbers } of rule?.limits(solved) ?? []) {
    if (setting === 'pump.setting' && to !== undefined)
      return { depth: to, from: { by: 'end', end: { rule: INFLOW, variant, numbers } } };
  }
  return null;
}
