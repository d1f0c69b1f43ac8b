import { describe, expect, test } from 'vitest';
import { draw, type Scene, type View } from '../../src/draw/index.ts';
import { lookOf } from '../../src/draw/hatch/materials.ts';
import { THEMES } from '../../src/draw/theme.ts';
import { solve } from '../../src/model/index.ts';
import type { PartKind, Solution } from '../../src/model/solution.ts';
import { GALLERY } from './gallery.ts';
import { PATTERN_NAMES } from './hatch/names.ts';
import { flat } from './pictures.ts';

interface Seen {
  readonly solution: Solution;
  readonly scene: Scene;
  readonly view: View;
  /** Words of the keys of all shapes: "checkValve" of "checkValve/2". */
  readonly words: ReadonlySet<string>;
}

const SEEN: readonly Seen[] = GALLERY.map(({ plan, view: asked }) => {
  const view: View = { sheet: 'all', width: 1040, height: 920, units: 'us', theme: 'light', ...asked };
  const solution = solve(plan);
  const scene = draw(solution, view);
  const words = new Set(flat(scene.shapes).flatMap(({ shape }) => shape.key.split('/')));
  return { solution, scene, view, words };
});

const shown = (word: string) => SEEN.filter(({ words }) => words.has(word)).length;

/** Every kind of part that there is, and the word that its drawing goes by: the compiler asks for one that is new. */
const DRAWN_AS: Readonly<Record<PartKind, string>> = {
  motor: 'motor',
  intake: 'intake',
  pump: 'pump',
  cableGuardStrip: 'cableGuardStrip',
  shroud: 'shroud',
  nipple: 'nipple',
  checkValve: 'checkValve',
  flowLimiter: 'flowLimiter',
  insertFitting: 'insertFitting',
  clamp: 'clamp',
  dropPipe: 'dropPipe',
  torqueArrestor: 'torqueArrestor',
  splice: 'splice',
  capSplice: 'capSplice',
  probe: 'probe',
  tie: 'strap',
  guard: 'guard',
  cable: 'cable',
  rope: 'rope',
  pitlessAdapter: 'pitlessAdapter',
  cap: 'cap',
  conduit: 'conduit',
  bond: 'bond',
  seal: 'seal',
  coupling: 'coupling',
  tee: 'tee',
  plug: 'plug',
  union: 'union',
  tap: 'tap',
  support: 'support',
  buriedLine: 'buriedLine',
  reliefValve: 'reliefValve',
  gauge: 'gauge',
  riser: 'riser',
  tankTee: 'tankTee',
  reliefPipe: 'reliefPipe',
  drain: 'drain',
  shutOff: 'shutOff',
  float: 'float',
  disconnect: 'disconnect',
  controlBox: 'controlBox',
  drive: 'drive',
  switch: 'switch',
  tank: 'tank',
  casing: 'casing',
  screen: 'screen',
  openHole: 'openHole',
  grout: 'grout',
  well: 'well',
  frost: 'frost',
  staticLevel: 'staticLevel',
  pumpingLevel: 'pumpingLevel',
};

describe('the kept pictures together show', () => {
  test.each(Object.entries(DRAWN_AS))('%s', (_kind, word) => {
    expect(shown(word)).toBeGreaterThan(0);
  });

  test.each(['open hole', 'screen', 'driven point', 'dug'] as const)('a well that takes its water by %s', (kind) => {
    expect(SEEN.some(({ solution }) => solution.facts.well.intake.kind === kind)).toBe(true);
  });

  test.each(['pitless', 'seal'] as const)('a well with %s on top', (kind) => {
    expect(SEEN.some(({ solution }) => solution.facts.top.kind === kind)).toBe(true);
  });

  test.each(['pressure tank', 'open tank'] as const)('a house with %s', (kind) => {
    expect(SEEN.some(({ solution }) => solution.facts.house.kind === kind)).toBe(true);
  });

  test.each([
    'switch',
    'drive',
    'snow',
    'blades',
    'roots',
    'drivePoint',
    'inflow',
    'entry',
    'gravelPack',
    'unknownZone',
  ])('%s', (word) => {
    expect(shown(word)).toBeGreaterThan(0);
  });

  test.each(Object.keys(THEMES))('the %s theme', (theme) => {
    expect(SEEN.some(({ view }) => view.theme === theme)).toBe(true);
  });

  test.each(['us', 'metric'] as const)('%s units, with either top', (units) => {
    const tops = SEEN.filter(({ view }) => view.units === units).map(({ solution }) => solution.facts.top.kind);
    expect(new Set(tops)).toEqual(new Set(['pitless', 'seal']));
  });

  test.each(PATTERN_NAMES)('ground drawn as %s', (pattern) => {
    const looks = SEEN.flatMap(({ solution }) => solution.facts.well.layers.map(({ material }) => lookOf(material)));
    const drawn = new Set(looks.map((look) => look.pattern));
    expect(drawn.has(pattern)).toBe(true);
  });
});

describe('snow lies where the plan says that the ground freezes', () => {
  test.each(SEEN.map((seen, i) => [GALLERY[i]?.name ?? '', seen] as const))(
    'in %s',
    (_name, { solution, words, view }) => {
      const { frostDepth } = solution.values;
      const surface = view.sheet === 'all' || view.sheet === 'section' || view.sheet === 'top';
      expect(words.has('snow')).toBe(surface && frostDepth !== null && frostDepth > 0);
    },
  );
});
