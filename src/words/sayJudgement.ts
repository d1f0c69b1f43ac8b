/**
 * What the rules found, in words. Rule, variant and numbers come as data; that each has its sentence is held by the
 * types of the language's own files, so here they are looked up by name.
 */
import type { Lacking } from '../model/rules/lacking.ts';
import type { Fix } from '../model/rules/rule.ts';
import type { Advice, Finding, Holding, Turn, Turning } from '../model/solution.ts';
import type { Show } from '../model/units.ts';
import type { AdviceWords } from './en/advice.ts';
import { saySource, type Short, type Source } from './ruleWords.ts';
import type { LongLanguage, ShortLanguage, Words } from './words.ts';

type Say<Result> = (numbers: object, show: Show) => Result;
type Sayings<Result> = Readonly<Record<string, Say<Result>>>;

interface AnyShort {
  readonly broken: string;
  readonly says: Sayings<Short>;
}

interface AnyLong {
  readonly holds: string;
  readonly held: Sayings<Short>;
  readonly source: Source;
  readonly why: string;
  readonly caution?: string;
  readonly messages: Sayings<string>;
  readonly fixes: Sayings<string>;
}

/** What a drawing says of a finding, and the head of its entry in a list. */
export interface SaidShort {
  /** "The pitless adapter is in the frost zone" */
  readonly title: string;
  /** By how much, in the reader's units: "12 in too high". */
  readonly amount: string;
}

export interface SaidFinding extends SaidShort {
  /** What is wrong, with its numbers, one sentence. */
  readonly message: string;
  /** Why it matters, one sentence that a first-timer understands. */
  readonly why: string;
  readonly source: string;
  /** Shown where the danger is; empty when the work hurts nobody. */
  readonly caution: string;
}

type SaidBy = Pick<Finding, 'rule' | 'variant' | 'numbers'>;

export function sayShort(finding: SaidBy, words: ShortLanguage, show: Show): SaidShort {
  const rule = shortOf(finding.rule, words);
  const said = look(rule.says, finding)(finding.numbers, show);
  return { title: said.title ?? rule.broken, amount: said.amount };
}

export function sayFinding(finding: SaidBy, { short, long }: Words, show: Show): SaidFinding {
  const { messages, why, source, caution = '' } = longOf(finding.rule, long);
  return {
    ...sayShort(finding, short, show),
    message: look(messages, finding)(finding.numbers, show),
    why,
    source: saySource(source, show),
    caution,
  };
}

export interface SaidHolding extends SaidShort {
  readonly message: string;
}

export function sayHolding(held: Holding, { long }: Words, show: Show): SaidHolding {
  const rule = longOf(held.rule, long);
  const { title = rule.holds, amount } = look(rule.held, held)(held.numbers, show);
  return { title, amount, message: look(rule.messages, held)(held.numbers, show) };
}

/** What nobody told, and what could not be checked for want of it. */
export interface SaidLacking {
  /** "the static water level" */
  readonly missing: string;
  /** "whether the pump hangs deep enough; whether the pump is strong enough" */
  readonly unchecked: string;
}

export function sayLacking({ fact, numbers, rules }: Lacking, { long }: Words, show: Show): SaidLacking {
  return {
    missing: long.missing[fact](numbers as Readonly<Record<string, unknown>>, show),
    unchecked: rules.map((rule) => long.findings.whether(longOf(rule, long).holds)).join('; '),
  };
}

/** On which side of a value a rule holds: "Reaches 60 psi only while the water stands above 104 ft." */
export function sayTurning(turning: Turning, { long }: Words, show: Show): string {
  return look(longOf(turning.rule, long).messages, turning)(turning.numbers, show);
}

/** Of what is broken in any case: from where on it is worse. Null where nobody can say, or nothing is open. */
export function sayWorse({ worse }: Pick<Finding, 'worse'>, { long }: Words, show: Show): string | null {
  return worse === null ? null : long.findings.worse(worse, show);
}

/** What a finding turns on, a sentence each; what its message says already is not among them. */
export function sayTurns(finding: Finding, words: Words, show: Show): readonly string[] {
  const { message } = sayFinding(finding, words, show);
  const said = toldOnce(finding.together).flatMap((each) => [
    sayTurning(each, words, show),
    sayWorse(each, words, show),
  ]);
  return [...said, sayWorse(finding, words, show)].filter((each) => each !== null && each !== message) as string[];
}

/**
 * With nothing to stop the pump it wants more water over its intake than the intake alone does. Who acts on the one level
 * has acted on the other, and two figures for one thing leave a reader with neither.
 */
function toldOnce(together: readonly Turning[]): readonly Turning[] {
  const guard = together.find(({ rule, variant }) => rule === 'PR-08' && variant === 'dependsOnLevel');
  return together.filter(
    ({ rule, variant, turn }) =>
      guard === undefined || rule !== 'PR-02' || variant !== 'dependsOnLevel' || turn.at < guard.turn.at,
  );
}

/** What to measure or ask for, as a button's words; null for a field that no rule turns on. */
export function sayMeasure({ field }: Turn, { long }: Words): string | null {
  return (long.measure as Readonly<Record<string, string>>)[field] ?? null;
}

/** A button's words ("Lower to 54 in"), or a sentence where there is no button. */
export function sayFix(rule: string, fix: Fix, { long }: Words, show: Show): string {
  const own = longOf(rule, long).fixes;
  const shared = long.fixes as Sayings<string>;
  const words = (own[fix.variant] ?? look(shared, fix))(fix.numbers, show);
  return fix.changes !== null || words.endsWith('.') ? words : `${words}.`;
}

export interface SaidAdvice {
  readonly title: string;
  readonly text: string;
  readonly source: string;
}

export function sayAdvice({ rule }: Advice, { long }: Words, show: Show): SaidAdvice {
  const { title, text, source } = (long.advice as Readonly<Record<string, AdviceWords>>)[rule] as AdviceWords;
  return { title, text: text(show), source };
}

function shortOf(rule: string, words: ShortLanguage): AnyShort {
  return (words.rules as unknown as Readonly<Record<string, AnyShort>>)[rule] as AnyShort;
}

function longOf(rule: string, words: LongLanguage): AnyLong {
  return (words.rules as unknown as Readonly<Record<string, AnyLong>>)[rule] as AnyLong;
}

function look<Result>(sayings: Sayings<Result>, { variant }: { readonly variant: string }): Say<Result> {
  const found = sayings[variant];
  if (found === undefined) throw new RangeError(`words: no sentence "${variant}"`);
  return found;
}
