/** How far somebody is with the work: kept beside the well, apart for a new string and for one in place of an old. */
import type { Kind } from '../../model/work/step.ts';

export interface Course {
  /** Key of the step that is looked at; null before the first. */
  readonly at: string | null;
  /** Keys of steps that are done. One that the plan has no longer stays: the plan may have it again. */
  readonly done: readonly string[];
}

export interface Progress {
  /** Null: as the plan says. */
  readonly kind: Kind | null;
  readonly courses: Readonly<Record<Kind, Course>>;
}

const NOT_BEGUN: Course = { at: null, done: [] };

/** @param text  as it was kept, or anything else */
export function readProgress(text: string | null): Progress {
  const kept = parsed(text);
  const courses = asRecord(kept['courses']);
  const { kind } = kept;
  return {
    kind: kind === 'new' || kind === 'replace' ? kind : null,
    courses: { new: courseOf(courses['new']), replace: courseOf(courses['replace']) },
  };
}

export function withCourse(progress: Progress, kind: Kind, change: Partial<Course>): Progress {
  return { ...progress, courses: { ...progress.courses, [kind]: { ...progress.courses[kind], ...change } } };
}

export function ticked({ done }: Course, key: string, isDone: boolean): readonly string[] {
  const others = done.filter((each) => each !== key);
  return isDone ? [...others, key] : others;
}

function courseOf(kept: unknown): Course {
  const { at, done } = asRecord(kept);
  return {
    at: typeof at === 'string' ? at : NOT_BEGUN.at,
    done: Array.isArray(done) ? done.filter((each): each is string => typeof each === 'string') : NOT_BEGUN.done,
  };
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
