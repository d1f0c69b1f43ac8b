/**
 * Friction and operating points against the EPANET 2.2 engine, on networks of one pipe drawn at random.
 *
 * EPANET takes g = 32.2 ft/s² and nu = 1.1e-5 ft²/s, and Swamee-Jain where we solve Colebrook-White: the tolerances
 * leave room for that and no more.
 */
import { LinkProperty, NodeProperty } from 'epanet-js';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import {
  darcyFactor,
  darcyHead,
  fittingHead,
  hazenWilliamsHead,
  reynoldsNumber,
  swameeJain,
  velocityIn,
} from '../../src/model/formulas/friction.ts';
import { genericCurve, operatingPoint } from '../../src/model/formulas/pumpCurve.ts';
import { feet, gpm, inches, toFeet, toGpm } from '../../src/model/units.ts';
import { EPANET_VISCOSITY, loadEpanet, options, solved } from './epanet.ts';

const SEED = 20_250_419;
beforeAll(loadEpanet);

interface Pipe {
  readonly flow: number;
  readonly length: number;
  readonly bore: number;
}

/** Flow in gpm, length in feet, bore in inches: what hangs in wells and lies between well and house. */
const pipes = fc.record({
  flow: fc.double({ min: 0.2, max: 40, noNaN: true }),
  length: fc.double({ min: 10, max: 800, noNaN: true }),
  bore: fc.constantFrom(0.824, 0.875, 1.049, 1.263, 1.38, 1.61, 2.067),
});

/** Loss along the pipe in feet by EPANET; roughness is C, or a height in thousandths of a foot. */
function epanetLoss({ flow, length, bore }: Pipe, roughness: number, headloss: 'H-W' | 'D-W', K = 0): number {
  const network = `[JUNCTIONS]\nJ1 0 ${flow}\n[RESERVOIRS]\nR1 5000\n[PIPES]\nP1 R1 J1 ${length} ${bore} ${roughness} ${K} OPEN\n${options(headloss)}`;
  return solved(network, (project) => project.getLinkValue(project.getLinkIndex('P1'), LinkProperty.Headloss));
}

function inSi({ flow, length, bore }: Pipe) {
  return { flow: gpm(flow), length: feet(length), insideDiameter: inches(bore) };
}

function off(ours: number, theirs: number): number {
  return Math.abs(ours / theirs - 1);
}

test('Hazen-Williams with fittings agrees with EPANET within 0.1 % for any pipe', () => {
  fc.assert(
    fc.property(
      pipes,
      fc.integer({ min: 90, max: 150 }),
      fc.double({ min: 0, max: 12, noNaN: true }),
      (pipe, coefficient, K) => {
        const water = inSi(pipe);
        const ours =
          hazenWilliamsHead({ ...water, coefficient }) + fittingHead(K, velocityIn(water.flow, water.insideDiameter));
        expect(off(toFeet(ours), epanetLoss(pipe, coefficient, 'H-W', K))).toBeLessThan(0.001);
      },
    ),
    { seed: SEED, numRuns: 60 },
  );
});

test('Darcy-Weisbach agrees with EPANET within 0.1 % once both take Swamee-Jain for the friction factor', () => {
  const kinds = { laminar: 0, turbulent: 0 };
  fc.assert(
    fc.property(pipes, fc.constantFrom(0.0015, 0.015, 0.152), (pipe, roughnessMm) => {
      const water = { ...inSi(pipe), roughness: roughnessMm / 1000, kinematicViscosity: EPANET_VISCOSITY };
      const reynolds = reynoldsNumber(water);
      fc.pre(reynolds < 2000 || reynolds > 4000);
      kinds[reynolds < 2000 ? 'laminar' : 'turbulent']++;
      const relative = water.roughness / water.insideDiameter;
      const factor = reynolds < 2000 ? 1 : swameeJain(reynolds, relative) / darcyFactor(reynolds, relative);
      const theirs = epanetLoss(pipe, toFeet(water.roughness) * 1000, 'D-W');
      expect(off(toFeet(darcyHead(water)) * factor, theirs)).toBeLessThan(0.001);
    }),
    { seed: SEED, numRuns: 80 },
  );
  expect(kinds.laminar).toBeGreaterThan(3);
  expect(kinds.turbulent).toBeGreaterThan(30);
});

