/** Pressures of the pump against a closed valve. */
import { waterWeightTerm } from '../context.ts';
import type { Context } from '../context.ts';
import { within } from '../draft.ts';
import type { Draft, Explainer } from '../draft.ts';
import type { BandEnd } from '../../figures/pumpBand.ts';
import { noPumpCurve, noRise, noStaticLevel } from '../missing.ts';
import { step, term } from '../sum.ts';
import type { Term } from '../sum.ts';
import { GENERIC_SOURCE, shutOffHead } from './pumpHead.ts';

export const shutOffPressureAtPump: Explainer = (context) => {
  const pump = shutOffHead(context, 'most');
  return {
    title: 'Shut-off pressure at the pump',
    symbol: 'p_0',
    terms: withWater(context, pump?.terms ?? []),
    steps: [...(pump?.steps ?? []), step('p_0', 'γ × H_0', context.values.shutOffPressureAtPump, 'pressure')],
    as: 'pressure',
    range: within('pump running against a closed valve', null),
    source: `hydrostatics; ${pump?.source ?? GENERIC_SOURCE}`,
    notes: [
      'Also the most by which the pressure inside the pipe exceeds that of the water outside.',
      ...(pump ? [pump.note] : []),
    ],
    missing: [noPumpCurve(context)],
  };
};

export const shutOffPressureAtTank: Explainer = (context) =>
  atTank(context, 'most', 'shutOffPressureAtTank', {
    title: 'Shut-off pressure at the tank',
    note: 'What tank, line and relief valve must stand if the switch does not turn the pump off.',
  });

export const shutOffPressureAtTankLeast: Explainer = (context) =>
  atTank(context, 'least', 'shutOffPressureAtTankLeast', {
    title: 'Shut-off pressure at the tank, at the least',
    note: 'Below the cut-out pressure the switch never turns the pump off.',
  });

function atTank(
  context: Context,
  end: BandEnd,
  name: 'shutOffPressureAtTank' | 'shutOffPressureAtTankLeast',
  { title, note }: { readonly title: string; readonly note: string },
): Draft {
  const { facts, values } = context;
  const pump = shutOffHead(context, end);
  return {
    title,
    symbol: 'p_t',
    terms: [
      ...withWater(context, pump?.terms ?? []),
      term('h_s', 'depth of the water at rest', facts.water.staticLevel, 'length'),
      term('r', 'rise to the tank', facts.house.rise, 'length'),
    ],
    steps: [...(pump?.steps ?? []), step('p_t', 'γ × (H_0 − h_s − r)', values[name], 'pressure')],
    as: 'pressure',
    range: within('pump running against a closed valve, water at rest', null),
    source: `hydrostatics; ${pump?.source ?? GENERIC_SOURCE}`,
    notes: [note, ...(pump ? [pump.note] : [])],
    missing: [noPumpCurve(context), noStaticLevel(context), noRise(context)],
  };
}

/** The generic curve brings the water's weight along already. */
function withWater(context: Context, terms: readonly Term[]): Term[] {
  return terms.some(({ symbol }) => symbol === 'γ') ? [...terms] : [...terms, waterWeightTerm(context)];
}
