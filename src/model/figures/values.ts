/** Every figure of the plan's contract, from levels to minutes; `null` where a fact it needs is unknown. */
import { widestBetween } from '../bore.ts';
import type { Facts } from '../facts.ts';
import { chlorineProduct } from '../formulas/disinfection.ts';
import { specificCapacity } from '../formulas/drawdown.ts';
import { velocityPastMotor as ringVelocity } from '../formulas/flowPast.ts';
import { velocityIn } from '../formulas/friction.ts';
import type { PumpBand } from '../formulas/genericBand.ts';
import type { PumpCurve } from '../formulas/headCurve.ts';
import { tankDrawdown } from '../formulas/tank.ts';
import { STANDARD_GRAVITY, atmosphericPressure } from '../formulas/water.ts';
import { wellVolume } from '../formulas/wellStorage.ts';
import { voltageDrop } from '../formulas/wire.ts';
import { late } from '../late.ts';
import type { Metres } from '../si.ts';
import type { BoreStretch, Curves, LowestPumping, Values } from '../solution.ts';
import { lengthToCut } from '../string/pipeRun.ts';
import type { PipeRun } from '../string/pipeRun.ts';
import { runningCurrent } from '../tables/motors.ts';
import { LIFT_PIPE_ABOVE_CASING, ROPE_SLACK, ROPE_TIES } from './allowances.ts';
import type { System } from './curves.ts';
import { heldLevel } from './heldLevel.ts';
import { fiftyYearStretch, hangLoads, hangingString } from './hanging.ts';
import { fittingFriction, pipeFriction, pipeFrictionHazenWilliams } from './head.ts';
import type { LevelFigures } from './levels.ts';
import { boreKnown, usableWater, waterFall } from './waterFall.ts';
import { dischargeDepth, motorBottomDepth } from '../string/pumpDepths.ts';
import { wireInWell, wireToMotor } from '../string/wireLengths.ts';

export interface Worked {
  readonly facts: Facts;
  readonly levels: LevelFigures;
  readonly bore: readonly BoreStretch[];
  readonly suspension: Metres;
  readonly run: PipeRun;
  readonly system: System;
  readonly curves: Curves;
  readonly band: PumpBand | null;
  readonly lowest: LowestPumping | null;
  readonly frostDepth: Metres | null;
}

export function valuesOf(worked: Worked): Values {
  const { facts, levels, suspension, system, curves, band, frostDepth } = worked;
  const { house, pump, top, well } = facts;
  const { density } = system.water;
  const pumping = heldLevel(levels.pumping, facts);
  const pumpingDry = heldLevel(levels.pumpingDry, facts);
  const intakeDepth = pump.setting;
  const pumpDischargeDepth = dischargeDepth(pump);
  const motorBottom = motorBottomDepth(pump);
  const asPressure = (head: Metres) => head * density * STANDARD_GRAVITY;
  const atTank = (curve: PumpCurve) =>
    levels.static === null || house.rise === null ? null : asPressure(curve.shutOffHead - levels.static - house.rise);
  // The dearest two: of a pump that is only thought of nobody may ask for them.
  const staticLevel = levels.static;
  const stored = late(() => (staticLevel === null ? null : usableWater(worked, staticLevel)));
  const lasts = late(() =>
    staticLevel === null ? null : (waterFall(worked, staticLevel, { point: curves.atCutInMost })?.time ?? null),
  );
  return {
    demandFlow: house.demand,
    specificCapacity: specificCapacityOf(facts),
    drawdown: levels.drawdown,
    pumpingWaterLevel: pumping,
    pumpingWaterLevelDry: pumpingDry,
    lowestPumpingWaterLevel: heldLevel(worked.lowest?.depth ?? null, facts),
    submergenceDry: pumpingDry === null ? null : intakeDepth - pumpingDry,
    intakeDepth,
    pumpDischargeDepth,
    motorBottomDepth: motorBottom,
    submergence: pumping === null ? null : intakeDepth - pumping,
    clearanceToBottom: well.bottom - motorBottom,
    ...headsOf(worked),
    operatingFlowAtCutOut: curves.atCutOut?.flow ?? null,
    operatingHeadAtCutOut: curves.atCutOut?.head ?? null,
    operatingFlowAtCutIn: curves.atCutIn?.flow ?? null,
    operatingHeadAtCutIn: curves.atCutIn?.head ?? null,
    operatingFlowAtCutInMost: curves.atCutInMost?.flow ?? null,
    operatingHeadAtCutInMost: curves.atCutInMost?.head ?? null,
    shutOffPressureAtPump: band === null ? null : asPressure(band.most.shutOffHead),
    shutOffPressureAtTank: band === null ? null : atTank(band.most),
    shutOffPressureAtTankLeast: band === null ? null : atTank(band.least),
    velocityDropPipe: house.demand === null ? null : velocityIn(house.demand, facts.dropPipe.insideDiameter),
    velocityPastMotor: velocityPastMotor(worked),
    ...lengthsAndLoads(worked, pumpDischargeDepth),
    frostDepth,
    pitlessBelowFrost: top.kind === 'pitless' && frostDepth !== null ? suspension - frostDepth : null,
    ...volumes(worked),
    get usableStorage() {
      return stored();
    },
    get timeToBreakSuction() {
      return lasts();
    },
  };
}

