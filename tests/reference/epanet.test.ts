/**
 * Whole plans, read and solved, against the EPANET 2.2 engine solving the same well as a network: the aquifer a
 * reservoir, the drawdown a valve whose loss grows with flow, the pump its one-point curve, drop pipe and buried line
 * two pipes with their fittings, the tank a reservoir as high as its pressure.
 *
 * The network is written from what was typed and from printed figures (bores, loss coefficients, efficiency), not from
 * what the model made of it.
 */
import { LinkProperty, NodeProperty } from 'epanet-js';
import fc from 'fast-check';
import { beforeAll, expect, test, vi } from 'vitest';
import { solve } from '../../src/model/solve.ts';
import type { Solution } from '../../src/model/solution.ts';
import { toFeet, toGpm, toPsi } from '../../src/model/units.ts';
import { rockWell } from '../plans/build.ts';
import { loadEpanet, options, solved } from './epanet.ts';

const SEED = 20_261_125;
beforeAll(loadEpanet);

/** Bores in inches: ASTM D2239 (SIDR) for PE, ASTM D1785 schedule 80 for PVC, ASME B36.10M schedule 40 for steel. */
const PIPES = [
  { pipe: { material: 'PE', size: '1 in', rating: '200 psi' }, bore: 1.049, roughnessMm: 0.0015 },
  { pipe: { material: 'PE', size: '1-1/4 in', rating: '200 psi' }, bore: 1.38, roughnessMm: 0.0015 },
  { pipe: { material: 'PVC', size: '1 in' }, bore: 1.315 - 2 * 0.179, roughnessMm: 0.0015 },
  { pipe: { material: 'PVC', size: '1-1/4 in' }, bore: 1.66 - 2 * 0.191, roughnessMm: 0.0015 },
  { pipe: { material: 'galvanized steel', size: '1 in' }, bore: 1.049, roughnessMm: 0.15 },
] as const;

/** Kinematic viscosity in ft²/s and weight in lb/ft³ of water, as handbooks of hydraulics print them; from memory. */
const WATERS = [
  { temperature: '40 degF', viscosity: 1.664e-5, pounds: 62.43 },
  { temperature: '50 degF', viscosity: 1.41e-5, pounds: 62.41 },
  { temperature: '70 degF', viscosity: 1.059e-5, pounds: 62.3 },
] as const;

/**
 * Load of the weaker end of a generic pump: 0.9 of the service factor of its 60 Hz motor, as the model's account of
 * itself states it; and no more than 1.4 times the rated flow.
 */
const WEAKER_LOAD: Readonly<Record<number, number>> = { 0.5: 1.44, 1: 1.26, 1.5: 1.17, 2: 1.125, 3: 1.035 };
const LAST_FLOW = 1.4;

/** Efficiencies of the generic pump at its rated flow in gpm, as the model's account of itself states them. */
const PUMPS = [
  { rated: 5, efficiency: 0.4 },
  { rated: 10, efficiency: 0.5 },
  { rated: 20, efficiency: 0.6 },
] as const;

const wells = fc.record({
  staticLevel: fc.integer({ min: 5, max: 200 }),
  tested: fc.integer({ min: 4, max: 25 }),
  fall: fc.integer({ min: 2, max: 60 }),
  demand: fc.integer({ min: 3, max: 20 }),
  distance: fc.integer({ min: 20, max: 600 }),
  rise: fc.integer({ min: -10, max: 60 }),
  cutOut: fc.constantFrom(50, 60),
  setting: fc.integer({ min: 60, max: 480 }),
  top: fc.constantFrom('pitless' as const, 'seal' as const),
  power: fc.constantFrom(0.5, 1, 1.5, 2, 3),
  pump: fc.constantFrom(...PUMPS),
  drop: fc.constantFrom(...PIPES),
  line: fc.constantFrom(...PIPES),
  valves: fc.integer({ min: 1, max: 3 }),
  valveAtHouse: fc.boolean(),
  water: fc.constantFrom(...WATERS),
});
type Well = typeof wells extends fc.Arbitrary<infer T> ? T : never;

function solutionOf(well: Well): Solution {
  return solve(
    rockWell({
      site: { waterTemperature: well.water.temperature },
      well: {
        depth: '500 ft',
        casing: { material: 'steel', size: '6 in', bottom: '60 ft', height: '12 in' },
        intake: { kind: 'open hole', diameter: '6 in' },
      },
      water: {
        staticLevel: `${well.staticLevel} ft`,
        pumping: { kind: 'test', flow: `${well.tested} gpm`, drawdown: `${well.fall} ft` },
      },
      house: {
        demand: `${well.demand} gpm`,
        distance: `${well.distance} ft`,
        rise: `${well.rise} ft`,
        cutIn: `${well.cutOut - 20} psi`,
        cutOut: `${well.cutOut} psi`,
        line: well.line.pipe,
      },
      top: well.top === 'pitless' ? { kind: 'pitless', depth: '5 ft' } : { kind: 'seal' },
      pump: {
        setting: `${well.setting} ft`,
        power: `${well.power} hp`,
        curve: { kind: 'generic', flow: `${well.pump.rated} gpm` },
        intakeToDischarge: '1.5 ft',
      },
      dropPipe: well.drop.pipe,
      string: {
        checkValves: Array.from({ length: well.valves }, (_, i) => `${i * 20} ft`),
        valveBetweenTopAndTank: well.valveAtHouse,
      },
    }),
  );
}

