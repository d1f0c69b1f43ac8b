/** Bounds of what hangs, is lifted, turned, stretched and wired: the last figure that has a meaning, and the first that has none. */
import { hangLoad } from '../../../src/model/formulas/hangLoad.ts';
import { recommendedWeightLimit, tackleLift } from '../../../src/model/formulas/lifting.ts';
import { pipeMassPerLength, wallArea } from '../../../src/model/formulas/pipeBody.ts';
import {
  deratingFactor,
  isoDeratingFactor,
  pvcRating,
  ratingFromDimensionRatio,
} from '../../../src/model/formulas/pipeStrength.ts';
import { allowablePull, jointForce, wallTension } from '../../../src/model/formulas/pipeTension.ts';
import { pumpPointsFault } from '../../../src/model/formulas/pointsCurve.ts';
import { shaftPower } from '../../../src/model/formulas/pumpPower.ts';
import { peakOnSlackRope, ropeStiffness } from '../../../src/model/formulas/rope.ts';
import { kerstenFrozen } from '../../../src/model/formulas/soilHeat.ts';
import {
  startingDropBound,
  startingTorqueShare,
  startingVoltageShare,
} from '../../../src/model/formulas/startingDip.ts';
import { apparentModulus, pipeStretch, thermalChange, thermalExpansion } from '../../../src/model/formulas/stretch.ts';
import { drawdownFactor, startsPerSecond } from '../../../src/model/formulas/tank.ts';
import { confinedEquivalent, unconfinedDrawdown, wellFunction } from '../../../src/model/formulas/theis.ts';
import { motorTorque, pipeTwist } from '../../../src/model/formulas/twist.ts';
import { atmosphericPressure, waterDensity } from '../../../src/model/formulas/water.ts';
import { wellRelation } from '../../../src/model/formulas/wellRelation.ts';
import { wellVolume } from '../../../src/model/formulas/wellStorage.ts';
import { chooseGauge, dropOver, effectiveImpedance, longestRun, runForDrop } from '../../../src/model/formulas/wire.ts';
import { testBounds } from './bounds.ts';

const hanging = {
  length: 50,
  pipeMassPerLength: 0.5,
  pipeWallArea: 3e-4,
  pipeBoreArea: 5e-4,
  cableMassPerLength: 0.3,
  cableArea: 1e-4,
  pumpMass: 20,
  pumpBuoyancy: 0.2,
  waterDepth: 20,
  columnHeld: true,
};
testBounds('load on the suspension', hangLoad, hanging, {
  length: { takes: [0], refuses: [-1, Infinity] },
  pipeMassPerLength: { takes: [0], refuses: [-0.1] },
  pipeWallArea: { takes: [0], refuses: [-1e-4] },
  pipeBoreArea: { takes: [0], refuses: [-1e-4] },
  cableMassPerLength: { takes: [0], refuses: [-0.1] },
  cableArea: { takes: [0], refuses: [-1e-4] },
  pumpMass: { takes: [0], refuses: [-1] },
  pumpBuoyancy: { takes: [0, 1], refuses: [-0.1, 1.1] },
  waterDepth: { takes: [-5, 100, Infinity], refuses: [NaN] },
});

testBounds(
  'weight that one lifts',
  recommendedWeightLimit,
  { reach: 0.4, height: 0.75, travel: 0.5, turn: 0, frequency: 0.94, grip: 0.9 },
  {
    reach: { takes: [0.25, 0.64], refuses: [0.24, 0.65] },
    height: { takes: [0, 1.78], refuses: [-0.01, 1.79] },
    travel: { takes: [0.25, 1.78], refuses: [0.24, 1.79] },
    turn: { takes: [135], refuses: [-1, 136] },
    frequency: { takes: [1], refuses: [0, 1.01] },
    grip: { takes: [1], refuses: [0, 1.01] },
  },
);
testBounds(
  'tackle',
  tackleLift,
  { parts: 3, pull: 100, efficiency: 0.9 },
  {
    parts: { takes: [1], refuses: [0] },
    pull: { takes: [0], refuses: [-1] },
    efficiency: { takes: [1], refuses: [0, -0.1, 1.1] },
  },
);

testBounds(
  'wall of a pipe',
  wallArea,
  { outsideDiameter: 0.04, insideDiameter: 0.03 },
  {
    insideDiameter: { refuses: [0, -0.01, 0.04] },
    outsideDiameter: { refuses: [0.03, Infinity] },
  },
);
testBounds(
  'mass of a pipe',
  ({ gravity }) => pipeMassPerLength({ outsideDiameter: 0.04, insideDiameter: 0.03 }, gravity),
  { gravity: 0.95 },
  { gravity: { refuses: [0, -1] } },
);

