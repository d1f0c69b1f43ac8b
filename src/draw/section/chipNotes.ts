/** The second lines of the chips: what follows from a depth, at length and, for a narrow column, shortly. */
import type { Metres } from '../../model/si.ts';
import type { PartKind, Solution } from '../../model/solution.ts';
import type { Show } from '../../model/units.ts';
import { isAnyAssumed, RESTS_ON } from '../assumed.ts';
import type { Note } from '../../words/labels.ts';
import type { ShortLanguage } from '../../words/words.ts';
import { fallsToIntake } from '../fallsToIntake.ts';

type ChipSayings = ShortLanguage['chips'];

export interface ChipLook {
  /** Findings about these belong to the chip. */
  readonly parts: readonly PartKind[];
  readonly weight: number;
  /** Default: a depth. */
  readonly value?: (depth: Metres, words: ChipSayings, show: Show) => string;
  /** @param show  figures that no line parts from their unit */
  readonly notes: (solution: Solution, words: ChipSayings, show: Show) => readonly (Note | null)[];
}

/** By the kind of handle; a handle without a look has no chip in the section. */
export const CHIP_LOOKS: Readonly<Record<string, ChipLook | undefined>> = {
  casingHeight: {
    parts: ['cap', 'seal'],
    weight: 2,
    value: (depth, words, show) => words.up(show.small(-depth)),
    notes: () => [],
  },
  frostDepth: {
    parts: ['frost'],
    weight: 4,
    value: shallow,
    notes: ({ facts: { site }, values }, { frostFrom }) => {
      const from = site.frostDepth !== null ? site.frostFrom : values.frostDepth === null ? null : 'estimate';
      return [from === null ? null : say(frostFrom[from])];
    },
  },
  pitlessDepth: {
    parts: ['pitlessAdapter', 'buriedLine'],
    weight: 4,
    value: shallow,
    notes: (solution, words, show) => [
      marked(againstFrost(solution.values.pitlessBelowFrost, words, show), solution, 'underFrost'),
    ],
  },
  staticLevel: {
    parts: ['staticLevel'],
    weight: 4,
    notes: ({ levels }, words, show) =>
      levels.static === null
        ? []
        : [
            say(levels.static < 0 ? words.flowsWhenOpen : words.pumpOff),
            inDrySeason(levels.staticLowest, levels.static, words, show),
          ],
  },
  pumpingLevel: {
    parts: ['pumpingLevel'],
    weight: 4,
    notes: (solution, words, show) => [
      marked(drawdown(solution, words, show), solution, 'drawdown'),
      inDrySeason(solution.levels.pumpingDry, solution.levels.pumping, words, show),
    ],
  },
  pumpSetting: {
    parts: ['pump', 'intake', 'motor'],
    weight: 4,
    notes: (solution, words, show) => [marked(overIntake(solution, words, show), solution, 'overIntake')],
  },
  wellBottom: {
    parts: ['well'],
    weight: 4,
    notes: (solution, words, show) => {
      const { well } = solution.facts;
      const gap = solution.values.clearanceToBottom;
      return [
        gap === null ? null : marked(words.underMotor({ gap }, show), solution, 'underMotor'),
        well.depth - well.bottom < 0.01 ? null : say(words.drilledTo({ depth: well.depth }, show)),
      ];
    },
  },
  casingBottom: {
    parts: ['casing', 'grout'],
    weight: 2,
    notes: ({ facts: { well } }, words, show) => {
      const liner = well.casings.length > 1 ? well.casings.at(-1) : undefined;
      // Grout is round the outer casing.
      if (liner !== undefined) return [liner.top > 0 ? say(words.linerFrom({ depth: liner.top }, show)) : null];
      const { groutBottom } = well;
      return [say(groutBottom === null ? words.groutNotKnown : words.groutTo({ depth: groutBottom }, show))];
    },
  },
  screenTop: { parts: ['screen'], weight: 2, notes: () => [] },
  screenBottom: { parts: [], weight: 2, notes: () => [] },
};

/** Dots under its figure where it rests on what nobody said. */
function marked(note: Note | null, solution: Solution, figure: keyof typeof RESTS_ON): Note | null {
  return note !== null && isAnyAssumed(solution, RESTS_ON[figure]) ? { ...note, assumed: true } : note;
}

/** A note with one way to say it. */
export function say(words: string): Note {
  return { long: words, short: words };
}

/** In inches or centimetres down to twelve feet: that is how codes give frost. */
function shallow(depth: Metres, _words: ChipSayings, show: Show): string {
  return depth < 3.7 ? show.small(depth) : show.depth(depth);
}

function againstFrost(below: Metres | null, words: ChipSayings, show: Show): Note | null {
  if (below === null) return null;
  return below >= 0 ? words.belowFrost({ gap: below }, show) : words.aboveFrost({ gap: -below }, show);
}

function inDrySeason(dry: Metres | null, usual: Metres | null, words: ChipSayings, show: Show): Note | null {
  if (dry === null || (usual !== null && Math.abs(dry - usual) < 0.01)) return null;
  return words.inDrySeason({ depth: dry }, show);
}

function drawdown(solution: Solution, words: ChipSayings, show: Show): Note | null {
  const { facts, values } = solution;
  const { demand } = facts.house;
  if (fallsToIntake(solution) && demand !== null) return words.wouldDraw({ demand }, show);
  if (values.drawdown === null || demand === null)
    return facts.water.pumping?.kind === 'yield only' ? words.airLiftOnly : null;
  return words.drawdown({ drawdown: values.drawdown, demand }, show);
}

function overIntake(solution: Solution, words: ChipSayings, show: Show): Note | null {
  const { facts, levels, values, verdicts } = solution;
  // Where the pump would draw the water below it there is no cover to tell, but how far it hangs too high.
  const submergence = values.submergence ?? (levels.pumping === null ? null : facts.pump.setting - levels.pumping);
  if (submergence === null) return null;
  // Beside a danger of no water over it, the water at the demand would say that there is some.
  if (submergence >= 0 && verdicts['PR-02'] === 'danger') return null;
  return submergence >= 0
    ? words.waterOverIntake({ gap: submergence }, show)
    : fallsToIntake(solution) && facts.house.demand !== null
      ? words.tooHighFor({ gap: -submergence, demand: facts.house.demand }, show)
      : words.intakeAboveWater({ gap: -submergence }, show);
}
