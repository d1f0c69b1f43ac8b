/** What the plan says of the ground, as the formulas of flow to a well want it. */
import { boreRadiusAt } from '../bore.ts';
import type { PumpingFacts } from '../facts.ts';
import { boreResponse, storageFadeTime, type BoreInAquifer } from '../formulas/boreStorage.ts';
import { GUESSED_STORATIVITY, USUAL_PUMPING_TIME, drawdownAt, fitWellLoss } from '../formulas/drawdown.ts';
import { transmissivityFromSpecificCapacity } from '../formulas/aquiferTest.ts';
import type { CubicMetresPerSecond, Metres, Ratio, Seconds, SquareMetresPerSecond } from '../si.ts';
import type { Solved } from '../solution.ts';
import { transmissivityFromDrawdown } from './fromDrawdown.ts';
import { freeRadius } from './freeSurface.ts';
import type { Unknown } from './unknown.ts';

/** Nothing is told of the first minute: pump and pipe are still filling. */
export const FIRST_MINUTE: Seconds = 60;

/** How long a run the figures' drawdown tells of, and who said so: what comes later is the fit's alone. */
export interface ToldFor {
  readonly time: Seconds;
  /** `usual day`: a test whose hours nobody said. `aquifer`: the time for which the figures take its drawdown. */
  readonly by: 'test' | 'usual day' | 'aquifer';
}

export interface Ground extends BoreInAquifer {
  readonly entryLoss: number;
  /** Given as an aquifer, or estimated from the drawdown of a test. */
  readonly from: 'aquifer' | 'test' | 'level' | 'steps';
  /** Transmissivity for a storativity of 0.1 (water table) and of 1e-5 (tight cover); null where it was given. */
  readonly transmissivityRange: { readonly low: SquareMetresPerSecond; readonly high: SquareMetresPerSecond } | null;
  /** When the drawdown that it rests on was measured; null where it rests on none. */
  readonly testTime: Seconds | null;
  readonly toldFor: ToldFor;
  readonly claimedFrom: Seconds;
  /** Sentences: what was taken for granted. */
  readonly assumptions: readonly string[];
}

interface Question {
  readonly flow: CubicMetresPerSecond;
  readonly staticLevel: Metres;
  readonly storativity: Ratio | undefined;
}

const FORMULA =
  'Theis with the water of the bore after Papadopulos and Cooper: a wide, even, confined aquifer without leakage or boundaries, and a constant flow.';

/** The ground round the well, good for drawdowns at the flow asked for; or why nothing can be said. */
export function groundOf(solved: Solved, { flow, staticLevel, storativity }: Question): Ground | Unknown {
  const { pumping } = solved.facts.water;
  if (pumping === null || pumping.kind === 'yield only')
    return { reason: 'Nothing is known of the drawdown: a test with flow and drawdown is missing.' };
  if (pumping.kind === 'aquifer') return givenGround(solved, pumping, flow, staticLevel);
  const flowAssumed = solved.assumed.some(({ path }) => path === 'water.pumping.flow');
  const measured = measuredDrawdown(pumping, flow, solved.facts.water.staticLevel, flowAssumed);
  if ('reason' in measured) return measured;
  return estimatedGround(
    solved,
    pumping,
    measured,
    staticLevel,
    storativity ?? GUESSED_STORATIVITY,
    storativity !== undefined,
  );
}

function givenGround(
  solved: Solved,
  pumping: Extract<PumpingFacts, { kind: 'aquifer' }>,
  flow: CubicMetresPerSecond,
  staticLevel: Metres,
): Ground {
  const { transmissivity, storativity, radius: wellRadius, after } = pumping;
  const drawdown = drawdownAt(pumping, flow, staticLevel) ?? 0;
  const casingRadius =
    freeRadius(solved, staticLevel, staticLevel + drawdown) ?? boreRadiusAt(solved.bore, staticLevel);
  const assumptions = [FORMULA, 'No loss of head on the way through screen or well wall.'];
  const fades = storageFadeTime(casingRadius, transmissivity);
  if (fades > after)
    assumptions.push(
      'The bore’s own water still counts at the time given with the aquifer, so the level stands higher than Theis alone puts it.',
    );
  const entryLoss = 0;
  return {
    transmissivity,
    storativity,
    wellRadius,
    casingRadius,
    entryLoss,
    from: 'aquifer',
    transmissivityRange: null,
    testTime: null,
    toldFor: { time: after, by: 'aquifer' },
    claimedFrom: FIRST_MINUTE,
    assumptions,
  };
}

interface Measured {
  readonly flow: CubicMetresPerSecond;
  readonly drawdown: Metres;
  /** R = C Q of a step test [s/m²]. */
  readonly entryLoss: number;
  readonly after: Seconds | null;
  readonly assumptions: readonly string[];
}

type Tested = Exclude<PumpingFacts, { kind: 'aquifer' | 'yield only' }>;

