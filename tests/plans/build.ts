import { readFileSync } from 'node:fs';
import { readPlan, sayProblem, type Plan } from '../../src/model/index.ts';

/** A sample plan by its file's name, as typed. */
export function sample(name: string): Record<string, unknown> & { [section: string]: unknown } {
  return JSON.parse(readFileSync(new URL(`../../static/samples/${name}.json`, import.meta.url), 'utf8')) as Record<
    string,
    unknown
  >;
}

/** Reads a plan or fails with every fault in words. */
export function planOf(json: unknown): Plan {
  const reading = readPlan(json);
  if (!reading.ok) throw new Error(reading.problems.map(sayProblem).join('\n'));
  return reading.plan;
}

export const SAMPLES = ['tamarack-ridge', 'heron-flats', 'willow-dale', 'palo-amargo', 'slate-hollow'] as const;

/** A plain rock well with a pitless adapter; sections given here replace its own. */
export function rockWell(change: Record<string, unknown> = {}): Plan {
  return planOf({
    format: 'wellcut-plan/1',
    units: 'us',
    site: { frostDepth: '36 in' },
    well: {
      depth: '200 ft',
      casing: { material: 'steel', size: '6 in', bottom: '200 ft', height: '12 in' },
      intake: { kind: 'open hole', diameter: '6 in' },
    },
    water: { staticLevel: '40 ft', pumping: { kind: 'test', flow: '10 gpm', drawdown: '60 ft', after: '4 h' } },
    house: {
      demand: '7 gpm',
      distance: '120 ft',
      rise: '10 ft',
      line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
      reliefValve: true,
      tank: '44 gal',
    },
    top: { kind: 'pitless', depth: '5 ft' },
    pump: { setting: '140 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
    dropPipe: { material: 'PE', size: '1 in', rating: '200 psi' },
    wire: { size: '10 AWG', run: '120 ft' },
    ...change,
  });
}
