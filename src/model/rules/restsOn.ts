/**
 * Choices of the build that come together: a rule's own `restsOn` is put together from them.
 */

/** What a test or an aquifer is told with: it moves the level while pumping. */
export const AS_TESTED = ['water.pumping.flow', 'water.pumping.after', 'water.pumping.radius'] as const;
/** The pump as its rating names it. */
export const PUMP = ['pump.curve.flow', 'pump.frequency'] as const;
/** What the pump gives as its switch calls, and what is asked of it then. */
export const ASKED_AT_CUT_IN = ['house.cutIn', 'house.demand', ...PUMP] as const;
export const DROP_PIPE = ['dropPipe.material', 'dropPipe.rating', 'dropPipe.size'] as const;

/**
 * Taken for granted without a word: the lengths of the pump's own body, that a house has a pressure tank with a switch,
 * that pipe is of the usual standard, and what adds a little friction. A plan that differs there says so.
 */
export const HARMLESS: readonly string[] = [
  'house.kind',
  'house.control',
  'pump.motorDiameter',
  'pump.intakeToDischarge',
  'pump.intakeToMotorBottom',
  'dropPipe.standard',
  'string.valveBetweenTopAndTank',
  'house.line.standard',
];
