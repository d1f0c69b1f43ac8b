/** Three invented jobs with the pump still to choose. What the trade would hang there: common practice, from memory. */
import type { Plan } from '../../../src/model/index.ts';

/** 240 ft of rock, water at 45 ft and 30 ft lower at 10 gpm, a house that wants 8 gpm. The trade: 10 gpm, 3/4 hp. */
export const rock: Plan = {
  format: 'wellcut-plan/1',
  title: 'Ordinary rock well',
  units: 'us',
  site: { frostDepth: '42 in', frostFrom: 'local code' },
  well: {
    depth: '240 ft',
    casing: { material: 'steel', size: '6 in', bottom: '50 ft', height: '18 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '12 gpm',
    yieldFrom: 'pump',
    layers: [
      { material: 'clay', bottom: '35 ft' },
      { material: 'granite', bottom: '240 ft' },
    ],
  },
  water: {
    staticLevel: '45 ft',
    staticLowest: '55 ft',
    pumping: { kind: 'test', flow: '10 gpm', drawdown: '30 ft', after: '4 h' },
  },
  house: {
    demand: '8 gpm',
    people: 4,
    cutIn: '40 psi',
    cutOut: '60 psi',
    tankRating: '125 psi',
    reliefValve: true,
    distance: '80 ft',
    rise: '10 ft',
    line: { material: 'PE', size: '1-1/4 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '54 in', protrusion: '0.8 in' },
};

/** 420 ft of rock that gives 1 gpm to a house that wants 4.5 gpm at its peak. The trade: 5 gpm, 1 hp, hung deep, guarded. */
export const lowYield: Plan = {
  format: 'wellcut-plan/1',
  title: 'Deep well of low yield',
  units: 'us',
  site: { frostDepth: '48 in', frostFrom: 'local code' },
  well: {
    depth: '420 ft',
    casing: { material: 'steel', size: '6 in', bottom: '40 ft', height: '18 in' },
    intake: { kind: 'open hole', diameter: '6 in' },
    yield: '1 gpm',
    yieldFrom: 'pump',
    layers: [
      { material: 'clay', bottom: '20 ft' },
      { material: 'granite', bottom: '420 ft' },
    ],
  },
  water: { staticLevel: '60 ft', staticLowest: '75 ft' },
  house: {
    demand: '4.5 gpm',
    people: 3,
    cutIn: '30 psi',
    cutOut: '50 psi',
    tankRating: '125 psi',
    reliefValve: true,
    distance: '60 ft',
    rise: '5 ft',
    line: { material: 'PE', size: '1 in', rating: '200 psi' },
  },
  top: { kind: 'pitless', depth: '60 in', protrusion: '0.8 in' },
};

/** 36 m in gravel with a screen, 50 Hz, a house that wants 30 L/min. The trade: 40 L/min, 0.55 to 0.75 kW. */
export const screened: Plan = {
  format: 'wellcut-plan/1',
  title: 'Shallow screened well',
  units: 'metric',
  site: { frostDepth: '80 cm', frostFrom: 'local code' },
  well: {
    depth: '36 m',
    casing: { material: 'PVC', size: '5 in', schedule: 'SDR 21', bottom: '30 m', height: '40 cm' },
    intake: { kind: 'screen', diameter: '127 mm', top: '30 m', bottom: '34 m' },
    yield: '60 L/min',
    yieldFrom: 'pump',
    layers: [
      { material: 'clay', bottom: '6 m' },
      { material: 'gravel', bottom: '36 m' },
    ],
  },
  water: {
    staticLevel: '6 m',
    staticLowest: '7 m',
    pumping: { kind: 'test', flow: '60 L/min', drawdown: '5 m', after: '6 h' },
  },
  house: {
    demand: '30 L/min',
    people: 4,
    cutIn: '2 bar',
    cutOut: '3.5 bar',
    tankRating: '8 bar',
    reliefValve: true,
    distance: '20 m',
    rise: '3 m',
    line: { material: 'PE', size: '1-1/4 in', rating: '10 bar' },
  },
  top: { kind: 'pitless', depth: '1.2 m', protrusion: '20 mm' },
  pump: { frequency: '50 Hz' },
};
