/** Barbs and clamps of plastic pipe: what holds the string together. */
import type { Facts } from '../facts.ts';
import type { Change } from '../solution.ts';
import { change } from './fix.ts';
import { breaks } from './rule.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

export const CLAMPS_PER_JOINT = 2;

/** What is wrong with barbs and clamps, worst first, each with the change that fixes it. Rigid pipe has none of them. */
function jointFaults(facts: Facts) {
  if (!isBarbed(facts.dropPipe)) return [];
  return [weakFittings(facts), tooFewClamps(facts), rustingScrews(facts)].filter((fault) => fault !== null);
}

function weakFittings({ string, pump }: Facts) {
  const { fittings } = string;
  if (fittings !== 'plastic' && fittings !== 'nylon') return null;
  const found = breaks('weakFittings', 'danger', { fittings }, atPump(pump));
  return { found, change: { path: 'string.fittings', to: 'stainless steel' } };
}

function tooFewClamps({ string, pump }: Facts) {
  const { clampsPerJoint: clamps } = string;
  const asked = CLAMPS_PER_JOINT;
  if (clamps >= asked) return null;
  const found = breaks('tooFewClamps', 'danger', { clamps, asked }, atPump(pump));
  return { found, change: { path: 'string.clampsPerJoint', to: asked } };
}

function rustingScrews({ string, pump }: Facts) {
  if (string.clampScrew !== 'carbon steel') return null;
  const found = breaks('rustingScrews', 'warning', {}, atPump(pump));
  return { found, change: { path: 'string.clampScrew', to: 'stainless steel' } };
}

function atPump(pump: Facts['pump']) {
  return { depth: dischargeDepth(pump), part: 'insertFitting/pump', partKind: 'insertFitting' } as const;
}

/** The worst of them; null where the joints are sound. */
export function worstJoint(facts: Facts) {
  return jointFaults(facts)[0]?.found ?? null;
}

/** All that the joints need. */
export function jointChanges(facts: Facts): readonly Change[] {
  return jointFaults(facts).map((fault) => fault.change);
}

/** Sets every joint right, named by its worst fault. */
export function jointFixes(facts: Facts) {
  const changes = jointChanges(facts);
  switch (worstJoint(facts)?.variant) {
    case 'weakFittings':
      return [change(facts, changes, 'stainlessFittings', {})];
    case 'tooFewClamps':
      return [change(facts, changes, 'twoClamps', {})];
    case 'rustingScrews':
      return [change(facts, changes, 'stainlessClamps', {})];
    default:
      return [];
  }
}
