/**
 * A plan in SI: depths from the ground whatever they were typed from, defaults of the build filled in and listed, facts
 * of the place that nobody said listed as unknown. Total on every plan that readPlan lets through.
 */
import type { Facts, FactsReading, Setback, SiteFacts, TopFacts, WireFacts } from '../facts.ts';
import { DEFAULTS, defaultsIn } from './defaults.ts';
import { UNKNOWN } from './unknown.ts';
import type { Defaults } from './defaults.ts';
import { houseFacts } from './facts/house.ts';
import { dropPipeFacts } from './facts/pipe.ts';
import { pumpFacts } from './facts/pump.ts';
import { usualSetting } from './facts/setting.ts';
import { stringFacts } from './facts/string.ts';
import { topFacts } from './facts/top.ts';
import { pumpedFlow, waterFacts } from './facts/water.ts';
import { casingPlans, wellFacts } from './facts/well.ts';
import { notUsed } from './notUsed.ts';
import { metricWire } from '../tables/wireSizes.ts';
import type { WireSize } from '../tables/wireSizes.ts';
import { readQuantity, squareMillimetres } from '../units.ts';
import { makeAnew } from '../recall.ts';
import type { Recall } from '../recall.ts';
import { CONDUIT_DEPTH } from '../string/lengths.ts';
import { writeQuantity } from '../units.ts';
import type { Plan } from './schema.ts';
import { read, takeFrom } from './take.ts';
import type { Take } from './take.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';

/** @param recall  the parts of the plan before: those that are the same objects are not read again */
export function readFacts(plan: Plan, recall: Recall = makeAnew): FactsReading {
  const [outermost] = casingPlans(plan.well);
  const typedHeight = outermost?.casing.height;
  const usual = defaultsIn(plan.units);
  const casingHeight = read(typedHeight ?? usual.casingHeight, 'length');
  const fromCasingTop = plan.well.depthsFrom === 'casing top';
  const shift = fromCasingTop ? -casingHeight : 0;
  const take = takeFrom(shift);
  const units = take.option('units', plan.units, DEFAULTS.units);
  const depthsFrom = take.option('well.depthsFrom', plan.well.depthsFrom, DEFAULTS.depthsFrom);
  if (typedHeight === undefined) {
    take.assume(`${outermost?.path ?? 'well.casing'}.height`, usual.casingHeight);
  }
  /** Reads one part of the plan, with what it took for granted. */
  const part = <T>(key: string, from: readonly unknown[], make: (own: Take) => T): T => {
    const piece = recall(key, [fromCasingTop, casingHeight, units, ...from], () => {
      const own = takeFrom(shift);
      return { facts: make(own), assumed: own.assumed, unknown: own.unknown };
    });
    take.assumed.push(...piece.assumed);
    take.unknown.push(...piece.unknown);
    return piece.facts;
  };
  const site = part('site', [plan.site], (own) => siteFacts(plan.site ?? {}, usual, own));
  const pumped = pumpedFlow(plan.water.pumping);
  const well = part('well', [plan.well, pumped], (own) => wellFacts(plan.well, casingHeight, pumped, own));
  const bore = well.intake.diameter ?? well.casings.at(-1)?.insideDiameter ?? 0;
  const house = part('house', [plan.house], (own) => houseFacts(plan.house ?? {}, usual, own));
  const demand = house.demand === null ? undefined : (plan.house?.demand ?? usual.demand);
  const yielded = plan.well.yield;
  const water = part('water', [plan.water, bore, demand, yielded], (own) =>
    waterFacts(plan.water, { bore, demand, yielded, units }, own),
  );
  /** Moved far more often than exchanged: what it is, is read apart from where it hangs. */
  const { setting, ...typed } = plan.pump ?? {};
  const build = part('pump', Object.entries(typed).flat(), (own) => pumpFacts(typed, units, own));
  const said = take.depth(setting);
  // An adapter that nobody set stays above a pump that somebody did.
  const hangsAt = said === null || isSet(plan.top) ? null : dischargeDepth({ setting: said, ...build });
  const top = part('top', [plan.top, site, hangsAt], (own) => topFacts(plan.top, { site, units, hangsAt }, own));
  const depth = said ?? usualSetting({ well, water, top, pump: build, units }, shift, take);
  const facts: Facts = {
    title: plan.title ?? '',
    place: plan.place ?? '',
    notes: plan.notes ?? '',
    date: plan.date ?? null,
    units,
    depthsFrom,
    site,
    well,
    water,
    house,
    top,
    pump: recall('hung pump', [depth, build], () => ({ setting: depth, ...build })),
    dropPipe: part('dropPipe', [plan.dropPipe], (own) => ({
      ...dropPipeFacts(plan.dropPipe ?? {}, usual, own),
      sectionLength: own.maybe(plan.dropPipe?.sectionLength, 'length'),
    })),
    string: part('string', [plan.string], (own) => stringFacts(plan.string ?? {}, usual, own)),
    wire: part('wire', [plan.wire, plan.house, top], (own) => wireFacts(plan, usual, top, own)),
    rope: part('rope', [plan.rope], (own) => ropeFacts(plan.rope, own)),
    disinfection: part('disinfection', [plan.disinfection], (own) => ({
      strength: own.quantity('disinfection.strength', plan.disinfection?.strength, 'ratio', DEFAULTS.strength),
      target: own.quantity('disinfection.target', plan.disinfection?.target, 'concentration', DEFAULTS.target),
    })),
    status: plan.status ?? {},
  };
  return { facts, assumed: take.assumed, unknown: take.unknown, notUsed: notUsed(plan) };
}

