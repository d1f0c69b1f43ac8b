/**
 * Where a text stops being JSON: the index of the first character that cannot stand there, or the text's length when it
 * ends too early. Engines tell the place in different words or not at all, so we look ourselves.
 */
export function jsonFault(text: string): number {
  const open: ('{' | '[')[] = [];
  let expect: Expectation = 'value';
  let at = skipSpace(text, 0);
  while (at < text.length) {
    const token = tokenAt(text, at);
    const next: Expectation | null = token === null ? null : after(token, expect, open);
    if (token === null || next === null) return token === null && text[at] === '"' ? stringEnd(text, at) : at;
    expect = next;
    at = skipSpace(text, at + token.length);
  }
  return text.length;
}

type Expectation = 'value' | 'value or ]' | 'name' | 'name or }' | 'colon' | 'comma or end' | 'nothing';

/** What may follow a token, or null when the token itself may not stand there. Keeps account of open brackets. */
function after(token: string, expect: Expectation, open: ('{' | '[')[]): Expectation | null {
  const closed = (): Expectation => (open.length > 0 ? 'comma or end' : 'nothing');
  if (expect === 'colon') return token === ':' ? 'value' : null;
  if (expect === 'nothing') return null;
  if (expect === 'comma or end' && token === ',') return open.at(-1) === '{' ? 'name' : 'value';
  const ends = expect === 'comma or end' || expect === 'value or ]' || expect === 'name or }';
  if (ends && (token === '}' || token === ']')) {
    const fits = open.at(-1) === (token === '}' ? '{' : '[');
    if (!fits) return null;
    open.pop();
    return closed();
  }
  if (expect === 'comma or end') return null;
  if (expect === 'name' || expect === 'name or }') return token.startsWith('"') ? 'colon' : null;
  if (token === '{' || token === '[') {
    open.push(token);
    return token === '{' ? 'name or }' : 'value or ]';
  }
  return /^["\d-]|^(?:true|false|null)$/.test(token) ? closed() : null;
}

const TOKEN = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null|[{}[\]:,]/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[\da-fA-F]{4})/y;

function tokenAt(text: string, at: number): string | null {
  if (text[at] === '"') {
    const end = stringEnd(text, at);
    return text[end] === '"' ? text.slice(at, end + 1) : null;
  }
  return matchAt(TOKEN, text, at);
}

/** Index of the closing quote, or of what a string cannot hold: a bare line end, a strange escape. */
function stringEnd(text: string, from: number): number {
  let at = from + 1;
  while (at < text.length && text[at] !== '"' && text.charCodeAt(at) >= FIRST_PRINTABLE) {
    if (text[at] !== '\\') at += 1;
    else {
      const escape = matchAt(ESCAPE, text, at);
      if (escape === null) return at;
      at += escape.length;
    }
  }
  return at;
}

const FIRST_PRINTABLE = 0x20;

/** A sticky pattern looks where it is told to, and only there. */
function matchAt(pattern: RegExp, text: string, at: number): string | null {
  pattern.lastIndex = at;
  return pattern.exec(text)?.[0] ?? null;
}

function skipSpace(text: string, from: number): number {
  let at = from;
  while (at < text.length && ' \t\r\n'.includes(text.charAt(at))) at++;
  return at;
}