function specificCapacityOf({ water }: Facts): number | null {
  const { pumping, staticLevel } = water;
  if (pumping === null) return null;
  if (pumping.kind === 'test')
    return pumping.drawdown > 0 ? specificCapacity({ flow: pumping.flow, drawdown: pumping.drawdown }) : null;
  if (pumping.kind === 'steps') {
    const last = pumping.steps[pumping.steps.length - 1];
    return last && last.drawdown > 0 ? specificCapacity({ flow: last.flow, drawdown: last.drawdown }) : null;
  }
  if (pumping.kind !== 'level' || staticLevel === null) return null;
  const drawdown = pumping.level - staticLevel;
  return pumping.flow !== null && drawdown > 0 ? specificCapacity({ flow: pumping.flow, drawdown }) : null;
}

function headsOf({ facts, levels, system, suspension }: Worked) {
  const { house, dropPipe, pump } = facts;
  const { demand, line, distance, rise } = house;
  const length = Math.max(dischargeDepth(pump) - suspension, 0);
  const lineKnown = demand !== null && line !== null && distance !== null;
  const frictionDropPipe = demand === null ? null : pipeFriction(dropPipe, demand, length, system.water);
  const frictionLine = lineKnown ? pipeFriction(line, demand, distance, system.water) : null;
  const frictionFittings = demand === null ? null : fittingFriction(facts, demand);
  const pressureHead = house.kind === 'open tank' ? 0 : house.cutOut / (system.water.density * STANDARD_GRAVITY);
  const lift = heldLevel(levels.pumping, facts);
  const sum = [lift, rise, pressureHead, frictionDropPipe, frictionLine, frictionFittings];
  return {
    lift,
    rise,
    pressureHead,
    frictionDropPipe,
    frictionLine,
    frictionFittings,
    totalDynamicHead: sum.some((head) => head === null)
      ? null
      : sum.reduce<number>((total, head) => total + (head ?? 0), 0),
    frictionDropPipeHazenWilliams: demand === null ? null : pipeFrictionHazenWilliams(dropPipe, demand, length),
    frictionLineHazenWilliams: lineKnown ? pipeFrictionHazenWilliams(line, demand, distance) : null,
  };
}

function velocityPastMotor({ facts, bore }: Worked): number | null {
  const { pump, house, well } = facts;
  if (house.demand === null) return null;
  const motorBottom = motorBottomDepth(pump);
  if (
    pump.shroudDiameter === null &&
    bore.some((each) => !each.known && each.bottom > pump.setting && each.top < motorBottom)
  )
    return null;
  const around =
    pump.shroudDiameter ??
    2 * widestBetween(bore, pump.setting, Math.min(motorBottom, Math.max(well.bottom, pump.setting)));
  // A motor that does not fit leaves no ring: the rule on clearance says so, there is no velocity to tell.
  return around > pump.motorDiameter
    ? ringVelocity({ flow: house.demand, insideDiameter: around, motorDiameter: pump.motorDiameter })
    : null;
}

function lengthsAndLoads({ facts, levels, suspension, run: pipe }: Worked, discharge: Metres) {
  const { pump, rope, top, well, wire } = facts;
  const dropPipeCutLength = discharge - suspension;
  const wireLength = wireToMotor(facts);
  const current = pump.current ?? (pump.power === null ? null : runningCurrent({ ...pump, power: pump.power }));
  const dropped =
    wireLength === null || current === null
      ? null
      : voltageDrop({
          phase: pump.phase,
          current,
          length: wireLength,
          gauge: wire.gauge,
        });
  const hanging = hangingString(facts, Math.max(dropPipeCutLength, 0));
  const drawnTo = levels.falls === null ? null : Math.min(levels.falls, pump.setting);
  const loads = hangLoads(hanging, suspension, levels.static, drawnTo);
  const stretch = fiftyYearStretch(facts, hanging, suspension, levels.static);
  const ropeLength =
    rope === null ? 0 : stretch === null ? null : discharge + well.casingHeight + ROPE_TIES + stretch + ROPE_SLACK;
  return {
    dropPipeCutLength,
    dropPipeToCut: lengthToCut(pipe),
    liftPipeLength: top.kind === 'pitless' ? well.casingHeight + top.depth + LIFT_PIPE_ABOVE_CASING : null,
    wireLength: wireInWell(facts),
    ropeLength,
    // More than all of the voltage cannot be lost: such a current never flows.
    voltageDropRunning: dropped === null || dropped >= pump.voltage ? null : dropped / pump.voltage,
    hangLoadLowering: loads.lowering,
    hangLoadAtRest: loads.atRest,
    hangLoadPumping: loads.pumping,
    hangLoadDry: loads.dry,
  };
}

function volumes({ facts, levels, bore }: Worked) {
  const { disinfection, house, site, well } = facts;
  const staticLevel = levels.static;
  const stands =
    staticLevel !== null && boreKnown(bore, staticLevel, well.bottom)
      ? wellVolume(bore, staticLevel, well.bottom)
      : null;
  const { target, strength } = disinfection;
  return {
    wellVolume: stands,
    chlorineDose: stands === null ? null : chlorineProduct({ waterVolume: stands, target, strength }),
    tankDrawdown:
      house.tank === null || house.kind === 'open tank'
        ? null
        : tankDrawdown({
            volume: house.tank,
            precharge: house.precharge,
            cutIn: house.cutIn,
            cutOut: house.cutOut,
            atmosphere: atmosphericPressure(site.altitude),
          }),
  };
}
