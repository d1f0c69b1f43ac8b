/** Rules that no plan can decide: shown as advice, with their source. */
import type { AdviceNumber } from '../../model/rules/advice.ts';
import { inches } from '../../model/units.ts';
import type { Show } from '../../model/units.ts';

export interface AdviceWords {
  readonly title: string;
  readonly text: (show: Show) => string;
  readonly source: string;
}

export const advice: Readonly<Record<AdviceNumber, AdviceWords>> = {
  'PR-22': {
    title: 'Close the seal round the adapter’s hole',
    text: () => 'Where grout was cut for the adapter, restore it up to the ground, and tamp the soil round it.',
    source: 'Wash. Admin. Code 173-160-291(6); Minn. Rules 4725.4850',
  },
  'PR-25': {
    title: 'Screened vent, turned down',
    text: (show) =>
      `The cap breathes through a fine screen that points down, at least ${show.small(inches(12))} above the ground; none on a flowing well.`,
    source: '10 N.Y. Codes R. & Regs. App. 5-B, 5-B.5(e), (f); N.H. Admin. Rules We 702.05(c)',
  },
  'PR-27': {
    title: 'Conduit for the cable',
    text: (show) =>
      `The cable leaves the cap in a fixed, plugged conduit that goes at least ${show.small(inches(18))} into the ground.`,
    source: 'Md. Code Regs. 26.04.04.22 D; N.H. Admin. Rules We 702.04',
  },
  'PR-28': {
    title: 'A tight top',
    text: () => 'Use a bolted cap with gasket, or a seal squeezed round pipe and cable: insects find every gap.',
    source: 'California DWR, Water Well Standards, section 10; Okla. Admin. Code 785:35-9-1',
  },
  'PR-29': {
    title: 'A way to measure the water',
    text: () => 'Leave a plugged opening in the cap for a measuring tape: levels tell how the well ages.',
    source: 'Wash. Admin. Code 173-160-291(3); California DWR, Water Well Standards, section 10',
  },
  'PR-30': {
    title: 'A tap for samples',
    text: () => 'Have a threadless tap for raw water, pointing down, before tank and treatment.',
    source: '15A N.C. Admin. Code 02C .0109(f)',
  },
  'PR-31': {
    title: 'No control box in the casing',
    text: () => 'Only what is built into the pump belongs in the well; control boxes stay outside.',
    source: 'Wis. Adm. Code NR 812.32(1)(e)',
  },
  'PR-32': {
    title: 'Bond the metal casing',
    text: () => 'A metal casing is bonded to the pump’s ground wire; a licensed electrician does it.',
    source: 'NFPA 70 (NEC) 250.112(L), (M)',
  },
  'PR-33': {
    title: 'Guard the casing',
    text: () => 'Posts keep vehicles away; firm ground slopes away from the casing on all sides.',
    source: 'Wis. Adm. Code NR 812.29(2); Mont. Admin. R. 36.21.647',
  },
  'PR-34': {
    title: 'Grout round the casing',
    text: () => 'The drill hole is wider than the casing, and the gap is filled with grout; ask the driller’s report.',
    source: '77 Ill. Adm. Code 920; 10 N.Y. Codes R. & Regs. App. 5-B',
  },
  'PR-39': {
    title: 'Keep everything clean',
    text: () => 'Lay pump, pipe and cable on a clean sheet, never on soil; disinfect the well after the work.',
    source: '178 Neb. Admin. Code 12-011; Md. Code Regs. 26.04.04',
  },
  'PR-41': {
    title: 'Parts made for drinking water',
    text: () => 'Pipe, fittings and thread paste carry an NSF/ANSI 61 mark; brass is lead-free, 0.25 % at most.',
    source: 'Ohio Admin. Code 3701-28-08; Safe Drinking Water Act, section 1417 (0.25 %)',
  },
  'PR-45': {
    title: 'Nothing to close before the switch',
    text: () =>
      'No valve or filter between pump and pressure switch unless a relief valve stands on the pump’s side. No plan says what stands there, so look.',
    source: 'common practice, no source',
  },
};