function measuredDrawdown(
  pumping: Tested,
  flow: CubicMetresPerSecond,
  // Of the day of the test: a dry season that is watched does not change what was measured.
  staticLevel: Metres | null,
  flowAssumed: boolean,
): Measured | Unknown {
  const lossUnknown = 'The whole drawdown is put down to the ground: the loss in screen and well wall is not known.';
  if (pumping.kind === 'steps') {
    const loss = fitWellLoss(pumping.steps);
    if (!(loss.aquiferLoss > 0))
      return { reason: 'The step test leaves no drawdown for the ground: all of it goes as the square of the flow.' };
    const { wellLoss } = loss;
    const assumptions = [
      `Well loss from the step test, C Q², taken in proportion to the inflow while the level moves.`,
    ];
    const after = pumping.steps[pumping.steps.length - 1]?.after ?? null;
    return {
      flow,
      drawdown: drawdownAt(pumping, flow, staticLevel) ?? 0,
      entryLoss: wellLoss * flow,
      after,
      assumptions,
    };
  }
  const testFlow = pumping.flow;
  if (testFlow === null) return { reason: 'The flow at which the pumping level was measured is not known.' };
  const drawdown = drawdownAt(pumping, testFlow, staticLevel);
  if (drawdown === null) return { reason: 'The pumping level stands above the static level.' };
  if (!(drawdown > 0)) return { reason: 'The test shows no drawdown: no transmissivity follows from it.' };
  const assumptions = [lossUnknown];
  if (flowAssumed)
    assumptions.push('The pumping level was measured at the flow that the house needs: the plan names none.');
  return { flow: testFlow, drawdown, entryLoss: 0, after: pumping.kind === 'test' ? pumping.after : null, assumptions };
}

/** A share of the water pumped in a test that leaves the test saying little of the ground. Project decision. */
const MOSTLY_BORE = 0.5;

function estimatedGround(
  solved: Solved,
  pumping: Tested,
  measured: Measured,
  staticLevel: Metres,
  storativity: Ratio,
  storativityGiven: boolean,
): Ground | Unknown {
  const { flow, drawdown, entryLoss } = measured;
  const testTime = measured.after !== null && measured.after > 0 ? measured.after : USUAL_PUMPING_TIME;
  const wellRadius = intakeRadius(solved);
  const casingRadius = freeRadius(solved, staticLevel, staticLevel + drawdown) ?? wellRadius;
  const assumptions = [FORMULA, ...measured.assumptions];
  if (measured.after !== testTime)
    assumptions.push('The drawdown was measured after 24 hours: the plan names no time.');
  if (!storativityGiven)
    assumptions.push('Storativity 0.0001, as under a tight cover; transmissivity depends on it weakly.');

  const bore = { storativity, wellRadius, casingRadius, entryLoss };
  const wanted = { perFlow: drawdown / flow, time: testTime };
  const transmissivity = transmissivityFromDrawdown(bore, wanted);
  if (transmissivity === null)
    return withoutBoreWater({ ...measured, testTime, bore, from: pumping.kind, assumptions });
  const fromBore = (Math.PI * casingRadius ** 2 * drawdown) / (flow * testTime);
  if (fromBore > MOSTLY_BORE)
    assumptions.push('Most of the water pumped in the test stood in the bore: it says little of the ground.');
  const low = transmissivityFromDrawdown({ ...bore, storativity: WATER_TABLE }, wanted) ?? transmissivity;
  const high = transmissivityFromDrawdown({ ...bore, storativity: TIGHT_COVER }, wanted) ?? transmissivity;
  return {
    ...bore,
    transmissivity,
    from: pumping.kind,
    transmissivityRange: { low, high },
    testTime,
    toldFor: toldFor(measured.after),
    claimedFrom: FIRST_MINUTE,
    assumptions,
  };
}

function toldFor(after: Seconds | null): ToldFor {
  return after !== null && after > 0 ? { time: after, by: 'test' } : { time: USUAL_PUMPING_TIME, by: 'usual day' };
}

/** Ends of what storativity may be. Freeze & Cherry (1979), Groundwater, ch. 2; Heath (1983), USGS WSP 2220; from memory. */
const WATER_TABLE: Ratio = 0.1;
const TIGHT_COVER: Ratio = 1e-5;

/** A bore so narrow that its water does not count. */
const NO_WATER: Ratio = 1e-3;

/** The test drew down further than emptying the bore alone could: its water is left out, and the first hours with it. */
function withoutBoreWater(test: {
  readonly flow: CubicMetresPerSecond;
  readonly drawdown: Metres;
  readonly entryLoss: number;
  readonly after: Seconds | null;
  readonly testTime: Seconds;
  readonly bore: Omit<BoreInAquifer, 'transmissivity'>;
  readonly from: Tested['kind'];
  readonly assumptions: readonly string[];
}): Ground | Unknown {
  const { flow, drawdown, entryLoss, testTime, bore } = test;
  const { storativity, wellRadius } = bore;
  const inGround = drawdown - entryLoss * flow;
  const transmissivity =
    inGround > 0
      ? transmissivityFromSpecificCapacity({
          flow,
          drawdown: inGround,
          time: testTime,
          radius: wellRadius,
          storativity,
        })
      : null;
  if (transmissivity === null) return { reason: 'No aquifer gives the test’s drawdown at its time and flow.' };
  const narrow = { ...bore, transmissivity, entryLoss, casingRadius: wellRadius * NO_WATER };
  // Theis and this narrow bore agree to a millionth or so; the rest is put right, so that the test comes out exactly.
  const exact = transmissivity * (boreResponse({ ...narrow, entryLoss: 0 }, testTime) / (inGround / flow));
  return {
    ...narrow,
    transmissivity: exact,
    from: test.from,
    transmissivityRange: null,
    testTime,
    toldFor: toldFor(test.after),
    claimedFrom: Math.max(FIRST_MINUTE, testTime),
    assumptions: [
      ...test.assumptions,
      'The test drew down further than its flow could empty the bore in its time, so one of the three is wrong; nothing is claimed before the test’s time.',
    ],
  };
}

function intakeRadius({ facts, bore }: Solved): Metres {
  const { diameter } = facts.well.intake;
  return diameter !== null && diameter > 0 ? diameter / 2 : boreRadiusAt(bore, facts.well.bottom);
}
