/** The wire from the panel to the motor: drop and ampacity. */
import { WIRE_SLACK } from '../figures/allowances.ts';
import { ampacity, chooseGauge, GAUGES, requiredAmpacity } from '../formulas/wire.ts';
import type { Amperes, Metres, Ratio } from '../si.ts';
import type { Solved } from '../solution.ts';
import { motorCurrent } from '../tables/motors.ts';
import { meets } from './grace.ts';
import { change, words } from './mend.ts';
import { breaks, defineRule, holds, missing } from './rule.ts';
import type { Mend } from './rule.ts';
import { ELECTRIC_CAUTION } from './say.ts';

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
  broken: 'The wire is thin for its length',
  holds: 'The wire is thick enough for its length',
  source: 'NFPA 70 (NEC) 210.19(A), informational note: 3 and 5 %; 5 % for submersible pumps: common practice',
  why: 'A motor short of voltage starts badly, runs hot and wears out early.',
  caution: ELECTRIC_CAUTION,
  judge({ solved, facts, values, show }) {
    const measured = values.voltageDropRunning;
    const length = wireLength(solved);
    if (length === null) return missing('the length of wire from the panel to the well');
    if (measured === null) return missing('the motor’s current or power');
    const over = !meets(DROP_WARNING - measured, 'ratio');
    const limit = over ? DROP_WARNING : DROP_NOTE;
    const margin = limit - measured;
    const message = `${show.depth(length)} from the panel, ${show.percent(measured)} of ${show.voltage(facts.pump.voltage)} is lost on ${facts.wire.gauge} AWG.`;
    if (meets(margin, 'ratio')) return holds(`${show.percent(margin)} to spare`, message);
    return breaks({
      severity: over ? 'warning' : 'note',
      measured,
      limit,
      margin,
      quantity: 'ratio',
      depth: cableDepth(solved),
      // The note's limit is the less known one, so it is named.
      amount: `${show.percent(-margin)} over${over ? '' : ` ${show.percent(limit)}`}`,
      message,
      mend: over
        ? thickerWire(solved, length)
        : words('Within 5 %, which is usual for pumps; thicker wire runs cooler.'),
    });
  },
  limits(solved) {
    const measured = solved.values.voltageDropRunning;
    const length = wireLength(solved);
    if (measured === null || length === null || measured <= 0) return [];
    const most = (DROP_WARNING / measured) * length;
    return [
      {
        setting: 'pump.setting',
        to: solved.facts.pump.setting + (most - length) / WIRE_SLACK,
        givesWay: true,
        answeredBy: 'wire.size',
        label: (show) => `${show.percent(DROP_WARNING)} drop on ${solved.facts.wire.gauge} AWG`,
      },
    ];
  },
});

export const wireCarriesCurrent = defineRule({
  number: 'PR-50',
  part: 'cable',
  broken: 'The wire is too thin for the current',
  holds: 'The wire carries the motor’s current',
  source: 'NFPA 70 (NEC) 430.22 (125 % of the table current) and Table 310.16; 60 °C column from memory',
  why: 'Wire too thin for its current overheats and can start a fire.',
  caution: ELECTRIC_CAUTION,
  judge({ solved, facts, show }) {
    const { gauge } = facts.wire;
    const current = tableCurrent(solved) ?? facts.pump.current;
    if (current === null) return missing('the motor’s power or current');
    if (!GAUGES.includes(gauge) && gauge !== 3)
      return missing(`the ampacity of ${gauge} AWG, which is not in the table`);
    const limit = requiredAmpacity(current);
    const cold = ampacity(gauge, 60);
    const warm = ampacity(gauge, 75);
    if (meets(cold - limit, 'current')) {
      return holds(
        `${show.current(cold - limit)} to spare`,
        `${gauge} AWG carries ${show.current(cold)}; ${show.current(limit)} is asked, 125 % of the motor’s.`,
      );
    }
    const short = !meets(warm - limit, 'current');
    const measured = short ? warm : cold;
    return breaks({
      severity: short ? 'danger' : 'warning',
      measured,
      limit,
      margin: measured - limit,
      quantity: 'current',
      depth: cableDepth(solved),
      ...(short ? {} : { title: 'The wire fits hot terminals only' }),
      amount: `${show.current(limit - measured)} short`,
      message: short
        ? `${gauge} AWG carries ${show.current(warm)}; 125 % of the motor’s current is ${show.current(limit)}.`
        : `${gauge} AWG carries ${show.current(limit)} only where every terminal is marked 75 °C.`,
      mend: thickerWire(solved, wireLength(solved) ?? 0),
    });
  },
});

/** The thinnest gauge that meets drop and ampacity. */
function thickerWire(solved: Solved, length: Metres): Mend {
  const { facts } = solved;
  const table = tableCurrent(solved);
  const drop = facts.pump.current ?? table;
  const carry = table ?? facts.pump.current;
  if (drop === null || carry === null) return words('Take thicker wire.');
  const { phase, voltage } = facts.pump;
  const forDrop = chooseGauge({ phase, voltage, current: drop, length, share: DROP_WARNING });
  const forHeat = GAUGES.find((gauge) => ampacity(gauge, 60) >= requiredAmpacity(carry)) ?? null;
  if (forDrop === null || forHeat === null)
    return words('No usual pump cable is thick enough: a higher voltage, or a shorter way.');
  const gauge = Math.min(forDrop, forHeat);
  return change(facts, [{ path: 'wire.size', to: `${gauge} AWG` }], `Use ${gauge} AWG`);
}

/** Halfway down, where the cable shows best. */
function cableDepth({ facts }: Solved): Metres {
  return Math.max(facts.pump.setting - facts.pump.intakeToDischarge, 0) / 2;
}

export const electricalRules = [wireCarriesCurrent, voltageDropRule];
