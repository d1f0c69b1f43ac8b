/** How each check of hydraulics.json is computed by the model. */
import { shaftPower, stagesFor, waterPower, atSpeed } from '../../../src/model/formulas/pumpPower.ts';
import { fixtureUnits, peakDemand } from '../../../src/model/formulas/demand.ts';
import {
  darcyFactor,
  darcyHead,
  fittingHead,
  haaland,
  hazenWilliamsHead,
  insertFittingLoss,
  reynoldsNumber,
  swameeJain,
  velocityIn,
} from '../../../src/model/formulas/friction.ts';
import { flowForMotorVelocity } from '../../../src/model/formulas/flowPast.ts';
import { hangLoad } from '../../../src/model/formulas/hangLoad.ts';
import {
  deratingFactor,
  pvcRating,
  ratingFromDimensionRatio,
  ratingFromSidr,
  WORKING_SHARE_WITHOUT_SURGE,
} from '../../../src/model/formulas/pipeStrength.ts';
import { genericCurve, operatingPoint, type PumpCurve } from '../../../src/model/formulas/pumpCurve.ts';
import { columnHeldByAir, netPositiveSuctionHead, vortexSubmergence } from '../../../src/model/formulas/suction.ts';
import { drawdownFactor, mostStartsPerSecond, smallestTank, tankDrawdown } from '../../../src/model/formulas/tank.ts';
import {
  atmosphericPressure,
  dynamicViscosity,
  headAsPressure,
  kinematicViscosity,
  pressureAsHead,
  vapourPressure,
  waterDensity,
} from '../../../src/model/formulas/water.ts';
import { surgePressure, waveSpeed } from '../../../src/model/formulas/waterHammer.ts';
import { boreVolumePerMetre, timeToBreakSuction, waterAvailable } from '../../../src/model/formulas/wellStorage.ts';
import { findPipe } from '../../../src/model/tables/pipes.ts';
import {
  feet,
  gallons,
  gpm,
  horsepower,
  inches,
  poundsMass,
  psi,
  toFeet,
  toGallons,
  toGpm,
  toHorsepower,
  toInches,
  toPoundsForce,
  toPsi,
} from '../../../src/model/units.ts';
import type { Computations } from '../checkValues.ts';

const celsius = (fahrenheit: number) => (fahrenheit - 32) / 1.8;
const litres = (n: number) => n / 1000;
/** Water of 65 degF, which stands 2.31 ft high per psi; and that of the examples in 62.4 lb/ft³. */
const usualWater = waterDensity(celsius(65));
const poundWater = (62.4 * poundsMass(1)) / feet(1) ** 3;
const wellWater = kinematicViscosity(10);

/** Loss in feet of a pipe in feet, inches and gpm, with its fittings where K is given. */
function loss(flow: number, length: number, bore: number, C: number, K = 0): number {
  const pipe = { flow: gpm(flow), length: feet(length), insideDiameter: inches(bore), coefficient: C };
  return toFeet(hazenWilliamsHead(pipe) + fittingHead(K, velocityIn(pipe.flow, pipe.insideDiameter)));
}

function velocity(flow: number, bore: number): number {
  return toFeet(velocityIn(gpm(flow), inches(bore)));
}

function networkPipe(flow: number, length: number, bore: number, C: number, K: number, reservoir: number) {
  const lost = loss(flow, length, bore, C, K);
  return { pipe_head_loss: lost, velocity: velocity(flow, bore), junction_head: reservoir - lost };
}