testBounds(
  'rating by dimension ratio',
  ({ ratio }) => ratingFromDimensionRatio(5.5e6, ratio),
  { ratio: 11 },
  {
    ratio: { takes: [2.01], refuses: [2, 1, Infinity] },
  },
);
testBounds(
  'rating of PVC',
  pvcRating,
  { hydrostaticDesignStress: 1.38e7, outsideDiameter: 0.0334, wall: 0.0034 },
  {
    outsideDiameter: { takes: [0.0069], refuses: [0.0068, 0.001, Infinity] },
  },
);
testBounds(
  'warm pipe',
  ({ temperature }) => deratingFactor('PE', temperature),
  { temperature: 10 },
  {
    temperature: { refuses: [NaN, Infinity] },
  },
);
testBounds(
  'warm pipe of the ISO standards',
  ({ temperature }) => isoDeratingFactor(temperature),
  { temperature: 10 },
  {
    temperature: { refuses: [NaN, Infinity] },
  },
);

testBounds(
  'pull on the wall of the pipe',
  wallTension,
  { load: 100, pressure: 1e5, boreArea: 5e-4 },
  {
    load: { refuses: [NaN, Infinity] },
    pressure: { takes: [0], refuses: [-1] },
    boreArea: { takes: [0], refuses: [-1e-4] },
  },
);
testBounds(
  'pull on a joint',
  jointForce,
  { weightBelow: 100, pressureTop: 1e5, waterDepth: 20, boreArea: 5e-4 },
  {
    weightBelow: { takes: [0], refuses: [-1] },
    pressureTop: { takes: [0], refuses: [-1] },
    waterDepth: { takes: [0], refuses: [-1] },
    boreArea: { takes: [0], refuses: [-1e-4] },
  },
);
testBounds(
  'pull that polyethylene takes',
  allowablePull,
  { outsideDiameter: 0.03, dimensionRatio: 9, yieldStrength: 2e7, designFactor: 0.4, timeFactor: 0.95 },
  {
    outsideDiameter: { refuses: [0, -0.01] },
    dimensionRatio: { takes: [2.01], refuses: [2] },
    yieldStrength: { refuses: [0, -1] },
    designFactor: { refuses: [0, -0.1] },
    timeFactor: { refuses: [0, -0.1] },
  },
);

const pointsOrThrow = ({ flow, head }: { flow: number; head: number }) => {
  const fault = pumpPointsFault([
    { flow, head: 90 },
    { flow: 2e-3, head },
  ]);
  if (fault !== null) throw new RangeError(fault);
};
testBounds(
  'points of a pump',
  pointsOrThrow,
  { flow: 1e-3, head: 50 },
  {
    flow: { takes: [0], refuses: [-1e-3, NaN, Infinity, 2e-3] },
    head: { takes: [0], refuses: [-1, NaN, Infinity, 90, 91] },
  },
);
testBounds(
  'power at the shaft',
  ({ efficiency }) => shaftPower(1000, efficiency),
  { efficiency: 0.6 },
  {
    efficiency: { takes: [1], refuses: [0, 1.01] },
  },
);

const roped = { load: 200, slack: 0.1, ropeLength: 50, breakingStrength: 5000, elongationAtBreak: 0.2 };
testBounds('peak on a slack rope', peakOnSlackRope, roped, {
  load: { refuses: [0, -1] },
  slack: { takes: [0], refuses: [-0.1] },
});
testBounds('stiffness of a rope', ropeStiffness, roped, {
  breakingStrength: { refuses: [0, -1, Infinity] },
  ropeLength: { refuses: [0, -1, Infinity] },
  elongationAtBreak: { refuses: [0, -0.1, Infinity] },
});

testBounds(
  'frozen soil',
  kerstenFrozen,
  { grain: 'coarse' as const, dryDensity: 1600, water: 0.1 },
  {
    dryDensity: { refuses: [0, Infinity] },
    water: { takes: [0], refuses: [-0.1, Infinity] },
  },
);

testBounds(
  'drop while a motor starts',
  startingDropBound,
  { phase: 1 as const, lockedRotorCurrent: 40, length: 60, gauge: 10, voltage: 230 },
  {
    voltage: { refuses: [0] },
    lockedRotorCurrent: { takes: [0], refuses: [-1] },
    length: { takes: [0], refuses: [-1] },
  },
);
testBounds(
  'voltage while a motor starts',
  startingVoltageShare,
  { bound: 0.1, powerFactor: 0.5 },
  {
    bound: { takes: [0], refuses: [-0.1, Infinity] },
    powerFactor: { takes: [0, 1], refuses: [-0.1, 1.1] },
  },
);
testBounds(
  'torque while a motor starts',
  ({ share }) => startingTorqueShare(share),
  { share: 0.9 },
  {
    share: { takes: [0], refuses: [-0.1] },
  },
);

