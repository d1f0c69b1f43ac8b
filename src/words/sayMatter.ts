/** A cause of a trouble in words. */
import type { Cause, Trouble } from '../model/matter/cause.ts';
import type { Own } from '../model/matter/own.ts';
import type { Show } from '../model/units.ts';
import type { en } from './en/index.ts';
import type { matter } from './en/matter.ts';
import { nameOfPath } from './en/plan/paths.ts';
import { sayHolding, sayShort } from './sayJudgement.ts';

/** Fetched apart from the rest of a language: a page asks for them when the list is opened. */
export type MatterWords = typeof matter;
/** Titles of rules, and the names of parts. */
type Language = typeof en;

export interface SaidCause {
  readonly title: string;
  /** "More likely in this well" */
  readonly likelihood: string;
  /** "Pressure tank" */
  readonly place: string;
  readonly look: readonly string[];
  readonly tells: readonly string[];
  readonly then: readonly string[];
  /** What the plan and its figures say; never empty. */
  readonly own: readonly string[];
  readonly cautions: readonly string[];
  /** Fields that nobody filled in and that would tell, in one sentence; empty where none. */
  readonly deciding: string;
  /** Choices that nobody made and that this rests on; empty where none. */
  readonly assumed: string;
}

export interface SaidTrouble {
  readonly title: string;
  readonly shows: string;
  readonly first: readonly string[];
  readonly wellCautions: readonly string[];
  readonly causes: readonly SaidCause[];
}

export function sayTrouble(trouble: Trouble, words: MatterWords, language: Language, show: Show): SaidTrouble {
  const { title, shows, first } = words.symptoms[trouble.symptom];
  return {
    title,
    shows,
    first,
    wellCautions: trouble.wellCautions.map((each) => words.wellCautions[each]),
    causes: trouble.causes.map((cause) => sayCause(cause, words, language, show)),
  };
}

export function sayCause(cause: Cause, words: MatterWords, language: Language, show: Show): SaidCause {
  const { heads } = words;
  const reasons = [
    ...cause.found.map((finding) => heads.found(sayShort(finding, language.short, show).title)),
    ...cause.against.map((held) => heads.against(sayHolding(held, language, show).title)),
    ...cause.says.flatMap((own) => sayOwn(own, words, show)),
  ];
  return {
    ...words.causes[cause.id],
    likelihood: words.likelihoods[cause.likelihood],
    place: language.long.parts[cause.kind].name,
    own: reasons.length === 0 ? [heads.nothing] : reasons,
    cautions: cause.cautions.map((each) => words.cautions[each]),
    deciding: cause.deciding.length === 0 ? '' : heads.deciding(names(cause.deciding)),
    assumed: cause.assumed.length === 0 ? '' : heads.assumed(names(cause.assumed)),
  };
}

function sayOwn({ id, numbers }: Own, words: MatterWords, show: Show): readonly string[] {
  // A sentence and its numbers belong together by their types, which a look-up cannot follow.
  const say = words.own[id] as (numbers: object, show: Show) => readonly string[];
  return say(numbers, show);
}

function names(paths: readonly string[]): readonly string[] {
  return [...new Set(paths.map(nameOfPath))];
}
