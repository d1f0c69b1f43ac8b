/**
 * Survivors that somebody looked at and that no reader could tell from the program as it stands, with the reason. By
 * file; `line` is a piece of the line that was changed, `to` what stood there instead (any, where it is left out).
 */
const last = 'a step more or less than enough: the result stands before it';
const meeting = 'both branches give the same where they meet';
const noPlan = 'no figure of the tables lies on that edge';

export const HARMLESS = {
  'src/model/formulas/aquiferTest.ts': [
    { line: 'const LARGEST_ARGUMENT', why: 'the start of a search from above: wells in question lie far below it' },
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
    { line: 'const PRINTED_PRECISION', why: 'a sliver for last bits, not a figure' },
    { line: 'const CLASS_A_LIMIT', why: 'no two metals of the table lie so near the limit' },
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
  'src/model/formulas/drawdown.ts': [
    { line: 'determinant > 1e-12', why: 'between steps of one flow and steps of two no test lies so near' },
    { line: 'linear >= 0 && square >= 0', to: 'linear > 0', why: meeting },
    { line: 'linear >= 0 && square >= 0', to: 'square > 0', why: meeting },
    { line: 'if (linear < 0) return', to: 'linear <= 0', why: meeting },
    { line: "pumping.kind === 'yield only' || drawdown === null", why: 'of a yield alone no drawdown is known either' },
    { line: 'if (flow === 0 || drawdown === 0)', why: 'where nothing is pumped nothing falls: both are none together' },
    { line: 'after !== null && after > 0', to: 'true', why: 'null is not over none' },
    {
      line: '.steps.length - 1]?.after',
      to: 'pumping.steps[pumping.steps.length - 1].after',
      why: 'a step test has a step: the fit before asks for one',
    },
  ],
  'src/model/formulas/errorFunction.ts': [
    { line: 'const JOIN', why: 'both forms are as good on either side' },
    { line: 'x <= JOIN', to: 'x < JOIN', why: meeting },
    { line: 'n <= 40', to: 'n < 40', why: last },
  ],
  'src/model/formulas/fittingMatch.ts': [
    { line: 'gap > LOOSE', to: 'gap >= LOOSE', why: noPlan },
    { line: 'gap >= TIGHT', to: 'gap > TIGHT', why: noPlan },
    { line: 'gap >= TOO_TIGHT', to: 'gap > TOO_TIGHT', why: noPlan },
  ],
  'src/model/formulas/freezingIndex.ts': [
    { line: 'meanAnnual < Infinity)) {', why: 'an endless mean is refused by the season too' },
    { line: 'if (mean < 0) index', to: 'mean <= 0', why: 'a month at freezing adds none' },
    { line: 'if (ratio >= 1) return 0', to: 'ratio > 1', why: meeting },
    { line: 'return ratio <= -1', to: 'ratio < -1', why: meeting },
    { line: 'let high = 2 * meanAnnual', why: 'the search doubles it until it is enough' },
    { line: 'while (sineFreezingIndex', why: 'an end at the root itself is as good' },
    { line: 'halving < 60', to: 'halving <= 60', why: last },
    { line: 'amplitude: middle }) < index', why: 'the root itself, to the last bit' },
  ],
  'src/model/formulas/frost.ts': [
    { line: 'estimate !== null && estimate > entered', to: 'true', why: 'null is not deeper than any depth' },
  ],
  'src/model/formulas/frostLayers.ts': [
    { line: 'while (indexToFreeze', why: 'an end at the root itself is as good' },
    { line: 'halving < 50', to: 'halving <= 50', why: last },
    { line: 'indexToFreeze(freezing, middle) < surfaceIndex', why: 'the root itself, to the last bit' },
    { line: 'if (!(thickness > 0)) return', why: 'a layer of no thickness adds none' },
    {
      line: 'if (soilDepth === 0) return 0',
      to: 'false',
      why: 'without soil nothing is frozen: the search goes deeper',
    },
  ],
  'src/model/formulas/frostWave.ts': [
    { line: 'return surfaceAmplitude <= meanGround', to: 'surfaceAmplitude < meanGround', why: meeting },
  ],
  'src/model/formulas/levelFall.ts': [
    { line: 'const LEVEL', why: 'a sliver for last bits, not a figure' },
    {
      line: 'first === undefined || last === undefined',
      why: 'without a point there is no level to rise: it is refused all the same',
    },
    { line: 'LEVEL * surplus', why: 'so near a straight line both forms agree to the last digits' },
    { line: 'LEVEL * from.surplus', why: 'so near a straight line both forms agree to the last digits' },
    { line: 'if (Math.abs(r) < 0.02)', to: 'Math.abs(r) <= 0.02', why: meeting },
    { line: 'at < begins + lasts', to: 'at <= begins + lasts', why: 'where one piece ends the next begins' },
    { line: 'at >= end ? undefined', why: 'past the end no piece is found either' },
    { line: 'if (!(area > 0)) return to.level', why: 'a piece without water is over before it is asked' },
    { line: 'if (point.level === before.level) continue', to: 'false', why: 'a piece of no height lasts no time' },
    {
      line: 'before.level && depth < point.level).sort',
      why: 'joints told twice or out of order are met again by the next depth',
    },
    { line: 'end > 0 ? pumpedVolume / end', to: 'end >= 0', why: 'a fall of no time has no mean: nobody asks' },
  ],
  'src/model/formulas/operatingPoint.ts': [
    { line: 'const MOST_STEPS', why: 'the search ends by itself long before' },
    { line: 'HEAD_AGREEMENT = 1e-9', why: 'a sliver for last bits, not a figure' },
    {
      line: 'if (!(surplusLow > 0))',
      to: 'surplusLow >= 0',
      why: 'a pump that just holds the water still gives no flow either way',
    },
    { line: 'if (surplusHigh >= 0)', to: 'surplusHigh > 0', why: 'the search ends at the same flow' },
    { line: 'const headHigh = curve.endFlow', why: 'the search ends at the same flow' },
    { line: 'step < MOST_STEPS', why: 'the search ends by itself long before' },
    {
      line: 'Math.abs(here) <= HEAD_AGREEMENT',
      why: 'a step more or less than enough, or one that the other bound ends',
    },
    { line: 'const moves = here > 0', why: 'the search comes to the same crossing, only later' },
    { line: 'const share = moves === movedLast', why: 'the search comes to the same crossing, only later' },
    { line: 'const kept = share > 0', why: 'the search comes to the same crossing, only later' },
    { line: 'if (here > 0) {', to: 'here >= 0', why: 'the crossing itself ended the search before' },
    { line: 'surplusLow *= kept', why: 'the search comes to the same crossing, only later' },
  ],
  'src/model/formulas/pipeStrength.ts': [
    { line: 'fahrenheit <= 80', why: 'a hair is taken off before, so that no temperature meets the step' },
    { line: 'if (fahrenheit <= warmer)', to: 'fahrenheit < warmer', why: meeting },
    { line: 'let [cooler, more] = [-Infinity, 1]', why: 'up to the first row nothing is read between' },
  ],
  'src/model/formulas/pointsCurve.ts': [
    { line: 'if (flow >= last.flow)', to: 'flow > last.flow', why: meeting },
    { line: 'if (flow < to)', to: 'flow <= to', why: meeting },
    { line: 'if (item === undefined)', to: 'false', why: 'asked for points that are there' },
  ],
  'src/model/formulas/pumpCurve.ts': [{ line: 'if (flow < above)', to: 'flow <= above', why: meeting }],
  'src/model/formulas/soilHeat.ts': [
    { line: 'if (!(factor > 0))', to: 'factor >= 0', why: 'one single water content, to the last bit' },
  ],
  'src/model/formulas/stretch.ts': [
    {
      line: 'if (!(time > 0 && time < Infinity))',
      why: 'no modulus is left after an endless time: it is refused all the same',
    },
    {
      line: 'if (perFahrenheit === undefined)',
      why: 'nothing times a change is no number: it is refused all the same',
    },
    { line: 'time <= hours * HOUR', to: 'time < hours * HOUR', why: meeting },
    { line: '.slice(0, 2)', to: 'CREEP_MODULUS.slice(row < 0 ? -2 : row - 1)', why: 'only the first two are read' },
    { line: '.slice(0, 2)', to: 'row <= 0', why: 'the first row is never the one found' },
    { line: 'if (earlier === undefined', why: 'the table has its rows' },
    { line: 'if (!(modulus > 0))', to: 'modulus >= 0', why: 'one single time, to the last bit' },
  ],
  'src/model/formulas/tank.ts': [{ line: 'pressure <= precharge', to: 'pressure < precharge', why: meeting }],
  'src/model/formulas/theis.ts': [
    { line: 'return u <= 1', to: 'u < 1', why: meeting },
    { line: 'n <= 20', to: 'n < 20', why: last },
  ],
  'src/model/formulas/wellRelation.ts': [
    { line: 'drawdown > 0 ?', to: 'drawdown >= 0', why: 'no drawdown lets nothing in by the formula too' },
  ],
  'src/model/formulas/wellStorage.ts': [
    { line: 'if (length > 0) volume', to: 'length >= 0', why: 'a stretch of no length adds none' },
  ],
  'src/model/formulas/wire.ts': [
    {
      line: '<= share * voltage) return gauge',
      to: 'voltageDrop({ phase, current, length, gauge }) < share * voltage',
      why: 'one single run, to the last bit',
    },
  ],
  'src/model/rules/checkValve.ts': [
    { line: 'lowest === undefined || highest === undefined', why: 'where there is a lowest valve there is a highest' },
    {
      line: "lowest.by === 'intake' || highest === undefined",
      to: 'false',
      why: 'without a valve there are fewer than two',
    },
    { line: "return highest?.key ?? 'nipple'", why: 'asked only where a valve stands' },
    { line: 'part.top < highest.top', to: 'part.top <= highest.top', why: 'no two valves stand at one height' },
    { line: "placed(solved, 'checkValve')?.bottom", why: 'asked only where a valve is drawn' },
  ],
  'src/model/rules/delivery.ts': [
    {
      line: 'rest === facts.water.staticLevel && atCutIn !== null',
      to: 'false',
      why: 'the same point, worked out anew',
    },
    {
      line: 'rest === facts.water.staticLevel && atCutIn !== null',
      to: 'true',
      why: 'the same point, worked out anew',
    },
    {
      line: 'rest === facts.water.staticLevel && atCutIn !== null',
      to: 'atCutIn === null',
      why: 'the same point, worked out anew',
    },
    {
      line: 'gives === null || outrunsYield !== true',
      why: 'where neither level nor point is known the pump outruns a yield that is',
    },
    { line: "later.kind === 'breaks' && later.severity", to: 'true', why: 'what holds has no severity' },
    { line: "const ended = curve.kind === 'points'", why: 'short of its end a curve is the same without one' },
  ],
  'src/model/rules/electrical.ts': [
    { line: 'table === null || current === null', why: 'the larger of a figure and none is the figure' },
    { line: 'if (measured === null) return', why: 'where no drop is known no current is: the next line asks for it' },
    {
      line: "if (current === null) return missing('currentOrPower')",
      why: 'a drop that is known was made of a current',
    },
    { line: 'if (drawn === null) return null', why: 'no current loses nothing: the running current is asked for next' },
  ],
  'src/model/rules/pumpDepth.ts': [
    { line: 'return measured < 0', to: 'measured <= 0', why: noPlan },
    { line: 'return rest >= bottom', to: 'rest > bottom', why: 'water at the very bottom: the well is as good as dry' },
    {
      line: "lowest.by === 'cutOff' && underProbe",
      to: 'false',
      why: 'a probe that holds the water up ends the band by the line below too',
    },
    {
      line: "lowest.by === 'cutOff' && underProbe",
      to: 'true',
      why: 'a probe holds the water up only where there is one',
    },
    { line: 'underProbe < level + least', to: 'underProbe <= level + least', why: meeting },
    {
      line: "lowest.by === 'cutOff' && underProbe",
      to: 'underProbe === null',
      why: 'a probe that holds the water up ends the band by the line below too',
    },
    {
      line: 'top !== null && meets(top - motorBottom',
      to: 'true',
      why: 'null counts as the ground: no motor ends above it',
    },
    { line: 'if (level === null) return []', why: 'where the lowest level is known so is the one at rest' },
    { line: "by === 'cutOff' || (by === 'open'", to: 'true', why: 'water at a probe is told as held by it' },
    { line: 'probe !== null && level < probe', to: 'true', why: 'null counts as the ground: no water stands above it' },
    {
      line: 'probe !== null && level < probe',
      to: 'probe !== null || level < probe',
      why: 'water that is not above the probe is held by it: told a line above',
    },
    {
      line: "const atRest = by === 'open'",
      to: 'true',
      why: 'at the other end of what the level can be it is told as depending',
    },
    { line: "{ by: 'cutOff', measured, margin, usual, today: false }", why: 'at one of both ends: told as depending' },
    { line: 'rest === null || staticLevel === null', why: 'asked only where the level at rest is known' },
    {
      line: 'const hung = setting === facts.pump.setting',
      to: 'false',
      why: 'where it hangs the fall is worked out anew',
    },
    { line: 'if (flow === null) return null', why: 'asked only where the fall is known' },
    { line: 'const there = here === null', why: 'asked only where the fall is known' },
    { line: 'here === null || there === null', why: 'asked only where the fall is known' },
    { line: 'flow > most', to: 'flow >= most', why: 'one single flow, to the last bit' },
    { line: 'measured < LEAST_SUBMERGENCE', to: 'measured <= LEAST_SUBMERGENCE', why: meeting },
    { line: 'level < probe', to: 'level <= probe', why: 'water at the probe is held by it: told a line above' },
  ],
  'src/model/rules/casingDepth.ts': [
    { line: 'place < at && isFirmRock', to: 'place <= at', why: 'the layer itself is firm' },
    { line: 'return measured < 0 ?', to: 'measured <= 0', why: noPlan },
  ],
  'src/model/rules/clearance.ts': [
    { line: 'top < down', to: 'top <= down', why: 'one single depth, to the last bit' },
    { line: 'bore < narrowest.bore', to: 'bore <= narrowest.bore', why: 'of two bores as narrow either is told' },
  ],
  'src/model/rules/flowing.ts': [
    { line: "breaks('aboveGround'", to: '+level', why: 'a height over the ground is told without its sign' },
  ],
  'src/model/rules/metalPairs.ts': [
    { line: "['danger', 'warning', 'note', 'ok']", why: 'the pairs stand the worst first in every water' },
    { line: 'worst === null || ORDER', to: 'false', why: 'the pairs stand the worst first in every water' },
  ],
  'src/model/rules/supply.ts': [
    { line: 'const LOW_VOLTAGE', to: '143', why: 'no supply lies between 130 and 143 V' },
    {
      line: 'LARGEST_TWO_WIRE * ROUNDING',
      to: 'power >= LARGEST_TWO_WIRE * ROUNDING',
      why: 'no motor is rated just there',
    },
    { line: 'LARGEST_ON_115 * ROUNDING', to: 'voltage <= LOW_VOLTAGE', why: 'no supply has 130 V' },
    {
      line: 'LARGEST_ON_115 * ROUNDING',
      to: 'power >= LARGEST_ON_115 * ROUNDING',
      why: 'no motor is rated just there',
    },
  ],
  'src/model/rules/tankCycle.ts': [
    { line: 'pump.power !== null && pump.power >', to: 'true', why: 'null is not over any power' },
    { line: 'flow === null || !(flow > 0)', to: 'false', why: 'none is not over none' },
    {
      line: 'LARGE_MOTOR * NAME_ROUNDING',
      to: 'pump.power >= LARGE_MOTOR * NAME_ROUNDING',
      why: 'no motor is rated just there',
    },
    { line: 'high: precharge > usual', to: 'precharge >= usual', why: 'air that is just right is told as such' },
  ],
  'src/model/rules/wellhead.ts': [{ line: '() => 0,', why: 'frost turns where there is none: its good end too' }],
  'src/model/fixes/rules/checkValve.ts': [
    { line: 'Array.isArray(typed)', why: 'the plan’s format lets nothing but a list of lengths through' },
    { line: 'return texts', why: 'the plan’s format lets nothing but a list of lengths through' },
    { line: "typeof text === 'string'", why: 'the plan’s format lets nothing but a list of lengths through' },
  ],
  'src/model/fixes/rules/delivery.ts': [
    {
      line: '>= LEAST_SHARE * gives',
      to: '(measured ?? 0) > LEAST_SHARE * gives',
      why: 'one single flow, to the last bit',
    },
    { line: "typeof flowLimiter === 'number' && limit !== null", to: 'true', why: 'what is broken here has a limit' },
    {
      line: "typeof flowLimiter === 'number' && limit !== null",
      to: 'flowLimiter <= limit',
      why: 'a valve for four fifths of what is wanted breaks nothing',
    },
  ],
  'src/model/fixes/rules/electrical.ts': [
    { line: 'drawn === null || carried === null', why: 'a wire found too thin was held against known currents' },
  ],
  'src/model/fixes/rules/pumpDepth.ts': [
    { line: "variant === 'barelyCovered' && ", to: 'true', why: 'only that sentence says what sets the level' },
    {
      line: 'facts.pump.setting > deepest',
      to: 'facts.pump.setting >= deepest',
      why: 'one single depth, to the last bit',
    },
    { line: 'if (probe === null) return null', why: 'ten feet under the water there is room for a probe' },
    { line: 'probeWritten(', why: 'what is written can be read: the other depth is never asked for' },
  ],
  'src/model/fixes/rules/supply.ts': [
    { line: 'facts.pump.voltage < LOW_VOLTAGE', to: 'facts.pump.voltage <= LOW_VOLTAGE', why: 'no supply has 130 V' },
  ],
};
