/** What is offered against a broken rule of `rules/pitless.ts`. */
import { sleeveOutside } from '../../string/sleeveOutside.ts';
import { moveIntoBand, words } from '../../rules/fix.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const pitlessFixes = {
  'PR-19'(given) {
    const move = moveIntoBand(given, 'PR-19', 'top.depth', words('lowerOrHeat', {}));
    return given.facts.site.frostDepth === null ? [move, words('askFrost', {})] : [move, words('lowerOrHeat', {})];
  },

  'PR-20'(given, { variant }) {
    if (variant === 'madeForWater') return [words('askCode', {})];
    const otherwise = words('otherAdapterOrTop', {});
    const move = moveIntoBand(given, 'PR-20', 'top.depth', otherwise);
    return move.changes === null ? [otherwise] : [move, otherwise];
  },

  'PR-21'({ facts: { top, pump } }, { numbers }) {
    const bySleeve = sleeveOutside(pump) > pump.diameter;
    if (top.kind !== 'pitless' || top.protrusion !== null)
      return [words(bySleeve ? 'otherAdapterOrSleeve' : 'otherAdapterOrPump', {})];
    // To measure helps where some adapter would leave room.
    const { shortest } = numbers as { readonly shortest?: boolean };
    if (shortest !== true) return [words('measureReach', {})];
    return [words(bySleeve ? 'slimmerSleeve' : 'slimmerPump', {})];
  },
} satisfies RuleFixes;
