/** What is offered against a broken rule of `rules/wellhead.ts`. */
import { change, changeOr, words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const wellheadFixes = {
  'PR-23': () => [words('lengthenCasing', {})],

  'PR-24': () => [words('lengthenCasingOrRaiseGround', {})],

  'PR-26': () => [words('bringAboveGround', {})],

  'PR-40': () => [words('askAndTest', {})],

  'PR-43'({ facts }, { severity }) {
    if (facts.site.frostDepth === null) return [words('askFrost', {})];
    if (severity === 'note') return [words('lookAfterHeat', {})];
    if (severity === 'danger') return [words('pitlessOrWellHouse', {})];
    const heat = change(facts, [{ path: 'top.heated', to: true }], 'heatTop', {});
    return [changeOr(heat, words('heatTopAndMindPowerCuts', {}))];
  },
} satisfies RuleFixes;
