/** Water to be treated, in well, pipes and tank, the dose for it, and the time to pump it out. */
import type { Context } from '../../explain/context.ts';
import { within } from '../../explain/draft.ts';
import { noDemand, noLine, noDistance, noStaticLevel } from '../../explain/missing.ts';
import { step, term } from '../../explain/sum.ts';
import { chlorineProduct } from '../../formulas/disinfection.ts';
import type { CubicMetres } from '../../si.ts';
import { figure, solvedAll } from '../figure.ts';
import { known } from '../known.ts';
import type { SheetFigure } from '../sheet.ts';

const boreArea = (diameter: number) => (Math.PI / 4) * diameter * diameter;

/** Water in the buried line and in the tank as it stands at cut-out; the drop pipe hangs in water that is counted already. */
export function plumbingVolume({ facts, values }: Context): CubicMetres | null {
  const { line, distance } = facts.house;
  return known([distance, values.tankDrawdown ?? 0], (length, tank) =>
    line === null ? null : boreArea(line.insideDiameter) * length + tank,
  );
}

/** All of it: what a dose has to reach. */
export function treatedVolume(context: Context): CubicMetres | null {
  return known([context.values.wellVolume], (well) => well + (plumbingVolume(context) ?? 0));
}

export function volumeFigures(context: Context): SheetFigure[] {
  const { facts, values, show } = context;
  const { strength, target } = facts.disinfection;
  const { line, distance } = facts.house;
  const plumbing = plumbingVolume(context);
  const all = treatedVolume(context);
  const dose = known([all], (waterVolume) => chlorineProduct({ waterVolume, target, strength }));
  const flow = flushingFlow(context);
  const flush = known([all, flow], (volume, q) => (q > 0 ? volume / q : null));
  return [
    ...solvedAll(context, 'wellVolume', 'chlorineDose'),
    figure(
      context,
      {
        key: 'plumbingVolume',
        title: 'Water in line and tank',
        symbol: 'V_p',
        value: plumbing,
        as: 'volume',
        missing: [noLine(context), noDistance(context)],
      },
      () => ({
        terms: [
          term('d', 'bore of the line', line?.insideDiameter ?? null, 'bore'),
          term('L', 'length of the line', distance, 'length'),
          term('V_t', 'water that the tank holds above cut-in', values.tankDrawdown ?? 0, 'volume'),
        ],
        steps: [step('V_p', 'π / 4 × d² × L + V_t', plumbing, 'volume')],
        range: within('the pipes of the house come on top: half as much again as the well is common practice', null),
        source: 'volume of a cylinder',
      }),
    ),
    figure(
      context,
      {
        key: 'wholeDose',
        title: `Product for well, line and tank, ${Number((strength * 100).toFixed(2))} % strong`,
        symbol: 'V_c',
        value: dose,
        as: 'readVolume',
        missing: [noStaticLevel(context)],
      },
      () => ({
        terms: [
          term('V', 'water in well, line and tank', all, 'readVolume'),
          term('C', 'chlorine wanted', target, 'milligramsPerLitre'),
          term('ρ', 'mass of product, assumed', 1000, 'milligramsPerLitre'),
          term('P', 'strength on the label', strength, 'percent'),
        ],
        steps: [step('V_c', 'V × C / (ρ × P)', dose, 'readVolume')],
        range: within('fresh product; 15 % either way', null),
        source: 'proportion; agrees with Illinois Administrative Code 77, Part 925.50',
      }),
    ),
    figure(
      context,
      {
        key: 'flushTime',
        title: 'Time to pump all of it out once',
        symbol: 't',
        value: flush,
        as: 'minutes',
        text: show.time,
        missing: [noStaticLevel(context), noDemand(context)],
      },
      () => ({
        terms: [
          term('V', 'water in well, line and tank', all, 'volume'),
          term('Q', 'flow that the well keeps up with', flow, 'flow'),
        ],
        steps: [step('t', 'V / Q', flush, 'seconds')],
        range: within('go on until no chlorine is smelled or tested: two to three times as long is usual', null),
        source: 'arithmetic; times: common practice, no source',
      }),
    ),
  ];
}

/** The pump's flow, or what the well yields where that is less. */
function flushingFlow({ facts, values }: Context): number | null {
  const pump =
    values.operatingFlowAtCutIn !== null && values.operatingFlowAtCutIn > 0
      ? values.operatingFlowAtCutIn
      : facts.house.demand;
  return pump === null ? null : Math.min(pump, facts.well.yield ?? Infinity);
}
