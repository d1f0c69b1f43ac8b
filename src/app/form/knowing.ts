/** Which values of the record were assumed and which are not known, by the paths that the form asks under. */
import type { Assumed } from '../../model/facts.ts';
import type { Solution } from '../../model/solution.ts';

export interface Kinds {
  /** By path, as the model tells it. */
  readonly assumed: ReadonlyMap<string, Assumed>;
  readonly unknown: ReadonlySet<string>;
}

export function kindsOfKnowing({ assumed, unknown }: Pick<Solution, 'assumed' | 'unknown'>): Kinds {
  return {
    assumed: new Map(assumed.map((each) => [askedPath(each.path), each])),
    unknown: new Set(unknown.map(askedPath)),
  };
}

/** The form asks for casings and screens as lists, also where the plan has one in its short form. */
export function askedPath(path: string): string {
  return path
    .replace(/^well\.casing(?=\.)/, 'well.casings.0')
    .replace(/^well\.intake\.(?=(?:top|bottom)$)/, 'well.intake.screens.0.');
}
