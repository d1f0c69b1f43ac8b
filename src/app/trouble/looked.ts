/** What was looked at already, and what came of it: kept beside the well, apart for each thing that somebody notices. */
import { isSymptom, type SymptomId } from '../../model/matter/symptom.ts';
import type { Result } from '../../words/en/trouble.ts';

export interface Looked {
  /** What is noticed; null before it is chosen. */
  readonly symptom: SymptomId | null;
  /** By symptom, then by cause. A cause that the plan has no longer stays: the plan may have it again. */
  readonly results: Readonly<Record<string, Readonly<Record<string, Result>>>>;
}

/** @param text  as it was kept, or anything else */
export function readLooked(text: string | null): Looked {
  const { symptom, results } = parsed(text);
  return {
    symptom: typeof symptom === 'string' && isSymptom(symptom) ? symptom : null,
    results: Object.fromEntries(Object.entries(asRecord(results)).map(([key, each]) => [key, resultsOf(each)])),
  };
}

export function resultOf({ symptom, results }: Looked, cause: string): Result | null {
  return symptom === null ? null : (results[symptom]?.[cause] ?? null);
}

/** @param result  null takes the tick back */
export function withResult(looked: Looked, cause: string, result: Result | null): Looked {
  const { symptom, results } = looked;
  if (symptom === null) return looked;
  const others = Object.entries(results[symptom] ?? {}).filter(([key]) => key !== cause);
  const all = Object.fromEntries(result === null ? others : [...others, [cause, result]]);
  return { ...looked, results: { ...results, [symptom]: all } };
}

function resultsOf(kept: unknown): Readonly<Record<string, Result>> {
  const known = Object.entries(asRecord(kept)).filter((each): each is [string, Result] => isResult(each[1]));
  return Object.fromEntries(known);
}

function isResult(value: unknown): value is Result {
  return value === 'fine' || value === 'this';
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  if (text === null) return {};
  try {
    return asRecord(JSON.parse(text));
  } catch {
    return {};
  }
}

function asRecord(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}
