/** The water in the well: how far it falls, what comes with it, and where it comes in. */
import { lowestLevel, neverDraws } from '../figures/lowestLevel.ts';
import { hasCutOff } from '../rules/cutOff.ts';
import { exceeds } from '../rules/grace.ts';
import { screenTop } from '../rules/pumpDepth.ts';
import { whenSaid } from './evidence.ts';
import { broken, type CauseId, type Judge } from './cause.ts';
import { LOWER_RESTS, lowerWater } from './lower.ts';
import { own, type Shows } from './own.ts';
import type { SymptomId } from './symptom.ts';

/** What is looked for as the water falls; where it is not named, air. */
const SHOWN_BY: Readonly<Partial<Record<SymptomId, Shows>>> = {
  'no-water': 'nothing',
  'weak-flow': 'little',
  'never-stops': 'noStop',
};

const waterLow: Judge = (asked) => {
  const { facts } = asked.solution;
  const { says, shown } = lowerWater(asked, SHOWN_BY[asked.symptom] ?? 'air');
  return {
    at: ['intake'],
    says,
    shown,
    // Where it is the pump that draws the water down, that is told of the pump.
    likelyBy: [broken('PR-02', 'wellDry', 'aboveWater', 'barelyCovered')],
    decidedBy: ['water.staticLevel', ...(facts.water.staticLowest === null ? ['water.staticLowest'] : [])],
    rests: LOWER_RESTS,
  };
};

/** What comes of a pump that is not stopped before it runs dry. */
const PAST_THE_GUARD: ReadonlySet<SymptomId> = new Set(['air', 'milky', 'never-stops']);

/** The pump takes more than flows in: it draws the water down to its intake while it runs, and the water comes back. */
const outpumped: Judge = ({ solution, symptom }) => {
  const { facts, values, curves, lowest } = solution;
  const rests = [
    'pump.setting',
    'pump.curve.flow',
    'pump.frequency',
    'house.cutIn',
    'house.demand',
    'water.pumping.flow',
  ];
  const decidedBy = ['water.pumping', 'well.yield', 'pump.power'];
  const most = curves.atCutInMost;
  // Where no water stands over the pump even at rest, that is the trouble.
  if (neverDraws(facts)) return null;
  const likelyBy = [broken('PR-07'), broken('PR-55'), broken('PR-02', 'runsDry', 'mayRunDry')];
  if (most?.outpumped === true) {
    const end = lowestLevel(facts);
    const stopsThere = PAST_THE_GUARD.has(symptom) && hasCutOff(solution);
    return {
      at: ['intake'],
      says: [
        own('drawnDown', {
          time: values.timeToBreakSuction,
          level: end.depth,
          by: end.by === 'intake' ? 'intake' : 'cutOff',
        }),
        ...(stopsThere ? [own('guardStops', {})] : []),
      ],
      shown: !stopsThere,
      likelyBy,
      decidedBy,
      rests,
    };
  }
  const over = lowest === null ? null : facts.pump.setting - lowest.depth;
  const keeps = over !== null && exceeds(over, 'length') && (lowest?.by === 'level' || lowest?.by === 'dryLevel');
  return {
    at: ['intake'],
    says: keeps && lowest !== null && lowest.taken === null ? [own('staysOver', { level: lowest.depth, over })] : [],
    likelyBy,
    // By its own figures the well keeps up; where the pump is one of a rating, by its stronger end.
    unlikelyBy: ['PR-07'],
    decidedBy,
    rests,
  };
};

const gas: Judge = ({ solution: { facts } }) => {
  const { gas: said } = facts.water;
  return {
    at: ['cap', 'seal'],
    says: said === null ? [] : [said ? own('gasSaid', {}) : own('noGasSaid', {})],
    likelyBy: [broken('PR-60', 'gas', 'gasUnderRoof')],
    shown: said === true,
    ruledOut: said === false,
    decidedBy: ['water.gas'],
  };
};

const nearBottom: Judge = ({ solution: { values } }) => {
  const clearance = values.clearanceToBottom;
  return {
    at: ['motor'],
    says: clearance === null ? [] : [clearance > 0 ? own('offBottom', { clearance }) : own('onBottom', {})],
    likelyBy: [broken('PR-01'), broken('PR-60', 'sandNearBottom')],
    unlikelyBy: ['PR-01'],
    decidedBy: ['well.soundedDepth'],
    rests: ['pump.setting'],
  };
};

const inScreen: Judge = ({ solution }) =>
  screenTop(solution) === null
    ? null
    : {
        at: ['motor'],
        likelyBy: [broken('PR-03'), broken('PR-60', 'sandInScreen')],
        unlikelyBy: ['PR-03'],
        rests: ['pump.setting'],
      };

const screenFast: Judge = ({ solution: { facts } }) =>
  facts.well.intake.screens.length === 0
    ? null
    : {
        at: ['intake'],
        likelyBy: [broken('PR-37')],
        unlikelyBy: ['PR-37'],
        decidedBy: ['well.intake.screens.0.openArea', 'well.intake.screens.0.slot'],
      };

/** A screen with a hole, or a casing that lets the ground in at its foot. */
const brokenWall: Judge = ({ solution: { facts } }) => {
  const bottom = facts.well.casings[0]?.bottom ?? null;
  return {
    at: ['intake'],
    says: bottom === null || bottom > facts.well.bottom ? [] : [own('casingFoot', { bottom })],
    likelyBy: [broken('PR-35'), broken('PR-36')],
    decidedBy: ['well.casing.bottom'],
  };
};

const newWork: Judge = () => ({ at: ['tap', 'drain', 'shutOff', 'tank'] });

const surfaceWater: Judge = ({ solution }) => ({
  at: ['cap', 'seal'],
  says: whenSaid(solution, ['well.casing.height'], own('casingStands', { height: solution.facts.well.casingHeight })),
  likelyBy: [broken('PR-23'), broken('PR-24'), broken('PR-26')],
  decidedBy: ['well.casing.height', 'site.floodHeight', 'well.inPit', 'well.grout.bottom'],
});

const nearWaste: Judge = () => ({
  at: ['cap', 'seal'],
  likelyBy: [broken('PR-40')],
  decidedBy: ['site.septicTank.distance', 'site.drainField.distance'],
});

const corrosion: Judge = ({ solution: { facts } }) => {
  const { acidity } = facts.water;
  return {
    at: ['insertFitting', 'nipple', 'dropPipe'],
    says: acidity === null ? [] : [own('acid', { acidity })],
    likelyBy: [broken('PR-52')],
    decidedBy: ['water.pH', 'water.conductivity'],
    rests: ['string.fittings'],
  };
};

const bacteria: Judge = ({ solution: { facts, values } }) => {
  const { wellVolume: water, chlorineDose: product } = values;
  const { strength } = facts.disinfection;
  return {
    at: ['pump'],
    says: water === null || product === null ? [] : [own('dose', { water, product, strength })],
    decidedBy: ['water.staticLevel', 'well.intake.diameter'],
    rests: ['disinfection.strength', 'disinfection.target', 'well.casing.schedule'],
  };
};

export const waterCauses = {
  waterLow,
  outpumped,
  gas,
  nearBottom,
  inScreen,
  screenFast,
  brokenWall,
  newWork,
  surfaceWater,
  nearWaste,
  corrosion,
  bacteria,
} satisfies { readonly [Id in CauseId]?: Judge };