testBounds(
  'modulus under load',
  ({ material, time }) => apparentModulus(material, time),
  { material: 'PE4710', time: 3600 },
  {
    material: { takes: ['PE', 'PE 80', 'PE 100', 'PVC'], refuses: ['PE1', 'copper'] },
    time: { refuses: [0, Infinity, 1e40] },
  },
);
testBounds(
  'stretch of the pipe',
  pipeStretch,
  { ...hanging, modulus: 2e8 },
  {
    modulus: { refuses: [0] },
    pipeWallArea: { refuses: [0, -1e-4] },
  },
);
testBounds(
  'length by warmth',
  thermalExpansion,
  { coefficient: 1e-4, length: 50, change: -10 },
  {
    coefficient: { takes: [0], refuses: [-1e-4] },
    length: { takes: [0], refuses: [-1] },
    change: { refuses: [NaN, Infinity] },
  },
);
testBounds(
  'length of a material by warmth',
  thermalChange,
  { material: 'PE', length: 50, change: -10 },
  {
    material: { takes: ['PVC'] },
  },
);

testBounds(
  'water that a tank gives',
  drawdownFactor,
  { precharge: 2e5, cutIn: 2.1e5, cutOut: 3.5e5, atmosphere: 1e5 },
  {
    cutIn: { takes: [0], refuses: [-1, 3.5e5] },
    cutOut: { refuses: [Infinity] },
  },
);
testBounds(
  'starts of a pump',
  startsPerSecond,
  { demand: 5e-4, flow: 1e-3, tankDrawdown: 0.05 },
  {
    demand: { takes: [0, 1e-3], refuses: [-1e-4, 1.1e-3] },
  },
);

testBounds('well function', ({ u }) => wellFunction(u), { u: 0.1 }, { u: { refuses: [0, Infinity] } });
testBounds(
  'water table as a confined one',
  ({ drawdown }) => confinedEquivalent(drawdown, 10),
  { drawdown: 2 },
  {
    drawdown: { takes: [0, 10], refuses: [-0.1, 10.1] },
  },
);
testBounds(
  'and back',
  ({ drawdown }) => unconfinedDrawdown(drawdown, 10),
  { drawdown: 2 },
  {
    drawdown: { takes: [0, 5], refuses: [-0.1, 5.1] },
  },
);

testBounds(
  'torque of a motor',
  motorTorque,
  { power: 750, turnsPerMinute: 3450 },
  {
    power: { refuses: [0] },
    turnsPerMinute: { refuses: [0, -1] },
  },
);
testBounds(
  'twist of the pipe',
  pipeTwist,
  { torque: 2, length: 50, modulus: 7.6e8, poisson: 0.45, outsideDiameter: 0.04, insideDiameter: 0.03 },
  {
    torque: { takes: [0], refuses: [-1] },
    length: { takes: [0], refuses: [-1] },
    modulus: { refuses: [0, -1] },
    poisson: { takes: [0, 0.5], refuses: [-0.1, 0.51] },
    insideDiameter: { takes: [0], refuses: [-0.01, 0.04] },
    outsideDiameter: { refuses: [0.03] },
  },
);

testBounds(
  'air',
  ({ altitude }) => atmosphericPressure(altitude),
  { altitude: 100 },
  {
    altitude: { takes: [-5000, 11000], refuses: [-5001, 11001] },
  },
);
testBounds(
  'water',
  ({ temperature }) => waterDensity(temperature),
  { temperature: 10 },
  {
    temperature: { takes: [0, 100], refuses: [-0.1, 100.1] },
  },
);
testBounds(
  'relation of a test',
  ({ flow }) => wellRelation({ kind: 'test', flow, drawdown: 10, after: null }, null),
  { flow: 1e-3 },
  {
    flow: { refuses: [0, -1e-3] },
  },
);
testBounds(
  'water in the bore',
  ({ from, to }) => wellVolume([], from, to),
  { from: 10, to: 20 },
  {
    from: { refuses: [NaN, Infinity] },
    to: { refuses: [NaN, Infinity] },
  },
);

testBounds(
  'drop over a run',
  dropOver,
  { phase: 1 as const, current: 8, length: 60, resistance: 4e-3 },
  {
    current: { takes: [0], refuses: [-1, Infinity] },
    length: { takes: [0], refuses: [-1, Infinity] },
    resistance: { refuses: [0, -1e-3, Infinity] },
  },
);
testBounds(
  'impedance of wire',
  ({ factor }) => effectiveImpedance(10, factor),
  { factor: 0.8 },
  {
    factor: { takes: [0, 1], refuses: [-0.1, 1.1] },
  },
);
testBounds(
  'run for a drop',
  runForDrop,
  { phase: 1 as const, current: 8, drop: 10, resistance: 4e-3 },
  {
    current: { refuses: [0, -1] },
    drop: { refuses: [0, -1] },
    resistance: { refuses: [0, -1e-3] },
  },
);
testBounds(
  'longest run',
  longestRun,
  { phase: 1 as const, voltage: 230, current: 8, gauge: 10, share: 0.05 },
  {
    voltage: { refuses: [0, -230] },
    current: { refuses: [0, -8] },
    share: { refuses: [0, -0.05] },
  },
);
testBounds(
  'choice of a gauge',
  chooseGauge,
  { phase: 1 as const, voltage: 230, current: 8, length: 60 },
  {
    voltage: { refuses: [0, -230] },
  },
);
