/** What hangs in the well, is advised, or stood there for a test. */
import type { Book } from './book.ts';

/** Words of a pump that stays. */
const INSTALLED = /\binstalled\b|\bhangs?\b|\bhung\b|\bpump (?:is|sits)\b/;
/** What was said of another time, or of somebody's plan. */
const NOT_NOW =
  /\b(?:last owner|previous|old pump|used to|will be|to be (?:set|hung|installed)|pulled|proposed|quoted|no pump|not installed|off (?:the )?bottom|above (?:the )?bottom)\b/;

export function pump(book: Book): void {
  const settings = book.of('pumpDepth').filter(({ piece }) => !NOT_NOW.test(book.facts.marked[piece]?.text ?? ''));
  const forTest = settings.filter(
    ({ subject, piece }) => subject === 'test' || /\btest\b/.test(book.facts.marked[piece]?.text ?? ''),
  );
  for (const each of forTest) book.aside('testIntake', each.piece);
  const stood = settings.find((each) => !forTest.includes(each) && each.subject !== 'recommended');
  // Beside advice on where to hang one, a pump that nobody calls installed was the one of the test.
  const advised = book.of('recommendedDepth').length > 0;
  const isInstalled =
    stood !== undefined && (stood.subject === 'pump' || INSTALLED.test(book.facts.marked[stood.piece]?.text ?? ''));
  const installed = stood !== undefined && (isInstalled || !advised) ? stood : undefined;
  if (stood !== undefined && installed === undefined) book.aside('testIntake', stood.piece);
  const recommended =
    book.of('recommendedDepth')[0] ??
    settings.find(({ subject, piece }) => subject === 'recommended' && !forTest.some((each) => each.piece === piece));
  if (installed !== undefined)
    book.read('pump.setting', book.write.length(installed.quantity), [installed.piece], {
      doubt: isInstalled ? book.doubtOf(installed.quantity, installed.to) : { kind: 'standing' },
      note: 'installed',
    });
  else if (recommended !== undefined)
    book.read('pump.setting', book.write.length(recommended.quantity), [recommended.piece], {
      doubt: book.doubtOf(recommended.quantity, recommended.to),
      note: 'recommended',
    });
  if (installed !== undefined && recommended !== undefined) book.aside('installedInstead', recommended.piece);
  const power = book
    .of('pumpPower')
    .find(
      ({ subject, piece }) =>
        subject !== 'test' &&
        !/\btest\b|compressor|drill rig|recommend/.test(book.facts.marked[piece]?.text ?? '') &&
        !NOT_NOW.test(book.facts.marked[piece]?.text ?? ''),
    );
  if (power !== undefined)
    book.read('pump.power', book.write.power(power.quantity), [power.piece], {
      note: installed === undefined ? null : 'installed',
    });
}

/** What leads out below frost, where it is told to stand there. */
export function pitless(book: Book): void {
  const [said] = book.of('pitless');
  if (said === undefined) return;
  book.read('top.kind', 'pitless', [said.piece], { note: 'installed' });
  book.read('top.depth', book.write.length(said.quantity), [said.piece], { note: 'installed' });
}
