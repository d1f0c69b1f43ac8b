/** What the well gave: a test with its drawdown or level, or a yield alone. An air lift tells no level. */
import type { Found, Told } from '../facts.ts';
import type { Doubt } from '../reading.ts';
import type { Book } from './book.ts';
import { method } from './method.ts';

export function test(book: Book): void {
  const how = method(book);
  const level = book.of('pumpingLevel')[0];
  const drawdown = book.of('drawdown').find(({ piece }) => !SEASON.test(textAt(book, piece)));
  const rate = book
    .of('testRate')
    .filter(({ quantity }) => quantity.kind === 'F' || quantity.unit !== '' || book.write.saysUnits)[0];
  const said = book.of('yield').filter(({ subject }) => subject !== 'recommended')[0];
  const hours = book.of('testHours').filter(({ quantity }) => quantity.kind === 'T' || quantity.unit !== '')[0];
  const beside = drawdown === undefined ? undefined : flowBeside(book, drawdown);
  // A test with its drawdown counts before what air blew out on another day.
  const isAir = how?.method === 'air lift' && (beside === undefined || how.piece === drawdown?.piece);
  const flow = how?.method === 'air lift' && !isAir ? beside : (rate ?? said);
  const tests = book.of('testIntake');
  for (const each of tests) book.aside('testIntake', each.piece);
  const [day] = book.facts.found.filter(({ fact, quantity }) => fact === 'date' && quantity !== null);
  if (day?.quantity != null) book.read('well.tested', day.quantity.text, [day.piece]);
  if (isAir && level !== undefined) book.aside('airLevel', level.piece);
  if (isAir && drawdown !== undefined) book.aside('airLevel', drawdown.piece);
  const pieces = (...all: readonly (Found | undefined)[]): number[] =>
    all.flatMap((each) => (each === undefined ? [] : [each.piece]));
  if (!isAir && (level !== undefined || drawdown !== undefined)) {
    if (flow !== undefined)
      book.read('water.pumping.flow', book.write.flow(flow.quantity), [flow.piece], {
        doubt: book.flowDoubt(flow),
      });
    if (drawdown !== undefined) {
      book.read('water.pumping.drawdown', book.deeper(drawdown)[0], pieces(drawdown), {
        doubt: unlike(book, drawdown, level),
      });
      if (hours !== undefined) book.read('water.pumping.after', book.write.time(hours.quantity), [hours.piece]);
    } else if (level !== undefined) {
      const [value, doubt] = book.deeper(level);
      book.read('water.pumping.level', value, [level.piece], { doubt });
      if (hours !== undefined) book.aside('noPlace', hours.piece);
    }
    if (rate !== undefined && said !== undefined && said.piece !== rate.piece)
      book.read('well.yield', book.write.flow(said.quantity), [said.piece], { doubt: book.flowDoubt(said) });
  } else if (flow !== undefined) {
    book.read('well.yield', book.write.flow(flow.quantity), [flow.piece], {
      doubt: book.flowDoubt(flow),
      note: isAir ? 'airLift' : null,
    });
    if (hours !== undefined) book.aside('noPlace', hours.piece);
  }
  if (how !== null && flow !== undefined && (isAir || how.method !== 'air lift'))
    book.read('well.yieldFrom', how.method, [how.piece]);
}

/** How far the water falls in a dry summer is no drawdown of a test. */
const SEASON = /\b(?:summer|winter|season|drought|dry (?:spell|month|year))/;

function textAt(book: Book, piece: number): string {
  return book.facts.marked[piece]?.text ?? '';
}

/** The flow that made a drawdown, on the same line, where no air is spoken of. */
function flowBeside(book: Book, { piece }: Told): Told | undefined {
  if (/\bair\b|\bair[- ]?(?:lift|test)/.test(textAt(book, piece))) return undefined;
  return [...book.of('testRate'), ...book.of('yield')].find((each) => each.piece === piece);
}

/** Static level and drawdown come to the pumping level. */
function unlike(book: Book, drawdown: Told, level: Told | undefined): Doubt | null {
  const rest = book.of('static')[0];
  if (level === undefined || rest === undefined) return book.deeper(drawdown)[1];
  const between = book.write.metres(level.quantity) - book.write.metres(rest.quantity);
  const said = book.write.metres(drawdown.quantity);
  return Math.abs(between - said) <= Math.max(0.31, 0.03 * said)
    ? null
    : { kind: 'unlike', other: book.write.length(level.quantity) };
}
