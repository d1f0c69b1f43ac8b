/** Which dissimilar metals of a plan touch under water, and how bad that is. */
import type { Facts } from '../facts.ts';
import { pairVerdict, waterClass } from '../formulas/corrosion.ts';
import type { AreaSituation, PairVerdict, WaterClass } from '../formulas/corrosion.ts';
import type { Severity } from '../solution.ts';
import type { Metal } from '../tables/metals.ts';
import { change, words } from './fix.ts';
import { breaks } from './rule.ts';
import type { Breaks, Fix } from './rule.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';

interface MetalPair<Mending extends Fix> {
  readonly met: (facts: Facts) => boolean;
  readonly metals: readonly [Metal, Metal];
  readonly areas: AreaSituation;
  /** Where it is; a joint of the drop pipe where nothing is said: then it is the fittings that touch. */
  readonly at?: 'motor';
  readonly fix: (facts: Facts) => Mending;
}

function pair<const Variant extends string, Mending extends Fix>(variant: Variant, metals: MetalPair<Mending>) {
  return {
    ...metals,
    found: (severity: Severity, facts: Facts) =>
      breaks(variant, severity, { aggressive: waterOf(facts) === 'aggressive' }, standsAt(metals.at, facts)),
  };
}

/** Rigid pipe has no barb: its thread on the pump's nipple stands for the joint. */
function standsAt(at: 'motor' | undefined, { dropPipe, pump }: Facts): Pick<Breaks, 'depth' | 'part' | 'partKind'> {
  const depth = dischargeDepth(pump);
  if (at === 'motor') return { depth, part: 'motor', partKind: 'motor' };
  return isBarbed(dropPipe) ? { depth } : { depth, part: 'nipple', partKind: 'nipple' };
}

const STAINLESS = '304 stainless steel';
const isBrass = ({ string }: Facts) => string.fittings === 'brass' || string.fittings === 'bronze';
const stainlessFittings = (facts: Facts) =>
  change(facts, [{ path: 'string.fittings', to: 'stainless steel' }], 'stainlessFittings', {});
const plasticLength = () => words('plasticLength', {});

/** A submersible pump's head and motor are taken to be stainless steel, as they nearly always are. */
const PAIRS = [
  pair('galvanizedOnStainless', {
    met: ({ string, dropPipe }) => string.fittings === 'galvanized steel' && dropPipe.material !== 'galvanized steel',
    metals: ['zinc', STAINLESS],
    areas: 'small active part',
    fix: stainlessFittings,
  }),
  pair('stainlessOnGalvanized', {
    met: ({ string, dropPipe }) => string.fittings === 'stainless steel' && dropPipe.material === 'galvanized steel',
    metals: ['zinc', STAINLESS],
    areas: 'small noble part',
    fix: plasticLength,
  }),
  pair('brassOnGalvanized', {
    met: (facts) => isBrass(facts) && facts.dropPipe.material === 'galvanized steel',
    metals: ['zinc', 'brass'],
    areas: 'small noble part',
    fix: plasticLength,
  }),
  pair('brassOnStainless', {
    met: isBrass,
    metals: ['brass', STAINLESS],
    areas: 'similar',
    fix: stainlessFittings,
  }),
  pair('motorInSteelCasing', {
    met: ({ well }) => well.casings.some(({ material }) => material === 'steel'),
    metals: ['carbon steel', STAINLESS],
    areas: 'small noble part',
    at: 'motor',
    fix: () => words('askCorrosionEngineer', {}),
  }),
] as const;

const SEVERITY: Readonly<Record<PairVerdict, Severity | 'ok'>> = { ok: 'ok', caution: 'note', avoid: 'warning' };
const ORDER: readonly (Severity | 'ok')[] = ['danger', 'warning', 'note', 'ok'];

export interface WorstPair {
  readonly pair: (typeof PAIRS)[number];
  readonly severity: Severity | 'ok';
}

/**
 * The worst pair that the plan has, in its water; null where no dissimilar metals touch.
 *
 * @param fittingsSaid  whether anybody chose the fittings: assumed ones are held against nothing
 */
export function worstPair(facts: Facts, fittingsSaid: boolean): WorstPair | null {
  const water = waterUnknown(facts) ? 'mild' : waterOf(facts);
  let worst: WorstPair | null = null;
  for (const pair of PAIRS) {
    if (!pair.met(facts) || (pair.at === undefined && !fittingsSaid)) continue;
    const [first, second] = pair.metals;
    const severity = SEVERITY[pairVerdict({ first, second, areas: pair.areas, water })];
    if (worst === null || ORDER.indexOf(severity) < ORDER.indexOf(worst.severity)) worst = { pair, severity };
  }
  return worst;
}

function waterOf({ water }: Facts): WaterClass {
  return waterClass({ conductivity: water.conductivity, acidity: water.acidity });
}

/** Half a water test that shows nothing bad tells nothing: then only what is wrong in any water is said. */
export function waterUnknown(facts: Facts): boolean {
  const { acidity, conductivity } = facts.water;
  return (acidity === null || conductivity === null) && waterOf(facts) !== 'aggressive';
}