/** Two insert fittings on PE with 0.8 of its bore, contraction and expansion: (0.5 × 0.36 + 0.36²) / 0.8⁴ each. */
const inserts = (material: string) => (material === 'PE' ? 2 * ((0.5 * 0.36 + 0.36 ** 2) / 0.8 ** 4) : 0);

/** Drop pipe from J1 to J2 and buried line from J2 to the tank T, in EPANET's text. */
function pipesOf({ setting, top, drop, line, distance, valves, valveAtHouse }: Well): string {
  const length = setting - 1.5 + (top === 'pitless' ? -5 : 1);
  const turn = top === 'pitless' ? 1.5 : 1.8 + 0.9;
  const inDrop = valves * 2.5 + inserts(drop.pipe.material) + turn;
  const inLine = inserts(line.pipe.material) + (valveAtHouse ? 2.5 : 0);
  // Roughness in thousandths of a foot.
  const rough = ({ roughnessMm }: Well['drop']) => roughnessMm / 0.3048;
  return `[PIPES]\nDROP J1 J2 ${length} ${drop.bore} ${rough(drop)} ${inDrop} OPEN\nLINE J2 T ${distance} ${line.bore} ${rough(line)} ${inLine} OPEN\n`;
}

const viscosityOf = ({ water }: Well) => options('D-W', water.viscosity / 1.1e-5);
/** psi as feet of water of that weight. */
const pressureHead = (pounds: number, psi: number) => (psi * 144) / pounds;

const off = (ours: number, theirs: number) => Math.abs(ours / theirs - 1);

/** 32.2 ft/s² where we take 32.174. */
const OTHER_GRAVITY = 0.0008;

/** Reynolds number, which says how far Swamee-Jain strays from Colebrook-White: 3.4 % at 4000, 1 % from 20,000 on. */
function reynolds(flowGpm: number, { bore }: Well['drop'], { viscosity }: Well['water']): number {
  const flow = (flowGpm * 231) / 1728 / 60;
  return (4 * flow) / (Math.PI * (bore / 12) * viscosity);
}
const strays = (Re: number) => (Re < 20_000 ? 0.04 : 0.01) + OTHER_GRAVITY;

test('heads of a plan at its demand agree with EPANET pushing that flow through drop pipe and line', () => {
  let compared = 0;
  fc.assert(
    fc.property(wells, (well) => {
      const { values } = solutionOf(well);
      const tank = well.rise + pressureHead(well.water.pounds, well.cutOut);
      // What the pump puts in at J1 flows out at the tank.
      const network = `[JUNCTIONS]\nJ1 0 ${-well.demand}\nJ2 0 0\n[RESERVOIRS]\nT ${tank}\n${pipesOf(well)}${viscosityOf(well)}`;
      const [head, inDrop, inLine] = solved(network, (project) => [
        project.getNodeValue(project.getNodeIndex('J1'), NodeProperty.Head),
        project.getLinkValue(project.getLinkIndex('DROP'), LinkProperty.Headloss),
        project.getLinkValue(project.getLinkIndex('LINE'), LinkProperty.Headloss),
      ]) as [number, number, number];
      const room =
        strays(reynolds(well.demand, well.drop, well.water)) * inDrop +
        strays(reynolds(well.demand, well.line, well.water)) * inLine;
      const lost = toFeet(values.frictionDropPipe! + values.frictionLine! + values.frictionFittings!);
      expect(Math.abs(lost - (inDrop + inLine))).toBeLessThan(room);
      const pumpingLevel = well.staticLevel + (well.fall * well.demand) / well.tested;
      // No pump works against the head of a level below its intake.
      if (pumpingLevel > well.setting) {
        expect(values.totalDynamicHead).toBeNull();
        return;
      }
      compared++;
      // Printed weights of water have four digits: 0.05 ft of 138.
      expect(Math.abs(toFeet(values.totalDynamicHead!) - (head + pumpingLevel))).toBeLessThan(room + 0.05);
    }),
    { seed: SEED, numRuns: 120 },
  );
  expect(compared).toBeGreaterThan(40);
});

