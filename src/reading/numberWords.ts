/** Numbers in letters: "four hundred and five feet". */

const ONES = [
  ...['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven', 'twelve'],
  ...['thirteen', 'fourteen', 'fifteen', 'sixteen', 'seventeen', 'eighteen', 'nineteen'],
];
const TENS = ['', '', 'twenty', 'thirty', 'forty', 'fifty', 'sixty', 'seventy', 'eighty', 'ninety'];

const VALUES: ReadonlyMap<string, number> = new Map([
  ...ONES.map((word, i) => [word, i] as const),
  ...TENS.flatMap((word, i) => (word === '' ? [] : [[word, i * 10] as const])),
]);

const WORD = [...VALUES.keys(), 'hundred', 'thousand'].join('|');
const RUN = new RegExp(
  String.raw`\b(?:a\s+(?=hundred|thousand))?(?:${WORD})(?:(?:\s*-\s*|\s+and\s+|\s+)(?:${WORD}))*(?:\s+and\s+(?:a\s+|one\s+)?(?:half|quarter))?\b`,
  'gi',
);
/** What a number alone must stand before, so that "one of them" stays what it is. */
const COUNTED =
  /^\s*-?\s*(?:feet|foot|ft|inch|inches|in\b|gallon|gal|gpm|g\.p\.m|litre|liter|hour|hr|metre|meter|horse)/i;

/** The text with its numbers in digits. */
export function inDigits(text: string): string {
  return text.replace(RUN, (run, at: number) => {
    const part = /\s+and\s+(?:a\s+|one\s+)?(half|quarter)$/i.exec(run);
    const words =
      run
        .slice(0, part?.index)
        .toLowerCase()
        .match(/[a-z]+/g) ?? [];
    const counted = COUNTED.test(text.slice(at + run.length));
    if (words.length === 1 && !counted) return run;
    const value = valueOf(words);
    if (value === null) return run;
    return String(value + (part === null ? 0 : part[1]?.toLowerCase() === 'half' ? 0.5 : 0.25));
  });
}

/** Null where the words make no number: "six four". */
function valueOf(words: readonly string[]): number | null {
  let total = 0;
  let part = 0;
  /** What may come next is smaller than this. */
  let below = Infinity;
  for (const word of words) {
    if (word === 'and' || word === 'a') continue;
    if (word === 'hundred') {
      if (part > 99) return null;
      part = (part === 0 ? 1 : part) * 100;
      below = 100;
    } else if (word === 'thousand') {
      total += (part === 0 ? 1 : part) * 1000;
      part = 0;
      below = 1000;
    } else {
      const value = VALUES.get(word);
      if (value === undefined || value >= below) return null;
      part += value;
      below = value >= 20 ? 10 : 1;
    }
  }
  return total + part;
}
