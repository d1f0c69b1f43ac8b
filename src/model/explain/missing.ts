/** Facts that figures wait for, in words. */
import { provenYield } from '../figures/provenYield.ts';
import { isHeld, isHeldDry } from '../figures/heldLevel.ts';
import { boreKnown } from '../figures/waterFall.ts';
import type { Context } from './context.ts';
import type { Missing } from './explanation.ts';

const when = (lacking: boolean, path: string | null, words: string): Missing | null =>
  lacking ? { path, words } : null;

export const reason = (holds: boolean, words: string) => when(holds, null, words);

export const noDemand = ({ facts }: Context) =>
  when(facts.house.demand === null, 'house.demand', 'the flow that the house wants');

export const noStaticLevel = ({ facts }: Context) =>
  when(facts.water.staticLevel === null, 'water.staticLevel', 'the water level at rest');

export const noDryLevel = ({ facts }: Context) =>
  when(
    facts.water.staticLowest === null,
    'water.staticLowest',
    'the lowest level at rest, or how far it falls in a dry season',
  );

export const noDrawdown = (context: Context): Missing | null => {
  const { pumping, staticLevel } = context.facts.water;
  if (pumping === null) return { path: 'water.pumping', words: 'a pumping test or a pumping level' };
  if (pumping.kind === 'yield only') {
    return {
      path: 'water.pumping',
      words: 'the drawdown: blowing a well with air tells its yield, not how far the water falls',
    };
  }
  if (pumping.kind === 'level' && pumping.flow === null) {
    return { path: 'water.pumping.flow', words: 'the flow at which the pumping level was measured' };
  }
  if (pumping.kind === 'level' && staticLevel !== null && pumping.level < staticLevel) {
    return { path: 'water.pumping.level', words: 'a pumping level below the level at rest' };
  }
  return null;
};

/** Why there is no level, and no head from it, where the drawdown would take the water below the intake. */
export const notHeld = ({ facts }: Context) =>
  reason(!isHeld({ facts }), 'a well that gives this flow: the water falls to the pump');

export const notHeldDry = ({ facts }: Context) =>
  reason(!isHeldDry({ facts }), 'a well that gives this flow in a dry season: the water falls to the pump');

export const noDistance = ({ facts }: Context) =>
  when(facts.house.distance === null, 'house.distance', 'the length of the line from well to house');

export const noRise = ({ facts }: Context) =>
  when(facts.house.rise === null, 'house.rise', 'the rise of the ground from the well to the tank');

export const noLine = ({ facts }: Context) =>
  when(facts.house.line === null, 'house.line', 'the pipe of the line to the house');

export const noPumpCurve = ({ facts }: Context) =>
  when(
    facts.pump.curve.kind === 'generic' && facts.pump.power === null,
    'pump.power',
    'the power of the pump, or its curve',
  );

export const noPumpMass = ({ facts }: Context) =>
  when(facts.pump.mass === null, 'pump.mass', 'the mass of pump and motor, or a power that the table covers');

export const noTank = ({ facts }: Context) => when(facts.house.tank === null, 'house.tank', 'the volume of the tank');

export const noYield = ({ facts }: Context) => when(provenYield(facts) === null, 'well.yield', 'what the well yields');

/** Of a stretch of the bore between the water at rest and a depth. */
export const noBore = ({ facts, solution }: Context, to: number): Missing | null => {
  const { staticLevel } = facts.water;
  const unknown = staticLevel !== null && !boreKnown(solution.bore, staticLevel, to);
  if (!unknown) return null;
  if (facts.well.intake.kind === null)
    return { path: 'well.intake.kind', words: 'whether the hole is open or has a screen' };
  return facts.well.intake.diameter === null
    ? { path: 'well.intake.diameter', words: 'how wide the bore is below the water at rest' }
    : { path: 'well.casings', words: 'where the casing ends' };
};
