/** The string as pieces and joints: what it adds up to, what hangs on it, and in which order it is put together. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { solve, type Plan, type Solution } from '../../../../src/model/index.ts';
import { pumpWeight } from '../../../../src/model/formulas/hangLoad.ts';
import { hangingString } from '../../../../src/model/figures/hanging.ts';
import { graphOf, jointBetween } from '../../../../src/model/string/graph/graph.ts';
import type { Joint, Piece, StringGraph } from '../../../../src/model/string/graph/piece.ts';
import { suspensionDepth } from '../../../../src/model/string/topDepths.ts';
import { feet, toFeet, toInches, toPoundsMass } from '../../../../src/model/units.ts';
import { anyPlan } from '../../../plans/anyPlan.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../../plans/build.ts';
import { anyString } from '../anyString.ts';

const STEEL = { material: 'galvanized steel', size: '1-1/4 in', sectionLength: '21 ft' };
const graph = (plan: Plan): StringGraph => graphOf(solve(plan));
const named = ({ pieces }: StringGraph, key: string): Piece => {
  const found = pieces.find((piece) => piece.key === key);
  if (found === undefined) throw new Error(`no piece "${key}"`);
  return found;
};
const joint = (of: StringGraph, one: string, other: string): Joint => {
  const found = jointBetween(of, one, other);
  if (found === undefined) throw new Error(`${one} and ${other} do not meet`);
  return found;
};
const sum = (values: readonly (number | null)[]): number => values.reduce<number>((all, one) => all + (one ?? 0), 0);
const ofKind = ({ pieces }: StringGraph, kind: Piece['kind']) => pieces.filter((piece) => piece.kind === kind);

describe('PE on an adapter, with a valve at the pump and one 60 ft above it', () => {
  const of = graph(rockWell({ string: { checkValves: ['0 ft', '60 ft'], fittings: 'brass' } }));
  test('the water runs through every piece, fittings and all', () => {
    expect(of.chain).toEqual([
      'pitlessAdapter/spool',
      'insertFitting/top',
      'dropPipe',
      'insertFitting/checkValve/2/above',
      'checkValve/2',
      'insertFitting/checkValve/2/below',
      'dropPipe/2',
      'insertFitting/pump',
      'checkValve',
      'nipple',
      'bushing',
      'pump',
      'intake',
      'motor',
    ]);
  });
  test('a barb takes up 2 in, and a thread nothing that is in a length', () => {
    expect(toInches(joint(of, 'insertFitting/top', 'dropPipe').takesUp)).toBeCloseTo(2, 9);
    expect(joint(of, 'checkValve', 'nipple').takesUp).toBeCloseTo(0, 9);
  });
  test('the pipe goes over brass barbs with clamps, the fittings into the valve by their thread', () => {
    expect(joint(of, 'dropPipe', 'insertFitting/checkValve/2/above').way).toMatchObject({
      by: 'barb',
      fittings: 'brass',
    });
    const { a, b, way } = joint(of, 'insertFitting/checkValve/2/above', 'checkValve/2');
    expect(way).toEqual({ by: 'thread' });
    expect([a.sex, b.sex]).toEqual(['male', 'female']);
  });
  test('a bushing in the outlet of the pump takes the nipple of a smaller pipe', () => {
    const [outlet, nipple] = [joint(of, 'bushing', 'pump'), joint(of, 'nipple', 'bushing')];
    expect(outlet.b).toMatchObject({ piece: 'pump', sex: 'female', size: '1-1/4 in', system: 'NPT' });
    expect(outlet.a).toMatchObject({ piece: 'bushing', sex: 'male', size: '1-1/4 in' });
    expect(nipple.b).toMatchObject({ piece: 'bushing', sex: 'female', size: '1 in' });
  });
  test('a pipe of the outlet’s size needs none, whatever its name', () => {
    for (const size of ['1-1/4 in', '40 mm']) {
      const same = graph(rockWell({ dropPipe: { material: 'PE', size, rating: '200 psi' } }));
      expect(joint(same, 'nipple', 'pump').b).toMatchObject({ sex: 'female', size: '1-1/4 in' });
    }
  });
  test('an adapter that is threaded for a wider pipe takes the fitting by a bushing, and the line by that width', () => {
    const wide = graph(rockWell({ top: { kind: 'pitless', depth: '6 ft', thread: '1-1/4 in NPT' } }));
    expect(wide.chain.slice(0, 3)).toEqual(['pitlessAdapter/spool', 'bushing/top', 'insertFitting/top']);
    const [hangs, fits] = [
      joint(wide, 'pitlessAdapter/spool', 'bushing/top'),
      joint(wide, 'bushing/top', 'insertFitting/top'),
    ];
    expect(hangs.a).toMatchObject({ sex: 'female', size: '1-1/4 in', system: 'NPT' });
    expect(hangs.b).toMatchObject({ sex: 'male', size: '1-1/4 in' });
    expect(fits.a).toMatchObject({ sex: 'female', size: '1 in' });
    expect(fits.b).toMatchObject({ sex: 'male', size: '1 in' });
    // All that hangs, as on the fitting without it.
    const plain = graph(rockWell({ top: { kind: 'pitless', depth: '6 ft' } }));
    const bears = joint(plain, 'pitlessAdapter/spool', 'insertFitting/top').load?.atRest;
    expect(hangs.load?.atRest).toBe(bears);
    expect(bears).toBeGreaterThan(0);
  });
  test('where only the systems differ a piece with one thread of each stands between', () => {
    const both = graph(rockWell({ top: { kind: 'pitless', depth: '6 ft', thread: 'Rp 1' } }));
    expect(joint(both, 'pitlessAdapter/spool', 'bushing/top').a).toMatchObject({ size: '1 in', system: 'ISO 7-1' });
    expect(joint(both, 'bushing/top', 'insertFitting/top').b).toMatchObject({ size: '1 in', system: 'NPT' });
  });
  test('cable, splice and motor: the lead is nobody’s to cut, and a splice is one joint a conductor', () => {
    expect(named(of, 'cable').cut).toBeGreaterThan(feet(100));
    expect(named(of, 'cable/2').cut).toBeNull();
    expect(joint(of, 'cable/2', 'motor').way).toEqual({ by: 'plug' });
    expect(named(of, 'splice').count).toBe(4);
    expect(named(of, 'splice').after).toEqual(['cable', 'cable/2']);
  });
  test('a tie holds the cable to the pipe at its depth', () => {
    const highest = ofKind(of, 'tie').at(-1)!;
    expect(highest.after).toEqual(['dropPipe', 'cable']);
  });
});

describe('the line to the house', () => {
  const lineOf = (line: object, more: object = {}) =>
    graph(rockWell({ house: { ...rockWell().house, line }, ...more }));
  const chain = (of: StringGraph) =>
    of.joints
      .filter(({ a, b }) => [a, b].some(({ piece }) => piece === 'buriedLine' || piece === 'elbow'))
      .filter(({ way }) => way.by !== 'clamp' && way.by !== 'rest')
      .map(({ a, b, way }) => `${a.piece} ${way.by} ${b.piece}`);
  test('of polyethylene goes over a barb at either end, under two clamps', () => {
    const of = lineOf({ material: 'PE', size: '1-1/4 in', rating: '200 psi' });
    expect(chain(of)).toEqual([
      'elbow thread riser',
      'lineEnd/well barb buriedLine',
      'lineEnd/house barb buriedLine',
      'lineEnd/house thread elbow',
    ]);
    expect(ofKind(of, 'clamp').filter(({ key }) => key.startsWith('clamp/line/')).length).toBe(4);
    expect(joint(of, 'lineEnd/well', 'buriedLine').a).toMatchObject({ sex: 'male', size: '1-1/4 in' });
    // The adapter's thread is that of the pipe that hangs on it; the barb is the line's.
    expect(joint(of, 'pitlessAdapter', 'lineEnd/well').b).toMatchObject({ sex: 'male', size: '1 in' });
    expect(joint(of, 'lineEnd/house', 'elbow').a).toMatchObject({ sex: 'male', size: '1-1/4 in' });
  });
  test('of PVC is glued into adapters with a thread, and reduced where the pitless adapter is smaller', () => {
    expect(chain(lineOf({ material: 'PVC', size: '1-1/4 in' }))).toEqual([
      'elbow thread riser',
      'lineEnd/well socket buriedLine',
      'lineEnd/house socket buriedLine',
      'lineEnd/house thread elbow',
    ]);
    expect(joint(lineOf({ material: 'PVC', size: '1-1/4 in' }), 'pitlessAdapter', 'lineEnd/bushing').way).toEqual({
      by: 'thread',
    });
    expect(lineOf({ material: 'PVC', size: '1 in' }).pieces.some(({ kind }) => kind === 'bushing')).toBe(true);
    expect(ofKind(lineOf({ material: 'PVC', size: '1 in' }), 'bushing').map(({ key }) => key)).toEqual(['bushing']);
  });
  test('of steel has its own threads', () => {
    const of = lineOf({ material: 'galvanized steel', size: '1 in' });
    expect(chain(of)).toEqual(['elbow thread riser', 'pitlessAdapter thread buriedLine', 'buriedLine thread elbow']);
  });
  test('is cut for the slope and for the way up out of the trench', () => {
    // Pythagoras: 120 ft along and 10 ft up, and 5 ft out of the trench.
    const of = lineOf({ material: 'PE', size: '1-1/4 in', rating: '200 psi' });
    expect(toFeet(named(of, 'buriedLine').cut!)).toBeCloseTo(Math.sqrt(120 ** 2 + 10 ** 2) + 5, 9);
  });
});

describe('the wires', () => {
  test('of the motor reach its head, and whoever cuts cable begins above its lead', () => {
    const of = graph(rockWell());
    expect(toFeet(named(of, 'cable/2').bottom)).toBeGreaterThan(140);
    expect(named(of, 'cable/2').cut).toBeNull();
  });
  test('lead on from the cap to the house, and end at what starts the motor', () => {
    const of = graph(rockWell());
    expect(toFeet(named(of, 'houseCable').cut!)).toBeCloseTo(120, 9);
    expect(joint(of, 'houseCable', 'capSplice').way).toMatchObject({ by: 'splice' });
    expect(joint(of, 'controlBox', 'houseCable').way).toEqual({ by: 'wires' });
    const twoWire = graph(rockWell({ pump: { ...rockWell().pump, wires: 2 } }));
    expect(joint(twoWire, 'switch', 'houseCable').way).toEqual({ by: 'wires' });
  });
  test('of a probe go up to a relay in the house', () => {
    const of = graph(rockWell({ pump: { ...rockWell().pump, lowLevelCutOff: '130 ft' } }));
    expect(joint(of, 'relay', 'probeWires').way).toEqual({ by: 'wires' });
    expect(joint(of, 'probe', 'probeWires').way).toEqual({ by: 'wires' });
    expect(toFeet(named(of, 'probeWires').cut!)).toBeGreaterThan(130 + 120);
  });
});

test('a seal’s tee branches: plug above, line to the house beside, nipple below', () => {
  const of = graph(rockWell({ top: { kind: 'seal' } }));
  const ends = of.joints.flatMap(({ a, b }) => (a.piece === 'tee' ? [b.piece] : b.piece === 'tee' ? [a.piece] : []));
  expect(ends.sort()).toEqual(['lineEnd/well', 'nipple/top', 'plug']);
  expect(joint(of, 'casing/0', 'seal').way).toEqual({ by: 'rest' });
});

test('rigid pipe is cut at its couplings, and every section but the highest is as long as it comes', () => {
  const of = graph(rockWell({ dropPipe: STEEL }));
  const pipe = ofKind(of, 'dropPipe');
  expect(pipe.length).toBe(ofKind(of, 'coupling').length + 1);
  for (const { cut } of pipe.slice(1)) expect(toFeet(cut!)).toBeCloseTo(21, 9);
  expect(joint(of, 'dropPipe/section/1', `coupling/${pipe.length - 1}`).way).toEqual({ by: 'thread' });
});

// ASME B36.10M, table of weights: NPS 1-1/4 schedule 40 plain end, 2.27 lb/ft.
test('21 ft of 1-1/4 in schedule 40 steel pipe weigh 47.7 lb', () => {
  const of = graph(rockWell({ dropPipe: STEEL }));
  expect(toPoundsMass(ofKind(of, 'dropPipe').at(-1)!.mass!)).toBeCloseTo(21 * 2.27, 0);
});

// Published table of three-strand polypropylene rope: 1/4 in, 1.2 lb a hundred feet.
test('1/4 in polypropylene rope weighs 1.2 lb a hundred feet of what is cut', () => {
  const rope = named(graph(rockWell({ rope: { material: 'polypropylene', diameter: '1/4 in' } })), 'rope');
  expect((toPoundsMass(rope.mass!) / toFeet(rope.cut!)) * 100).toBeCloseTo(1.2, 6);
});

test('each value knows whether somebody said it', () => {
  const said = rockWell({ string: { fittings: 'brass', checkValves: ['0 ft'] } });
  expect(named(graph(said), 'insertFitting/pump').assumed.material).toBe(false);
  expect(named(graph(rockWell()), 'insertFitting/pump').assumed.material).toBe(true);
  const { pump, ...rest } = said;
  expect(pump).toBeDefined();
  const hungByUs = graph({ ...rest, pump: { power: '1 hp' } });
  expect(named(hungByUs, 'dropPipe').assumed).toMatchObject({ bottom: true, cut: true, size: false });
  expect(named(hungByUs, 'pump').assumed.mass).toBe(true);
});

/** Whether each piece along the water stands in the next: a plan may hang its pump into its own top works. */
function isWhole({ chain, joints }: StringGraph): boolean {
  const met = new Set(joints.flatMap(({ a, b }) => [`${a.piece}|${b.piece}`, `${b.piece}|${a.piece}`]));
  return chain.every((key, i) => i === 0 || met.has(`${chain[i - 1]}|${key}`));
}

