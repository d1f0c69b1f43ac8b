/** The order of the work in words: what is done, why, what is looked at, and what goes wrong. */
import type { Phase, StepId, Work } from '../../model/work/step.ts';
import { FLOWING_CAUTION, PIT_CAUTION } from './cautions.ts';
import { after } from './work/after.ts';
import { before } from './work/before.ts';
import { cautions } from './work/cautions.ts';
import { hanging } from './work/hanging.ts';
import { hook } from './work/hook.ts';
import { house } from './work/house.ts';
import { lowering } from './work/lowering.ts';
import { pulling } from './work/pulling.ts';
import { pump } from './work/pump.ts';
import { start } from './work/start.ts';
import type { StepsOf } from './work/stepWords.ts';
import { top } from './work/top.ts';

const steps: StepsOf<StepId> = {
  ...before,
  ...pulling,
  ...top,
  ...pump,
  ...lowering,
  ...hanging,
  ...house,
  ...start,
  ...after,
};

const phases: Readonly<Record<Phase, string>> = {
  before: 'Before the work',
  pulling: 'Pulling the old pump',
  top: 'Casing and trench',
  pump: 'At the pump, on the ground',
  lowering: 'Down the well',
  hanging: 'At the top of the well',
  house: 'In the house',
  start: 'First water',
  after: 'Before anyone drinks',
};

/** Why no step is told at all. */
const stop: Readonly<Record<Extract<Work, { readonly kind: 'stop' }>['why'], readonly string[]>> = {
  flowing: ['This well flows by itself, so no steps are told.', FLOWING_CAUTION],
  inPit: ['The top of this well is in a pit, so no steps are told.', PIT_CAUTION],
};

/** Figures that nobody said are looked up before anything is cut or drilled. */
const assumed = (names: readonly string[]): string => `Assumed, so check first: ${names.join('; ')}.`;

export const work = { steps, phases, cautions, hook, stop, assumed };
