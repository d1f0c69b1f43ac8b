/** Metals that touch under water, and pipe that does not fit its barbs. */
import type { Facts } from '../facts.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { Metres } from '../si.ts';
import type { Change, Severity, Solved } from '../solution.ts';
import { findPipe } from '../tables/pipes.ts';
import { inches } from '../units.ts';
import { exceeds } from './grace.ts';
import { change, words } from './mend.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import type { Mend } from './rule.ts';

/** Bore of the pipe less the bore that the barb was made for: looser leaks, tighter is forced, far tighter does not go in. */
export const LOOSE_BARB: Metres = inches(0.01);
export const FORCED_BARB: Metres = inches(-0.01);
export const CLOSED_BARB: Metres = inches(-0.05);
/** S/m: 500 and 1500 microsiemens per centimetre. */
export const MILD_CONDUCTIVITY = 0.05;
export const AGGRESSIVE_CONDUCTIVITY = 0.15;
export const ACID_BELOW = 7;

type Water = 'mild' | 'between' | 'aggressive' | 'unknown';

interface Pair {
  readonly met: (facts: Facts) => boolean;
  readonly mild: Severity | 'ok';
  readonly aggressive: Severity | 'ok';
  readonly title: string;
  readonly message: string;
  readonly mend: (facts: Facts) => Mend;
}

const stainlessFittings = (facts: Facts): Mend =>
  change(facts, [{ path: 'string.fittings', to: 'stainless steel' }], 'Use stainless steel fittings');
const plasticLength = (): Mend => words('Use plastic drop pipe, or break the metal path with a plastic length.');
const isBrass = ({ string }: Facts) => string.fittings === 'brass' || string.fittings === 'bronze';

/** Pairs by class of potential, areas and water; the worst that is met is told. */
const PAIRS: readonly Pair[] = [
  {
    met: ({ string, dropPipe }) => string.fittings === 'galvanized steel' && dropPipe.material !== 'galvanized steel',
    mild: 'warning',
    aggressive: 'warning',
    title: 'Galvanized fittings meet stainless steel',
    message: 'A small galvanized fitting beside stainless pump or pipe loses its zinc, then its thread.',
    mend: stainlessFittings,
  },
  {
    met: ({ string, dropPipe }) => string.fittings === 'stainless steel' && dropPipe.material === 'galvanized steel',
    mild: 'note',
    aggressive: 'warning',
    title: 'Stainless fittings meet galvanized pipe',
    message: 'Stainless steel on galvanized pipe eats the cut threads, where the zinc is gone.',
    mend: plasticLength,
  },
  {
    met: (facts) => isBrass(facts) && facts.dropPipe.material === 'galvanized steel',
    mild: 'note',
    aggressive: 'warning',
    title: 'Brass fittings meet galvanized pipe',
    message: 'Brass on galvanized pipe eats the cut threads, where the zinc is gone.',
    mend: plasticLength,
  },
  {
    met: isBrass,
    mild: 'ok',
    aggressive: 'note',
    title: 'Brass meets the stainless pump in sharp water',
    message: 'In sour or salty water brass wears away beside the stainless pump.',
    mend: stainlessFittings,
  },
  {
    met: ({ well }) => well.casings.some(({ material }) => material === 'steel'),
    mild: 'ok',
    aggressive: 'note',
    title: 'Stainless motor and steel casing in sharp water',
    message: 'In sour or salty water the steel casing wears near the stainless motor, slowly.',
    mend: () => words('Ask a corrosion engineer; never take a required ground wire off.'),
  },
];

function waterKind({ water }: Facts): Water {
  const { acidity, conductivity } = water;
  if ((acidity !== null && acidity < ACID_BELOW) || (conductivity !== null && conductivity > AGGRESSIVE_CONDUCTIVITY))
    return 'aggressive';
  if (acidity === null || conductivity === null) return 'unknown';
  return conductivity < MILD_CONDUCTIVITY ? 'mild' : 'between';
}

/** In doubtful water the worse verdict counts. */
function severityIn(pair: Pair, water: Water): Severity | 'ok' {
  return water === 'mild' || water === 'unknown' ? pair.mild : pair.aggressive;
}

