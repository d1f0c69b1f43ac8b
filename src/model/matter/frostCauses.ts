/** What freezes: the top of the well, the line on its way, and the thin pipes in the house. */
import { isAssumed } from '../rules/assumed.ts';
import { exceeds, meets } from '../rules/grace.ts';
import type { Metres } from '../si.ts';
import type { Solution } from '../solution.ts';
import { lineDepth } from '../string/topDepths.ts';
import { broken, type CauseId, type Judge } from './cause.ts';
import { own, type Own } from './own.ts';

function frostSays({ facts, values }: Solution): readonly Own[] {
  // What a place's frost is estimated to be nobody said: the rule tells it as such.
  const frost = facts.site.frostDepth === null ? null : values.frostDepth;
  if (frost === null) return [];
  if (!(frost > 0)) return [own('noFrost', {})];
  const depth: Metres = lineDepth(facts);
  return facts.top.kind === 'seal' ? [own('barePipe', { frost })] : [own('frostAt', { depth, frost })];
}

/** By what was said of frost and outlet, with the usual margin between them. */
function isUnderFrost(solution: Solution): boolean {
  const { site, top } = solution.facts;
  if (site.frostDepth === null) return false;
  if (!exceeds(site.frostDepth, 'length')) return true;
  if (top.kind === 'seal' || isAssumed(solution, 'top.kind') || isAssumed(solution, 'top.depth')) return false;
  return meets(top.depth - site.frostDepth - site.frostMargin, 'length');
}

const frostAtTop: Judge = ({ solution }) => {
  const rule = solution.facts.top.kind === 'pitless' ? 'PR-19' : 'PR-43';
  return {
    at: ['pitlessAdapter', 'tee', 'seal'],
    says: frostSays(solution),
    likelyBy: [broken(rule)],
    ruledOut: isUnderFrost(solution),
    decidedBy: ['site.frostDepth', 'top.depth'],
    rests: ['top.depth', 'top.kind'],
  };
};

/** The line rises somewhere: at the house wall, under a cleared drive. How deep it lies there no plan says. */
const frostInLine: Judge = ({ solution }) => ({
  at: ['buriedLine', 'riser'],
  says: frostSays(solution),
  likelyBy: solution.facts.top.kind === 'pitless' ? [broken('PR-19')] : [],
  decidedBy: ['site.frostDepth'],
  rests: ['top.depth', 'top.kind'],
});

const frostInHouse: Judge = () => ({ at: ['switch', 'riser', 'tank'] });

export const frostCauses = { frostAtTop, frostInLine, frostInHouse } satisfies { readonly [Id in CauseId]?: Judge };
