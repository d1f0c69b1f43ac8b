import { describe, expect, test } from 'vitest';
import type { Scene, View } from '../../../src/draw/index.ts';
import type { Solution } from '../../../src/model/index.ts';
import { feet } from '../../../src/model/units.ts';
import { planOf, rockWell, sample, SAMPLES } from '../../plans/build.ts';
import { overlaps } from '../labels/faults.ts';
import { extentOf, pathPoints } from '../parts/extent.ts';
import { find, flat, number, ownShapes, picture, textBoxes } from '../pictures.ts';

function frameOf(scene: Scene) {
  const frame = scene.frames.find((each) => each.view === 'O');
  if (frame === undefined) throw new Error('no section on this sheet');
  const k = frame.height / (frame.bottomDepth - frame.topDepth);
  return { ...frame, k, at: (depth: number) => frame.y + k * (depth - frame.topDepth) };
}

/** The axis of the well [px]. */
function middleOf(scene: Scene): number {
  const { left, right } = extentOf(find(scene.shapes, 'pumpBody > outline'));
  return (left + right) / 2;
}

describe('depths in the section', () => {
  test('fifteen feet and a thousand are drawn on one straight scale, from above the casing to below the bottom', () => {
    for (const depth of [15, 80, 220, 1000]) {
      const well = {
        depth: `${depth} ft`,
        casing: { material: 'steel', size: '6 in', bottom: `${depth / 2} ft`, height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
      };
      const { scene } = picture(
        rockWell({
          well,
          water: { staticLevel: `${depth * 0.3} ft` },
          pump: { setting: `${depth * 0.7} ft`, power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
        }),
      );
      const frame = frameOf(scene);
      expect(frame.topDepth).toBeLessThanOrEqual(-feet(2) + 1e-9);
      expect(frame.bottomDepth).toBeCloseTo(feet(depth + Math.max(2, depth * 0.03)), 6);
      expect(number(find(scene.shapes, 'staticLevel'), 'y1')).toBeCloseTo(frame.at(feet(depth * 0.3)), 6);
    }
  });

  test('every mark of depth stands within half a pixel of its depth', () => {
    const { scene, solution } = picture(planOf(sample('tamarack-ridge')));
    const frame = frameOf(scene);
    const y = (path: string, name = 'y1') => number(find(scene.shapes, path), name);
    const near = (drawn: number, depth: number | null) =>
      expect(Math.abs(drawn - frame.at(depth ?? NaN))).toBeLessThanOrEqual(0.5);
    near(y('groundSurface'), 0);
    near(y('levels > staticLevel'), solution.levels.static);
    near(y('levels > pumpingLevel'), solution.levels.pumping);
    near(y('frost > frost/line'), solution.values.frostDepth);
    near(y('tails > pumpSetting'), solution.values.intakeDepth);
    near(y('tails > wellBottom'), solution.facts.well.bottom);
    solution.facts.well.layers.slice(1).forEach((layer, i) => near(y(`ground > layer/${i + 1}/tint`, 'y'), layer.top));
    for (const chip of scene.chips) expect(Math.abs(chip.lineY - frame.y)).toBeLessThanOrEqual(frame.height);
  });

  test('pump and motor end where the model says, or are a dashed symbol in their middle', () => {
    const at = (depth: number) => {
      const { scene, solution } = picture(
        rockWell({
          well: {
            depth: `${depth} ft`,
            casing: { material: 'steel', size: '6 in', bottom: '20 ft', height: '12 in' },
            intake: { kind: 'open hole', diameter: '6 in' },
          },
          pump: { setting: `${depth * 0.7} ft`, power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
        }),
      );
      const outline = find(scene.shapes, 'pumpBody > outline');
      return {
        frame: frameOf(scene),
        outline,
        top: solution.values.pumpDischargeDepth ?? NaN,
        bottom: solution.values.motorBottomDepth ?? NaN,
      };
    };
    const near = at(60);
    expect(near.outline.attrs['stroke-dasharray']).toBeUndefined();
    expect(number(near.outline, 'y')).toBeCloseTo(near.frame.at(near.top), 6);
    expect(number(near.outline, 'y') + number(near.outline, 'height')).toBeCloseTo(near.frame.at(near.bottom), 6);
    const far = at(900);
    expect(far.outline.attrs['stroke-dasharray']).toBeDefined();
    expect(number(far.outline, 'height')).toBe(10);
    expect(number(far.outline, 'y') + 5).toBeCloseTo(far.frame.at((far.top + far.bottom) / 2), 6);
  });

  test('casing, pump and pipe share one width factor, and the caption states it', () => {
    const { scene, solution } = picture(rockWell());
    const frame = frameOf(scene);
    const across = frame.widthFactor * frame.k;
    const inner = solution.bore[0]!.insideRadius;
    const walls = pathPoints(find(scene.shapes, 'casing > walls').d ?? '').map(([x]) => x - middleOf(scene));
    const inside = Math.min(...walls.filter((x) => x > 0)) - Math.max(...walls.filter((x) => x < 0));
    // Places are written in tenths of a pixel.
    expect(inside).toBeCloseTo(2 * inner * across, 0);
    expect(number(find(scene.shapes, 'pumpBody > outline'), 'width')).toBeCloseTo(
      solution.facts.pump.diameter * across,
      6,
    );
    expect(find(scene.shapes, 'scaleCaption').text).toBe(`widths ×${frame.widthFactor}`);
  });
});

describe('what nobody knows', () => {
  const nothing = () =>
    picture(
      rockWell({
        site: {},
        water: { staticLevel: 'unknown' },
        house: { demand: 'unknown' },
        well: {
          depth: '160 ft',
          casing: { material: 'steel', size: '6 in', height: '12 in' },
          intake: { kind: 'open hole' },
        },
      }),
    );

  test('has a dashed chip with a question mark and no line', () => {
    const { scene } = nothing();
    for (const handle of ['staticLevel', 'pumpingLevel', 'frostDepth']) {
      expect(find(scene.shapes, `chips > ${handle} > value`).text).toBe('?');
      expect(find(scene.shapes, `chips > ${handle} > body`).attrs['stroke-dasharray']).toBeDefined();
      expect(
        flat(scene.shapes).some(({ path }) => path === `leaders > ${handle}` || path === `levels > ${handle}`),
      ).toBe(false);
    }
  });

  test('is drawn dashed in the ground: casing end, annulus, layers', () => {
    const { scene } = nothing();
    expect(find(scene.shapes, 'casing > walls').attrs['stroke-dasharray']).toBeDefined();
    expect(find(scene.shapes, 'grout > outline').attrs['stroke-dasharray']).toBeDefined();
    expect(find(scene.shapes, 'layerNames > layer/unknown > name').text).toBe('not reported');
  });

  test('an air-lift yield leaves a hatched zone from the static level to the pump', () => {
    const { scene } = picture(rockWell({ water: { staticLevel: '40 ft', pumping: { kind: 'yield only' } } }));
    expect(find(scene.shapes, 'unknownZone').attrs['stroke-dasharray']).toBeDefined();
  });
});

describe('findings on the drawing', () => {
  test('bear the number they have in the list, at their depth or tied to it', () => {
    const { scene, solution } = picture(
      rockWell({
        site: { frostDepth: '72 in' },
        pump: { setting: '196 ft', power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } },
      }),
    );
    const frame = frameOf(scene);
    const own = scene.marks.filter((mark) => mark.view === 'O');
    expect(own.map((mark) => mark.number).sort((a, b) => a - b)).toEqual(
      solution.findings.flatMap((finding, i) => (finding.depth === null ? [] : [i + 1])),
    );
    for (const mark of own) {
      const depth = solution.findings[mark.number - 1]!.depth ?? NaN;
      const tied = flat(scene.shapes).some(({ path }) => path === `marks > tie/${mark.number}`);
      expect(tied || Math.abs(mark.y - frame.at(depth)) <= 4.01).toBe(true);
    }
  });

  test('are told apart by shape before colour', () => {
    const { scene, solution } = picture(planOf(sample('slate-hollow')));
    const tags = new Map(solution.findings.map((finding, i) => [i + 1, finding.severity]));
    for (const { number: n, view } of scene.marks) {
      if (view !== 'O') continue;
      const sign = find(scene.shapes, `marks > mark/${n} > sign`);
      const corners = sign.tag === 'circle' ? 0 : ((sign.d ?? '').match(/[MLHV]/gi) ?? []).length;
      expect(corners).toBe({ danger: 8, warning: 3, note: 0 }[tags.get(n)!]);
    }
  });
});

const WINDOWS: readonly Partial<View>[] = [
  { sheet: 'section', width: 320, height: 560 },
  { sheet: 'section', width: 390, height: 640 },
  { sheet: 'all', width: 760, height: 640 },
  { sheet: 'all', width: 1000, height: 960 },
  { sheet: 'all', width: 1400, height: 900 },
  { sheet: 'all', width: 1000, height: 1080, caption: true },
];

describe('labels', () => {
  test.each(SAMPLES)('of %s never run over each other, in any window and either system of units', (name) => {
    for (const window of WINDOWS) {
      for (const units of ['us', 'metric'] as const) {
        const { scene } = picture(planOf(sample(name)), { ...window, units });
        expect(overlaps(textBoxes(ownShapes(scene))), JSON.stringify({ ...window, units })).toEqual([]);
      }
    }
  });

  test('the band’s labels keep off the rail', () => {
    for (const window of WINDOWS) {
      const { scene } = picture(planOf(sample('tamarack-ridge')), window);
      const left = frameOf(scene).x;
      for (const box of textBoxes(ownShapes(scene)).filter(({ path }) => path.startsWith('bands')))
        expect(box.left).toBeGreaterThan(left);
    }
  });
});

describe('while a level is dragged', () => {
  const start = rockWell();
  const before = picture(start);
  const frozen = before.scene.scales;
  const startDepth = before.solution.facts.pump.setting;
  const at = (setting: string): { scene: Scene; solution: Solution } =>
    picture(rockWell({ pump: { setting, power: '1 hp', curve: { kind: 'generic', flow: '10 gpm' } } }), {
      frozen,
      held: { handle: 'pumpSetting', start: startDepth },
    });

  test('the scales stand still, even when the bottom moves', () => {
    const { scene } = picture(
      rockWell({
        well: {
          depth: '260 ft',
          casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
          intake: { kind: 'open hole', diameter: '6 in' },
        },
      }),
      { frozen },
    );
    expect(scene.scales.windows.O).toEqual(frozen.windows.O);
  });

  test('the chip in the hand stays on the pointer, and the others keep their order', () => {
    const chip = (scene: Scene) => scene.chips.find((each) => each.handle === 'pumpSetting')!;
    const first = chip(before.scene);
    const k = frameOf(before.scene).k;
    for (const setting of ['140 ft', '120 ft', '90 ft', '170 ft']) {
      const { scene, solution } = at(setting);
      const moved = k * (solution.facts.pump.setting - startDepth);
      expect(chip(scene).y - first.y).toBeCloseTo(moved, 4);
    }
    expect(at('141 ft').scene.chips.map((each) => each.handle)).toEqual(before.scene.chips.map((each) => each.handle));
  });

  test('taking hold moves nothing', () => {
    const held = at('140 ft').scene.chips;
    held.forEach((chip, i) => expect(Math.abs(chip.y - before.scene.chips[i]!.y)).toBeLessThan(0.01));
  });

  test('a ghost shows where it started', () => {
    const { scene } = at('100 ft');
    expect(number(find(scene.shapes, 'ghost'), 'y1')).toBeCloseTo(frameOf(scene).at(startDepth), 6);
  });

  test('ground, hatching, rail and casing keep every attribute', () => {
    const still = (scene: Scene) =>
      JSON.stringify(
        scene.shapes.filter((shape) => ['ground', 'groundSurface', 'frost', 'rail', 'heading'].includes(shape.key)),
      );
    expect(still(at('100 ft').scene)).toBe(still(at('101 ft').scene));
    expect(JSON.stringify(find(at('100 ft').scene.shapes, 'casing'))).toBe(
      JSON.stringify(find(at('101 ft').scene.shapes, 'casing')),
    );
  });
});

describe('frost is said to come from where it does', () => {
  const words = (site: Record<string, unknown>): string =>
    flat(picture(rockWell({ site })).scene.shapes)
      .map(({ shape }) => shape.text ?? '')
      .join('\n');

  test('a depth without a source is as entered', () => {
    expect(words({ frostDepth: '36 in' })).toContain('36 in, as entered');
    expect(words({ frostDepth: '36 in' })).not.toContain('estimate');
  });

  test('an estimate is called one, in section and detail', () => {
    expect(words({ frostDepth: '36 in', frostFrom: 'estimate' })).toContain('36 in, estimate');
    expect(words({ frostDepth: '36 in', frostFrom: 'estimate' })).toContain('by estimate');
  });
});

test('where even balloons have no room, the least important chips are counted: "3 more, 198–204 ft"', () => {
  const screens = Array.from({ length: 9 }, (_, i) => ({ top: `${100 + i * 10} ft`, bottom: `${105 + i * 10} ft` }));
  const plan = rockWell({
    well: {
      depth: '200 ft',
      casing: { material: 'steel', size: '6 in', bottom: '100 ft', height: '12 in' },
      intake: { kind: 'screen', diameter: '4 in', screens },
    },
  });
  const { scene } = picture(plan, { sheet: 'section', width: 390, height: 400 });
  const more = find(scene.shapes, 'more').text ?? '';
  expect(more).toMatch(/^\d+ more, \d+–\d+\u00A0ft$/);
  const column = [...scene.chips].sort((a, b) => a.y - b.y);
  column.forEach((chip, i) => {
    const above = column[i - 1];
    if (above !== undefined) expect(chip.y).toBeGreaterThanOrEqual(above.y + above.height - 1e-6);
    expect(chip.y + chip.height).toBeLessThanOrEqual(400);
  });
  const hidden = Number(/^\d+/.exec(more)?.[0]);
  expect(column.length + hidden).toBe(scene.scales.chips.length);
  expect(column.map(({ handle }) => handle)).toEqual(expect.arrayContaining(['pumpSetting', 'staticLevel']));
});

test('the lowest pipe of a hole is called by its name: a liner in a casing, the casing alone', () => {
  const plan = sample('tamarack-ridge');
  const outer = { material: 'steel', size: '6 in', bottom: '90 ft', height: '16 in' };
  const liner = { material: 'PVC', size: '4 in', top: '80 ft', bottom: '215 ft' };
  const wordsOf = (casings: readonly unknown[], width: number): string[] =>
    flat(
      picture(planOf({ ...plan, well: { ...(plan['well'] as object), casing: undefined, casings } }), {
        width,
        sheet: 'section',
      }).scene.shapes,
    ).flatMap(({ shape }) => shape.text ?? []);
  const lined = wordsOf([outer, liner], 700);
  expect(lined).toContain('Liner bottom');
  expect(lined).toContain('from 80\u00A0ft');
  expect(lined).not.toContain('Casing bottom');
  expect(wordsOf([outer, liner], 320)).toContain('Liner');
  expect(wordsOf([outer], 700)).toContain('Casing bottom');
});
