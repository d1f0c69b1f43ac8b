/** Which unlike metals of a plan touch under water, and how bad that is. */
import type { Facts } from '../facts.ts';
import { pairVerdict, waterClass } from '../formulas/corrosion.ts';
import type { AreaSituation, PairVerdict, WaterClass } from '../formulas/corrosion.ts';
import type { Severity } from '../solution.ts';
import type { Metal } from '../tables/metals.ts';
import { change, words } from './mend.ts';
import type { Mend } from './rule.ts';

export interface MetalPair {
  readonly met: (facts: Facts) => boolean;
  readonly metals: readonly [Metal, Metal];
  readonly areas: AreaSituation;
  /** Where it is; a joint of the drop pipe where nothing is said. */
  readonly at?: 'motor';
  readonly title: string;
  readonly message: string;
  readonly mend: (facts: Facts) => Mend;
}

const STAINLESS = '304 stainless steel';
const isBrass = ({ string }: Facts) => string.fittings === 'brass' || string.fittings === 'bronze';
const stainlessFittings = (facts: Facts): Mend =>
  change(facts, [{ path: 'string.fittings', to: 'stainless steel' }], 'Use stainless steel fittings');
const plasticLength = (): Mend => words('Use plastic drop pipe, or break the metal path with a plastic length.');

/** A submersible pump's head and motor are taken to be stainless steel, as they nearly always are. */
const PAIRS: readonly MetalPair[] = [
  {
    met: ({ string, dropPipe }) => string.fittings === 'galvanized steel' && dropPipe.material !== 'galvanized steel',
    metals: ['zinc', STAINLESS],
    areas: 'small active part',
    title: 'Galvanized fittings meet stainless steel',
    message: 'A small galvanized fitting beside stainless pump or pipe loses its zinc, then its thread.',
    mend: stainlessFittings,
  },
  {
    met: ({ string, dropPipe }) => string.fittings === 'stainless steel' && dropPipe.material === 'galvanized steel',
    metals: ['zinc', STAINLESS],
    areas: 'small noble part',
    title: 'Stainless fittings meet galvanized pipe',
    message: 'Stainless steel on galvanized pipe eats the cut threads, where the zinc is gone.',
    mend: plasticLength,
  },
  {
    met: (facts) => isBrass(facts) && facts.dropPipe.material === 'galvanized steel',
    metals: ['zinc', 'brass'],
    areas: 'small noble part',
    title: 'Brass fittings meet galvanized pipe',
    message: 'Brass on galvanized pipe eats the cut threads, where the zinc is gone.',
    mend: plasticLength,
  },
  {
    met: isBrass,
    metals: ['brass', STAINLESS],
    areas: 'similar',
    title: 'Brass meets the stainless pump in sour or salty water',
    message: 'In sour or salty water brass wears away beside the stainless pump.',
    mend: stainlessFittings,
  },
  {
    met: ({ well }) => well.casings.some(({ material }) => material === 'steel'),
    metals: ['carbon steel', STAINLESS],
    areas: 'small noble part',
    at: 'motor',
    title: 'A stainless motor in a steel casing, in sour or salty water',
    message: 'In sour or salty water the steel casing wears near the stainless motor, slowly.',
    mend: () => words('Ask a corrosion engineer; never take a required ground wire off.'),
  },
];

const SEVERITY: Readonly<Record<PairVerdict, Severity | 'ok'>> = { ok: 'ok', caution: 'note', avoid: 'warning' };
const ORDER: readonly (Severity | 'ok')[] = ['danger', 'warning', 'note', 'ok'];

export interface WorstPair {
  readonly pair: MetalPair;
  readonly severity: Severity | 'ok';
}

/** The worst pair that the plan has, in its water; null where no unlike metals touch. */
export function worstPair(facts: Facts): WorstPair | null {
  const water = waterUnknown(facts) ? 'mild' : waterOf(facts);
  let worst: WorstPair | null = null;
  for (const pair of PAIRS) {
    if (!pair.met(facts)) continue;
    const [first, second] = pair.metals;
    const severity = SEVERITY[pairVerdict({ first, second, areas: pair.areas, water })];
    if (worst === null || ORDER.indexOf(severity) < ORDER.indexOf(worst.severity)) worst = { pair, severity };
  }
  return worst;
}

export function waterOf({ water }: Facts): WaterClass {
  return waterClass({ conductivity: water.conductivity, acidity: water.acidity });
}

/** Half a water test that shows nothing bad tells nothing: then only what is wrong in any water is said. */
export function waterUnknown(facts: Facts): boolean {
  const { acidity, conductivity } = facts.water;
  return (acidity === null || conductivity === null) && waterOf(facts) !== 'aggressive';
}
