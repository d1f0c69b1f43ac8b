/** The published pumping tests, in SI. */
import type { PumpingTest } from '../../../src/model/aquifer/index.ts';
import file from '../../reference/pumpingTests.json' with { type: 'json' };

const DAY = 86400;

interface Published {
  readonly id: string;
  readonly flow_m3_per_d?: number | readonly number[];
  readonly flow_m3_per_s?: number;
  readonly radius_m?: number;
  readonly pumped_min?: number;
  readonly time_drawdown_min_m?: readonly (readonly [number, number])[];
  readonly time_drawdown_min_ft?: readonly (readonly [number, number])[];
  readonly since_stop_residual_min_m?: readonly (readonly [number, number])[];
  readonly published: Readonly<Record<string, unknown>>;
}

const tests = file.tests as unknown as readonly Published[];

function find(id: string): Published {
  const found = tests.find((test) => test.id === id);
  if (!found) throw new Error(`no published test "${id}"`);
  return found;
}

export function publishedTest(id: string): PumpingTest {
  const test = find(id);
  const flow = test.flow_m3_per_s ?? Number(test.flow_m3_per_d) / DAY;
  const inMetres = test.time_drawdown_min_m ?? [];
  const inFeet = (test.time_drawdown_min_ft ?? []).map(([time, feet]) => [time, feet * 0.3048] as const);
  const recovery = (test.since_stop_residual_min_m ?? []).map(([time, drawdown]) => ({
    sinceStop: time * 60,
    drawdown,
  }));
  return {
    flow,
    measuredIn: 'observation well',
    radius: test.radius_m!,
    readings: [...inMetres, ...inFeet].map(([time, drawdown]) => ({ time: time * 60, drawdown })),
    ...(test.pumped_min === undefined ? {} : { pumpedFor: test.pumped_min * 60, recovery }),
  };
}

/** Answer printed for a test, by the method's name. */
export function publishedAnswer(id: string, method: string): Readonly<Record<string, number>> {
  return find(id).published[method] as Readonly<Record<string, number>>;
}

export function publishedSteps() {
  const { flow_m3_per_d, published } = find('clark_steps');
  const { B_d_per_m2, C_d2_per_m5 } = published as { B_d_per_m2: number; C_d2_per_m5: number };
  const perDay = flow_m3_per_d as readonly number[];
  const steps = perDay.map((q) => ({ flow: q / DAY, drawdown: B_d_per_m2 * q + C_d2_per_m5 * q * q }));
  return { steps, aquiferLoss: B_d_per_m2 * DAY, wellLoss: C_d2_per_m5 * DAY * DAY };
}
