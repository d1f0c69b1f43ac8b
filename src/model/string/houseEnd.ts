/**
 * The house end: what stands where the line arrives, at the height of the rise, or at grade when that is unknown.
 *
 * No plan says how high or in which order its parts stand. They stand as is common: the tank tee takes the water from
 * below, gives it on upward through the shut-off, and leads to the tank; gauge, switch, relief valve and drain sit on it,
 * so that no valve can come between the pump and the switch or the relief valve. Common practice, no source, but for the
 * open end of the relief valve's pipe: not more than 6 in above the floor, and not less than twice its own width
 * (International Plumbing Code 2018, 504.6, on the relief valves of water heaters).
 */
import type { Facts, HouseFacts } from '../facts.ts';
import type { CubicMetres, Metres } from '../si.ts';
import type { PlacedPart } from '../solution.ts';
import { feet, inches, gallons } from '../units.ts';
import type { HouseKind } from './houseKinds.ts';
import { openTankOf, vesselOf } from './tankShape.ts';

/** The middle of the tank tee, over the floor. */
export const TEE_HEIGHT: Metres = inches(8);
/** A pressure tank's foot, on its ring. */
export const TANK_FOOT: Metres = inches(10);
/** From the riser's middle to the side of the tank. */
const TO_TANK: Metres = inches(15.5);
/** The relief valve's port, on the tee: closed by a plug where there is none. */
export const RELIEF_PORT: Metres = inches(-10.4);
/** An open tank's rim, over the water that stops the pump. */
const RIM: Metres = inches(5);
/** The line turns over an open tank's rim this far above it, so that no water is sucked back. */
const AIR_GAP: Metres = inches(6);
/** Drawn where nobody said how large the tank is. */
const USUAL_TANK: CubicMetres = gallons(44);
const USUAL_OPEN_TANK: CubicMetres = gallons(300);

/** Heights of its ends over the floor, its middle from the riser's, and half its width. */
interface Stands {
  readonly kind: HouseKind;
  readonly from: Metres;
  readonly to: Metres;
  readonly across: Metres;
  readonly half: Metres;
}

const stands = (kind: HouseKind, from: number, to: number, across: number, half: number): Stands => ({
  kind,
  from: inches(from),
  to: inches(to),
  across: inches(across),
  half: inches(half),
});

export function placeHouseEnd(facts: Facts): PlacedPart[] {
  const { house, dropPipe } = facts;
  const floor = -(house.rise ?? 0);
  const line = (house.line ?? dropPipe).outsideDiameter / 2;
  const all = house.kind === 'open tank' ? openTankEnd(house, line) : pressureTankEnd(house, line);
  return [...all, ...boxes(facts)].map(({ kind, from, to, across, half }) => ({
    key: kind,
    kind,
    top: floor - to,
    bottom: floor - from,
    radius: half,
    across,
  }));
}

function pressureTankEnd(house: HouseFacts, line: Metres): Stands[] {
  const { radius, height } = vesselOf(house.tank ?? USUAL_TANK);
  return [
    { kind: 'riser', from: 0, to: TEE_HEIGHT, across: 0, half: line },
    stands('tankTee', 7.2, 8.8, -5.75, 7),
    stands('gauge', 8.8, 12.8, -3.6, 1.3),
    // A drive has a sensor the size of a thumb in its place.
    house.control === 'variable speed' ? stands('switch', 8.8, 11.6, -7, 0.6) : stands('switch', 8.8, 14.2, -7, 1.6),
    ...(house.reliefValve === true
      ? [stands('reliefValve', 8.8, 13.4, -10.4, 0.9), stands('reliefPipe', 4, 11, -13.4, 0.5)]
      : []),
    stands('drain', 4.2, 7.2, -4.6, 1.1),
    stands('shutOff', 11, 15, 0, 1.1),
    { kind: 'tank', from: 0, to: TANK_FOOT + height, across: -TO_TANK - radius, half: radius },
  ];
}

function openTankEnd(house: HouseFacts, line: Metres): Stands[] {
  const { radius, water } = openTankOf(house.tank ?? USUAL_OPEN_TANK);
  const rim = water + RIM;
  return [
    { kind: 'riser', from: 0, to: rim + AIR_GAP, across: 0, half: line },
    { kind: 'tank', from: 0, to: rim, across: -TO_TANK - radius, half: radius },
    {
      kind: 'float',
      from: water - inches(3),
      to: rim,
      across: -TO_TANK - Math.min(inches(9), radius),
      half: Math.min(inches(2.5), radius / 3),
    },
    { kind: 'shutOff', from: inches(3), to: inches(7), across: -TO_TANK - 2 * radius - inches(4), half: inches(2) },
  ];
}

/** On the wall, at the height of the eyes: what takes the power off, and what the motor needs to start. */
function boxes({ house, pump }: Facts): Stands[] {
  // Over the tee; beside an open tank's line, which turns over its rim there.
  const side = house.kind === 'open tank' ? 1 : -1;
  const off = stands('disconnect', 56, 65, side === 1 ? 8 : -4.9, 2.6);
  const gear = side === 1 ? 15 : -11.5;
  if (house.control === 'variable speed') return [off, stands('drive', 54, 66, gear, 3.2)];
  // A three-wire motor has its starting gear up here; a two-wire motor has it in itself.
  return pump.wires === 3 && pump.phase === 1 ? [off, stands('controlBox', 55, 65, gear, 3.2)] : [off];
}

/** The floor is at no depth that anybody said: the rise is to the tank. */
export function floorDepth({ house }: Pick<Facts, 'house'>): Metres {
  return -(house.rise ?? 0);
}

/** The wall boxes reach as high as this; nothing but a tall tank stands higher. */
export const EYES: Metres = feet(5.5);
