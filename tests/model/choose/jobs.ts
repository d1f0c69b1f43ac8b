/** The three jobs of docs/choosing-a-pump.md: invented wells with the pump still to choose. */
import { readFileSync } from 'node:fs';
import type { Plan } from '../../../src/model/index.ts';

function job(name: string): Plan {
  return JSON.parse(readFileSync(new URL(`../../../docs/choosing/${name}.json`, import.meta.url), 'utf8')) as Plan;
}

/** 240 ft of rock, water at 45 ft and 30 ft lower at 10 gpm, a house that wants 8 gpm. */
export const rock = job('rock-well');

/** 420 ft of rock that gives 1 gpm to a house that wants 4.5 gpm at its peak. */
export const lowYield = job('low-yield-well');

/** 36 m in gravel with a screen, 50 Hz, a house that wants 30 L/min. */
export const screened = job('screened-well');