/** Nothing is left to assume of where the pipe leaves. */
function isSet(top: Plan['top']): boolean {
  return top?.kind === 'seal' || top?.depth !== undefined;
}

type SitePlan = NonNullable<Plan['site']>;

function siteFacts(site: SitePlan, usual: Defaults, take: Take): SiteFacts {
  const { freezing } = site;
  return {
    // With freezing data the depth can be estimated, so it is not asked for.
    frostDepth: freezing
      ? take.maybe(site.frostDepth, 'length')
      : take.fact('site.frostDepth', site.frostDepth, 'length'),
    frostFrom: site.frostFrom ?? null,
    freezing: freezing
      ? {
          station: freezing.station ?? null,
          index: take.maybe(freezing.index, 'freezingIndex'),
          soil: freezing.soil ?? null,
          surface: freezing.surface ?? null,
        }
      : null,
    waterTemperature: take.quantity(
      'site.waterTemperature',
      site.waterTemperature,
      'temperature',
      usual.waterTemperature,
    ),
    altitude: take.quantity('site.altitude', site.altitude, 'length', usual.altitude),
    floodHeight: take.fact('site.floodHeight', site.floodHeight, 'length'),
    septicTank: setback('site.septicTank', site.septicTank, take),
    drainField: setback('site.drainField', site.drainField, take),
    building: setback('site.building', site.building, take),
    casingHeightRequired: take.quantity(
      'site.casingHeightRequired',
      site.casingHeightRequired,
      'length',
      usual.casingHeightRequired,
    ),
    frostMargin: take.quantity('site.frostMargin', site.frostMargin, 'length', usual.frostMargin),
  };
}

function setback(path: string, typed: SitePlan['septicTank'], take: Take): Setback {
  return {
    distance: take.fact(`${path}.distance`, typed?.distance, 'length'),
    required: take.maybe(typed?.required, 'length'),
  };
}

/** Down into the trench of the line, and no less than usual; to a hundredth of a millimetre, which no sum leaves behind. */
function conduitDown(top: TopFacts, units: Plan['units']): string {
  const down = top.kind === 'pitless' ? Math.max(top.depth, CONDUIT_DEPTH) : CONDUIT_DEPTH;
  return units === 'metric' ? writeQuantity(down, 'length', 'cm', 0.01) : writeQuantity(down, 'length', 'in', 1e-5);
}

/** The cable's run from the panel is taken as long as the buried line where nobody measured it. */
function wireFacts({ wire = {}, house, units }: Plan, usual: Defaults, top: TopFacts, take: Take): WireFacts {
  const along = house?.distance;
  const taken = wire.run === undefined && along !== undefined && along !== UNKNOWN;
  return {
    gauge: wireSize(wire.size, usual, take),
    run: taken ? take.quantity('wire.run', undefined, 'length', along) : take.fact('wire.run', wire.run, 'length'),
    conduitDepth: take.quantity('wire.conduitDepth', wire.conduitDepth, 'length', conduitDown(top, units)),
  };
}

/** In the family that it was typed in. */
function wireSize(typed: string | undefined, usual: Defaults, take: Take): WireSize {
  const gauge = take.quantity('wire.size', typed, 'gauge', usual.wireSize);
  const parsed = readQuantity(typed ?? usual.wireSize, 'gauge');
  return parsed.ok && parsed.unit === 'mm2' ? metricWire(squareMillimetres(gauge)) : gauge;
}

function ropeFacts(rope: Plan['rope'], take: Take): Facts['rope'] {
  if (!rope) return null;
  return {
    material: rope.material,
    diameter: take.maybe(rope.diameter, 'length'),
    breakingStrength: take.fact('rope.breakingStrength', rope.breakingStrength, 'force'),
    tied: take.option('rope.tied', rope.tied, DEFAULTS.tied),
  };
}
