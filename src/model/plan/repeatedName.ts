/** A name that stands twice in one group of JSON text: a reader keeps the last without a word, so it is asked back. */
import { shortJson, type Problem } from './problem.ts';

/**
 * @param text  JSON that parses
 * @returns     the first repeated name with its line; null where every name stands once
 */
export function repeatedName(text: string): Problem | null {
  // A group's names so far; null for a list.
  const open: (Set<string> | null)[] = [];
  let names: Set<string> | null = null;
  let isName = false;
  for (let at = 0; at < text.length; at++) {
    switch (text.charCodeAt(at)) {
      case BRACE:
        names = new Set();
        open.push(names);
        isName = true;
        break;
      case BRACKET:
        names = null;
        open.push(names);
        isName = false;
        break;
      case CLOSED_BRACE:
      case CLOSED_BRACKET:
        open.pop();
        names = open.at(-1) ?? null;
        isName = false;
        break;
      case COMMA:
        isName = names !== null;
        break;
      case QUOTE: {
        const end = endOfString(text, at);
        if (isName && names !== null) {
          const name = JSON.parse(text.slice(at, end + 1)) as string;
          if (names.has(name)) return problemAt(text, at, name);
          names.add(name);
          isName = false;
        }
        at = end;
        break;
      }
    }
  }
  return null;
}

const QUOTE = 34;
const COMMA = 44;
const BRACKET = 91;
const BACKSLASH = 92;
const CLOSED_BRACKET = 93;
const BRACE = 123;
const CLOSED_BRACE = 125;

function endOfString(text: string, from: number): number {
  let at = from + 1;
  while (text.charCodeAt(at) !== QUOTE) at += text.charCodeAt(at) === BACKSLASH ? 2 : 1;
  return at;
}

function problemAt(text: string, at: number, name: string): Problem {
  const line = text.slice(0, at).split('\n').length;
  return {
    path: '',
    read: '',
    problem: `${shortJson(name)} stands twice in one group, the second time in line ${line}`,
    write: 'keep the one that is right',
    kind: 'text',
  };
}
