/** The wire from the panel to the motor: drop and ampacity. */
import { WIRE_SLACK } from '../figures/allowances.ts';
import { ampacity, chooseGauge, GAUGES, requiredAmpacity } from '../formulas/wire.ts';
import type { Amperes, Metres, Ratio } from '../si.ts';
import type { Solved } from '../solution.ts';
import { motorCurrent } from '../tables/motors.ts';
import { meets } from './grace.ts';
import { change, words } from './fix.ts';
import { breaks, defineRule, holds, limit, missing } from './rule.ts';

export const DROP_NOTE: Ratio = 0.03;
export const DROP_WARNING: Ratio = 0.05;

function tableCurrent({ facts }: Solved): Amperes | null {
  const { power, phase, voltage } = facts.pump;
  return power === null ? null : motorCurrent({ power, phase, voltage });
}

/** Panel to motor along the wire; null while the run is unknown. */
function wireLength({ facts, values }: Solved): Metres | null {
  const run = facts.wire.run ?? facts.house.distance;
  return run === null || values.wireLength === null ? null : run + values.wireLength + (facts.string.splices[0] ?? 0);
}

export const voltageDropRule = defineRule({
  number: 'PR-49',
  part: 'cable',
  judge({ solved, facts, values }) {
    const measured = values.voltageDropRunning;
    const length = wireLength(solved);
    if (length === null) return missing('wireRun');
    if (measured === null) return missing('currentOrPower');
    const over = !meets(DROP_WARNING - measured, 'ratio');
    const most = over ? DROP_WARNING : DROP_NOTE;
    const margin = most - measured;
    const { voltage } = facts.pump;
    const { gauge } = facts.wire;
    if (meets(margin, 'ratio')) return holds('thickEnough', { length, measured, margin, voltage, gauge });
    const at = { measured, limit: most, margin, quantity: 'ratio', depth: cableDepth(solved) } as const;
    return over
      ? breaks('tooThin', 'warning', { length, measured, margin, voltage, gauge }, at)
      : breaks('overTheUsual', 'note', { length, measured, margin, most, voltage, gauge }, at);
  },
  limits(solved) {
    const measured = solved.values.voltageDropRunning;
    const length = wireLength(solved);
    if (measured === null || length === null || measured <= 0) return [];
    const { pump, wire } = solved.facts;
    const most = (DROP_WARNING / measured) * length;
    const to = { to: pump.setting + (most - length) / WIRE_SLACK, givesWay: true, answeredBy: 'wire.size' };
    return [limit('pump.setting', to, 'dropOnWire', { most: DROP_WARNING, gauge: wire.gauge })];
  },
  fixes: ({ solved }, { severity }) => [severity === 'note' ? words('usualForPumps', {}) : thickerWire(solved)],
});

export const wireCarriesCurrent = defineRule({
  number: 'PR-50',
  part: 'cable',
  judge({ solved, facts }) {
    const { gauge } = facts.wire;
    const current = tableCurrent(solved) ?? facts.pump.current;
    if (current === null) return missing('powerOrCurrent');
    if (!GAUGES.includes(gauge) && gauge !== 3) return missing('ampacity', { gauge });
    const asked = requiredAmpacity(current);
    const cold = ampacity(gauge, 60);
    const warm = ampacity(gauge, 75);
    if (meets(cold - asked, 'current')) return holds('carries', { gauge, carries: cold, asked, margin: cold - asked });
    const depth = cableDepth(solved);
    if (meets(warm - asked, 'current')) {
      const margin = cold - asked;
      const at = { measured: cold, limit: asked, margin, quantity: 'current', depth } as const;
      return breaks('hotTerminalsOnly', 'warning', { gauge, asked, margin }, at);
    }
    const margin = warm - asked;
    const at = { measured: warm, limit: asked, margin, quantity: 'current', depth } as const;
    return breaks('tooThin', 'danger', { gauge, carries: warm, asked, margin }, at);
  },
  fixes: ({ solved }) => [thickerWire(solved)],
});

/** The thinnest gauge that meets drop and ampacity. */
function thickerWire(solved: Solved) {
  const { facts } = solved;
  const table = tableCurrent(solved);
  const drop = facts.pump.current ?? table;
  const carry = table ?? facts.pump.current;
  if (drop === null || carry === null) return words('thicker', {});
  const { phase, voltage } = facts.pump;
  const length = wireLength(solved) ?? 0;
  const forDrop = chooseGauge({ phase, voltage, current: drop, length, share: DROP_WARNING });
  const forHeat = GAUGES.find((gauge) => ampacity(gauge, 60) >= requiredAmpacity(carry)) ?? null;
  if (forDrop === null || forHeat === null) return words('noneThickEnough', {});
  const gauge = Math.min(forDrop, forHeat);
  return change(facts, [{ path: 'wire.size', to: `${gauge} AWG` }], 'useGauge', { gauge });
}

/** Halfway down, where the cable shows best. */
function cableDepth({ facts }: Solved): Metres {
  return Math.max(facts.pump.setting - facts.pump.intakeToDischarge, 0) / 2;
}

export const electricalRules = [wireCarriesCurrent, voltageDropRule] as const;
