/** Down the well: length by length, with what is tied, clamped and spliced on the way. */
import type { Metres } from '../si.ts';
import { pipeRun } from '../string/pipeRun.ts';
import { feet, inches } from '../units.ts';
import { dischargeDepth } from '../string/pumpDepths.ts';
import { isBarbed } from '../tables/pipeMaterials.ts';
import { SPLICED_ON_THE_GROUND } from './atPump.ts';
import { hookAt, onTheHook, withStanding } from './hook.ts';
import { step, type Draft, type Job } from './making.ts';
import { spliceStep } from './spliceStep.ts';
import type { Beside, Length, WayUp } from './wayUp.ts';
import type { OnTheHook } from './step.ts';

/** What happens at a height of the string while that height is at the casing's top. */
type Event =
  | { readonly at: Metres; readonly is: 'length'; readonly length: Length }
  | { readonly at: Metres; readonly is: 'splice' | 'probe'; readonly beside: Beside };

/** What is worked on stands this far over the casing's rim. Common practice, no source. */
const OVER_RIM: Metres = feet(2);
/** The pipe's upper end, while its top joint is made. */
const HAND: Metres = inches(4);

function overRim(height: Metres): Metres {
  return Math.max(height - OVER_RIM, 0);
}

/** Height of the pipe's upper end over the discharge. */
function topEnd(facts: Job['solved']['facts']): Metres {
  return Math.max(dischargeDepth(facts.pump) - pipeRun(facts).top, 0);
}

/** Height that is at the casing's rim when the top joint is made: no lower, or its end is out of reach. */
export function letDownTo(facts: Job['solved']['facts']): Metres {
  return Math.max(topEnd(facts) - HAND, 0);
}

export function loweringSteps(job: Job, way: WayUp): readonly Draft[] {
  const { solved } = job;
  const { facts } = solved;
  const whole = letDownTo(facts);
  const events: readonly Event[] = [
    ...way.further.map((length): Event => ({ at: overRim(length.height), is: 'length', length })),
    ...way.splices
      .filter(({ height }) => height > SPLICED_ON_THE_GROUND)
      .map((beside): Event => ({ at: overRim(beside.height), is: 'splice', beside })),
    ...(way.probe === null ? [] : [{ at: overRim(way.probe.height), is: 'probe', beside: way.probe } satisfies Event]),
  ].sort((a, b) => a.at - b.at);
  const drafts: Draft[] = [
    step(
      'lift',
      { hook: hookBetween(job, way, 0, 0, { joined: true }) },
      { about: ['pump', 'motor'], view: 'section', cautions: ['lifting', 'overhead'] },
    ),
  ];
  let from = 0;
  for (let i = 0; i < events.length;) {
    const event = events[i];
    if (event === undefined) break;
    const run = sectionsFrom(events, i);
    const to = Math.max(event.at, from);
    if (run.length === 0 || to > from) drafts.push(...lowerStep(job, way, from, to));
    if (run.length > 0) {
      // Sections that nothing comes between go down alike: they are one step, done again and again.
      const next = events[i + run.length];
      const until = Math.max(next?.at ?? whole, to);
      drafts.push(sectionsStep(job, way, run, { from: to, to: until, last: next === undefined }));
      from = until;
      i += run.length;
      continue;
    }
    drafts.push(event.is === 'length' ? valveStep(job, event.length) : besideStep(job, event.is, event.beside));
    from = to;
    i++;
  }
  if (whole > from) drafts.push(...lowerStep(job, way, from, whole, true));
  return drafts;
}

/** Lengths of pipe without a valve, one straight after the other. */
function sectionsFrom(events: readonly Event[], i: number): readonly Length[] {
  const run: Length[] = [];
  for (let at = i; at < events.length; at++) {
    const event = events[at];
    if (event?.is !== 'length' || event.length.valve !== null) break;
    run.push(event.length);
  }
  return run;
}

/** What is tied or clamped between two heights. What stands above the last is put on with it. */
function onTheWay(way: WayUp, from: Metres, to: Metres, last: boolean) {
  const within = ({ height }: Beside): boolean => height >= from && (height < to || last);
  return { ties: way.ties.filter(within), guards: way.guards.filter(within) };
}