test('Darcy-Weisbach with Colebrook-White stays within 0.8 % of EPANET for plastic pipe above Re 20,000', () => {
  fc.assert(
    fc.property(pipes, (pipe) => {
      const water = { ...inSi(pipe), roughness: 1.5e-6, kinematicViscosity: EPANET_VISCOSITY };
      fc.pre(reynoldsNumber(water) > 20_000);
      expect(off(toFeet(darcyHead(water)), epanetLoss(pipe, toFeet(1.5e-6) * 1000, 'D-W'))).toBeLessThan(0.008);
    }),
    { seed: SEED, numRuns: 60 },
  );
});

test('Darcy-Weisbach stays within 4 % of EPANET from Re 2000 to 20,000, where the two take other formulas', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 2000, max: 20_000, noNaN: true }),
      fc.constantFrom(0.824, 1.049, 1.38),
      (reynolds, bore) => {
        const flow = toGpm((reynolds * Math.PI * inches(bore) * EPANET_VISCOSITY) / 4);
        const pipe = { flow, length: 300, bore };
        const ours = darcyHead({ ...inSi(pipe), roughness: 1.5e-6, kinematicViscosity: EPANET_VISCOSITY });
        expect(off(toFeet(ours), epanetLoss(pipe, toFeet(1.5e-6) * 1000, 'D-W'))).toBeLessThan(0.04);
      },
    ),
    { seed: SEED, numRuns: 60 },
  );
});

test('the operating point of a pump in a well agrees with EPANET within 0.1 %', () => {
  const wells = fc.record({
    designFlow: fc.double({ min: 4, max: 25, noNaN: true }),
    designHead: fc.double({ min: 100, max: 500, noNaN: true }),
    pumpingLevel: fc.double({ min: 10, max: 300, noNaN: true }),
    tankHead: fc.double({ min: 40, max: 160, noNaN: true }),
    K: fc.double({ min: 0, max: 10, noNaN: true }),
    pipe: pipes,
  });
  fc.assert(
    fc.property(wells, ({ designFlow, designHead, pumpingLevel, tankHead, K, pipe }) => {
      fc.pre(pumpingLevel + tankHead < 1.3 * designHead);
      const network = `[JUNCTIONS]\nJ1 0 0\n[RESERVOIRS]\nW ${-pumpingLevel}\nT ${tankHead}\n[PIPES]\nP1 J1 T ${pipe.length} ${pipe.bore} 150 ${K} OPEN\n[PUMPS]\nPU W J1 HEAD C1\n[CURVES]\nC1 ${designFlow} ${designHead}\n${options('H-W')}`;
      const [flow, head] = solved(network, (project) => [
        project.getLinkValue(project.getLinkIndex('P1'), LinkProperty.Flow),
        project.getNodeValue(project.getNodeIndex('J1'), NodeProperty.Head) + pumpingLevel,
      ]);
      const { length, insideDiameter } = inSi(pipe);
      const curve = genericCurve({ designFlow: gpm(designFlow), designHead: feet(designHead) });
      const ours = operatingPoint(
        curve,
        (q) =>
          feet(pumpingLevel + tankHead) +
          hazenWilliamsHead({ flow: q, length, insideDiameter, coefficient: 150 }) +
          fittingHead(K, velocityIn(q, insideDiameter)),
      );
      expect(off(toGpm(ours.flow), flow!)).toBeLessThan(0.001);
      expect(off(toFeet(ours.head), head!)).toBeLessThan(0.001);
    }),
    { seed: SEED, numRuns: 60 },
  );
});
