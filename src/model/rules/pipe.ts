/** Drop pipe and line: rating and joints, running pressure, velocity. */
import { velocityIn } from '../formulas/friction.ts';
import { deratingFactor } from '../formulas/pipeStrength.ts';
import { STANDARD_GRAVITY, waterDensity } from '../formulas/water.ts';
import type { Facts, PipeFacts } from '../facts.ts';
import { valueAt } from '../plan/editPlan.ts';
import type { MetresPerSecond, Pascals, Ratio } from '../si.ts';
import type { Change, Solved } from '../solution.ts';
import { findPipe } from '../tables/pipes.ts';
import { feet, psi, writeQuantity } from '../units.ts';
import { meets } from './grace.ts';
import { change, unitAt, words } from './mend.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import type { Mend } from './rule.ts';
import { PRESSURE_CAUTION } from './say.ts';

/** Least printed rating of plastic drop pipe. */
export const LEAST_RATING: Pascals = psi(160);
/** Share of the rating that running pressure may take without a surge study. */
export const RUNNING_SHARE: Ratio = 0.72;
export const MOST_VELOCITY: MetresPerSecond = feet(5.6);
export const CLAMPS_PER_JOINT = 2;

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
  source: '10 N.Y. Codes R. & Regs. App. 5-B, 5-B.5(c): 160 psi; N.H. Admin. Rules We 702.05(g), (h): clamps and fittings',
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
        severity: 'danger', measured: rating, limit: shutOff, margin: rating - shutOff, quantity: 'pressure', depth,
        amount: `${show.pressure(shutOff - rating)} short`,
        message: `The pump can reach ${show.pressure(shutOff)} at no flow; this pipe is rated ${show.pressure(rating)} in this water.`,
        mend: strongerPipe(solved, 'dropPipe', Math.max(shutOff, LEAST_RATING), joints.changes),
      });
    }
    const worst = joints.found;
    if (worst !== null) {
      return breaks({
        ...worst, depth, part: 'insertFitting/pump', partKind: 'insertFitting',
        mend: change(facts, joints.changes, worst.label),
      });
    }
    if (!isPlastic(pipe)) return holds('metal pipe', `${pipe.material} pipe carries far more than this pump can reach.`);
    if (pipe.rating === null) return missing('the pressure rating of the drop pipe');
    if (!meets(pipe.rating - LEAST_RATING, 'pressure')) {
      return breaks({
        severity: 'warning', measured: pipe.rating, limit: LEAST_RATING, margin: pipe.rating - LEAST_RATING, quantity: 'pressure', depth,
        title: 'The drop pipe is below the usual rating',
        amount: `${show.pressure(LEAST_RATING - pipe.rating)} short`,
        message: `This pipe is rated ${show.pressure(pipe.rating)}; New York asks for ${show.pressure(LEAST_RATING)}, and many follow.`,
        mend: strongerPipe(solved, 'dropPipe', Math.max(shutOff ?? 0, LEAST_RATING), []),
      });
    }
    if (shutOff === null || rating === null) return missing(shutOff === null ? 'the pump’s power or curve' : 'a rating for water this warm');
    return holds(`${show.pressure(rating - shutOff)} to spare`, `Rated ${show.pressure(rating)} in this water; the pump reaches ${show.pressure(shutOff)} at no flow.`);
  },
});

interface JointFault {
  readonly severity: 'danger' | 'warning';
  readonly title: string;
  readonly amount: string;
  readonly message: string;
  readonly label: string;
}

/** What is wrong with barbs and clamps, worst first, and all that mends it. Rigid pipe has none of them. */
function jointFaults({ dropPipe, string }: Facts): { readonly found: JointFault | null; readonly changes: readonly Change[] } {
  const faults: JointFault[] = [];
  const changes: Change[] = [];
  if (dropPipe.material !== 'PE') return { found: null, changes };
  if (string.fittings === 'plastic' || string.fittings === 'nylon') {
    faults.push({ severity: 'danger', title: 'Plastic fittings carry the string', amount: string.fittings, label: 'Use stainless steel fittings', message: `${string.fittings === 'nylon' ? 'Nylon' : 'Plastic'} insert fittings carry the whole string; metal barbs are asked for in a well.` });
    changes.push({ path: 'string.fittings', to: 'stainless steel' });
  }
  if (string.clampsPerJoint < CLAMPS_PER_JOINT) {
    faults.push({ severity: 'danger', title: 'A single clamp holds each joint', amount: `${string.clampsPerJoint} of ${CLAMPS_PER_JOINT}`, label: 'Use two clamps a joint', message: `Each joint has ${string.clampsPerJoint === 0 ? 'no clamp' : 'one clamp'}; two all-stainless clamps a joint are asked for.` });
    changes.push({ path: 'string.clampsPerJoint', to: CLAMPS_PER_JOINT });
  }
  if (string.clampScrew === 'carbon steel') {
    faults.push({ severity: 'warning', title: 'The clamp screws will rust', amount: 'carbon steel', label: 'Use all-stainless clamps', message: 'Carbon-steel screws rust away under water, and the clamp lets go.' });
    changes.push({ path: 'string.clampScrew', to: 'stainless steel' });
  }
  return { found: faults[0] ?? null, changes };
}