test.each([
  ['cut-out', 'operatingFlowAtCutOut', 'operatingHeadAtCutOut', 0],
  ['cut-in', 'operatingFlowAtCutIn', 'operatingHeadAtCutIn', 20],
] as const)(
  'the operating point of a plan at %s agrees with EPANET’s well, pump, pipes and tank',
  (_end, flowName, headName, less) => {
    let compared = 0;
    fc.assert(
      fc.property(wells, (well) => {
        const { rated, efficiency } = well.pump;
        const { pounds } = well.water;
        // Water power by 550 ft lb/s a horsepower and 231 in³ a gallon.
        const designHead =
          (efficiency * well.power * WEAKER_LOAD[well.power]! * 550) / (pounds * ((rated * 231) / 1728 / 60));
        const tank = well.rise + pressureHead(pounds, well.cutOut - less);
        // EPANET closes a pump that cannot reach; that case has a test of its own below.
        fc.pre(well.staticLevel + tank < 1.2 * designHead && well.staticLevel + tank > 0.3 * designHead);
        const { values } = solutionOf(well);
        const falls = [0, 1, 2, 4].map((times) => `FALL ${times * well.tested} ${times * well.fall}`).join('\n');
        const network = `[JUNCTIONS]\nJ0 0 0\nJ1 0 0\nJ2 0 0\n[RESERVOIRS]\nW ${-well.staticLevel}\nT ${tank}\n${pipesOf(well)}[PUMPS]\nPU J0 J1 HEAD CURVE\n[VALVES]\nDD W J0 12 GPV FALL 0\n[CURVES]\nCURVE ${rated} ${designHead}\n${falls}\n${viscosityOf(well)}`;
        const [flow, head] = solved(network, (project) => {
          const at = (name: string) => project.getNodeValue(project.getNodeIndex(name), NodeProperty.Head);
          return [project.getLinkValue(project.getLinkIndex('PU'), LinkProperty.Flow), at('J1') - at('J0')];
        }) as [number, number];
        fc.pre(flow < 4 * well.tested);
        // A well drawn down to its intake has no such point.
        const level = well.staticLevel + (well.fall * flow) / well.tested;
        fc.pre(level < well.setting - 1);
        if (flow > 1.02 * LAST_FLOW * rated) {
          expect(toGpm(values[flowName]!)).toBeCloseTo(LAST_FLOW * rated, 9);
          return;
        }
        fc.pre(flow < 0.98 * LAST_FLOW * rated);
        // Our head counts from the water at rest, drawdown among what the pump must lift; so does EPANET's pump.
        const room =
          Math.max(strays(reynolds(flow, well.drop, well.water)), strays(reynolds(flow, well.line, well.water))) / 2;
        expect(off(toGpm(values[flowName]!), flow)).toBeLessThan(room);
        expect(off(toFeet(values[headName]!), head)).toBeLessThan(room);
        compared += 1;
      }),
      { seed: SEED, numRuns: 120 },
    );
    expect(compared).toBeGreaterThanOrEqual(60);
  },
);

test('a pump that cannot reach moves no water, with us and in EPANET', () => {
  const warned = vi.spyOn(console, 'warn').mockImplementation(() => undefined);
  fc.assert(
    fc.property(wells, fc.integer({ min: 3, max: 60 }), (well, short) => {
      const { rated, efficiency } = well.pump;
      const designHead =
        (efficiency * well.power * WEAKER_LOAD[well.power]! * 550) / (well.water.pounds * ((rated * 231) / 1728 / 60));
      const tank = well.rise + pressureHead(well.water.pounds, well.cutOut);
      const staticLevel = Math.ceil((4 / 3) * designHead - tank) + short;
      fc.pre(staticLevel > 0 && staticLevel < well.setting);
      const { values } = solutionOf({ ...well, staticLevel });
      const network = `[JUNCTIONS]\nJ1 0 0\nJ2 0 0\n[RESERVOIRS]\nW ${-staticLevel}\nT ${tank}\n${pipesOf(well)}[PUMPS]\nPU W J1 HEAD CURVE\n[CURVES]\nCURVE ${rated} ${designHead}\n${viscosityOf(well)}`;
      const flow = solved(network, (project) => project.getLinkValue(project.getLinkIndex('PU'), LinkProperty.Flow));
      expect(flow).toBeCloseTo(0, 3);
      expect(values.operatingFlowAtCutOut).toBe(0);
      expect(off(toFeet(values.operatingHeadAtCutOut!), (4 / 3) * designHead)).toBeLessThan(0.001);
      // The stronger end of the band: 1.2 of the service factor where the weaker has 0.9.
      const strongest = ((4 / 3) * (1.2 / 0.9) * designHead * well.water.pounds) / 144;
      expect(off(toPsi(values.shutOffPressureAtPump!), strongest)).toBeLessThan(1e-6);
    }),
    { seed: SEED, numRuns: 40 },
  );
  expect(warned.mock.calls.flat().join()).toMatch(/Pumps cannot deliver enough/);
  warned.mockRestore();
});
