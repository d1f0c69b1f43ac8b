/** Which part of a report a piece of text stands in. */
import type { Marked } from './quantities.ts';

export type Subject =
  'casing' | 'liner' | 'screen' | 'hole' | 'grout' | 'zones' | 'layers' | 'test' | 'pump' | 'recommended' | 'none';

const SUBJECTS: readonly (readonly [Subject, RegExp])[] = [
  ['recommended', /\brecommend/],
  [
    'zones',
    /\bwater[- ](?:bearing )?(?:zones?|bearing|found|producing)|\bfractures?\b|\binflows?\b|\bwater (?:entry|struck)|\baquifer (?:zones?|intervals?)/,
  ],
  ['grout', /\bgrout|\bannular|\bseal(?:ing|ant)? (?:record|material|interval|depth)|\bbentonite|\bcement\b/],
  ['screen', /\bscreens?\b|\bscreened\b|\bperforat|\bslotted/],
  ['liner', /\bliners?\b/],
  ['casing', /\bcasings?\b|\bcased\b/],
  ['hole', /\bopen hole\b|\b(?:bore)?hole (?:diam|size|record)|\bbore ?hole\b|\bhole diam/],
  [
    'layers',
    /\blitholog|\bgeologic|\bformations?\b|\bstrata\b|\bdriller'?s log\b|\bwell log\b|^\W*log\b|\bmaterials? (?:encountered|penetrated)|\boverburden and bedrock|\bsoil description/,
  ],
  [
    'test',
    /\b(?:well|pump|pumping|yield|production|capacity|bailer|air(?: ?lift)?) tests?\b|\btest (?:data|results|pumping)|\bwell yield\b/,
  ],
  [
    'pump',
    /\bpump (?:data|information|installed|installation|record|details|equipment)|\binstalled pump|\bpump system/,
  ],
];

/** What a line is about by its own words; 'none' where it does not say. */
export function subjectOf(marked: string): Subject {
  return SUBJECTS.find(([, pattern]) => pattern.test(marked))?.[0] ?? 'none';
}

/** A line that stands over others: few words, no value. */
export function isHeading({ text, quantities }: Marked): boolean {
  if (quantities.some(({ kind }) => kind !== 'N' && kind !== 'X')) return false;
  const plain = text.replace(/«.\d+»/g, '').trim();
  return plain !== '' && plain.length <= 90 && quantities.length <= 1;
}
