/** What the chips beside the section say: a name, a depth, and a line or two on what follows from it. */
import { handlesOf, type Handle } from '../../model/handles.ts';
import type { Metres } from '../../model/si.ts';
import type { Finding, PartKind, Severity, Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { hold } from '../type/width.ts';
import type { Ink } from '../theme.ts';

export interface ChipWords {
  readonly handle: string;
  readonly name: string;
  /** For a narrow column. */
  readonly short: string;
  /** With its unit; "?" when not known. */
  readonly value: string;
  /** At most two lines. */
  readonly notes: readonly string[];
  readonly depth: Metres;
  readonly known: boolean;
  readonly locked: boolean;
  readonly ink: string;
  readonly weight: number;
  readonly priority: number;
  /** The worst finding about what it moves. */
  readonly finding: Finding | null;
}

/** Chips of the section: what is too small to be told apart here is dragged in the details. */
export function chipWords(solution: Solution, show: Show, ink: Ink): ChipWords[] {
  return handlesOf(solution)
    .filter(({ id }) => WORDS[kindOf(id)] !== undefined)
    .map((handle) => chipOf(handle, solution, show, ink));
}

function kindOf(id: string): string {
  return id.split('/')[0] ?? id;
}

function chipOf(handle: Handle, solution: Solution, show: Show, ink: Ink): ChipWords {
  const look = WORDS[kindOf(handle.id)];
  const finding = look === undefined ? null : worstAbout(look.parts, solution.findings);
  const notes = look === undefined || (!handle.known && handle.id === 'staticLevel') ? [] : look.notes(solution, show);
  const shown = finding !== null && finding.severity !== 'note' ? [finding.amount, ...notes.slice(0, 1)] : notes;
  return {
    handle: handle.id,
    name: handle.label,
    short: SHORT[kindOf(handle.id)] ?? handle.label,
    value: handle.known ? hold((look?.value ?? defaultValue)(handle.depth, show)) : '?',
    notes: shown.filter((note) => note !== '').slice(0, 2),
    depth: handle.known ? handle.depth : placeOfUnknown(handle.id, solution),
    known: handle.known,
    locked: handle.locked !== null,
    ink: inkOf(handle, ink),
    weight: look?.weight ?? 2,
    priority: look?.weight ?? 2,
    finding,
  };
}

/** What nobody knows has no depth: its chip waits where such a level often is, dashed and without a line. */
function placeOfUnknown(handle: string, { facts, levels }: Solution): Metres {
  const { bottom } = facts.well;
  if (handle === 'staticLevel') return bottom * 0.3;
  if (handle === 'pumpingLevel')
    return levels.static === null ? bottom * 0.45 : (levels.static + facts.pump.setting) / 2;
  if (handle === 'frostDepth') return 0;
  return bottom * 0.6;
}

interface Words {
  readonly parts: readonly PartKind[];
  readonly weight: number;
  readonly value?: (depth: Metres, show: Show) => string;
  readonly notes: (solution: Solution, show: Show) => string[];
}

const WORDS: Readonly<Record<string, Words | undefined>> = {
  casingHeight: {
    parts: ['cap', 'seal'],
    weight: 2,
    value: (depth, show) => `${show.small(-depth)} up`,
    notes: () => [],
  },
  frostDepth: {
    parts: ['frost'],
    weight: 4,
    value: shallow,
    notes: ({ facts }) => [
      facts.site.frostFrom === null
        ? ''
        : facts.site.frostFrom === 'adviser'
          ? 'by the adviser'
          : `by ${facts.site.frostFrom}`,
    ],
  },
  pitlessDepth: {
    parts: ['pitlessAdapter', 'buriedLine'],
    weight: 4,
    value: shallow,
    notes: ({ values }, show) => [againstFrost(values.pitlessBelowFrost, show)],
  },
  staticLevel: {
    parts: ['staticLevel'],
    weight: 4,
    notes: ({ facts, levels }, show) => [
      facts.water.staticLevel !== null && facts.water.staticLevel < 0 ? 'flows when open' : 'pump off',
      inDrySeason(levels.staticLowest, levels.static, show),
    ],
  },
  pumpingLevel: {
    parts: ['pumpingLevel'],
    weight: 4,
    notes: ({ facts, levels, values }, show) => [
      values.drawdown === null || facts.house.demand === null
        ? facts.water.pumping?.kind === 'yield only'
          ? 'air-lift yield only: not known'
          : ''
        : `${hold(show.depth(values.drawdown))} drawdown at ${hold(show.flow(facts.house.demand))}`,
      inDrySeason(levels.pumpingDry, levels.pumping, show),
    ],
  },
  pumpSetting: {
    parts: ['pump', 'intake', 'motor'],
    weight: 4,
    notes: ({ values }, show) => [
      values.submergence === null
        ? ''
        : values.submergence >= 0
          ? `${hold(show.depth(values.submergence))} of water over it`
          : `${hold(show.depth(-values.submergence))} above the water`,
    ],
  },
  wellBottom: {
    parts: ['well'],
    weight: 4,
    notes: ({ facts, values }, show) => [
      values.clearanceToBottom === null ? '' : `${hold(show.depth(values.clearanceToBottom))} under the motor`,
      facts.well.soundedDepth === null || facts.well.depth - facts.well.bottom < 0.01
        ? ''
        : `drilled to ${hold(show.depth(facts.well.depth))}`,
    ],
  },
  casingBottom: {
    parts: ['casing', 'grout'],
    weight: 2,
    notes: ({ facts }, show) => [
      facts.well.groutBottom === null ? 'grout not known' : `grout to ${hold(show.depth(facts.well.groutBottom))}`,
    ],
  },
  screenTop: { parts: ['screen'], weight: 2, notes: () => [] },
  screenBottom: { parts: [], weight: 2, notes: () => [] },
};

const SHORT: Readonly<Record<string, string | undefined>> = {
  casingHeight: 'Top',
  frostDepth: 'Frost',
  pitlessDepth: 'Pitless',
  staticLevel: 'Static',
  pumpingLevel: 'Pumping',
  pumpSetting: 'Pump',
  wellBottom: 'Bottom',
  casingBottom: 'Casing',
};

function defaultValue(depth: Metres, show: Show): string {
  return show.depth(depth);
}

/** In inches or centimetres down to twelve feet: that is how codes give frost. */
function shallow(depth: Metres, show: Show): string {
  return depth < 3.7 ? show.small(depth) : show.depth(depth);
}

function againstFrost(below: Metres | null, show: Show): string {
  if (below === null) return '';
  return below >= 0 ? `${hold(show.small(below))} below frost` : `${hold(show.small(-below))} above frost`;
}

function inDrySeason(dry: Metres | null, usual: Metres | null, show: Show): string {
  if (dry === null || (usual !== null && Math.abs(dry - usual) < 0.01)) return '';
  return `${hold(show.depth(dry))} in a dry season`;
}

function inkOf(handle: Handle, ink: Ink): string {
  const inks: Readonly<Record<Handle['ink'], string>> = {
    static: ink.static,
    pumping: ink.pumping,
    frost: ink.frost,
    pump: ink.pump,
    casing: ink.casing,
    ground: ink.casing,
    pitless: ink.dropPipe,
  };
  return inks[handle.ink];
}

const RANK: Readonly<Record<Severity, number>> = { danger: 3, warning: 2, note: 1 };

function worstAbout(parts: readonly PartKind[], findings: readonly Finding[]): Finding | null {
  let worst: Finding | null = null;
  for (const finding of findings) {
    if (!parts.includes(finding.partKind) || finding.quantity !== 'length') continue;
    if (worst === null || RANK[finding.severity] > RANK[worst.severity]) worst = finding;
  }
  return worst;
}
