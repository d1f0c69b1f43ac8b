import type { Volts } from '../si.ts';

/**
 * Metals met in a well, from the one that dissolves most readily to the noblest.
 *
 * Potentials in flowing sea water against the saturated calomel electrode. They rank the metals; they give no rate, and
 * fresh water is far milder. Stainless steel in a tight crevice or in stagnant water without oxygen scatters between
 * −0.18 and −0.54 V and counts as active.
 *
 * Source  galvanic series in flowing sea water, of the kind ASTM G82 describes; brass stands for naval brass 464
 */
export const METALS = {
  zinc: { name: 'zinc, galvanized coating', potential: -1.03 },
  aluminium: { name: 'aluminium', potential: -0.79 },
  'carbon steel': { name: 'carbon steel, bare thread of galvanized pipe', potential: -0.61 },
  'cast iron': { name: 'cast or ductile iron', potential: -0.61 },
  'active stainless steel': { name: '304 stainless steel in a crevice', potential: -0.53 },
  brass: { name: 'brass', potential: -0.4 },
  copper: { name: 'copper', potential: -0.36 },
  bronze: { name: 'tin bronze', potential: -0.31 },
  '304 stainless steel': { name: '304 stainless steel', potential: -0.08 },
  '316 stainless steel': { name: '316 stainless steel', potential: -0.05 },
} as const satisfies Readonly<Record<string, { readonly name: string; readonly potential: Volts }>>;

export type Metal = keyof typeof METALS;

/**
 * The metal a plan's material makes a joint with; null for plastics, which conduct nothing. Galvanized pipe counts as zinc,
 * stainless steel as 304.
 */
export function metalOf(material: string): Metal | null {
  const name = material.trim().toLowerCase();
  if (name === 'galvanized steel') return 'zinc';
  if (name === 'steel') return 'carbon steel';
  if (name === 'stainless steel') return '304 stainless steel';
  return isMetal(name) ? name : null;
}

const isMetal = (name: string): name is Metal => Object.hasOwn(METALS, name);
