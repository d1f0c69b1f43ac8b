/** Depths of pump and water, and what lies between them. */
import { heldLevel } from '../../figures/heldLevel.ts';
import { lowestStatic } from '../../figures/lowestPumping.ts';
import { everywhere, GEOMETRY, within } from '../draft.ts';
import type { Explainer } from '../draft.ts';
import { noDemand, noDrawdown, noDryLevel, noStaticLevel, notHeld, notHeldDry, reason } from '../missing.ts';
import { step, term } from '../sum.ts';

const setting = (depth: number) => term('z_i', 'depth of the intake', depth, 'length');

export const intakeDepth: Explainer = ({ facts }) => ({
  title: 'Depth of the intake',
  symbol: 'z_i',
  terms: [setting(facts.pump.setting)],
  steps: [step('z_i', 'z_i', facts.pump.setting, 'length')],
  as: 'length',
  formula: 'z_i = the pump intake of the plan, from the ground surface',
  range: everywhere,
  source: 'the plan',
  missing: [],
});

export const pumpDischargeDepth: Explainer = ({ facts, values }) => ({
  title: 'Depth of the pump discharge',
  symbol: 'z_d',
  terms: [
    setting(facts.pump.setting),
    term('a', 'length from the intake up to the discharge', facts.pump.intakeToDischarge, 'length'),
  ],
  steps: [step('z_d', 'z_i − a', values.pumpDischargeDepth, 'length')],
  as: 'length',
  range: everywhere,
  source: GEOMETRY,
  missing: [],
});

export const motorBottomDepth: Explainer = ({ facts, values }) => ({
  title: 'Depth of the motor’s lower end',
  symbol: 'z_m',
  terms: [
    setting(facts.pump.setting),
    term('b', 'length from the intake down to the motor’s lower end', facts.pump.intakeToMotorBottom, 'length'),
  ],
  steps: [step('z_m', 'z_i + b', values.motorBottomDepth, 'length')],
  as: 'length',
  range: everywhere,
  source: GEOMETRY,
  missing: [],
});

export const clearanceToBottom: Explainer = ({ facts, values }) => ({
  title: 'Clearance below the motor',
  symbol: 'c_b',
  terms: [
    term(
      'D',
      facts.well.soundedDepth === null ? 'depth of the well as reported' : 'depth of the well as sounded today',
      facts.well.bottom,
      'length',
    ),
    term('z_m', 'depth of the motor’s lower end', values.motorBottomDepth, 'length'),
  ],
  steps: [step('c_b', 'D − z_m', values.clearanceToBottom, 'length')],
  as: 'length',
  range: everywhere,
  source: GEOMETRY,
  notes: ['Below zero the motor would stand under the bottom of the well.'],
  missing: [],
});

export const pumpingWaterLevel: Explainer = (context) => ({
  title: 'Pumping water level',
  symbol: 'h_w',
  terms: [
    term('h_s', 'depth of the water at rest', context.facts.water.staticLevel, 'length'),
    term('s', 'drawdown at the peak flow needed', context.values.drawdown, 'length'),
  ],
  steps: [step('h_w', 'h_s + s', context.values.pumpingWaterLevel, 'length')],
  as: 'length',
  range: within('as far as the drawdown holds', null),
  source: GEOMETRY,
  missing: [noStaticLevel(context), noDrawdown(context), noDemand(context), notHeld(context)],
});

export const pumpingWaterLevelDry: Explainer = (context) => ({
  title: 'Pumping water level in a dry season',
  symbol: 'h_dry',
  terms: [
    term('h_low', 'depth of the water at rest at its lowest', context.facts.water.staticLowest, 'length'),
    term('s', 'drawdown at the peak flow needed', context.values.drawdown, 'length'),
  ],
  steps: [step('h_dry', 'h_low + s', context.values.pumpingWaterLevelDry, 'length')],
  as: 'length',
  range: within(
    'as far as the drawdown holds; in an unconfined aquifer it grows as the water-bearing layer thins',
    null,
  ),
  source: GEOMETRY,
  missing: [noDryLevel(context), noDrawdown(context), noDemand(context), noStaticLevel(context), notHeldDry(context)],
});

