/**
 * A plan in SI: depths from the ground whatever they were typed from, defaults of the build filled in and listed, facts
 * of the place that nobody said listed as unknown. Total on every plan that readPlan lets through.
 */
import type { Facts, FactsReading, Setback, SiteFacts, TopFacts, WireFacts } from '../facts.ts';
import { DEFAULTS } from './defaults.ts';
import { houseFacts } from './facts/house.ts';
import { pipeFacts } from './facts/pipe.ts';
import { pumpFacts } from './facts/pump.ts';
import { stringFacts } from './facts/string.ts';
import { waterFacts } from './facts/water.ts';
import { casingPlans, wellFacts } from './facts/well.ts';
import { notUsed } from './notUsed.ts';
import { makeAnew } from '../recall.ts';
import type { Recall } from '../recall.ts';
import type { Plan } from './schema.ts';
import { read, takeFrom } from './take.ts';
import type { Take } from './take.ts';

/** @param recall  the parts of the plan before: those that are the same objects are not read again */
export function readFacts(plan: Plan, recall: Recall = makeAnew): FactsReading {
  const [outermost] = casingPlans(plan.well);
  const typedHeight = outermost?.casing.height;
  const casingHeight = read(typedHeight ?? DEFAULTS.casingHeight, 'length');
  const fromCasingTop = plan.well.depthsFrom === 'casing top';
  const take = takeFrom(fromCasingTop ? -casingHeight : 0);
  const units = take.option('units', plan.units, DEFAULTS.units);
  const depthsFrom = take.option('well.depthsFrom', plan.well.depthsFrom, DEFAULTS.depthsFrom);
  if (typedHeight === undefined) {
    take.assumed.push({ path: `${outermost?.path ?? 'well.casing'}.height`, value: DEFAULTS.casingHeight });
  }
  /** Reads one part of the plan, with what it took for granted. */
  const part = <T>(key: string, from: readonly unknown[], make: (own: Take) => T): T => {
    const piece = recall(key, [fromCasingTop, casingHeight, units, ...from], () => {
      const own = takeFrom(fromCasingTop ? -casingHeight : 0);
      return { facts: make(own), assumed: own.assumed, unknown: own.unknown };
    });
    take.assumed.push(...piece.assumed);
    take.unknown.push(...piece.unknown);
    return piece.facts;
  };
  const site = part('site', [plan.site], (own) => siteFacts(plan.site ?? {}, own));
  const well = part('well', [plan.well], (own) => wellFacts(plan.well, casingHeight, own));
  const bore = well.intake.diameter ?? well.casings.at(-1)?.insideDiameter ?? 0;
  const { demand } = plan.house;
  /** Moved far more often than exchanged: what it is, is read apart from where it hangs. */
  const pumpPart = (): Facts['pump'] => {
    const { setting, ...typed } = plan.pump;
    const depth = take.depth(setting) ?? 0;
    const build = part('pump', Object.entries(typed).flat(), (own) => pumpFacts(typed, units, own));
    return recall('hung pump', [depth, build], () => ({ setting: depth, ...build }));
  };
  const facts: Facts = {
    title: plan.title ?? '',
    notes: plan.notes ?? '',
    date: plan.date ?? null,
    units,
    depthsFrom,
    site,
    well,
    water: part('water', [plan.water, bore, demand], (own) => waterFacts(plan.water, { bore, demand, units }, own)),
    house: part('house', [plan.house], (own) => houseFacts(plan.house, own)),
    top: part('top', [plan.top], (own) => topFacts(plan.top, own)),
    pump: pumpPart(),
    dropPipe: part('dropPipe', [plan.dropPipe], (own) => ({
      ...pipeFacts('dropPipe', plan.dropPipe, own),
      sectionLength: own.maybe(plan.dropPipe.sectionLength, 'length'),
    })),
    string: part('string', [plan.string], (own) => stringFacts(plan.string ?? {}, own)),
    wire: part('wire', [plan.wire, plan.house], (own) => wireFacts(plan, own)),
    rope: part('rope', [plan.rope], (own) => ropeFacts(plan.rope, own)),
    disinfection: part('disinfection', [plan.disinfection], (own) => ({
      strength: own.quantity('disinfection.strength', plan.disinfection?.strength, 'ratio', DEFAULTS.strength),
      target: own.quantity('disinfection.target', plan.disinfection?.target, 'concentration', DEFAULTS.target),
    })),
    status: plan.status ?? {},
  };
  return { facts, assumed: take.assumed, unknown: take.unknown, notUsed: notUsed(plan) };
}

type SitePlan = NonNullable<Plan['site']>;

function siteFacts(site: SitePlan, take: Take): SiteFacts {
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
      DEFAULTS.waterTemperature,
    ),
    altitude: take.quantity('site.altitude', site.altitude, 'length', DEFAULTS.altitude),
    floodHeight: take.fact('site.floodHeight', site.floodHeight, 'length'),
    septicTank: setback('site.septicTank', site.septicTank, take),
    drainField: setback('site.drainField', site.drainField, take),
    building: setback('site.building', site.building, take),
    casingHeightRequired: take.quantity(
      'site.casingHeightRequired',
      site.casingHeightRequired,
      'length',
      DEFAULTS.casingHeightRequired,
    ),
    frostMargin: take.quantity('site.frostMargin', site.frostMargin, 'length', DEFAULTS.frostMargin),
  };
}

function setback(path: string, typed: SitePlan['septicTank'], take: Take): Setback {
  return {
    distance: take.fact(`${path}.distance`, typed?.distance, 'length'),
    required: take.maybe(typed?.required, 'length'),
  };
}

function topFacts(top: Plan['top'], take: Take): TopFacts {
  if (top.kind === 'seal') {
    return {
      kind: 'seal',
      heated: take.option('top.heated', top.heated, false),
      housed: take.option('top.housed', top.housed, false),
    };
  }
  return {
    kind: 'pitless',
    depth: read(top.depth, 'length'),
    protrusion: take.fact('top.protrusion', top.protrusion, 'length'),
    submergedUse: top.submergedUse ?? null,
  };
}

/** The cable's run from the panel is taken as long as the buried line where nobody measured it. */
function wireFacts({ wire, house }: Plan, take: Take): WireFacts {
  const said = take.maybe(wire.run, 'length');
  const distance = take.maybe(house.distance, 'length');
  if (said === null && distance !== null) take.assumed.push({ path: 'wire.run', value: house.distance ?? '' });
  if (said === null && distance === null) take.unknown.push('wire.run');
  return {
    gauge: read(wire.size, 'gauge'),
    run: said ?? distance,
    conduitDepth: take.maybe(wire.conduitDepth, 'length'),
  };
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
