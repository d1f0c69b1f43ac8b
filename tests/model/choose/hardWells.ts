/** Invented wells in which choosing went wrong once: narrow, heavy, poor, shallow. */
import type { Plan } from '../../../src/model/plan/schema.ts';

/** Rock that was blown with air at 6 gpm, with two inflows, for a house that wants 8. */
export const blownRock: Plan = {
  format: 'wellcut-plan/1',
  title: 'Alder Notch',
  units: 'us',
  site: {
    frostDepth: '42 in',
    frostFrom: 'local code',
    waterTemperature: '49 degF',
    septicTank: { distance: '80 ft' },
    drainField: { distance: '130 ft' },
    building: { distance: '30 ft' },
  },
  well: {
    depth: '365 ft',
    casing: { material: 'steel', size: '6 in', bottom: '52 ft', height: '18 in' },
    grout: { bottom: '52 ft' },
    intake: { kind: 'open hole', diameter: '6 in' },
    inflows: [{ depth: '188 ft' }, { depth: '322 ft' }],
    yield: '6 gpm',
    yieldFrom: 'air lift',
    inPit: false,
    layers: [
      { material: 'till', bottom: '31 ft' },
      { material: 'granite', bottom: '365 ft' },
    ],
  },
  water: { staticLevel: '34 ft', sand: false, gas: false, pumping: { kind: 'yield only' } },
  house: {
    demand: '8 gpm',
    people: 4,
    distance: '60 ft',
    rise: '8 ft',
    cutIn: '40 psi',
    cutOut: '60 psi',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless' },
  status: { 'well.depth': 'reported', 'water.staticLevel': 'reported', 'well.yield': 'reported' },
};

/** 4 in casing of SDR 21, 4.07 in wide inside, with a pitless adapter; no dry season told. */
export const slimCasing: Plan = {
  format: 'wellcut-plan/1',
  title: 'Marsh Lane',
  units: 'us',
  site: {
    frostDepth: '30 in',
    frostFrom: 'local code',
    waterTemperature: '54 degF',
    septicTank: { distance: '75 ft' },
    drainField: { distance: '110 ft' },
    building: { distance: '20 ft' },
  },
  well: {
    depth: '62 ft',
    casing: { material: 'PVC', size: '4 in', schedule: 'SDR 21', bottom: '50 ft', height: '14 in' },
    grout: { bottom: '20 ft' },
    intake: {
      kind: 'screen',
      diameter: '4 in',
      screens: [{ top: '50 ft', bottom: '60 ft', slot: '0.012 in', openArea: '10 %' }],
    },
    yield: '15 gpm',
    yieldFrom: 'pump',
    inPit: false,
    layers: [
      { material: 'topsoil', bottom: '2 ft' },
      { material: 'clay', bottom: '22 ft' },
      { material: 'fine sand', bottom: '44 ft' },
      { material: 'coarse sand', bottom: '62 ft' },
    ],
  },
  water: {
    staticLevel: '21 ft',
    sand: false,
    gas: false,
    pumping: { kind: 'test', flow: '15 gpm', drawdown: '11 ft', after: '4 h' },
  },
  house: {
    demand: '9 gpm',
    people: 4,
    distance: '45 ft',
    rise: '4 ft',
    cutIn: '30 psi',
    cutOut: '50 psi',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless' },
};

/** Deep water for 15 gpm, on pipe of 1-1/4 in: some 300 lb. */
export const heavy: Plan = {
  format: 'wellcut-plan/1',
  title: 'Dry Fork',
  units: 'us',
  site: {
    frostDepth: '0 in',
    frostFrom: 'local code',
    waterTemperature: '72 degF',
    altitude: '1400 ft',
    floodHeight: '-3 ft',
    septicTank: { distance: '90 ft' },
    drainField: { distance: '160 ft' },
    building: { distance: '25 ft' },
  },
  well: {
    depth: '310 ft',
    casing: { material: 'PVC', size: '6 in', schedule: 'schedule 40', bottom: '270 ft', height: '16 in' },
    grout: { bottom: '50 ft' },
    intake: {
      kind: 'screen',
      diameter: '6 in',
      screens: [{ top: '270 ft', bottom: '305 ft', slot: '0.02 in', openArea: '8 %' }],
    },
    yield: '30 gpm',
    yieldFrom: 'pump',
    inPit: false,
    layers: [
      { material: 'caliche', bottom: '12 ft' },
      { material: 'clay', bottom: '90 ft' },
      { material: 'sand', bottom: '200 ft' },
      { material: 'gravel', bottom: '310 ft' },
    ],
  },
  water: {
    staticLevel: '155 ft',
    staticLowest: '172 ft',
    sand: false,
    gas: false,
    pumping: { kind: 'test', flow: '30 gpm', drawdown: '24 ft', after: '8 h' },
  },
  house: {
    demand: '15 gpm',
    people: 5,
    distance: '120 ft',
    rise: '12 ft',
    cutIn: '40 psi',
    cutOut: '60 psi',
    line: { material: 'PVC', size: '1-1/4 in', ratio: 'schedule 40' },
    tank: '119 gal',
    reliefValve: true,
  },
  top: { kind: 'seal' },
  pump: { setting: '223 ft', power: '2 hp', curve: { kind: 'generic', flow: '15 gpm' }, voltage: '230 V', wires: 3 },
  wire: { size: '8 AWG' },
  dropPipe: { material: 'PE', size: '1-1/4 in', rating: '250 psi' },
};

/** 700 ft of rock that gives 0.75 gpm to air. */
export const deepPoor: Plan = {
  format: 'wellcut-plan/1',
  title: 'High Shelf',
  units: 'us',
  site: {
    frostDepth: '48 in',
    frostFrom: 'local code',
    waterTemperature: '48 degF',
    septicTank: { distance: '120 ft' },
    drainField: { distance: '150 ft' },
    building: { distance: '40 ft' },
  },
  well: {
    depth: '700 ft',
    casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '18 in' },
    grout: { bottom: '40 ft' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '0.75 gpm',
    yieldFrom: 'air lift',
    inPit: false,
    layers: [
      { material: 'clay', bottom: '18 ft' },
      { material: 'schist', bottom: '700 ft' },
    ],
  },
  water: { staticLevel: '62 ft', sand: false, gas: false, pumping: { kind: 'yield only' } },
  house: {
    demand: '6 gpm',
    people: 3,
    distance: '75 ft',
    rise: '6 ft',
    cutIn: '40 psi',
    cutOut: '60 psi',
    reliefValve: true,
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless' },
};

/** Water at 3 ft and 20 gpm. */
export const shallowRich: Plan = {
  format: 'wellcut-plan/1',
  title: 'Clover Bottom',
  units: 'us',
  site: { frostDepth: '36 in', frostFrom: 'local code', waterTemperature: '50 degF' },
  well: {
    depth: '220 ft',
    casing: { material: 'steel', size: '6 in', bottom: '140 ft', height: '24 in' },
    grout: { bottom: '140 ft' },
    intake: { kind: 'open hole', diameter: '6 in' },
    inflows: [{ depth: '205 ft' }],
    yield: '20 gpm',
    yieldFrom: 'pump',
    inPit: false,
    layers: [
      { material: 'clay', bottom: '120 ft' },
      { material: 'limestone', bottom: '220 ft' },
    ],
  },
  water: {
    staticLevel: '3 ft',
    sand: false,
    gas: false,
    pumping: { kind: 'test', flow: '20 gpm', drawdown: '32 ft', after: '8 h' },
  },
  house: {
    demand: '8 gpm',
    people: 3,
    distance: '50 ft',
    rise: '6 ft',
    cutIn: '40 psi',
    cutOut: '60 psi',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '5 ft' },
};

/** A well that gives a little more than the house wants. */
export const justEnough: Plan = {
  format: 'wellcut-plan/1',
  title: 'Cold Hollow',
  units: 'us',
  site: {
    frostDepth: '72 in',
    frostFrom: 'local code',
    waterTemperature: '44 degF',
    septicTank: { distance: '100 ft' },
    drainField: { distance: '150 ft' },
    building: { distance: '35 ft' },
  },
  well: {
    depth: '180 ft',
    casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '24 in' },
    grout: { bottom: '60 ft' },
    intake: { kind: 'open hole', diameter: '6 in' },
    inflows: [{ depth: '150 ft' }],
    yield: '11.5 gpm',
    yieldFrom: 'pump',
    inPit: false,
    layers: [
      { material: 'till', bottom: '48 ft' },
      { material: 'sandstone', bottom: '180 ft' },
    ],
  },
  water: {
    staticLevel: '30 ft',
    sand: false,
    gas: false,
    pumping: { kind: 'test', flow: '12 gpm', drawdown: '45 ft', after: '6 h' },
  },
  house: {
    demand: '9 gpm',
    people: 4,
    distance: '90 ft',
    rise: '5 ft',
    cutIn: '40 psi',
    cutOut: '60 psi',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '60 in', protrusion: '1 in' },
  status: { 'top.depth': 'installed' },
};

/** An ordinary well in rock, in metres and at 50 Hz. */
export const metricRock: Plan = {
  format: 'wellcut-plan/1',
  title: 'Steinau',
  units: 'metric',
  site: {
    frostDepth: '0.9 m',
    frostFrom: 'local code',
    waterTemperature: '11 degC',
    altitude: '420 m',
    septicTank: { distance: '30 m' },
    drainField: { distance: '50 m' },
    building: { distance: '12 m' },
  },
  well: {
    depth: '78 m',
    casing: { material: 'steel', size: '6 in', bottom: '22 m', height: '0.4 m' },
    grout: { bottom: '22 m' },
    intake: { kind: 'open hole', diameter: '152 mm' },
    inflows: [{ depth: '51 m' }, { depth: '70 m' }],
    yield: '40 L/min',
    yieldFrom: 'pump',
    inPit: false,
    layers: [
      { material: 'clay', bottom: '14 m' },
      { material: 'sandstone', bottom: '78 m' },
    ],
  },
  water: {
    staticLevel: '16 m',
    sand: false,
    gas: false,
    pumping: { kind: 'test', flow: '40 L/min', drawdown: '18 m', after: '6 h' },
  },
  house: {
    demand: '32 L/min',
    people: 4,
    distance: '30 m',
    rise: '3 m',
    cutIn: '2.5 bar',
    cutOut: '4 bar',
    line: { material: 'PE', size: '32 mm', rating: '16 bar' },
  },
  pump: { frequency: '50 Hz', voltage: '230 V' },
  top: { kind: 'pitless' },
  wire: { run: '25 m' },
};
