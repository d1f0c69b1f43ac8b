/**
 * Survivors that somebody looked at and that no reader could tell from the program as it stands, with the reason. By
 * file; `line` is a piece of the line that was changed, `to` what stood there instead (any, where it is left out).
 */
const last = 'a step more or less than enough: the result stands before it';
const meeting = 'both branches give the same where they meet';
const noPlan = 'no figure of the tables lies on that edge';

export const HARMLESS = {
  'src/model/formulas/aquiferTest.ts': [
    { line: 'tries < 100 && damping', why: 'bounds of a search that ends by itself long before them' },
    { line: 'there.square < square', to: 'there.square <= square', why: 'an equal sum of squares is the same fit' },
    { line: 'there.square < square', to: 'true', why: 'the search comes back from a step too far, only later' },
    { line: 'else damping *= 10', why: 'the search comes back from a step too far, only later' },
    { line: 'Math.hypot(...step) < 1e-10', why: last },
    { line: 'byTransmissivity = -computed', why: 'a poorer direction: the search takes more steps to the same fit' },
    { line: 'const [dampedT, dampedS]', why: 'another damping: the search takes other steps to the same fit' },
    {
      line: 'u * wellFunction(u) < argument',
      to: 'u * wellFunction(u) <= argument / scale',
      why: 'one single drawdown, to the last bit',
    },
    { line: 'step < 200', to: 'step <= 200', why: last },
    { line: 'step++', to: 'step--', why: 'the loop ends when the root stands, not at its bound' },
    { line: 'const done =', why: 'steps after the root stands change its last bit at most' },
    { line: 'if (done) break', why: 'steps after the root stands change its last bit at most' },
    { line: 'const GALLON_PER_DAY_PER_FOOT', why: 'divides and multiplies: whatever it is, it cancels' },
  ],
  'src/model/formulas/boreStorage.ts': [
    { line: 'i < STEHFEST.length', to: 'i <= STEHFEST.length', why: 'the weight past the last is none' },
    { line: '(-1) ** (half + i)', to: 'half - i', why: 'the sum and the difference are odd or even together' },
  ],
  'src/model/formulas/berggren.ts': [
    { line: 'excess(high) > 0', to: 'excess(high) >= 0', why: 'one single fusion parameter, to the last bit' },
    { line: 'halving < 44', to: 'halving <= 44', why: last },
    { line: 'if (excess(middle) > 0)', to: 'excess(middle) >= 0', why: 'the root itself, to the last bit' },
  ],
  'src/model/formulas/besselK.ts': [
    { line: 'x <= 2 ? series', why: 'series and integral agree to 1e-13 on both sides' },
    { line: 'k <= 16', to: 'k < 16', why: last },
    { line: 'term < 1e-17', to: 'term <= 1e-17', why: last },
  ],
  'src/model/formulas/copper.ts': [
    { line: '!(ratio > 0 && ratio < Infinity)', to: 'ratio >= 0', why: 'one single temperature, to the last bit' },
  ],
  'src/model/formulas/corrosion.ts': [
    { line: 'return difference < 0', to: 'difference <= 0', why: 'equal potentials were told before' },
    { line: 'CLASS_A_LIMIT + PRINTED_PRECISION', why: noPlan },
    { line: 'CLASS_B_LIMIT + PRINTED_PRECISION', to: 'difference < CLASS_B_LIMIT + PRINTED_PRECISION', why: noPlan },
    { line: 'conductivity !== null && conductivity > AGGRESSIVE', to: 'true', why: 'null is not over any limit' },
    { line: '!(conductivity >= 0)) || (acidity', to: 'true', why: 'null counts as 0, which is allowed' },
    { line: "areas === 'apart' || first === second", to: 'false', why: 'equal metals are of class A, which is ok' },
  ],
  'src/model/formulas/friction.ts': [
    { line: 'reynolds < LAMINAR_TO', to: 'reynolds <= LAMINAR_TO', why: meeting },
    { line: 'reynolds < TURBULENT_FROM', to: 'reynolds <= TURBULENT_FROM', why: meeting },
    { line: 'step < 2', to: 'step <= 2', why: last },
  ],
};
