/** Takes typed fields over into SI, and keeps account of what was assumed and what nobody knows. */
import type { Assumed } from '../facts.ts';
import type { Metres } from '../si.ts';
import { readQuantity } from '../units.ts';
import type { QuantityKind } from '../units.ts';
import { UNKNOWN } from './unknown.ts';

export interface Take {
  readonly assumed: Assumed[];
  readonly unknown: string[];
  /** SI, or null where nothing was said or "unknown" was. */
  readonly maybe: (typed: string | undefined, kind: QuantityKind) => number | null;
  /** A fact of the place that the model asks for: listed as unknown where it is. */
  readonly fact: (path: string, typed: string | undefined, kind: QuantityKind) => number | null;
  /** A choice of the build: the default is taken and listed where nobody chose. */
  readonly quantity: (path: string, typed: string | undefined, kind: QuantityKind, otherwise: string) => number;
  readonly option: <Value extends string | number | boolean>(
    path: string,
    typed: Value | undefined,
    otherwise: Value,
  ) => Value;
  /** The same for a list of lengths. */
  readonly lengths: (path: string, typed: readonly string[] | undefined, otherwise: readonly string[]) => number[];
  /** Lists a value that was worked out as assumed. */
  readonly assume: (path: string, value: Plain) => void;
  /** A yes or no of the place that the model asks for. */
  readonly flag: (path: string, typed: boolean | undefined) => boolean | null;
  /** The same for depths that the plan counts from its own datum; metres below ground come out. */
  readonly depth: (typed: string | undefined) => Metres | null;
  readonly depthFact: (path: string, typed: string | undefined) => Metres | null;
}

type Plain = string | number | boolean | readonly string[];

/** How an assumed value is told, everywhere. */
function assumedText(value: Plain): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'object') return value.length === 0 ? 'none' : value.join(', ');
  return String(value);
}

/** @param shift  metres to add to a depth as typed, to have it from the ground */
export function takeFrom(shift: Metres): Take {
  const assumed: Assumed[] = [];
  const unknown: string[] = [];
  const maybe = (typed: string | undefined, kind: QuantityKind) =>
    typed === undefined || typed === UNKNOWN ? null : read(typed, kind);
  const assume = (path: string, value: Plain) => {
    assumed.push({ path, value: assumedText(value) });
  };
  const listed = <Value>(path: string, value: Value | null) => {
    if (value === null) unknown.push(path);
    return value;
  };
  const depth = (typed: string | undefined) => {
    const value = maybe(typed, 'length');
    return value === null ? null : value + shift;
  };
  return {
    assumed,
    unknown,
    maybe,
    depth,
    assume,
    fact: (path, typed, kind) => listed(path, maybe(typed, kind)),
    depthFact: (path, typed) => listed(path, depth(typed)),
    flag: (path, typed) => listed(path, typed ?? null),
    quantity(path, typed, kind, otherwise) {
      const said = maybe(typed, kind);
      if (said !== null) return said;
      assume(path, otherwise);
      return read(otherwise, kind);
    },
    lengths(path, typed, otherwise) {
      if (typed === undefined) assume(path, otherwise);
      return (typed ?? otherwise).map((text) => read(text, 'length'));
    },
    option(path, typed, otherwise) {
      if (typed !== undefined) return typed;
      assume(path, otherwise);
      return otherwise;
    },
  };
}

/** Throws for text that no readable plan holds: that is a mistake of the caller. */
export function read(text: string, kind: QuantityKind): number {
  const parsed = readQuantity(text, kind);
  if (!parsed.ok)
    throw new RangeError(`readFacts: no ${kind} is "${text}" (${parsed.fault.is}); read the plan with readPlan first`);
  return parsed.si;
}
