/** What is offered against a broken rule of `rules/checkValve.ts`. */
import { lowestStatic } from '../../figures/lowestPumping.ts';
import { valueAt } from '../../plan/editPlan.ts';
import type { Metres } from '../../si.ts';
import type { Solved } from '../../solution.ts';
import { readQuantity } from '../../units.ts';
import { meets } from '../../rules/grace.ts';
import { change, heightText, words } from '../../rules/fix.ts';
import type { Given } from '../../rules/rule.ts';
import { valveAboveWaterLimit, depthAt } from '../../rules/checkValve.ts';
import type { RuleFixes } from '../ruleFixes.ts';

export const checkValveFixes = {
  'PR-09'(given, { variant }) {
    const { facts } = given;
    const path = 'string.checkValves';
    const atPump = heightText(facts, 0, 0);
    if (variant === 'longStretch') return [words('askForSecond', {})];
    if (variant === 'none') return [change(facts, [{ path, to: [atPump] }], 'add', {})];
    if (variant === 'lowestTooHigh') {
      const [, ...others] = typedValves(given.solved);
      const only = change(facts, [{ path, to: [atPump] }], 'putAtPump', {});
      if (others.length === 0) return [only];
      const to = [atPump, ...others.map(({ text }) => text)];
      return [change(facts, [{ path, to }], 'lowestToPump', {}), only];
    }
    const kept = keptValves(given);
    const removed = facts.string.checkValves.length - kept.length;
    return kept.length === 0 && !facts.pump.checkValveInside
      ? [change(facts, [{ path, to: [atPump] }], 'oneAtPump', {})]
      : [change(facts, [{ path, to: kept }], 'leaveUpperOut', { removed })];
  },

  'PR-10': ({ facts }) => [change(facts, [{ path: 'string.valveBetweenTopAndTank', to: false }], 'leaveOut', {})],

  'PR-11': ({ facts }) => [change(facts, [{ path: 'string.arrow', to: 'up' }], 'turn', {})],
} satisfies RuleFixes;

/** The valves as they are typed, from the pump up. */
function typedValves({ plan }: Pick<Solved, 'plan'>): readonly { readonly text: string; readonly height: Metres }[] {
  const typed = valueAt(plan, 'string.checkValves');
  const texts: readonly unknown[] = Array.isArray(typed) ? typed : [];
  return texts
    .flatMap((text) => {
      const read = typeof text === 'string' ? readQuantity(text, 'length') : null;
      return typeof text === 'string' && read?.ok === true ? [{ text, height: read.si }] : [];
    })
    .sort((one, other) => one.height - other.height);
}

/** Those near enough to the lowest water that is known, else to the water at rest: one of them is, where a valve is too high. */
function keptValves({ solved }: Given): readonly string[] {
  const level = solved.lowest?.depth ?? lowestStatic(solved.facts) ?? 0;
  const highestPlace = level - valveAboveWaterLimit(solved);
  return typedValves(solved)
    .filter(({ height }) => meets(depthAt(solved, height) - highestPlace, 'length'))
    .map(({ text }) => text);
}