const END_OF_FALL = {
  intake: 'depth of the intake',
  cutOff: 'depth of the dry-run protection',
  lift: 'deepest water that the stronger pump of that rating lifts at cut-in',
} as const;

/** From the lowest level at rest, at the largest flow that may be drawn; or where the intake or a cut-off ends the fall. */
export const lowestPumpingWaterLevel: Explainer = (context) => {
  const { facts, values, solution } = context;
  const { lowest } = solution;
  const rest = lowestStatic(facts);
  const ended = lowest?.by === 'intake' || lowest?.by === 'cutOff' || lowest?.by === 'lift';
  const fall = lowest === null || rest === null ? null : lowest.depth - rest;
  return {
    title: 'Lowest water level while pumping',
    symbol: 'h_min',
    terms: ended
      ? [term('z_e', END_OF_FALL[lowest.by], lowest.depth, 'length')]
      : [
          term('h_low', 'depth of the water at rest at its lowest', rest, 'length'),
          term('s', 'drawdown at the larger of the peak flow needed and the pump’s largest flow', fall, 'length'),
        ],
    steps: [step('h_min', ended ? 'z_e' : 'h_low + s', values.lowestPumpingWaterLevel, 'length')],
    as: 'length',
    range: within('as far as the drawdown holds', null),
    source: GEOMETRY,
    notes: ended ? ['The pump takes more than the well gives: the fall ends there.'] : [],
    missing: [
      noStaticLevel(context),
      noDrawdown(context),
      noDemand(context),
      reason(rest !== null && heldLevel(rest, facts) === null, 'water over the intake: at rest it stands below it'),
    ],
  };
};

export const submergence: Explainer = (context) => ({
  title: 'Submergence of the intake while pumping',
  symbol: 'S',
  terms: [
    setting(context.facts.pump.setting),
    term('h_w', 'pumping water level', context.values.pumpingWaterLevel, 'length'),
  ],
  steps: [step('S', 'z_i − h_w', context.values.submergence, 'length')],
  as: 'length',
  range: everywhere,
  source: GEOMETRY,
  missing: [noStaticLevel(context), noDrawdown(context), noDemand(context), notHeld(context)],
});

export const submergenceDry: Explainer = (context) => ({
  title: 'Submergence of the intake in a dry season',
  symbol: 'S_dry',
  terms: [
    setting(context.facts.pump.setting),
    term('h_dry', 'pumping water level in a dry season', context.values.pumpingWaterLevelDry, 'length'),
  ],
  steps: [step('S_dry', 'z_i − h_dry', context.values.submergenceDry, 'length')],
  as: 'length',
  range: everywhere,
  source: GEOMETRY,
  missing: [noDryLevel(context), noDrawdown(context), noDemand(context), noStaticLevel(context), notHeldDry(context)],
});

export const pitlessBelowFrost: Explainer = (context) => {
  const { facts, suspension, values } = context;
  const pitless = facts.top.kind === 'pitless';
  return {
    title: 'Pitless outlet below the frost line',
    symbol: 'm_f',
    terms: [
      term('z_t', 'depth of the top of the outlet pipe', pitless ? suspension : null, 'small'),
      term('z_f', 'frost depth', values.frostDepth, 'small'),
    ],
    steps: [step('m_f', 'z_t − z_f', values.pitlessBelowFrost, 'length')],
    as: 'small',
    range: everywhere,
    source: GEOMETRY,
    notes: [
      'Below zero the outlet lies in the frost. The depth that the local code requires overrules every estimate.',
    ],
    missing: [
      reason(!pitless, 'a pitless adapter: with a seal on top no outlet lies in the ground'),
      values.frostDepth === null ? { path: 'site.frostDepth', words: 'the frost depth of the place' } : null,
    ],
  };
};
