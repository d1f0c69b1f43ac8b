/** What the line to the house must hold. */

import { meets } from './grace.ts';
import { askedBySwitch, mostOnLine, TIMES_CUT_OUT } from './pipeNeeds.ts';
import { bornePressure, isPlastic, LEAST_RATING, METAL_BEARS, overLeast } from './pipeRating.ts';
import { PUMP } from './restsOn.ts';
import { breaks, defineRule, doesNotApply, holds, missing } from './rule.ts';
import { lineDepth } from '../string/topDepths.ts';

export const lineHolds = defineRule({
  number: 'PR-61',
  part: 'buriedLine',
  restsOn: ['house.cutOut', ...PUMP, 'top.depth'],
  onlyHelps: ['pump.frequency'],
  asks: { least: LEAST_RATING, times: TIMES_CUT_OUT },
  judge({ solved, facts, values }) {
    const { line, cutOut, reliefValve, kind } = facts.house;
    if (line === null) return missing('line');
    const depth = lineDepth(facts);
    const reach = mostOnLine(solved);
    if (!isPlastic(line)) {
      if (reach === null) return missing(values.shutOffPressureAtPump === null ? 'powerOrCurve' : 'staticLevel');
      return meets(METAL_BEARS - reach, 'pressure')
        ? holds('metal', { material: line.material, bears: METAL_BEARS })
        : doesNotApply;
    }
    if (line.rating === null) return missing('ratingOfLine');
    const borne = bornePressure(line, 'house.line', facts);
    if (borne === null) return missing('ratingSoWarm', {}, ['house.line.rating']);
    const over = reach !== null && !meets(borne - reach, 'pressure');
    // A relief valve is a thing of pressure tanks: at an open tank it counts only where it was said.
    const unrelieved = reliefValve === false || (reliefValve === null && kind === 'open tank');
    if (over && unrelieved)
      return breaks(
        'bursts',
        'danger',
        { rating: borne, reach },
        { measured: borne, limit: reach, margin: borne - reach, quantity: 'pressure', depth },
      );
    const least = LEAST_RATING[facts.units];
    const spare = overLeast(line.rating, facts);
    if (!meets(spare, 'pressure'))
      return breaks(
        'weak',
        'warning',
        { rating: line.rating, least },
        { measured: line.rating, limit: least, margin: spare, quantity: 'pressure', depth },
      );
    const asked = askedBySwitch(facts);
    const margin = borne - asked;
    if (!meets(margin, 'pressure'))
      return breaks(
        'weakForSwitch',
        'warning',
        { rating: borne, asked, cutOut },
        { measured: borne, limit: asked, margin, quantity: 'pressure', depth },
      );
    if (over && reliefValve === null) return missing('reliefValve');
    // Without a relief valve nothing is sure until somebody says what the pump can reach.
    if (reach === null && reliefValve !== true)
      return missing(values.shutOffPressureAtPump === null ? 'powerOrCurve' : 'staticLevel');
    if (reach === null || !(reach > 0)) return holds('usualRating', { rating: line.rating, least });
    return over ? holds('relieved', { rating: borne, reach }) : holds('bearsPump', { rating: borne, reach });
  },
});

export const buriedLineRules = [lineHolds] as const;
