/** Chlorine for the well: how much, how long, and how to get it out again. */
import { contextOf } from '../explain/context.ts';
import type { UnitSystem } from '../explain/measure.ts';
import type { Solution, Solved } from '../solution.ts';
import { doseTable, productTable } from './disinfection/dose.ts';
import { volumeFigures } from './disinfection/volume.ts';
import type { Sheet } from './sheet.ts';

export function disinfectionSheet(solution: Solution | Solved, units: UnitSystem): Sheet {
  const context = contextOf(solution, units);
  return {
    key: 'disinfection',
    title: 'Disinfection',
    figures: volumeFigures(context),
    tables: [productTable(context), doseTable(context)],
    notes: [
      'Fresh, unscented bleach without additives; its strength falls in storage. The result is good to about 15 %.',
      'Mix it in a bucket of water, pour it round the inside of the casing, and wash casing, pipe and cable with the hose for a quarter of an hour. Open each tap until it smells of chlorine.',
      'Let it stand: two hours at the least by one state, overnight as most do, up to 24 hours. Nobody drinks meanwhile.',
      'Bypass softeners and carbon filters; drain or bypass the water heater.',
      'Water with a pH above about 8 weakens the chlorine. More is not better: above 500 mg/L is too much by Maryland’s rule.',
      'When no chlorine is left, and some days later as many rules ask, have the water tested for coliform bacteria before anyone drinks it. A well that fails again has a fault in cap, casing or grout.',
    ],
    cautions: [
      'Wear goggles and gloves, and keep the air moving: chlorine burns eyes, skin and lungs.',
      'Never mix bleach with acid, vinegar, ammonia or another cleaner: the gas kills. Keep granules dry and away from oil and fuel.',
      'Flush onto gravel or a ditch, away from septic system, plants, fish and streams. Local rules decide.',
      'Switch the breaker off before the cap comes off. Never climb into a well or a pit.',
    ],
  };
}
