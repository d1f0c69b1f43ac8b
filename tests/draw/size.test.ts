/** How many letters a picture takes: section, both details, legend and title block, as it is mailed or put on a page. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  A3,
  A4,
  draw,
  landscape,
  LETTER,
  SPARE_ELSEWHERE,
  TABLOID,
  THEMES,
  toSvg,
  type View,
} from '../../src/draw/index.ts';
import { solve } from '../../src/model/index.ts';
import type { Plan } from '../../src/model/index.ts';
import { anyPlan } from '../plans/anyPlan.ts';
import { feet } from '../../src/model/units.ts';
import { planOf } from '../plans/build.ts';
import { BAD } from '../wells/bad.ts';
import { SOUND } from '../wells/sound.ts';
import { GALLERY } from './gallery.ts';
import { PATTERN_NAMES } from './hatch/names.ts';

/** Section and both details, with or without legend and title block. */
const MOST = 60_000;
/** In a well that is hardly deeper than its pump is long, both details show nearly all that there is. */
const SHALLOW = feet(40);
const MOST_OF_SHALLOW = 67_000;
/** On a sheet of twice the area labels say it in full, and the house may stand under the section. */
const ON_LARGE = 1.25;

const exported = { sheet: 'all', caption: true, spare: SPARE_ELSEWHERE } as const;
const USUAL: readonly Partial<View>[] = [
  { sheet: 'all' },
  { sheet: 'all', paper: LETTER },
  { ...exported, width: 1000, height: 920 },
  { ...exported, paper: LETTER },
  { ...exported, paper: landscape(LETTER) },
  { ...exported, paper: A4 },
];
const LARGE: readonly Partial<View>[] = [
  { ...exported, paper: TABLOID },
  { ...exported, paper: A3 },
  { sheet: 'all', width: 1600, height: 1400 },
];
const themes = Object.keys(THEMES) as View['theme'][];

/** Ground in every one of its patterns, one at a time: as drillers' words for it are. */
const MATERIALS: Readonly<Record<(typeof PATTERN_NAMES)[number], string>> = {
  soil: 'fill',
  clay: 'clay',
  silt: 'silt',
  sandyClay: 'sandy clay',
  fineSand: 'fine sand',
  sand: 'sand',
  coarseSand: 'coarse sand',
  gravel: 'gravel',
  sandAndGravel: 'sand and gravel',
  till: 'till',
  conglomerate: 'conglomerate',
  sandstone: 'sandstone',
  limestone: 'limestone',
  dolomite: 'dolomite',
  shale: 'shale',
  weatheredShale: 'weathered shale',
  granite: 'granite',
  basalt: 'basalt',
  schist: 'schist',
  weatheredRock: 'weathered granite',
  rock: 'ledge',
  unknown: 'mystery',
};

function inGround(plan: Plan, material: string): Plan {
  const { well } = plan;
  return well === undefined
    ? plan
    : { ...plan, well: { ...well, layers: [{ material, bottom: well.depth ?? '100 ft' }] } };
}

/** Letters that it takes, as a share of what it may take. */
function shareOf(plan: Plan, view: Partial<View>, larger: number): number {
  const solution = solve(plan);
  const most = solution.facts.well.depth < SHALLOW ? MOST_OF_SHALLOW : MOST;
  return toSvg(draw(solution, view)).length / (most * larger);
}

describe.each([
  ['usual', USUAL, 1],
  ['large', LARGE, ON_LARGE],
] as const)('on %s sheets', (_, views, larger) => {
  test('no well in any ground, theme or units takes more', () => {
    fc.assert(
      fc.property(
        anyPlan,
        fc.constantFrom(...PATTERN_NAMES),
        fc.constantFrom(...views),
        fc.constantFrom(...themes),
        fc.constantFrom('us' as const, 'metric' as const),
        (plan, pattern, view, theme, units) => {
          const ground = inGround(plan, MATERIALS[pattern]);
          expect(shareOf(ground, { ...view, theme, units }, larger)).toBeLessThanOrEqual(1);
        },
      ),
      { seed: 60, numRuns: 200 },
    );
  }, 120_000);

  test('nor does one of the wells whose pictures are kept, or that are judged sound or bad', () => {
    const plans = [...GALLERY.map(({ plan }) => plan), ...[...SOUND, ...BAD].map(({ plan }) => planOf(plan))];
    plans.forEach((plan, i) => {
      const view = { ...views[i % views.length], theme: themes[i % themes.length] ?? 'light' };
      expect(
        shareOf(plan, { ...view, units: i % 2 === 0 ? 'us' : 'metric' }, larger),
        plan.title ?? '',
      ).toBeLessThanOrEqual(1);
    });
  }, 120_000);
});