/** Each check computed with its inputs, in the units of the file. */
export const hydraulics: Computations = {
  'CV-H01': () => ({ density: waterDensity(10), kinematic_viscosity: wellWater, vapour_pressure: vapourPressure(10) }),
  'CV-H02': () => ({ density: waterDensity(25), dynamic_viscosity: dynamicViscosity(25) }),
  'CV-H03': () => ({
    ft_per_psi_60F: toFeet(pressureAsHead(psi(1), waterDensity(celsius(60)))),
    ft_per_psi_68F: toFeet(pressureAsHead(psi(1), waterDensity(celsius(68)))),
  }),
  'CV-H04': () => ({
    velocity: velocity(10, 1.049),
    reynolds: reynoldsNumber({ flow: gpm(10), insideDiameter: inches(1.049), kinematicViscosity: wellWater }),
  }),
  'CV-H05': () => ({ head_loss: loss(10, 100, 1.049, 150) }),
  'CV-H06': () => ({ head_loss: loss(20, 100, 1.38, 150) }),
  'CV-H07': () => ({ head_loss: loss(30, 100, 1.61, 150) }),
  'CV-H08': () => ({ head_loss: loss(50, 100, 2.067, 150) }),
  'CV-H09': () => ({
    head_loss: hazenWilliamsHead({ flow: litres(0.6), length: 100, insideDiameter: 0.032, coefficient: 150 }),
  }),
  'CV-H10': () => ({ head_loss_C120: loss(10, 100, 1.049, 120), head_loss_C100: loss(10, 100, 1.049, 100) }),
  'CV-H11': () => ({
    f_colebrook: darcyFactor(1e5, 1e-4),
    f_swamee_jain: swameeJain(1e5, 1e-4),
    f_haaland: haaland(1e5, 1e-4),
  }),
  'CV-H12': () => ({
    head_loss: toFeet(
      darcyHead({
        flow: gpm(10),
        length: feet(100),
        insideDiameter: inches(1.049),
        roughness: 1.5e-6,
        kinematicViscosity: wellWater,
      }),
    ),
  }),
  'CV-H13': () => {
    const pipe = {
      flow: gpm(0.4),
      length: feet(100),
      insideDiameter: inches(1.38),
      roughness: 1.5e-6,
      kinematicViscosity: wellWater,
    };
    const reynolds = reynoldsNumber(pipe);
    return { reynolds, friction_factor: darcyFactor(reynolds, 0), head_loss: toFeet(darcyHead(pipe)) };
  },
  'CV-H14': () => ({ head_loss: toFeet(fittingHead(2.5, feet(5))) }),
  'CV-H15': () => ({
    K_on_pipe_velocity: insertFittingLoss(0.8),
    head_loss: toFeet(fittingHead(insertFittingLoss(0.8), feet(5))),
  }),
  'CV-H16': () => ({
    SIDR7_PE3608: toPsi(ratingFromSidr(psi(800), 7)),
    SIDR7_PE4710: toPsi(ratingFromSidr(psi(1000), 7)),
    SIDR9_PE3608: toPsi(ratingFromSidr(psi(800), 9)),
    SIDR9_PE4710: toPsi(ratingFromSidr(psi(1000), 9)),
    DR11_PE3608: toPsi(ratingFromDimensionRatio(psi(800), 11)),
    DR11_PE4710: toPsi(ratingFromDimensionRatio(psi(1000), 11)),
    DR9_PE4710: toPsi(ratingFromDimensionRatio(psi(1000), 9)),
  }),
  'CV-H17': () => {
    const rating = (od: number, wall: number) =>
      toPsi(pvcRating({ hydrostaticDesignStress: psi(2000), outsideDiameter: inches(od), wall: inches(wall) }));
    return { sch40_1in: rating(1.315, 0.133), sch80_1_1_4in: rating(1.66, 0.191) };
  },
  'CV-H18': () => ({
    rating_at_95F: 200 * (deratingFactor('PE', celsius(95)) ?? NaN),
    working_limit_without_surge_analysis_73F:
      200 * (deratingFactor('PE', celsius(73)) ?? NaN) * WORKING_SHARE_WITHOUT_SURGE,
  }),
  'CV-H19': () => ({ max_pressure_difference: toPsi(headAsPressure(feet(462), usualWater)) }),
  'CV-H20': () => {
    const friction = loss(4, 251.5, 0.824, 131);
    return { loss_per_100_ft: loss(4, 100, 0.824, 131), friction, total_dynamic_head: 160 + friction };
  },
  'CV-H21': () => {
    const head = feet(120 + 10.5) + pressureAsHead(psi(40), poundWater);
    const power = waterPower({ flow: gpm(745 / 60), head, density: poundWater });
    return { total_head: toFeet(head), water_power: toHorsepower(power), efficiency: (100 * power) / horsepower(1) };
  },
  'CV-H22': () => {
    const friction = loss(10, 140, 1.049, 150) + loss(10, 120, 1.38, 150);
    const fittings = loss(10, 0, 1.049, 150, 7.4) + loss(10, 0, 1.38, 150, 1.8);
    const pressure = toFeet(pressureAsHead(psi(60), usualWater));
    return {
      pressure_head: pressure,
      friction,
      fittings,
      total_dynamic_head: 80 + 20 + 10 + pressure + friction + fittings,
    };
  },
  'CV-H23': () => {
    const power = waterPower({ flow: gpm(10), head: feet(270), density: poundWater });
    const shaft = shaftPower(power, 0.55);
    return { water_hp: toHorsepower(power), brake_hp: toHorsepower(shaft), brake_kW: shaft / 1000 };
  },
  'CV-H24': () => {
    const slower = atSpeed({ flow: gpm(10), head: feet(250), power: horsepower(1) }, 0.9);
    return { flow: toGpm(slower.flow), head: toFeet(slower.head), power: toHorsepower(slower.power) };
  },
  'CV-H25': () => ({ stages: stagesFor(feet(270), feet(22)), head_at_10gpm: 22 * stagesFor(feet(270), feet(22)) }),
  'CV-H26': () => {
    const curve = genericCurve({ designFlow: gpm(10), designHead: feet(250) });
    return {
      shutoff_head: toFeet(curve.shutOffHead),
      head_5gpm: toFeet(curve.headAt(gpm(5))),
      head_15gpm: toFeet(curve.headAt(gpm(15))),
      head_20gpm: toFeet(curve.headAt(gpm(20))),
    };
  },
  'CV-H27': () => {
    const litrePerMinute = litres(1) / 60;
    const curve: PumpCurve = {
      shutOffHead: 7.46,
      runOutFlow: Math.sqrt(7.46 / 0.0453) * litrePerMinute,
      headAt: (flow) => 7.46 - 0.0453 * (flow / litrePerMinute) ** 2,
    };
    const point = operatingPoint(curve, (flow) => 3.52 + 0.0261 * (flow / litrePerMinute) ** 2);
    return { flow: point.flow / litrePerMinute, head: point.head };
  },
  'CV-H28': () => networkPipe(10, 200, 1.049, 150, 0, 200),
  'CV-H29': () => {
    const pipe = { flow: gpm(10), length: feet(200), insideDiameter: inches(1.049), roughness: feet(5e-6) };
    const lost = toFeet(darcyHead({ ...pipe, kinematicViscosity: 1.1e-5 * feet(1) ** 2 }));
    return { pipe_head_loss: lost, velocity: velocity(10, 1.049), junction_head: 200 - lost };
  },
  'CV-H30': () => networkPipe(20, 150, 1.38, 150, 6.5, 150),
  'CV-H31': () => {
    const curve = genericCurve({ designFlow: gpm(10), designHead: feet(250) });
    const { flow, head } = operatingPoint(curve, (q) => feet(120 + 115.5 + loss(toGpm(q), 180, 1.049, 150, 5)));
    return {
      operating_flow: toGpm(flow),
      pump_head: toFeet(head),
      pipe_and_fitting_loss: loss(toGpm(flow), 180, 1.049, 150, 5),
    };
  },
  'CV-H32': () => {
    const tank = {
      volume: gallons(44),
      cutIn: psi(30),
      cutOut: psi(50),
      precharge: psi(28),
      atmosphere: atmosphericPressure(0),
    };
    return { drawdown_factor: drawdownFactor(tank), drawdown: toGallons(tankDrawdown(tank)) };
  },
  'CV-H33': () => ({
    tank_volume: toGallons(
      smallestTank({
        flow: gpm(10),
        runTime: 60,
        cutIn: psi(40),
        cutOut: psi(60),
        precharge: psi(38),
        atmosphere: atmosphericPressure(0),
      }),
    ),
  }),
  'CV-H34': () => ({ max_starts_per_hour: 3600 * mostStartsPerSecond(gpm(10), gallons(10)) }),
  'CV-H35': () => {
    const flow = (bore: number) =>
      toGpm(flowForMotorVelocity({ velocity: feet(0.25), insideDiameter: inches(bore), motorDiameter: inches(3.75) }));
    return { flow_4in: flow(4.026), flow_5in: flow(5.047), flow_6in: flow(6.065), flow_8in: flow(7.981) };
  },
  'CV-H36': () => ({
    atmospheric_head: toFeet(pressureAsHead(atmosphericPressure(0), waterDensity(10))),
    vapour_head: toFeet(pressureAsHead(vapourPressure(10), waterDensity(10))),
    npsh_available: toFeet(
      netPositiveSuctionHead({ altitude: 0, temperature: 10, submergence: feet(10), inletLoss: 0 }),
    ),
  }),
  'CV-H37': () => ({ min_submergence: toInches(vortexSubmergence(inches(3.75), gpm(10))) }),
  'CV-H38': () => ({ limit: toFeet(columnHeldByAir({ altitude: 0, temperature: 15 })) }),
  'CV-H39': () => {
    const speed = waveSpeed(psi(150_000), 17 - 2);
    return {
      wave_speed: toFeet(speed),
      surge_per_ft_s: toPsi(surgePressure({ density: poundWater, speed, velocityChange: feet(1) })),
    };
  },
  'CV-H40': () => {
    const surge = (speed: number) => toPsi(surgePressure({ density: poundWater, speed, velocityChange: feet(5) }));
    const [steel, pvc] = [waveSpeed(psi(30_000_000), 1.38 / 0.14), waveSpeed(psi(400_000), 1.38 / 0.14)];
    return {
      wave_speed_steel: toFeet(steel),
      surge_steel: surge(steel),
      wave_speed_pvc: toFeet(pvc),
      surge_pvc: surge(pvc),
    };
  },
  'CV-H41': () => {
    const perFoot = (bore: number) => toGallons(boreVolumePerMetre(inches(bore)) * feet(1));
    const storage = boreVolumePerMetre(inches(6.065)) * feet(100);
    const time = timeToBreakSuction({ storage, pumpFlow: gpm(10), wellYield: gpm(2) }) ?? NaN;
    return { gal_per_ft_6in: perFoot(6.065), gal_per_ft_4in: perFoot(4.026), minutes_to_empty: time / 60 };
  },
  'CV-H42': () => {
    const stored = boreVolumePerMetre(2 * 0.076) * 10;
    return { stored: stored * 1000, available: waterAvailable(stored, litres(9) / 60, 7200) * 1000 };
  },
  'CV-H43': () => ({
    proposed: toGallons(waterAvailable(0, gpm(5), 4 * 3600)),
    existing: toGallons(waterAvailable(0, gpm(3), 4 * 3600)),
  }),
  'CV-H44': () => {
    const units = fixtureUnits({ 'bathroom group': 2, 'kitchen sink': 1, dishwasher: 1, 'clothes washer': 1 });
    return { total_wsfu: units, peak_demand: toGpm(peakDemand(units) ?? NaN) };
  },
  'CV-H45': () => {
    const pressure = (lost: number) => toPsi(headAsPressure(feet(lost), usualWater));
    return {
      velocity_1in: velocity(15, 1.049),
      loss_1in: pressure(loss(15, 100, 1.049, 150)),
      velocity_1_1_4in: velocity(25, 1.38),
      loss_1_1_4in: pressure(loss(25, 100, 1.38, 150)),
    };
  },
  'CV-H46': () => {
    const pipe = findPipe({ material: 'PE', size: '1 in', ratio: 'SIDR 7' });
    const load = (columnHeld: boolean) =>
      hangLoad({
        length: feet(300),
        pipeMassPerLength: pipe?.massPerLength ?? NaN,
        pipeWallArea: 0,
        pipeBoreArea: boreVolumePerMetre(pipe?.insideDiameter ?? NaN),
        cableMassPerLength: (0.16 * poundsMass(1)) / feet(1),
        cableArea: 0,
        pumpMass: poundsMass(28),
        pumpBuoyancy: 0,
        waterDepth: feet(300),
        columnHeld,
      });
    return { load_full: toPoundsForce(load(true)), load_drained: toPoundsForce(load(false)) };
  },
};
