/** The same words with every figure held to its unit: no line parts "467.3 ft". */
export function holdFigures(words: string): string {
  return words.replace(/(\d) (?=[A-Za-z°%])/g, '$1\u00A0');
}
