/** Before anybody drinks. */
import type { Ratio } from '../../../model/si.ts';
import { round } from './phrases.ts';
import type { StepsOf } from './stepWords.ts';

/**
 * Sources  2 hours at the least: Okla., overnight to 24 h: Alberta Agdex 716, MIL-HDBK-1164; the bucket, 15 minutes of
 *          hosing, smell at each tap: common practice, no source; never with acid or ammonia: label of the product; sample
 *          some days later: 77 Ill. Adm. Code 925.50; nitrate is not boiled out: EPA on private wells
 */
export const after: StepsOf<'disinfect' | 'flush' | 'sample' | 'record'> = {
  disinfect: ({ product, strength, opens, open }, show) => ({
    title: 'Disinfect the well',
    does: [
      product === null
        ? `Nobody knows how much water stands in the well: ask how much ${label(strength)} bleach it takes.`
        : `Stir ${show.volume(product)} of fresh, plain ${label(strength)} bleach into ${round(show, '5 to 10 gal', '20 to 40 L')} of water.`,
      opens === 'cap'
        ? 'With the breaker locked off, open the cap and pour it round the inside of the casing.'
        : 'With the breaker locked off, pour it in where the seal’s vent screws in; leave its bolts alone.',
      'Put a hose or tube with the pump’s water in, step back, switch on: 15 minutes.',
      'Switch off, lock, take the hose out, and close the well.',
      open
        ? 'Fill the open tank with it, bypass softener and filters, then open each tap until it smells of chlorine.'
        : 'Bypass softener and filters, then open each tap until it smells of chlorine.',
      'Let it stand overnight, and let nobody drink from it.',
    ],
    why: 'Hands, pipe and tools have carried germs into the well.',
    check: ['Every tap has smelled of chlorine.', 'A note on each tap tells people not to drink.'],
    mistake: 'More is poured in to be sure: strong chlorine harms rubber and metal, and takes days to flush out.',
  }),
  flush: ({ open }) => ({
    title: 'Flush the chlorine out',
    does: [
      'Run an outside tap through a hose until the smell is gone.',
      'Lead the water onto gravel, away from septic tank, plants, fish and streams.',
      'Run no faster than the well gives, and watch that the pump draws no air.',
      open
        ? 'Drain the open tank, nobody climbs in; then run each tap in the house, and drain or flush the heater.'
        : 'Then run each tap in the house, and drain or flush the heater.',
    ],
    why: 'Strong chlorine kills what the septic tank lives on, and fish.',
    check: ['No tap smells of chlorine.', 'Softener and filters are back in use.'],
    mistake: 'All of it goes down the drain of the house, and the septic tank stops working.',
  }),
  sample: () => ({
    title: 'Have the water tested',
    does: [
      'Wait until no chlorine is left, and some days more if your rules ask for it.',
      'Get the bottle from the laboratory, and do not rinse it.',
      'Flame or wipe the tap as the laboratory says, run it, and fill the bottle.',
      'Ask for coliform bacteria and nitrate, and for what your region adds.',
      'Nobody drinks before the result is good; boiling does not take nitrate out.',
    ],
    why: 'Clear water can carry germs, and nitrate harms infants.',
    check: ['The result is on paper, with its date.'],
    mistake: 'The sample is taken with chlorine left in it, and says nothing about the well.',
  }),
  record: () => ({
    title: 'Write the record',
    does: [
      'Write down every depth and length as it was built, not as it was planned.',
      'Add the readings, the nameplate, and the turns of the lift-out pipe.',
      'Say where depths count from: the ground or the casing’s top.',
      'Keep one copy at the panel and one in the house’s papers.',
      'Send the report that your state asks for.',
    ],
    why: 'Whoever pulls this pump in ten years has only what you write today.',
    check: ['Somebody else could read it.'],
    mistake: 'It is left for later, and the next one measures the well again from the start.',
  }),
};

/** As the label prints it: "5.25 %". */
function label(strength: Ratio): string {
  return `${Number((strength * 100).toFixed(2))} %`;
}
