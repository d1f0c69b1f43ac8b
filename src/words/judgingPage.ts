/** How the program judges, as sections for a page: made from the rules themselves and the words of a language. */
import type { Judging } from '../model/judging.ts';
import type { Show } from '../model/units.ts';
import type { AdviceWords } from './en/advice.ts';
import { saySource, type Source } from './ruleWords.ts';
import type { Words } from './words.ts';

export interface JudgingItem {
  readonly name: string;
  readonly text: string;
}

/** What a language says in one section. */
export interface SectionWords {
  readonly title: string;
  readonly paragraphs: (judging: Judging, show: Show) => readonly string[];
  readonly items?: (judging: Judging, show: Show) => readonly JudgingItem[];
}

/** In the order of the page. */
const SECTIONS = [
  'knowing',
  'assumed',
  'unknowns',
  'band',
  'shortage',
  'severities',
  'fixes',
  'rules',
  'advice',
  'notJudged',
] as const;

/** What a language says of judging as a whole. */
export type JudgingWords = Readonly<Record<(typeof SECTIONS)[number], SectionWords>> & {
  readonly title: string;
  readonly opening: readonly string[];
};

export interface JudgedRule {
  /** "PR-19": for programs and documents, not for the page. */
  readonly number: string;
  readonly title: string;
  /** What it asks, one sentence. */
  readonly asks: string;
  /** Empty for advice, which says it all in one. */
  readonly why: string;
  readonly source: string;
}

export interface JudgingSection {
  readonly title: string;
  readonly paragraphs: readonly string[];
  readonly items: readonly JudgingItem[];
  readonly rules: readonly JudgedRule[];
}

export interface JudgingPage {
  readonly title: string;
  readonly opening: readonly string[];
  readonly sections: readonly JudgingSection[];
}

/**
 * @param judging  limits, defaults and rules, in the reader's units where these are rounded in each
 * @param words    a language, with its words on judging
 */
export function judgingPage(
  judging: Judging,
  words: Words & { readonly judging: JudgingWords },
  show: Show,
): JudgingPage {
  const { title, opening } = words.judging;
  return {
    title,
    opening,
    sections: SECTIONS.map((name) => {
      const section = words.judging[name];
      return {
        title: section.title,
        paragraphs: section.paragraphs(judging, show),
        items: section.items?.(judging, show) ?? [],
        rules:
          name === 'rules' ? judgedRules(judging, words, show) : name === 'advice' ? advised(judging, words, show) : [],
      };
    }),
  };
}

interface AnyRuleWords {
  readonly holds: string;
  readonly asks: (numbers: object, show: Show) => string;
  readonly why: string;
  readonly source: Source;
}

/** That each rule has its words, and reads no number that it is not told, is held by the types of the language's own files. */
function judgedRules({ rules }: Judging, { long }: Words, show: Show): JudgedRule[] {
  const said = long.rules as unknown as Readonly<Record<string, AnyRuleWords>>;
  return rules.map(({ number, asks: limits }) => {
    const words = said[number];
    if (words === undefined) throw new RangeError(`judgingPage: no words for rule ${number}`);
    const { holds, asks, why, source } = words;
    return { number, title: holds, asks: asks(limits, show), why, source: saySource(source, show) };
  });
}

function advised({ advice }: Judging, { long }: Words, show: Show): JudgedRule[] {
  return advice.map((number) => {
    const { title, text, source }: AdviceWords = long.advice[number];
    return { number, title, asks: text(show), why: '', source };
  });
}