function downOf(
  job: Job,
  way: WayUp,
  { from, to }: { readonly from: Metres; readonly to: Metres },
  { ties, guards }: { readonly ties: readonly Beside[]; readonly guards: readonly Beside[] },
) {
  const { facts } = job.solved;
  return {
    from: depthAt(facts, from),
    to: depthAt(facts, to),
    ties: { count: ties.length, every: facts.string.ties },
    guards: guards.length,
    hook: hookBetween(job, way, from, to),
  };
}

/** While a height of the string is at the casing's top, the discharge is as deep below that. */
function depthAt({ well }: Job['solved']['facts'], height: Metres): Metres {
  return height - well.casingHeight;
}

/** @param joined  at the end the next length stands on top already */
function hookBetween(
  { solved }: Job,
  { further }: WayUp,
  from: Metres,
  to: Metres,
  { joined = false } = {},
): OnTheHook {
  const { facts } = solved;
  const whole = topEnd(facts);
  const ends = [...further.map(({ height }) => height), whole];
  const above = (height: Metres, next: boolean): Metres =>
    Math.max((ends.find((end) => (next ? end > height + SHORT : end > height - SHORT)) ?? whole) - height, 0);
  const at = (height: Metres, next: boolean) =>
    withStanding(solved, hookAt(solved, depthAt(facts, height)), above(height, next));
  return onTheHook(solved, at(from, true), at(to, joined));
}

function lowerStep(job: Job, way: WayUp, from: Metres, to: Metres, last = false): readonly Draft[] {
  const { ties, guards } = onTheWay(way, from, to, last);
  if (to - from < SHORT && ties.length === 0 && guards.length === 0) return [];
  return [
    step('lower', downOf(job, way, { from, to }, { ties, guards }), {
      puts: [...ties, ...guards].map(({ key }) => key),
      about: ['dropPipe', 'tie', 'guard'],
      cautions: ['lifting'],
    }),
  ];
}

/** So little is lowered with the next step. */
const SHORT: Metres = 0.05;

function sectionsStep(
  job: Job,
  way: WayUp,
  run: readonly Length[],
  { from, to, last }: { readonly from: Metres; readonly to: Metres; readonly last: boolean },
): Draft {
  const { pieces } = job;
  const { ties, guards } = onTheWay(way, from, to, last);
  const cuts = run.map(({ pipe }) => pieces.piece(pipe).cut ?? 0);
  return step(
    'sections',
    {
      ...downOf(job, way, { from, to }, { ties, guards }),
      count: run.length,
      longest: Math.max(...cuts),
      shortest: Math.min(...cuts),
    },
    {
      puts: [...run.flatMap(({ joint, pipe }) => [...joint, pipe]), ...[...ties, ...guards].map(({ key }) => key)],
      about: ['dropPipe', 'coupling', 'tie', 'guard'],
      cautions: ['lifting', 'overhead'],
    },
  );
}

function valveStep({ solved: { facts }, pieces }: Job, { height, joint, pipe, valve }: Length): Draft {
  const at = valve === null ? 0 : (pieces.piece(valve).top + pieces.piece(valve).bottom) / 2;
  const clamps = isBarbed(facts.dropPipe) ? facts.string.clampsPerJoint : null;
  return step(
    'valve',
    { height, arrow: facts.string.arrow, clamps, next: clamps === null ? pieces.piece(pipe).cut : null },
    { puts: [...joint, pipe], about: valve === null ? [] : [valve], view: { at }, cautions: ['lifting'] },
  );
}

function besideStep(job: Job, is: 'splice' | 'probe', beside: Beside): Draft {
  if (is === 'splice') return spliceStep(job, beside, false);
  const { solved, pieces } = job;
  const { bottom } = pieces.piece(beside.key);
  return step(
    'probe',
    { depth: bottom, overIntake: solved.facts.pump.setting - bottom },
    { puts: [beside.key, ...pieces.ofKinds('probeWires')], about: ['probe'], view: { at: bottom } },
  );
}
