/** Drop pipe and line: rating and joints, running pressure, velocity. */
import { velocityIn } from '../formulas/friction.ts';
import { deratingFactor, WORKING_SHARE_WITHOUT_SURGE } from '../formulas/pipeStrength.ts';
import { STANDARD_GRAVITY, waterDensity } from '../formulas/water.ts';
import type { Facts, PipeFacts } from '../facts.ts';
import type { Pascals } from '../si.ts';
import { gpm, psi } from '../units.ts';
import { meets } from './grace.ts';
import { jointChanges, jointFixes, worstJoint } from './joints.ts';
import { MOST_VELOCITY, strongerPipe, widerPipes } from './otherPipe.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Given } from './rule.ts';

/** Least printed rating of plastic drop pipe. */
export const LEAST_RATING: Pascals = psi(160);

/** The rating in water of this temperature; null for metal, or where nobody knows the rating or the heat is too much. */
export function warmRating(pipe: PipeFacts, { site }: Facts): Pascals | null {
  if (pipe.rating === null || (pipe.material !== 'PE' && pipe.material !== 'PVC')) return null;
  const factor = deratingFactor(pipe.material, site.waterTemperature);
  return factor === null ? null : pipe.rating * factor;
}

export function isPlastic({ material }: PipeFacts): boolean {
  return material === 'PE' || material === 'PVC';
}

/** Where the pipe bears most: at the pump's discharge. */
function dischargeDepth({ pump }: Facts) {
  return pump.setting - pump.intakeToDischarge;
}

export const dropPipeHolds = defineRule({
  number: 'PR-18',
  part: 'dropPipe',
  judge({ facts, values }) {
    const pipe = facts.dropPipe;
    const depth = dischargeDepth(facts);
    const shutOff = values.shutOffPressureAtPump;
    const rating = warmRating(pipe, facts);
    if (isPlastic(pipe) && rating !== null && shutOff !== null && !meets(rating - shutOff, 'pressure')) {
      const margin = rating - shutOff;
      const at = { measured: rating, limit: shutOff, margin, quantity: 'pressure', depth } as const;
      return breaks('weakerThanPump', 'danger', { shutOff, rating, margin }, at);
    }
    const joint = worstJoint(facts);
    if (joint !== null) return joint;
    if (!isPlastic(pipe)) return holds('metal', { material: pipe.material });
    if (pipe.rating === null) return missing('ratingOfDropPipe');
    if (!meets(pipe.rating - LEAST_RATING, 'pressure')) {
      const least = LEAST_RATING;
      const margin = pipe.rating - least;
      const at = { measured: pipe.rating, limit: least, margin, quantity: 'pressure', depth } as const;
      return breaks('belowUsualRating', 'warning', { rating: pipe.rating, least, margin }, at);
    }
    if (shutOff === null) return missing('powerOrCurve');
    if (rating === null) return missing('ratingSoWarm');
    return holds('carriesPump', { rating, shutOff, margin: rating - shutOff });
  },
  fixes({ solved, facts, values }, { variant }) {
    if (variant !== 'weakerThanPump' && variant !== 'belowUsualRating') return jointFixes(facts);
    const least = Math.max(values.shutOffPressureAtPump ?? 0, LEAST_RATING);
    return [strongerPipe(solved, 'dropPipe', least, jointChanges(facts))];
  },
});

/** Pressure in the drop pipe at cut-out; null where nobody knows the operating point. */
function pressureAtCutOut({ facts, values }: Given): Pascals | null {
  const head = values.operatingHeadAtCutOut;
  return head === null ? null : head * waterDensity(facts.site.waterTemperature) * STANDARD_GRAVITY;
}

export const runningPressure = defineRule({
  number: 'PR-48',
  part: 'dropPipe',
  judge(given) {
    const { facts } = given;
    if (!isPlastic(facts.dropPipe)) return doesNotApply;
    if (facts.dropPipe.rating === null) return missing('ratingOfDropPipe');
    const rating = warmRating(facts.dropPipe, facts);
    if (rating === null) return missing('ratingSoWarm');
    const pressure = pressureAtCutOut(given);
    if (pressure === null) return missing('operatingPoint');
    const share = WORKING_SHARE_WITHOUT_SURGE;
    const most = rating * share;
    const margin = most - pressure;
    if (meets(margin, 'pressure')) return holds('roomForShocks', { pressure, share, most, margin });
    const at = { measured: pressure, limit: most, margin, quantity: 'pressure', depth: dischargeDepth(facts) } as const;
    return breaks('nearRating', 'warning', { pressure, share, most, margin }, at);
  },
  fixes(given) {
    const pressure = pressureAtCutOut(given);
    if (pressure === null) return [];
    return [strongerPipe(given.solved, 'dropPipe', pressure / WORKING_SHARE_WITHOUT_SURGE, [])];
  },
});

/** What installers go by, beside the velocity. */
const USUAL_FLOWS = { inOneInch: gpm(15), inOneAndAQuarter: gpm(25) } as const;

export const pipeWideEnough = defineRule({
  number: 'PR-47',
  part: 'dropPipe',
  judge({ facts }) {
    const { dropPipe, house } = facts;
    const flow = house.demand;
    if (flow === null) return missing('demand');
    const inDrop = velocityIn(flow, dropPipe.insideDiameter);
    const inLine = house.line === null ? 0 : velocityIn(flow, house.line.insideDiameter);
    const lineFaster = inLine > inDrop;
    const velocity = Math.max(inDrop, inLine);
    const margin = MOST_VELOCITY - velocity;
    const numbers = { flow, velocity, margin, ...USUAL_FLOWS } as const;
    if (meets(margin, 'velocity'))
      return lineFaster ? holds('lineWideEnough', numbers) : holds('dropPipeWideEnough', numbers);
    const depth = facts.top.kind === 'pitless' ? facts.top.depth : 0;
    const at = { measured: velocity, limit: MOST_VELOCITY, margin, quantity: 'velocity', depth } as const;
    return lineFaster
      ? breaks('lineTooSmall', 'warning', numbers, { ...at, part: 'buriedLine', partKind: 'buriedLine' })
      : breaks('dropPipeTooSmall', 'warning', numbers, at);
  },
  fixes({ solved, facts }, { variant }) {
    const flow = facts.house.demand;
    if (flow === null) return [];
    return [widerPipes(solved, flow, variant === 'lineTooSmall' ? 'house.line' : 'dropPipe')];
  },
});

export const pipeRules = [dropPipeHolds, pipeWideEnough, runningPressure] as const;
