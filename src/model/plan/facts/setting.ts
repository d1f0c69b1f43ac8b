/**
 * Where a pump hangs that nobody has set yet: a place to begin with, not advice. It stays off the bottom and above a
 * screen, with water over it where the static level is known and the well has the room.
 *
 * The clearances are common practice, no source.
 */
import type { Facts, TopFacts, WaterFacts, WellFacts } from '../../facts.ts';
import type { Metres } from '../../si.ts';
import { feet, writeQuantity } from '../../units.ts';
import { read } from '../take.ts';
import type { Take } from '../take.ts';
import { settingForDischarge } from '../../string/pumpDepths.ts';
import { suspensionDepth } from '../../string/topDepths.ts';
import { ROOM_OVER_PUMP } from '../../string/lengths.ts';

const CLEARANCES = {
  us: { unit: 'ft', step: feet(1), offBottom: feet(20), aboveScreen: feet(10), underWater: feet(10) },
  metric: { unit: 'm', step: 0.5, offBottom: 6, aboveScreen: 3, underWater: 3 },
} as const;

/** As near to the bottom as no rule warns. */
const LEAST_OFF_BOTTOM = feet(10);

/** Of drop pipe besides what its joints take, so that there is some; and of water where there is hardly any. */
const SHORTEST_PIPE = feet(0.5);
const LEAST_WATER = feet(2);

interface Hole {
  readonly well: WellFacts;
  readonly water: WaterFacts;
  readonly top: TopFacts;
  readonly pump: Pick<Facts['pump'], 'intakeToDischarge' | 'intakeToMotorBottom'>;
  readonly units: 'us' | 'metric';
}

/** Depth of the intake from the ground [m]; told as one would type it, from the plan's own datum (`shift` metres below ground). */
export function usualSetting(hole: Hole, shift: Metres, take: Take): Metres {
  const { unit, step } = CLEARANCES[hole.units];
  const write = (steps: number) => writeQuantity(steps * step, 'length', unit, step);
  const usual = Math.floor((depthOf(hole) - shift) / step + 1e-6);
  const least = Math.ceil((leastSetting(hole) - shift) / step);
  const typed = write(Math.max(usual, least));
  take.assume('pump.setting', typed);
  return read(typed, 'length') + shift;
}

function depthOf(hole: Hole): Metres {
  const { well, water, pump, units } = hole;
  const { offBottom, aboveScreen, underWater } = CLEARANCES[units];
  const body = pump.intakeToMotorBottom;
  const screenTop = well.intake.screens[0]?.top ?? Infinity;
  const low = well.bottom - Math.max(offBottom / 2, LEAST_OFF_BOTTOM);
  // Best first: the end of the motor well above the screen, just above it, well off the bottom, half as much above the
  // screen, and in it.
  const places = [screenTop - aboveScreen, screenTop, Infinity]
    .map((end) => Math.min(end, well.bottom - offBottom) - body)
    .concat(Math.min(low, screenTop) - body, low - body);
  const still = water.staticLowest ?? water.staticLevel;
  if (still === null) return places.find((place) => place >= well.bottom / 2) ?? shallow(well.bottom, low - body);
  for (const level of [Math.max(still, pumpedDownTo(water) ?? still), still]) {
    const wet = places.find((place) => place >= level + underWater);
    if (wet !== undefined) return wet;
  }
  return Math.min(shallow(well.bottom, low - body), Math.max(screenTop - body, still + LEAST_WATER));
}

/** Where the room is short the pump hangs low rather than dry. */
function shallow(bottom: Metres, low: Metres): Metres {
  return Math.max(low, 0.8 * bottom);
}

/** The level of the test, whatever its flow was: enough to begin with. */
function pumpedDownTo({ pumping, staticLevel }: WaterFacts): Metres | null {
  if (pumping?.kind === 'level') return pumping.level;
  return pumping?.kind === 'test' && staticLevel !== null ? staticLevel + pumping.drawdown : null;
}

function leastSetting({ top, well, pump }: Hole): Metres {
  return settingForDischarge(suspensionDepth({ top, well }), pump) + ROOM_OVER_PUMP + SHORTEST_PIPE;
}
