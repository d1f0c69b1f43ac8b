/** Drop pipe and line: rating and joints, running pressure, velocity. */
import { neverDraws } from '../figures/lowestLevel.ts';
import { velocityIn } from '../formulas/friction.ts';
import { WORKING_SHARE_WITHOUT_SURGE } from '../formulas/pipeStrength.ts';
import { gpm } from '../units.ts';
import { probeOf } from './cutOff.ts';
import { meets } from './grace.ts';
import { CLAMPS_PER_JOINT, worstJoint } from './joints.ts';
import { MOST_VELOCITY, runningAtCutOut } from './pipeNeeds.ts';
import {
  bornePressure,
  isPlastic,
  isSocketPipe,
  isThreaded,
  isTooThinForThreads,
  LEAST_RATING,
  METAL_BEARS,
  overLeast,
  THREADED_SHARE,
} from './pipeRating.ts';
import { pipesWith } from '../tables/pipeMaterials.ts';
import { AS_TESTED, DROP_PIPE, PUMP } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { lineDepth } from '../string/topDepths.ts';

export { warmRating } from './pipeRating.ts';

/** Pipe that its threads weaken. */
const WEAKENED = pipesWith(({ threadsWeaken }) => threadsWeaken);

export const dropPipeHolds = defineRule({
  number: 'PR-18',
  part: 'dropPipe',
  restsOn: [...DROP_PIPE, ...PUMP, 'string.clampsPerJoint', 'string.fittings'],
  onlyHelps: ['pump.frequency'],
  asks: { least: LEAST_RATING, threaded: THREADED_SHARE, weakened: WEAKENED, clamps: CLAMPS_PER_JOINT },
  judge({ facts, values }) {
    const pipe = facts.dropPipe;
    // Where the pipe bears most.
    const depth = dischargeDepth(facts.pump);
    const shutOff = values.shutOffPressureAtPump;
    if (!isPlastic(pipe)) {
      if (shutOff === null) return missing('powerOrCurve');
      // What metal pipe bears beyond that is a matter of its wall and its threads as they are: nothing is said of it.
      if (!meets(METAL_BEARS - shutOff, 'pressure')) return doesNotApply;
      return holds('metal', { material: pipe.material, shutOff, bears: METAL_BEARS });
    }
    const { material, standard } = pipe;
    const threaded = isThreaded(pipe, 'dropPipe');
    if (threaded && isSocketPipe(pipe))
      return breaks('threadedSocketPipe', 'danger', { material, standard }, { depth });
    if (threaded && isTooThinForThreads(pipe)) return breaks('threadedSchedule40', 'danger', { material }, { depth });
    const borne = bornePressure(pipe, 'dropPipe', facts);
    if (borne !== null && shutOff !== null && !meets(borne - shutOff, 'pressure')) {
      const margin = borne - shutOff;
      const at = { measured: borne, limit: shutOff, margin, quantity: 'pressure', depth } as const;
      const numbers = { material, shutOff, rating: borne, margin };
      return threaded
        ? breaks('threadsWeakerThanPump', 'danger', numbers, at)
        : breaks('weakerThanPump', 'danger', numbers, at);
    }
    const joint = worstJoint(facts);
    if (joint !== null) return joint;
    if (pipe.rating === null) return missing('ratingOfDropPipe');
    const rated = threaded ? pipe.rating * THREADED_SHARE : pipe.rating;
    const margin = overLeast(rated, facts);
    if (!meets(margin, 'pressure')) {
      const least = LEAST_RATING[facts.units];
      const at = { measured: rated, limit: least, margin, quantity: 'pressure', depth } as const;
      const numbers = { rating: rated, least, margin };
      return threaded
        ? breaks('threadsBelowUsualRating', 'warning', numbers, at)
        : breaks('belowUsualRating', 'warning', numbers, at);
    }
    if (shutOff === null) return missing('powerOrCurve');
    if (borne === null) return missing('ratingSoWarm');
    const numbers = { rating: borne, shutOff, margin: borne - shutOff };
    return threaded ? holds('threadsCarryPump', numbers) : holds('carriesPump', numbers);
  },
});

export const runningPressure = defineRule({
  number: 'PR-48',
  part: 'dropPipe',
  restsOn: ['pump.setting', ...DROP_PIPE, 'house.cutIn', 'house.cutOut', 'house.demand', ...PUMP, ...AS_TESTED],
  onlyHelps: ['pump.frequency'],
  asks: { share: WORKING_SHARE_WITHOUT_SURGE },
  judge({ solved, facts }) {
    const pipe = facts.dropPipe;
    if (!isPlastic(pipe)) return doesNotApply;
    // A pump that its probe never lets start presses on nothing.
    if (probeOf(solved) !== null && neverDraws(facts)) return doesNotApply;
    if (pipe.rating === null) return missing('ratingOfDropPipe');
    const borne = bornePressure(pipe, 'dropPipe', facts);
    if (borne === null) return missing('ratingSoWarm');
    const running = runningAtCutOut(solved);
    if (running === null) return missing('operatingPoint');
    const { pressure, byValve } = running;
    const share = WORKING_SHARE_WITHOUT_SURGE;
    const most = borne * share;
    const margin = most - pressure;
    const open = facts.house.kind === 'open tank';
    const numbers = { pressure, share, most, margin, threaded: isThreaded(pipe, 'dropPipe'), byValve, open };
    if (meets(margin, 'pressure')) return holds('roomForShocks', numbers);
    const at = {
      measured: pressure,
      limit: most,
      margin,
      quantity: 'pressure',
      depth: dischargeDepth(facts.pump),
    } as const;
    return breaks('nearRating', 'warning', numbers, at);
  },
});

/** What installers go by, beside the velocity. */
const USUAL_FLOWS = { inOneInch: gpm(15), inOneAndAQuarter: gpm(25) } as const;

export const pipeWideEnough = defineRule({
  number: 'PR-47',
  part: 'dropPipe',
  restsOn: [...DROP_PIPE, 'house.demand'],
  asks: { most: MOST_VELOCITY },
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
    if (meets(margin, 'velocity')) {
      // Of a line that nobody named nothing is said.
      if (house.line === null) return holds('dropPipeAloneWideEnough', numbers);
      return lineFaster ? holds('lineWideEnough', numbers) : holds('dropPipeWideEnough', numbers);
    }
    const depth = lineDepth(facts);
    const at = { measured: velocity, limit: MOST_VELOCITY, margin, quantity: 'velocity', depth } as const;
    return lineFaster
      ? breaks('lineTooSmall', 'warning', numbers, { ...at, part: 'buriedLine', partKind: 'buriedLine' })
      : breaks('dropPipeTooSmall', 'warning', numbers, at);
  },
});

export const pipeRules = [dropPipeHolds, pipeWideEnough, runningPressure] as const;