describe('laws of any string', () => {
  const check = (solution: Solution): void => {
    const of = graphOf(solution);
    const { values, facts } = solution;
    const keys = of.pieces.map(({ key }) => key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const { a, b, takesUp } of of.joints) {
      expect(keys).toContain(a.piece);
      expect(keys).toContain(b.piece);
      expect(takesUp).toBeGreaterThanOrEqual(-1e-6);
    }
    // What is cut is what the figures say.
    const pipe = ofKind(of, 'dropPipe');
    expect(sum(pipe.map(({ cut }) => cut))).toBeCloseTo(values.dropPipeToCut!, 9);
    expect(sum(pipe.map(({ mass }) => mass))).toBeCloseTo(values.dropPipeToCut! * facts.dropPipe.massPerLength, 9);
    expect(sum(ofKind(of, 'cable').map(({ cut }) => cut))).toBeCloseTo(values.wireLength!, 9);
    for (const { cut } of ofKind(of, 'rope')) expect(cut).toBe(values.ropeLength);
    threads(of);
    order(of);
    if (isWhole(of)) {
      lengths(of, solution);
      loads(of, solution);
    }
  };

  /** Male in female, of one size and one system. */
  const threads = ({ joints }: StringGraph): void => {
    for (const { a, b, way } of joints) {
      if (way.by !== 'thread' || a.sex === null || b.sex === null) continue;
      expect([a.sex, b.sex].sort(), `${a.piece} in ${b.piece}`).toEqual(['female', 'male']);
      expect(a.system).toBe(b.system);
      if (a.size !== null && b.size !== null) expect(a.size, `${a.piece} in ${b.piece}`).toBe(b.size);
    }
  };

  /** The string hangs together before what bears it bears it; what fastens comes when what it fastens is there. */
  const order = (of: StringGraph): void => {
    for (const { a, first, load, way } of of.joints) {
      const bearsInWell = a.piece === 'casing/0' || a.piece === 'pitlessAdapter' || a.piece === 'seal';
      if (load !== null) expect(first).toBe(bearsInWell ? 'a' : 'b');
      if (way.by === 'strap' || way.by === 'clamp') expect(first).toBe('a');
    }
  };

  /** Pieces on the way down less what stands in one another: from the suspension to the discharge what hangs. */
  const lengths = (of: StringGraph, { values, facts }: Solution): void => {
    const from = of.chain.findIndex((key) => key === 'pitlessAdapter/spool' || key === 'coupling/top');
    const hanging = of.chain.slice(from, of.chain.indexOf('pump')).map((key) => named(of, key));
    const [top] = hanging;
    if (top === undefined || from < 0) return;
    const takenUp = hanging.slice(1).map((piece, i) => joint(of, hanging[i]!.key, piece.key).takesUp);
    const reach = sum(hanging.map((piece) => piece.bottom - piece.top)) - sum(takenUp);
    expect(reach - (suspensionDepth(facts) - top.top)).toBeCloseTo(values.dropPipeCutLength!, 6);
  };

  const loads = (of: StringGraph, { values, facts }: Solution): void => {
    const bearing = of.joints.filter(({ load }) => load !== null);
    const tops = bearing.filter(({ a }) => ['casing/0', 'pitlessAdapter', 'seal'].includes(a.piece));
    expect(tops.length).toBe(2);
    for (const { load } of tops) {
      expect(load).toEqual({
        lowering: values.hangLoadLowering,
        atRest: values.hangLoadAtRest,
        pumping: values.hangLoadPumping,
        dry: values.hangLoadDry,
      });
    }
    // On the lowest joint hangs the pump alone.
    const string = hangingString(facts, 0);
    const lowest = bearing.find(({ b }) => b.piece === 'pump');
    if (string !== null) expect(lowest?.load?.dry).toBeCloseTo(pumpWeight({ ...string, waterDepth: 0 }), 6);
    // In air each joint bears no less than the one below it.
    const down = bearing.filter(({ a }) => of.chain.includes(a.piece)).map(({ load }) => load?.dry ?? null);
    for (let i = 1; i < down.length; i++)
      if (down[i] != null) expect(down[i]!).toBeLessThanOrEqual(down[i - 1]! + 1e-6);
  };

  test('as anyone might hang it', () => {
    fc.assert(
      fc.property(anyString, (plan) => check(solve(plan))),
      { numRuns: 250, seed: 11 },
    );
  });
  test('and of any plan', () => {
    fc.assert(
      fc.property(anyPlan, (json) => check(solve(planOf(json)))),
      { numRuns: 150, seed: 12 },
    );
  });
  test.each(SAMPLES)('%s hangs whole, and everything in it is fastened to something', (name) => {
    const solution = solve(planOf(sample(name)));
    const of = graphOf(solution);
    check(solution);
    expect(isWhole(of)).toBe(true);
    const met = new Set(of.joints.flatMap(({ a, b }) => [a.piece, b.piece]));
    expect(of.pieces.filter(({ key }) => !met.has(key)).map(({ key }) => key)).toEqual([]);
  });
});

