/** From what was typed into a new entry to the plan that has it. Nothing is written that was not typed, chosen or said. */
import { valueAt, withValue } from '../../model/plan/editPlan.ts';
import type { FieldInfo } from '../../model/plan/fields.ts';
import type { Problem } from '../../model/plan/problem.ts';
import { readPlan } from '../../model/plan/readPlan.ts';
import type { Plan } from '../../model/plan/schema.ts';
import { parseQuantity } from '../../model/units.ts';
import { sayRefusal } from '../../words/en/plan/refusal.ts';
import type { Asked, Entry } from './entries.ts';
import { lengthOfList } from './layout.ts';
import { NOT_KNOWN, valueOf } from './typedValue.ts';

export interface Answer {
  readonly text: string;
  readonly notKnown: boolean;
}

/** By the key of what was asked. */
export type Answers = Readonly<Record<string, Answer>>;

export const NO_ANSWER: Answer = { text: '', notKnown: false };

export type Adding =
  | {
      readonly ok: true;
      readonly plan: Plan;
      /** Place of an item in its list; 0 of what is no item. */
      readonly place: number;
    }
  | {
      readonly ok: false;
      /** By the key of what was asked. */
      readonly problems: Readonly<Record<string, string>>;
      /** What is the matter with the entry as a whole; null where a field can be blamed. */
      readonly whole: string | null;
    };

export function kindIn(answers: Answers): string {
  return answers['kind']?.text ?? '';
}

export function withEntry(plan: Plan, entry: Entry, answers: Answers): Adding {
  const asks = entry.asks(kindIn(answers));
  const unanswered = asks.filter(({ key }) => isEmpty(answers[key]));
  if (unanswered.length > 0) {
    return {
      ok: false,
      problems: Object.fromEntries(unanswered.map((asked) => [asked.key, wanted(asked)])),
      whole: null,
    };
  }
  const count = entry.isItem ? lengthOfList(entry.path, plan) : 0;
  const added = asks.reduce(
    (next, asked) => withValue(next, pathOf(entry, count, asked.key), answerOf(asked, answers[asked.key] ?? NO_ANSWER)),
    entry.said === null ? plan : withValue(plan, entry.path, entry.said),
  );
  const place = placeOf(added, entry, count);
  const reading = readPlan(moved(added, entry.path, count, place));
  return reading.ok
    ? { ok: true, plan: reading.plan, place }
    : { ok: false, ...byKey(reading.problems, entry, asks, place) };
}

function pathOf({ path, isItem }: Entry, place: number, key: string): string {
  return [path, ...(isItem ? [String(place)] : []), ...(key === '' ? [] : [key])].join('.');
}

function isEmpty(answer: Answer = NO_ANSWER): boolean {
  return !answer.notKnown && answer.text.trim() === '';
}

function wanted({ field, notKnown }: Asked): string {
  if (field.kind === 'choice') return 'Choose one.';
  return notKnown === null ? 'Type a value.' : 'Type a value, or tick “not known”.';
}

function answerOf({ field, notKnown }: Asked, { text, notKnown: open }: Answer): unknown {
  if (open) return notKnown === 'written' ? NOT_KNOWN : undefined;
  return field.kind === 'choice' ? optionOf(field, text) : valueOf(field, text.trim(), undefined);
}

function optionOf({ options = [] }: FieldInfo, text: string): unknown {
  return options.find((option) => String(option) === text) ?? text;
}

/** The last item's place where the list rises: before the first that has more. One that is not known stays the last. */
function placeOf(plan: Plan, { path, rising, isItem }: Entry, last: number): number {
  if (!isItem || rising === null) return last;
  const kind = rising === 'flow' || rising === '0' ? 'flow' : 'length';
  const measure = (item: number): number | null => {
    const typed = valueAt(plan, `${path}.${item}.${rising}`);
    const read = typeof typed === 'string' ? parseQuantity(typed, kind) : null;
    return read?.ok === true ? read.si : null;
  };
  const own = measure(last);
  if (own === null) return last;
  const beyond = Array.from({ length: last }, (_, i) => measure(i)).findIndex((each) => each !== null && each > own);
  return beyond < 0 ? last : beyond;
}

/** The list's last item at another place. What stands behind it takes its status along. */
function moved(plan: Plan, list: string, from: number, to: number): Plan {
  const items = valueAt(plan, list);
  if (from === to || !Array.isArray(items)) return plan;
  const ordered = [...items.slice(0, to), items[from], ...items.slice(to, from)];
  const status =
    plan.status &&
    Object.fromEntries(Object.entries(plan.status).map(([path, word]) => [behind(path, list, to), word]));
  return { ...withValue(plan, list, ordered), ...(status && { status }) };
}

/** The path of an item from that place on, one place further. */
function behind(path: string, list: string, from: number): string {
  if (!path.startsWith(`${list}.`)) return path;
  const [place = '', ...rest] = path.slice(list.length + 1).split('.');
  return Number(place) >= from ? [list, String(Number(place) + 1), ...rest].join('.') : path;
}

/** Each beside the field that it is about. The plan read before: what is wrong next to the new item is about it too. */
function byKey(
  problems: readonly Problem[],
  entry: Entry,
  asks: readonly Asked[],
  place: number,
): { readonly problems: Readonly<Record<string, string>>; readonly whole: string | null } {
  const said: Record<string, string> = {};
  const others: string[] = [];
  for (const problem of problems) {
    const own = asks.find(({ key }) => problem.path === pathOf(entry, place, key));
    const next = asks.find(({ key }) => entry.isItem && problem.path === pathOf(entry, place + 1, key));
    const words = sayRefusal(problem);
    if (own !== undefined) said[own.key] ??= words;
    else if (next !== undefined) said[next.key] ??= words;
    else others.push(words);
  }
  return { problems: said, whole: others.length > 0 ? others.join(' ') : null };
}