/** The weakest usual PE pipe that carries so much in this water. Other pipe is chosen by schedule: words. */
function strongerPipe(solved: Solved, path: 'dropPipe' | 'house.line', least: Pascals, also: readonly Change[]): Mend {
  const { facts, plan } = solved;
  const pipe = path === 'dropPipe' ? facts.dropPipe : facts.house.line;
  const otherwise = words('Take pipe with a higher rating.');
  if (pipe === null || pipe.material !== 'PE' || valueAt(plan, `${path}.ratio`) !== undefined) return otherwise;
  const factor = deratingFactor('PE', facts.site.waterTemperature);
  if (factor === null) return otherwise;
  for (const count of [160, 200, 250, 315]) {
    const found = findPipe({ material: 'PE', standard: pipe.standard, size: pipe.nominalSize, rating: psi(count), resin: pipe.resin });
    if (found === null || found.wallClass === null || !meets(psi(count) * factor - least, 'pressure')) continue;
    const unit = unitAt(plan, `${path}.rating`, 'psi', 'pressure');
    const to = unit === 'psi' ? `${count} psi` : writeQuantity(psi(count), 'pressure', unit);
    return change(facts, [{ path: `${path}.rating`, to }, ...also], `Use ${count} psi pipe`);
  }
  return otherwise;
}

export const runningPressure = defineRule({
  number: 'PR-48',
  part: 'dropPipe',
  broken: 'The pipe runs too near its rating',
  holds: 'The running pressure leaves room for shocks',
  source: 'working pressure up to 72 % of the rating without a surge study: USDA NRCS practice for plastic pipe, from memory',
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
    const limit = rating * RUNNING_SHARE;
    const margin = limit - pressure;
    const message = `At cut-out ${show.pressure(pressure)} press on the pipe; 72 % of its rating is ${show.pressure(limit)}.`;
    if (meets(margin, 'pressure')) return holds(`${show.pressure(margin)} to spare`, message);
    return breaks({
      severity: 'warning', measured: pressure, limit, margin, quantity: 'pressure',
      depth: facts.pump.setting - facts.pump.intakeToDischarge,
      amount: `${show.pressure(-margin)} over`, message,
      mend: strongerPipe(solved, 'dropPipe', pressure / RUNNING_SHARE, []),
    });
  },
});

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
    const where = lineFaster ? 'line to the house' : 'drop pipe';
    if (meets(margin, 'velocity')) {
      return holds(`${show.velocity(margin)} to spare`, `${show.flow(flow)} runs at ${show.velocity(measured)} in the ${where}; about 15 gpm suit 1 in, 25 suit 1-1/4 in.`);
    }
    const path = lineFaster ? 'house.line' : 'dropPipe';
    return breaks({
      severity: 'warning', measured, limit: MOST_VELOCITY, margin, quantity: 'velocity',
      ...(lineFaster ? { part: 'buriedLine', partKind: 'buriedLine' as const, title: 'The line is too small for the flow' } : { title: 'The drop pipe is too small for the flow' }),
      depth: facts.top.kind === 'pitless' ? facts.top.depth : 0,
      amount: `${show.velocity(-margin)} too fast`,
      message: `${show.flow(flow)} runs at ${show.velocity(measured)}; about 15 gpm suit 1 in, 25 suit 1-1/4 in.`,
      mend: widerPipes(solved, flow, path),
    });
  },
});

/** The next sizes up that carry the flow, for every pipe that is too small. */
function widerPipes({ facts, plan }: Solved, flow: number, path: 'house.line' | 'dropPipe'): Mend {
  const changes: Change[] = [];
  for (const place of ['dropPipe', 'house.line'] as const) {
    const pipe = place === 'dropPipe' ? facts.dropPipe : facts.house.line;
    if (pipe === null || meets(MOST_VELOCITY - velocityIn(flow, pipe.insideDiameter), 'velocity')) continue;
    const ratio = valueAt(plan, `${place}.ratio`);
    const size = ['1 in', '1-1/4 in', '1-1/2 in', '2 in'].find((name) => {
      const found = findPipe({
        material: pipe.material, standard: pipe.standard, size: name, rating: pipe.rating, resin: pipe.resin,
        ratio: typeof ratio === 'string' || typeof ratio === 'number' ? ratio : null,
      });
      return found !== null && meets(MOST_VELOCITY - velocityIn(flow, found.insideDiameter), 'velocity');
    });
    if (size === undefined) return words('Take wider pipe, or ask less flow of it.');
    changes.push({ path: `${place}.size`, to: size });
  }
  const own = changes.find((each) => each.path === `${path}.size`);
  return change(facts, changes, `Use ${String(own?.to)} pipe`);
}

export const pipeRules = [dropPipeHolds, pipeWideEnough, runningPressure];