test('a plan that hangs its pump into the adapter has no joint where nothing meets', () => {
  const plan = rockWell({ pump: { setting: '6 ft 8 in', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } } });
  const of = graph(plan);
  expect(isWhole(of)).toBe(false);
  expect(ofKind(of, 'dropPipe')).toEqual([]);
});

test('under a seal the rope hangs on its eye, and the cable passes it before it is bolted', () => {
  for (const tied of ['casing hook', 'cap'] as const) {
    const of = graph(planOf({ ...sample('palo-amargo'), rope: { material: 'polypropylene', tied } }));
    expect(joint(of, 'seal', 'rope').way).toEqual({ by: 'knot' });
    expect(named(of, 'seal').after).toContain('cable');
  }
});

test('a cap goes on when the cable is joined under it', () => {
  expect(named(graph(rockWell()), 'cap').after).toContain('capSplice');
});

test('each piece is shown by a part that is drawn', () => {
  fc.assert(
    fc.property(anyString, (plan) => {
      const solution = solve(plan);
      const drawn = new Set(solution.parts.map(({ key }) => key));
      for (const { key, part } of graphOf(solution).pieces) {
        if (part !== 'casing/0') expect(drawn.has(part), `${key} by ${part}`).toBe(true);
      }
    }),
    { numRuns: 60, seed: 41 },
  );
});

test('cut pipe is shown as the whole, and the cable from the house by its conduit', () => {
  const of = graph(rockWell({ string: { checkValves: ['0 ft', '60 ft'] } }));
  expect(named(of, 'dropPipe/2').part).toBe('dropPipe');
  expect(named(of, 'cable/2').part).toBe('cable');
  expect(named(of, 'houseCable').part).toBe('conduit');
  expect(named(of, 'bushing').part).toBe('nipple');
});
