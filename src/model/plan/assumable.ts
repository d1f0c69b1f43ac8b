/** Every choice of the build that may be taken for granted, with what is taken. */
import { readFacts } from './readFacts.ts';
import type { Plan } from './schema.ts';

export interface Assumable {
  /** The first casing under one name, however it is typed. */
  readonly path: string;
  /** As one would type it; null where it follows from what else is said. */
  readonly value: string | null;
}

/**
 * What a plan in these units takes where nobody chose, in the record's order.
 *
 * Read off plans that say only what others hang on, and say it differently: what all of them take alike is a default of
 * its own.
 */
export function assumable(units: 'us' | 'metric'): readonly Assumable[] {
  const found = new Map<string, string | null>();
  for (const plan of units === 'us' ? CUSTOMARY : METRIC) {
    for (const { path, value } of readFacts(plan).assumed) {
      const before = found.get(path);
      found.set(path, before === undefined || before === value ? value : null);
    }
  }
  return [...found].map(([path, value]) => ({ path, value }));
}

const format = 'wellcut-plan/1';

const CUSTOMARY: readonly Plan[] = [
  {
    format,
    units: 'us',
    site: { frostDepth: '36 in' },
    well: { depth: '240 ft', casing: { material: 'steel', size: '6 in' }, intake: { kind: 'open hole' } },
    water: { staticLevel: '40 ft', pumping: { kind: 'aquifer', transmissivity: '100 ft2/d', storativity: '0.001' } },
    house: { distance: '100 ft', line: { material: 'PE', size: '1 in', rating: '160 psi' } },
    pump: { power: '1 hp' },
    rope: { material: 'polyester' },
  },
  {
    format,
    units: 'us',
    site: { frostDepth: '0 in' },
    well: { depth: '400 ft', casing: { material: 'PVC', size: '5 in' }, intake: { kind: 'open hole' } },
    water: { staticLevel: '60 ft', pumping: { kind: 'level', level: '90 ft' } },
    house: { demand: '6 gpm', distance: '200 ft', line: { material: 'PVC', size: '1 in' }, cutIn: '30 psi' },
    pump: { power: '3 hp', shroudDiameter: '5 in' },
    dropPipe: { material: 'PVC' },
  },
  {
    format,
    units: 'us',
    well: { depth: '90 ft', intake: { kind: 'open hole', diameter: '8 in' } },
    water: { staticLevel: '20 ft', pumping: { kind: 'aquifer', transmissivity: '100 ft2/d', storativity: '0.001' } },
    house: { line: { material: 'PE', size: '40 mm', rating: 'PN 16' } },
    dropPipe: { material: 'PE', size: '40 mm', rating: 'PN 16' },
  },
  {
    format,
    units: 'us',
    well: { depth: '90 ft', intake: { kind: 'open hole' } },
    water: { staticLevel: '20 ft', pumping: { kind: 'level', level: '50 ft' } },
    dropPipe: { size: '40 mm' },
  },
];

/** Of a motor that is named in kilowatts the frequency is left open, so that none is among these. */
const METRIC: readonly Plan[] = [
  {
    format,
    units: 'metric',
    site: { frostDepth: '90 cm' },
    well: { depth: '70 m', casing: { material: 'steel', size: '6 in' }, intake: { kind: 'open hole' } },
    water: { staticLevel: '12 m', pumping: { kind: 'aquifer', transmissivity: '10 m2/d', storativity: '0.001' } },
    house: { distance: '30 m', line: { material: 'PE', size: '1 in', rating: '160 psi' } },
    pump: { power: '0.75 kW' },
    rope: { material: 'polyester' },
  },
  {
    format,
    units: 'metric',
    site: { frostDepth: '0 cm' },
    well: { depth: '120 m', casing: { material: 'PVC', size: '5 in' }, intake: { kind: 'open hole' } },
    water: { staticLevel: '18 m', pumping: { kind: 'level', level: '27 m' } },
    house: { demand: '25 L/min', distance: '60 m', line: { material: 'PVC', size: '1 in' }, cutIn: '2 bar' },
    pump: { power: '2.2 kW', shroudDiameter: '125 mm' },
    dropPipe: { material: 'PVC' },
  },
  {
    format,
    units: 'metric',
    well: { depth: '28 m', intake: { kind: 'open hole', diameter: '200 mm' } },
    water: { staticLevel: '6 m', pumping: { kind: 'aquifer', transmissivity: '10 m2/d', storativity: '0.001' } },
    house: { line: { material: 'PE', size: '40 mm', rating: 'PN 16' } },
    dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  {
    format,
    units: 'metric',
    well: { depth: '28 m', intake: { kind: 'open hole' } },
    water: { staticLevel: '6 m', pumping: { kind: 'level', level: '15 m' } },
    dropPipe: { material: 'galvanized steel' },
  },
  {
    format,
    units: 'metric',
    well: { depth: '28 m', intake: { kind: 'open hole' } },
    water: { staticLevel: '6 m' },
    dropPipe: { size: '1 in' },
  },
];
