/** How hard a text is to read, measured as readers' schools are. */

/** Sentences of a text: a full stop inside a figure ends none. */
export function sentencesOf(text: string): readonly string[] {
  return text.split(/(?<=[.?!])\s+/).filter((sentence) => sentence !== '');
}

/**
 * Grade of school at which a text is read.
 *
 *     0.39 words/sentences + 11.8 syllables/words − 15.59
 *
 * Source  Kincaid, Fishburne, Rogers & Chissom (1975), Derivation of new readability formulas, Research Branch Report 8-75;
 *         syllables counted by groups of vowels, which is good to about one in twenty
 */
export function gradeOf(texts: readonly string[]): number {
  const sentences = texts.flatMap(sentencesOf);
  const words = sentences.flatMap((sentence) => sentence.match(/[A-Za-z’]+|\d+(?:[.,]\d+)*/g) ?? []);
  const syllables = words.reduce((sum, word) => sum + syllablesOf(word), 0);
  return 0.39 * (words.length / sentences.length) + 11.8 * (syllables / words.length) - 15.59;
}

function syllablesOf(word: string): number {
  const letters = word
    .toLowerCase()
    .replace(/’s?$/, '')
    .replace(/[^a-z]/g, '');
  const silent = letters.replace(/(?:[^laeiouy]es|[^td]ed|[^laeiouy]e)$/, (end) => end.charAt(0));
  return Math.max(1, (silent.match(/[aeiouy]+/g) ?? []).length);
}
