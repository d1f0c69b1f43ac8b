/** Drop pipe and line: rating and joints, running pressure, velocity. */
import { velocityIn } from '../formulas/friction.ts';
import { deratingFactor, WORKING_SHARE_WITHOUT_SURGE } from '../formulas/pipeStrength.ts';
import { STANDARD_GRAVITY, waterDensity } from '../formulas/water.ts';
import type { Facts, PipeFacts } from '../facts.ts';
import type { Pascals } from '../si.ts';
import { gpm, psi } from '../units.ts';
import type { Show } from '../units.ts';
import { meets } from './grace.ts';
import { jointFaults } from './joints.ts';
import { change } from './mend.ts';
import { MOST_VELOCITY, strongerPipe, widerPipes } from './pipeMends.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { capital, PRESSURE_CAUTION } from './say.ts';

/** Least printed rating of plastic drop pipe. */
export const LEAST_RATING: Pascals = psi(160);

/** The rating in water of this temperature; null for metal, or where nobody knows the rating or the heat is too much. */
export function warmRating(pipe: PipeFacts, { site }: Facts): Pascals | null {
  if (pipe.rating === null || (pipe.material !== 'PE' && pipe.material !== 'PVC')) return null;
  const factor = deratingFactor(pipe.material, site.waterTemperature);
  return factor === null ? null : pipe.rating * factor;
}

function isPlastic({ material }: PipeFacts): boolean {
  return material === 'PE' || material === 'PVC';
}

export const dropPipeHolds = defineRule({
  number: 'PR-18',
  part: 'dropPipe',
  broken: 'The drop pipe is too weak for the pump',
  holds: 'The drop pipe holds the pump’s pressure',
  source:
    '10 N.Y. Codes R. & Regs. App. 5-B, 5-B.5(c): 160 psi; N.H. Admin. Rules We 702.05(g), (h): clamps and fittings',
  why: 'A pipe or joint that gives way lets the whole string fall into the well.',
  caution: PRESSURE_CAUTION,
  judge({ solved, facts, values, show }) {
    const pipe = facts.dropPipe;
    const depth = facts.pump.setting - facts.pump.intakeToDischarge;
    const joints = jointFaults(facts);
    const shutOff = values.shutOffPressureAtPump;
    const rating = warmRating(pipe, facts);
    if (isPlastic(pipe) && rating !== null && shutOff !== null && !meets(rating - shutOff, 'pressure')) {
      return breaks({
        severity: 'danger',
        measured: rating,
        limit: shutOff,
        margin: rating - shutOff,
        quantity: 'pressure',
        depth,
        amount: `${show.pressure(shutOff - rating)} short`,
        message: `The pump can reach ${show.pressure(shutOff)} at no flow; this pipe is rated ${show.pressure(rating)} in this water.`,
        mend: strongerPipe(solved, 'dropPipe', Math.max(shutOff, LEAST_RATING), joints.changes),
      });
    }
    const worst = joints.found;
    if (worst !== null) {
      return breaks({
        ...worst,
        depth,
        part: 'insertFitting/pump',
        partKind: 'insertFitting',
        mend: change(facts, joints.changes, worst.label),
      });
    }
    if (!isPlastic(pipe))
      return holds('metal pipe', `${capital(pipe.material)} pipe carries far more than this pump can reach.`);
    if (pipe.rating === null) return missing('the pressure rating of the drop pipe');
    if (!meets(pipe.rating - LEAST_RATING, 'pressure')) {
      return breaks({
        severity: 'warning',
        measured: pipe.rating,
        limit: LEAST_RATING,
        margin: pipe.rating - LEAST_RATING,
        quantity: 'pressure',
        depth,
        title: 'The drop pipe is below the usual rating',
        amount: `${show.pressure(LEAST_RATING - pipe.rating)} short`,
        message: `This pipe is rated ${show.pressure(pipe.rating)}; New York asks for ${show.pressure(LEAST_RATING)}, and many follow.`,
        mend: strongerPipe(solved, 'dropPipe', Math.max(shutOff ?? 0, LEAST_RATING), []),
      });
    }
    if (shutOff === null || rating === null)
      return missing(shutOff === null ? 'the pump’s power or curve' : 'a rating for water this warm');
    return holds(
      `${show.pressure(rating - shutOff)} to spare`,
      `Rated ${show.pressure(rating)} in this water; the pump reaches ${show.pressure(shutOff)} at no flow.`,
    );
  },
});

