import type { materialRules } from '../../../model/rules/materials.ts';
import type { LongWords } from '../../ruleWords.ts';
import { capital } from '../phrases.ts';

export const long: LongWords<typeof materialRules> = {
  'PR-52': {
    holds: 'Metals and pipe sizes go together',
    held: {
      noneTouch: () => ({ title: 'No dissimilar metals touch under water', amount: 'none' }),
      goTogether: () => ({ amount: 'they match' }),
      barbsFit: () => ({ title: 'Insert fittings fit the pipe', amount: 'same size system' }),
    },
    asks: () => 'No metals that harm each other touch under water, and every barb fits its pipe.',
    source:
      'ASTM G82 galvanic series; MIL-STD-1250A, 5.6 (areas); barbs: ASTM D2239 and D2609, limits of fit: no source',
    why: 'Of two dissimilar metals under water one eats the other; a barb of another system slips.',
    messages: {
      barbsDoNotFit: ({ standard, sits }) =>
        `Insert fittings are made for ASTM D2239 pipe; in ${standard} they ${SITS[sits]}.`,
      galvanizedOnStainless: () =>
        'A small galvanized fitting beside stainless pump or pipe loses its zinc, then its thread.',
      stainlessOnGalvanized: () => 'Stainless steel on galvanized pipe eats the cut threads, where the zinc is gone.',
      brassOnGalvanized: () => 'Brass on galvanized pipe eats the cut threads, where the zinc is gone.',
      brassOnStainless: () => 'In sour or salty water brass wears away beside the stainless pump.',
      motorInSteelCasing: () => 'In sour or salty water the steel casing wears near the stainless motor, slowly.',
      noneTouch: () => 'Among fittings, drop pipe, pump and casing, as told, no dissimilar metals touch.',
      barbsFit: ({ standard }) => `Insert fittings are made for ${standard} pipe, and this pipe is.`,
      goTogether: ({ fittings, material }) =>
        `${capital(fittings)} fittings and ${material} pipe go together in this water.`,
    },
    fixes: {
      pipeForBarbs: ({ rating }, show) => `Use ASTM D2239 pipe rated ${show.pressure(rating)}`,
      pipeOrFittings: () => 'Take ASTM D2239 pipe, or fittings made for this pipe.',
      stainlessFittings: () => 'Use stainless steel fittings',
      plasticLength: () => 'Use plastic drop pipe, or break the metal path with a plastic length.',
      askCorrosionEngineer: () => 'Ask a corrosion engineer; never take a required ground wire off.',
    },
  },
  'PR-65': {
    holds: 'The threads are of one system',
    held: {
      oneSystem: () => ({ amount: 'they match' }),
    },
    asks: () => 'The thread of the pump’s outlet, and that of the adapter, are of the same system as the pipe’s.',
    source: 'ASME B1.20.1 (NPT, 60 degrees); ISO 7-1 (Rp, Rc and R, 55 degrees), of two pitches',
    why: 'They start on one another, bind after a turn or two, and then neither seal nor bear.',
    messages: {
      twoSystems: ({ ends, size, system, pipe }) =>
        `${ends.length > 1 ? 'Adapter and pump have' : ends[0] === 'pump' ? 'The pump’s outlet has' : 'The adapter has'} ${
          ends.length > 1 ? '' : `${size} `
        }${system} thread, the pipe’s fittings have ${pipe}.`,
      oneSystem: ({ ends }) =>
        `${ends.length > 1 ? 'Outlet and adapter have' : ends[0] === 'pump' ? 'The outlet has' : 'The adapter has'} thread of the same system as the pipe.`,
    },
    fixes: {
      pieceBetween: () => 'Put a piece between them that has one thread of each. Never force one into the other.',
    },
  },
};

const SITS = { loose: 'sit loose', forced: 'must be forced', 'does not enter': 'do not go in' } as const;
