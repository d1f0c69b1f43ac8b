/** Why a value was not taken: what was typed, where, and what to write instead, in whole sentences. */
import type { Problem } from '../../../model/plan/problem.ts';
import { capital, ended } from '../phrases.ts';
import { nameOfPath, withoutPaths } from './paths.ts';

/** A way of writing that only the file has: lists and objects. */
const OF_THE_FILE = /[{[]/;

/** 'Pump intake cannot be "90": it is without a unit. Write it as "90 ft" or "27.4 m".' */
export function sayRefusal({ path, read, problem, write, kind }: Problem): string {
  const name = nameOfPath(path);
  const instead = write === '' || OF_THE_FILE.test(write) ? '' : ` ${ended(capital(asOrder(plain(write))))}`;
  if (kind === 'missing') return `${name} is missing.${instead}`;
  const typed = read === '' || OF_THE_FILE.test(read) ? 'what you typed' : withoutPaths(read);
  return `${name} cannot be ${typed}: ${ended(asClause(plain(problem)))}${instead}`;
}

/** Faults are told as what follows the value: "without a unit", "which is not possible: it must be at most 5000 ft". */
function asClause(problem: string): string {
  const must = /^which is not possible: (.*)$/.exec(problem);
  if (must !== null) return must[1] ?? '';
  if (problem.startsWith('which ')) return `it ${problem.slice('which '.length)}`;
  const has = /^(?:with (?=the |a |marks )|(?=inches after))(.*)$/.exec(problem);
  if (has !== null) return `it has ${has[1] ?? ''}`;
  return /^[\d.]+ in is /.test(problem) ? problem : `it is ${problem}`;
}

/** Without paths of the file, and with the signs that people write: "°C", "°F days". */
function plain(text: string): string {
  return withoutPaths(text)
    .replace(/\bdeg([FC]) d\b/g, '°$1 days')
    .replace(/\bdeg([FC])\b/g, '°$1');
}

function asOrder(write: string): string {
  return /^did you mean/.test(write) ? write : `write ${write}`;
}
