/** A reading error in a plan. It is about the text, not about the well: that would be a finding. */
export interface Problem {
  /** "well.casing.bottom"; empty for the plan as a whole. */
  readonly path: string;
  /** What stands there, as JSON: '90'; empty where nothing stands. */
  readonly read: string;
  /** What is wrong with it: "without a unit". */
  readonly problem: string;
  /** What to write instead; empty where the fault says it all. */
  readonly write: string;
  readonly kind: 'value' | 'missing' | 'unknown name' | 'text';
}

/** The whole sentence: 'well.casing.bottom is 90, without a unit; write it as "90 ft" or "27.4 m".' */
export function sayProblem({ path, read, problem, write, kind }: Problem): string {
  if (kind === 'text') return `${problem}${write && `; ${write}`}.`;
  if (kind === 'unknown name') {
    const at = path.lastIndexOf('.');
    const owner = at < 0 ? 'the plan' : path.slice(0, at);
    return `${owner} ${problem}; ${write}${write.endsWith('?') ? '' : '.'}`;
  }
  const subject = path === '' ? 'the plan' : path;
  if (kind === 'missing') return `${subject} is missing; write it as ${write}.`;
  if (write.endsWith('?')) return `${subject} is ${read}, ${problem}; ${write}`;
  return `${subject} is ${read}, ${problem}${write && `; write ${write}`}.`;
}

/** What was read, as JSON, short enough for a sentence and however deep it is. */
export function shortJson(value: unknown): string {
  const text = brief(value, 3);
  return text.length > LONGEST ? `${text.slice(0, LONGEST - 3)}…` : text;
}

const LONGEST = 60;

function brief(value: unknown, depth: number): string {
  if (typeof value === 'string') return JSON.stringify(value.slice(0, LONGEST));
  if (typeof value !== 'object' || value === null) return String(value);
  if (depth === 0) return '…';
  const inner = Array.isArray(value)
    ? value.slice(0, LONGEST / 2).map((item) => brief(item, depth - 1))
    : Object.entries(value)
        .slice(0, LONGEST / 6)
        .map(([key, item]) => `${JSON.stringify(key)}:${brief(item, depth - 1)}`);
  return Array.isArray(value) ? `[${inner.join(',')}]` : `{${inner.join(',')}}`;
}