export const runningPressure = defineRule({
  number: 'PR-48',
  part: 'dropPipe',
  broken: 'The pipe runs too near its rating',
  holds: 'The running pressure leaves room for shocks',
  source: 'Missouri Livestock Watering Systems Handbook, ch. 5: 72 % of the rating without a study of shocks',
  why: 'Each start and stop sends a shock through the pipe on top of the running pressure.',
  caution: PRESSURE_CAUTION,
  judge({ solved, facts, values, show }) {
    const head = values.operatingHeadAtCutOut;
    if (!isPlastic(facts.dropPipe)) return doesNotApply;
    if (facts.dropPipe.rating === null) return missing('the pressure rating of the drop pipe');
    const rating = warmRating(facts.dropPipe, facts);
    if (rating === null) return missing('a rating for water this warm');
    if (head === null) return missing('the pump’s operating point, which needs levels, pipes and pump');
    const pressure = head * waterDensity(facts.site.waterTemperature) * STANDARD_GRAVITY;
    const limit = rating * WORKING_SHARE_WITHOUT_SURGE;
    const margin = limit - pressure;
    const message = `At cut-out ${show.pressure(pressure)} press on the pipe; 72 % of its rating is ${show.pressure(limit)}.`;
    if (meets(margin, 'pressure')) return holds(`${show.pressure(margin)} to spare`, message);
    return breaks({
      severity: 'warning',
      measured: pressure,
      limit,
      margin,
      quantity: 'pressure',
      depth: facts.pump.setting - facts.pump.intakeToDischarge,
      amount: `${show.pressure(-margin)} over`,
      message,
      mend: strongerPipe(solved, 'dropPipe', pressure / WORKING_SHARE_WITHOUT_SURGE, []),
    });
  },
});

/** What installers go by, beside the velocity. */
function usualFlows(show: Show): string {
  return `about ${show.flow(gpm(15))} suit 1 in, ${show.flow(gpm(25))} 1-1/4 in`;
}

export const pipeWideEnough = defineRule({
  number: 'PR-47',
  part: 'dropPipe',
  broken: 'The pipe is too small for the flow',
  holds: 'The pipe is wide enough for the flow',
  source: 'common practice, no source; about 15 gpm in 1 in and 25 gpm in 1-1/4 in',
  why: 'Fast water wastes the pump’s pressure and strikes harder when a valve shuts.',
  judge({ solved, facts, show }) {
    const { dropPipe, house } = facts;
    const flow = house.demand;
    if (flow === null) return missing('the flow that the house needs');
    const inDrop = velocityIn(flow, dropPipe.insideDiameter);
    const inLine = house.line === null ? 0 : velocityIn(flow, house.line.insideDiameter);
    const lineFaster = inLine > inDrop;
    const measured = Math.max(inDrop, inLine);
    const margin = MOST_VELOCITY - measured;
    const where = lineFaster ? 'buried line' : 'drop pipe';
    if (meets(margin, 'velocity')) {
      return holds(
        `${show.velocity(margin)} to spare`,
        `${show.flow(flow)} runs at ${show.velocity(measured)} in the ${where}; ${usualFlows(show)}.`,
      );
    }
    const path = lineFaster ? 'house.line' : 'dropPipe';
    return breaks({
      severity: 'warning',
      measured,
      limit: MOST_VELOCITY,
      margin,
      quantity: 'velocity',
      ...(lineFaster
        ? { part: 'buriedLine', partKind: 'buriedLine' as const, title: 'The line is too small for the flow' }
        : { title: 'The drop pipe is too small for the flow' }),
      depth: facts.top.kind === 'pitless' ? facts.top.depth : 0,
      amount: `${show.velocity(-margin)} too fast`,
      message: `${show.flow(flow)} runs at ${show.velocity(measured)}; ${usualFlows(show)}.`,
      mend: widerPipes(solved, flow, path),
    });
  },
});

export const pipeRules = [dropPipeHolds, pipeWideEnough, runningPressure];
