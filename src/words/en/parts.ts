/** What each part is called and what it does, for someone who sees a well for the first time. */
import type { PartKind } from '../../model/solution.ts';

export interface PartWords {
  readonly name: string;
  readonly does: string;
}

export const parts: Readonly<Record<PartKind, PartWords>> = {
  motor: {
    name: 'Motor',
    does: 'The lowest thing in the well. It turns the pump above it and is cooled by the water that flows up past it, so it must hang clear of the bottom and never in still water.',
  },
  intake: {
    name: 'Intake',
    does: 'The ring of small openings between motor and pump where water goes in. When people say how deep a pump is set, this is the place they should mean. It has to stay under water while the pump runs.',
  },
  pump: {
    name: 'Pump',
    does: 'A stack of spinning wheels. Each one pushes the water a little higher, and it leaves at the top. The pump is held by its pipe, not by the cable or the rope.',
  },
  cableGuardStrip: {
    name: 'Cable guard strip',
    does: 'A thin metal strip along the pump. It keeps the cable from being rubbed through between the pump and the wall of the well.',
  },
  shroud: {
    name: 'Flow sleeve',
    does: 'A tube round the motor. It makes the water pass along the motor and cool it where the hole is wide or the water comes from above.',
  },
  nipple: { name: 'Nipple', does: 'A short piece of threaded pipe that joins two fittings.' },
  checkValve: {
    name: 'Check valve',
    does: 'Lets water up and never back down. It holds the column of water when the pump stops, so that the pump does not spin backward. Its arrow points up.',
  },
  flowLimiter: {
    name: 'Flow-limiting valve',
    does: 'Lets no more water through than it is made for, so that a strong pump does not draw a weak well down.',
  },
  insertFitting: {
    name: 'Insert fitting',
    does: 'A barbed fitting that is pushed inside plastic pipe. Two clamps hold the pipe on it, and everything below hangs from that grip.',
  },
  clamp: {
    name: 'Clamp',
    does: 'A stainless band that squeezes the pipe onto the barbs. There are two at every joint, with their screws on opposite sides.',
  },
  dropPipe: {
    name: 'Drop pipe',
    does: 'Carries the water up and carries the weight of the pump, the cable and all the water inside it. It has to be rated for the pressure at its lower end.',
  },
  torqueArrestor: {
    name: 'Torque arrestor',
    does: 'Springy arms just above the pump. A pump twists its pipe each time it starts; the arms take up that twist so that cable and pipe do not rub on the wall.',
  },
  splice: {
    name: 'Splice',
    does: 'Where the motor’s short lead is joined to the long cable. It hangs under water for years, so each wire is joined and sealed by itself, one above the other.',
  },
  capSplice: {
    name: 'Splice under the cap',
    does: 'Where the pump’s cable meets the cable to the house. It stays dry, and there is cable to spare below it, so that the string can be drawn.',
  },
  probe: {
    name: 'Probe of the dry-run protection',
    does: 'A small electrode on its own thin wires. When the water falls below its bare end, a relay at the panel stops the pump before it draws air.',
  },
  tie: {
    name: 'Cable tie',
    does: 'Holds the cable to the pipe. The cable gets a little slack between ties, because the pipe stretches more than the wire does.',
  },
  guard: {
    name: 'Cable guard',
    does: 'A rubber ring round the pipe that keeps cable and pipe off the wall of the well.',
  },
  cable: {
    name: 'Cable',
    does: 'Brings power to the motor, with a ground wire. It never carries weight. The longer it is, the thicker its wires must be, or the motor gets too little voltage.',
  },
  rope: {
    name: 'Rope',
    does: 'May catch a slipping pump once. It is never for lifting. It is tied to a hook on the casing and left a little slack.',
  },
  pitlessAdapter: {
    name: 'Pitless adapter',
    does: 'An elbow through the wall of the casing, below frost. The pipe with the pump slides onto it from above and can be lifted off again. Water leaves sideways here, underground, and nothing freezes on top.',
  },
  cap: {
    name: 'Well cap',
    does: 'Closes the top of the well against insects, rain and dirt. A screened vent lets air in as the water falls, so that no dirt is sucked past the gasket.',
  },
  conduit: {
    name: 'Conduit',
    does: 'The tube that takes the cable from the cap down to the trench and on to the house.',
  },
  bond: {
    name: 'Bond',
    does: 'Joins a metal casing to the ground wire, so that a fault trips the breaker and does not make the casing live.',
  },
  seal: {
    name: 'Sanitary seal',
    does: 'Two plates that squeeze a rubber ring between pipe, cable and casing. It closes the top of the well and carries the pipe with the pump.',
  },
  coupling: { name: 'Coupling', does: 'Joins two pipes. Above the seal it also keeps the pipe from slipping down.' },
  tee: { name: 'Tee', does: 'Turns the water sideways toward the house, above the seal.' },
  union: {
    name: 'Union',
    does: 'A joint that opens without turning the pipe. Undo it, and the seal lifts off with all that hangs from it.',
  },
  tap: {
    name: 'Sample tap',
    does: 'Where water is drawn at the well: to run it to waste until it is clear, and to have it tested. Its spout is smooth and points down.',
  },
  support: {
    name: 'Pipe support',
    does: 'Carries the line, so that its weight and a knock do not hang on the tee and the seal.',
  },
  plug: {
    name: 'Plug',
    does: 'Closes the upright end of the tee. Take it out and a lift-out pipe screws in, to pull the pump.',
  },
  buriedLine: {
    name: 'Line to the house',
    does: 'Takes the water to the house. It has to lie below frost all the way, also under a cleared drive and at the wall of the house.',
  },
  riser: {
    name: 'Rise into the house',
    does: 'The line comes up through the floor. Under a heated house the ground stays warm; in a crawl space or along an outer wall the pipe can freeze.',
  },
  tankTee: {
    name: 'Tank tee',
    does: 'A fitting with a port for each: the tank, the switch, the gauge, the drain and the relief valve. No valve stands between it and the pump, or the pump could run against a shut pipe.',
  },
  reliefValve: {
    name: 'Relief valve',
    does: 'Opens when the pressure climbs too high, because the switch stuck, for example. Without it a strong pump can burst the tank. Never plug it, cap it or close it off.',
  },
  reliefPipe: {
    name: 'Relief valve’s pipe',
    does: 'Leads what the relief valve lets out down to the floor or a drain. Its end stays open, without a thread or a valve, where you can see it run.',
  },
  gauge: {
    name: 'Pressure gauge',
    does: 'Shows the pressure at the tank. It is the first thing to read when something is wrong.',
  },
  switch: {
    name: 'Pressure switch',
    does: 'Starts the pump at the cut-in pressure and stops it at the cut-out pressure.',
  },
  drain: {
    name: 'Drain',
    does: 'A tap at the lowest point of the tank tee. It empties tank and pipes for work, and takes a sample of the water.',
  },
  shutOff: {
    name: 'Shut-off to the house',
    does: 'Closes the water off from the house. It stands after the tank tee: before the switch or the relief valve it would shut the pump in.',
  },
  tank: {
    name: 'Pressure tank',
    does: 'Holds water under an air cushion, so that the pump rests between draws. Much less water comes out of it than its size says.',
  },
  float: {
    name: 'Float switch',
    does: 'Stops the pump when an open tank is full, and starts it again when the water has fallen.',
  },
  disconnect: {
    name: 'Disconnect',
    does: 'Takes the power off the pump. Lock it in the off position before anyone opens the well, the switch or the control box. An electrician connects it.',
  },
  controlBox: {
    name: 'Control box',
    does: 'Holds what a three-wire motor needs to start. It has to match the motor in power. Inside it can hold a charge after the power is off: leave it to an electrician.',
  },
  drive: {
    name: 'Drive',
    does: 'Turns the motor faster or slower, so that the pressure stays the same. Inside it can hold a charge after the power is off: leave it to an electrician.',
  },
  casing: {
    name: 'Casing',
    does: 'The pipe that holds the hole open and keeps surface water and loose ground out. It stands above the ground so that floods and dirt stay outside.',
  },
  screen: {
    name: 'Screen',
    does: 'A slotted stretch of pipe where water comes in and sand stays out. The pump should not hang inside it.',
  },
  openHole: {
    name: 'Open hole',
    does: 'Below the casing the rock stands by itself, without a pipe. Water comes in from its cracks.',
  },
  grout: {
    name: 'Grout',
    does: 'Fills the gap between casing and ground, so that water from the surface cannot run down outside the casing.',
  },
  well: {
    name: 'Bottom of the well',
    does: 'Where the hole ends today. Silt settles here and the hole gets shallower with the years, so it is worth sounding again.',
  },
  frost: {
    name: 'Frost line',
    does: 'How deep the ground freezes in a hard winter. A water line above it freezes. The local code sets the depth to use.',
  },
  staticLevel: { name: 'Static level', does: 'Where the water stands at rest, with the pump off for hours.' },
  pumpingLevel: {
    name: 'Pumping level',
    does: 'Where the water falls to while the pump runs. The fall from the static level is the drawdown. The pump lifts from here, not from its own depth.',
  },
};
