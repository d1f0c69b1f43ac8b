import { describe, expect, test } from 'vitest';
import { drawLens } from '../../../src/draw/details/lens.ts';
import { drawPumpEnd } from '../../../src/draw/details/pumpEnd.ts';
import { frame, well, yIn } from '../details/wells.ts';
import { extentOf, find } from './extent.ts';

describe.each([
  ['with two wires', {}],
  ['with a flow sleeve', { 'pump.shroudDiameter': '5 in' }],
  ['on steel pipe', { dropPipe: { material: 'galvanized steel', size: '1 in' } }],
])('the lead of a motor %s', (_, changes) => {
  const solution = well('tamarack-ridge', changes);
  const box = frame('B', { width: 760, height: 900 });
  const scene = drawPumpEnd(solution, box);
  const y = yIn(box, scene);
  const part = (kind: string) => solution.parts.find((each) => each.kind === kind)!;
  const strip = extentOf(find(scene.shapes, 'cableGuardStrip', 'channel'));
  const lead = extentOf(find(scene.shapes, 'motor', 'lead'));
  const plug = extentOf(find(scene.shapes, 'motor', 'plug'));

  test('runs under a guard strip from the discharge to the motor’s head, past the intake', () => {
    expect(strip.top).toBeCloseTo(y(part('pump').top), 0);
    expect(strip.bottom).toBeCloseTo(y(part('motor').top), 0);
    expect(strip.bottom).toBeGreaterThanOrEqual(y(part('intake').bottom) - 0.1);
  });

  test('comes out of the strip and ends in the plug, within the slim head of the motor', () => {
    expect(lead.top).toBeLessThan(strip.bottom);
    expect(lead.left).toBeGreaterThan(strip.left);
    expect(lead.left).toBeLessThan(strip.right);
    expect(lead.right).toBeGreaterThan(plug.left);
    expect(lead.bottom).toBeGreaterThan(plug.top);
    expect(lead.bottom).toBeLessThan(plug.bottom);
    expect(plug.top).toBeGreaterThan(y(part('motor').top));
    const can = extentOf(find(scene.shapes, 'motor', 'body'));
    expect(plug.left).toBeGreaterThan(can.left);
  });

  test('lies within the pump’s largest diameter, which is taken over the strip', () => {
    const across = scene.k * scene.widthFactor;
    const shell = extentOf(find(scene.shapes, 'pump', 'shell'));
    const middle = (shell.left + shell.right) / 2;
    expect(middle - strip.left).toBeCloseTo((solution.facts.pump.diameter / 2) * across, 0);
  });
});

test('the close-up of a motor shows its lead come in, though the strip has left the frame', () => {
  const solution = well('tamarack-ridge');
  const motor = solution.parts.find(({ kind }) => kind === 'motor')!;
  const scene = drawLens(solution, motor.top + 0.25, frame('C'));
  expect(() => find(scene.shapes, 'motor', 'lead')).not.toThrow();
});
