/** How the well was tested: with air, a bailer or a pump. */
import type { Book } from './book.ts';

export function method(book: Book): { readonly method: 'air lift' | 'bailer' | 'pump'; readonly piece: number } | null {
  for (const [piece, { text }] of book.facts.marked.entries()) {
    // Boxes that were not ticked say what was not done.
    const ticked = text.replace(/(?:\[\s*\]|\(\s*\)|☐)\s*[a-z]+(?:[ -]?lift)?(?: test)?/g, ' ');
    // A question that was answered with no, and a line of the form that stayed empty.
    if (/\?\s*no\b/.test(ticked) || (/\bgal\b|\bg\.?p\.?m/.test(ticked) && !/«F/.test(ticked))) continue;
    const isTest = /test|yield|method|blow|blew|gpm|pumped|bailed|«F/.test(ticked);
    if (!isTest || /drill\w* (?:method|with|by)|method of (?:drilling|construction)|rotary/.test(ticked)) continue;
    if (
      /\bair[- ]?lift|\bairlift|\bair[- ]?test|\bblow(?:n|ing)?\b|\bblew\b|\bwith air\b|\bby air\b|\bair test|\bair\b(?=\s*$|[;,.)\]])|[x✓✔☒]\s*\]?\s*air\b|(?:method|by)\W{0,4}air\b|air compress/.test(
        ticked,
      )
    )
      return { method: 'air lift', piece };
    if (/\bbail(?:er|ed|ing)?\b/.test(ticked)) return { method: 'bailer', piece };
    if (
      /(?:test(?:ed)?|method|by|with|yield)[^«»]{0,24}\b(?:submersible |test )?pump\b|\bpumped\b|\bpump(?:ing)? test\b|\btest[- ]pumped\b|[x✓✔☒]\s*\]?\s*pump\b/.test(
        ticked,
      ) &&
      !/recommend/.test(ticked)
    ) {
      if (/air/.test(book.whole) && airLater(book, piece)) continue;
      return { method: 'pump', piece };
    }
  }
  return null;
}

/** A heading such as "Pump test" stands over a test that was done with air. */
function airLater(book: Book, piece: number): boolean {
  return book.facts.marked
    .slice(piece + 1)
    .some(({ text }) =>
      /\bair[- ]?lift|\bairlift|\bblown\b|\bblew\b|(?:method|by)\W{0,4}air\b|[x✓✔☒]\s*\]?\s*air\b/.test(
        text.replace(/(?:\[\s*\]|\(\s*\)|☐)\s*air(?:[ -]?lift)?/g, ' '),
      ),
    );
}