const ORDER: readonly (Severity | 'ok')[] = ['danger', 'warning', 'note', 'ok'];

export const materialsMatch = defineRule({
  number: 'PR-52',
  part: 'insertFitting',
  broken: 'Unlike metals touch under water',
  holds: 'Metals and pipe sizes go together',
  source: 'ASTM G82 galvanic series; MIL-STD-1250A, 5.6 (areas); barbs: ASTM D2239 and D2609, limits of fit: no source',
  why: 'Of two unlike metals under water one eats the other; a barb of another system slips.',
  judge({ solved, facts, show }) {
    const gap = barbGap(solved);
    const depth = facts.pump.setting - facts.pump.intakeToDischarge;
    if (gap !== null && (exceeds(gap - LOOSE_BARB, 'length') || exceeds(FORCED_BARB - gap, 'length'))) {
      const loose = gap > 0;
      const closed = gap < CLOSED_BARB;
      return breaks({
        severity: 'warning',
        measured: gap,
        limit: loose ? LOOSE_BARB : FORCED_BARB,
        margin: loose ? LOOSE_BARB - gap : gap - FORCED_BARB,
        quantity: 'length',
        depth,
        title: 'The fittings do not match the pipe',
        amount: loose ? `${show.bore(gap)} loose` : `${show.bore(-gap)} tight`,
        message: `Insert fittings are made for ASTM D2239 pipe; in ${facts.dropPipe.standard} they ${loose ? 'sit loose' : closed ? 'do not go in' : 'must be forced'}.`,
        mend: sizedForBarbs(solved),
      });
    }
    const water = waterKind(facts);
    let worst: Pair | null = null;
    for (const pair of PAIRS) {
      if (
        pair.met(facts) &&
        (worst === null || ORDER.indexOf(severityIn(pair, water)) < ORDER.indexOf(severityIn(worst, water)))
      )
        worst = pair;
    }
    const severity = worst === null ? 'ok' : severityIn(worst, water);
    if (worst !== null && severity !== 'ok') {
      return breaks({
        severity,
        depth,
        title: worst.title,
        amount: water === 'aggressive' ? 'in sharp water' : 'unlike metals',
        message: worst.message,
        mend: worst.mend(facts),
      });
    }
    if (worst !== null && water === 'unknown') return missing('the water’s pH and conductivity');
    return holds(
      'they match',
      `${capital(facts.string.fittings)} fittings and ${facts.dropPipe.material} pipe go together in this water.`,
    );
  },
});

/** How the bore differs from the one that barbs of that size are made for; null without barbs. */
function barbGap({ facts }: Solved): Metres | null {
  const { dropPipe } = facts;
  if (dropPipe.material !== 'PE') return null;
  const made = findPipe({ material: 'PE', standard: 'ASTM D2239', size: dropPipe.nominalSize });
  return made === null ? null : dropPipe.insideDiameter - made.insideDiameter;
}

function sizedForBarbs({ facts, plan }: Solved): Mend {
  const { nominalSize, rating, resin } = facts.dropPipe;
  const fits = findPipe({ material: 'PE', standard: 'ASTM D2239', size: nominalSize, rating, resin });
  const otherwise = 'Take ASTM D2239 pipe, or fittings made for this pipe.';
  const ratioTyped = valueAt(plan, 'dropPipe.ratio') !== undefined;
  if (fits === null || (ratioTyped && fits.wallClass === null)) return words(otherwise);
  const changes: Change[] = [{ path: 'dropPipe.standard', to: 'ASTM D2239' }];
  // A ratio belongs to its standard: DR 11 there is SIDR 9 here.
  if (ratioTyped) changes.push({ path: 'dropPipe.ratio', to: fits.wallClass });
  // Galvanized fittings would break the rule again.
  const also = facts.string.fittings === 'galvanized steel' ? [{ path: 'string.fittings', to: 'stainless steel' }] : [];
  return change(facts, [...changes, ...also], 'Use ASTM D2239 pipe', otherwise);
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export const materialRules = [materialsMatch];
