/** What a test or an aquifer is told with: it moves the level while pumping. */
const AS_TESTED = ['water.pumping.flow', 'water.pumping.after', 'water.pumping.radius'] as const;
/** The pump as its rating names it. */
const PUMP = ['pump.curve.flow', 'pump.frequency'] as const;
/** What the pump gives as its switch calls, and what is asked of it then. */
const AT_CUT_IN = ['house.cutIn', 'house.demand', ...PUMP] as const;
const DROP_PIPE = ['dropPipe.material', 'dropPipe.rating', 'dropPipe.size'] as const;

/**
 * Choices of the build that a rule's verdict may rest on, by rule: where nobody made them, the verdict says so.
 *
 * A test changes every choice of a plan in turn and fails for a verdict that moves with one that is not named here.
 */
export const RESTS_ON: Readonly<Record<string, readonly string[]>> = {
  'PR-01': ['pump.setting'],
  'PR-02': [...AT_CUT_IN, 'pump.setting', 'top.depth', ...AS_TESTED],
  'PR-03': ['pump.setting'],
  'PR-04': [...AT_CUT_IN, 'pump.setting', ...AS_TESTED],
  'PR-05': ['pump.setting'],
  'PR-06': ['house.demand', 'pump.setting', 'well.casing.schedule'],
  'PR-07': ['pump.setting', ...AT_CUT_IN, ...AS_TESTED],
  'PR-08': [...AT_CUT_IN, 'pump.setting', ...AS_TESTED],
  'PR-09': [
    'house.cutIn',
    'house.demand',
    'pump.checkValveInside',
    ...PUMP,
    'pump.setting',
    'string.checkValves',
    ...AS_TESTED,
    'site.altitude',
  ],
  'PR-10': ['string.valveBetweenTopAndTank'],
  'PR-11': ['string.arrow', 'string.checkValves'],
  'PR-12': ['dropPipe.material', 'string.splices', 'string.torqueArrestor'],
  'PR-13': ['string.ties'],
  'PR-14': ['pump.setting', 'top.depth'],
  'PR-15': ['string.splices', 'string.torqueArrestor'],
  'PR-16': [...DROP_PIPE, 'pump.mass', 'pump.setting', 'pump.wires', 'rope.tied', 'top.depth', 'top.kind', 'wire.size'],
  'PR-17': ['pump.diameter', 'pump.motorDiameter', 'pump.setting', 'pump.shroudWall', 'well.casing.schedule'],
  'PR-18': [...DROP_PIPE, ...PUMP, 'string.clampsPerJoint', 'string.fittings'],
  'PR-19': ['site.frostMargin', 'top.depth', 'top.kind'],
  'PR-20': ['top.depth', 'top.kind'],
  'PR-21': ['pump.diameter', 'pump.shroudWall', 'top.depth', 'top.kind', 'well.casing.schedule'],
  'PR-23': ['site.casingHeightRequired', 'well.casing.height'],
  'PR-24': ['well.casing.height'],
  'PR-36': ['house.demand', ...AS_TESTED],
  'PR-37': ['house.cutIn', 'house.demand', 'pump.curve.flow'],
  'PR-43': ['top.heated', 'top.housed', 'top.kind'],
  'PR-44': ['house.tankRating', ...PUMP],
  'PR-46': ['house.cutIn', 'house.cutOut', 'house.demand', ...PUMP, 'pump.setting', ...AS_TESTED],
  'PR-47': [...DROP_PIPE, 'house.demand'],
  'PR-48': ['pump.setting', ...DROP_PIPE, 'house.cutIn', 'house.cutOut', 'house.demand', ...PUMP, ...AS_TESTED],
  'PR-49': ['pump.current', 'pump.phase', 'pump.setting', 'pump.voltage', 'wire.run', 'wire.size'],
  'PR-50': ['pump.current', 'pump.phase', 'pump.voltage', 'wire.size'],
  'PR-51': [...DROP_PIPE, 'pump.mass', 'pump.setting', 'pump.wires', 'top.depth', 'top.kind', 'wire.size'],
  'PR-52': ['dropPipe.standard', 'string.fittings'],
  'PR-53': [
    'house.cutOut',
    ...AT_CUT_IN,
    'pump.setting',
    'string.checkValves',
    'top.depth',
    ...AS_TESTED,
    'site.altitude',
  ],
  'PR-54': [...DROP_PIPE, ...AT_CUT_IN, 'pump.setting', ...AS_TESTED],
  'PR-55': ['water.pumping.flow', ...AT_CUT_IN, 'house.cutOut', 'house.precharge', 'pump.setting'],
  'PR-56': ['house.cutIn', 'house.cutOut', 'house.precharge', 'pump.curve.flow', 'site.altitude'],
  'PR-57': ['house.cutIn', 'house.cutOut', 'house.precharge'],
  'PR-58': ['pump.setting', 'house.cutIn', ...PUMP, ...AS_TESTED],
  'PR-59': ['pump.phase', 'pump.voltage', 'pump.wires'],
  'PR-60': ['pump.setting'],
  'PR-61': ['house.cutOut', ...PUMP, 'top.depth'],
  'PR-62': ['pump.setting', 'top.depth'],
  'PR-64': ['top.depth', 'top.kind'],
};

/**
 * Of a verdict that holds, by variant, where it rests on less than its rule may: what was measured is not made doubtful
 * by what the pump does with it.
 */
export const HOLDS_ON: Readonly<Record<string, Readonly<Record<string, readonly string[] | undefined>> | undefined>> = {
  'PR-53': { measured: ['water.pumping.flow'], fromAquifer: [] },
};

/**
 * What would only help where it were otherwise, so that what holds does not rest on it: on 50 Hz a pump pushes and draws
 * less, and thinner air presses less into a tank.
 */
export const ONLY_HELPS: Readonly<Record<string, readonly string[] | undefined>> = {
  'PR-02': ['pump.frequency'],
  'PR-04': ['pump.frequency'],
  'PR-07': ['pump.frequency'],
  'PR-08': ['pump.frequency'],
  'PR-18': ['pump.frequency'],
  'PR-44': ['pump.frequency'],
  'PR-48': ['pump.frequency'],
  'PR-56': ['site.altitude'],
  'PR-58': ['pump.frequency'],
  'PR-61': ['pump.frequency'],
};

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

/**
 * What a rule holds against each other, in groups: where nobody said any of a group, the rule has nothing to say. A top
 * that nobody chose is a group of its own.
 */
export const COMPARES: Readonly<Record<string, readonly (readonly string[])[]>> = {
  'PR-12': [['string.torqueArrestor', 'string.splices']],
  'PR-19': [['top.kind']],
  'PR-20': [['top.kind']],
  'PR-21': [['top.kind']],
  'PR-23': [['well.casing.height', 'site.casingHeightRequired']],
  'PR-43': [['top.kind']],
  'PR-64': [['top.kind']],
};
