/** Amounts of the usual products, and what several rules ask for. */
import type { Context } from '../../explain/context.ts';
import { chlorineGranules, chlorineProduct } from '../../formulas/disinfection.ts';
import { gallons, poundsMass, either } from '../../units.ts';
import { known } from '../known.ts';
import type { SheetTable } from '../sheet.ts';
import { cell, columns, row } from '../table.ts';
import { treatedVolume } from './volume.ts';

/** As labels print it: "5.25 %". */
export const strong = (strength: number): string => `${Number((strength * 100).toFixed(2))} %`;

const BLEACHES = [0.0525, 0.06, 0.0825] as const;
const GRANULES = [0.65, 0.7] as const;

const source = ({ units }: Context): string =>
  `proportion; agrees with Illinois Administrative Code 77, Part 925.50 (${either(units, '3 cups of 5.25 % bleach, or 2 oz of 70 % granules, to 100 gal', '0.71 L of 5.25 % bleach, or 57 g of 70 % granules, to 379 L')} for 100 mg/L)`;

export function productTable(context: Context): SheetTable {
  const { facts, show, values } = context;
  const { target, strength } = facts.disinfection;
  const liquid = (volume: number) => small(volume, show.units);
  const all = treatedVolume(context);
  const strengths = [...new Set([strength, ...BLEACHES])].sort((a, b) => a - b);
  const dose = (volume: number | null, share: number) =>
    known([volume], (waterVolume) => chlorineProduct({ waterVolume, target, strength: share }));
  const dry = (volume: number | null, share: number) =>
    known([volume], (waterVolume) => chlorineGranules({ waterVolume, target, strength: share }));
  return {
    key: 'products',
    title: `How much of which product, for ${Math.round(target * 1000)} mg/L`,
    columns: columns(['product', 'Product'], ['well', 'For the well'], ['all', 'With line and tank']),
    rows: [
      ...strengths.map((share) =>
        row(
          share === strength ? 'this plan' : null,
          `bleach, ${strong(share)}`,
          cell(dose(values.wellVolume, share), liquid),
          cell(dose(all, share), liquid),
        ),
      ),
      ...GRANULES.map((share) =>
        row(
          null,
          `granules, ${strong(share)}`,
          cell(dry(values.wellVolume, share), (mass) => ounces(mass, show.units)),
          cell(dry(all, share), (mass) => ounces(mass, show.units)),
        ),
      ),
    ],
    source: source(context),
    note: 'Dissolve granules in a plastic bucket of water first: water, then granules. Never throw them dry onto pump or cable.',
  };
}

/** mg/L as rules ask for it, kg/m³. */
const RULES = [
  { who: 'Nebraska 178 NAC 12-011, after work on the pump', target: 0.05, contact: '–' },
  { who: 'Illinois 77 IAC 925.50', target: 0.1, contact: '–' },
  { who: 'Maryland COMAR 26.04.04.24, at least, and 500 mg/L at most', target: 0.1, contact: '–' },
  { who: 'Oklahoma', target: 0.1, contact: '2 h at least' },
  { who: 'MIL-HDBK-1164', target: 0.1, contact: '24 h' },
  { who: 'Alberta Agdex 716', target: 0.2, contact: '8 to 48 h' },
] as const;

export function doseTable(context: Context): SheetTable {
  const { facts, show, values } = context;
  const { strength, target } = facts.disinfection;
  return {
    key: 'rules',
    title: 'What rules and handbooks ask for',
    columns: columns(
      ['who', 'Who'],
      ['target', 'Chlorine'],
      ['contact', 'Standing'],
      ['dose', `Bleach for this well, ${strong(strength)}`],
    ),
    rows: RULES.map(({ who, target: wanted, contact }) =>
      row(
        Math.abs(wanted - target) < 1e-9 ? 'this plan' : null,
        who,
        cell(wanted, (mass) => `${Math.round(mass * 1000)} mg/L`),
        contact,
        cell(
          known([values.wellVolume], (waterVolume) => chlorineProduct({ waterVolume, target: wanted, strength })),
          (volume) => small(volume, show.units),
        ),
      ),
    ),
    source: 'as each row says',
    note: 'The rule of the place where the well stands decides.',
  };
}

const CUP = gallons(1 / 16);
const OUNCE = poundsMass(1 / 16);

/** Cups up to four gallons, millilitres up to a litre. */
function small(volume: number, units: 'us' | 'metric'): string {
  if (units === 'metric') return volume < 1e-3 ? `${Math.round(volume * 1e6)} mL` : `${(volume * 1000).toFixed(1)} L`;
  return volume < gallons(4) ? `${(volume / CUP).toFixed(1)} cups` : `${(volume / gallons(1)).toFixed(1)} gal`;
}

function ounces(mass: number, units: 'us' | 'metric'): string {
  if (units === 'metric') return mass < 1 ? `${Math.round(mass * 1000)} g` : `${mass.toFixed(2)} kg`;
  return mass < 32 * OUNCE ? `${(mass / OUNCE).toFixed(1)} oz` : `${(mass / (16 * OUNCE)).toFixed(1)} lb`;
}
