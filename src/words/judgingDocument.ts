/** How the program judges, as a document for readers of either kind of unit. */
import type { Judging } from '../model/judging.ts';
import { show } from '../model/units.ts';
import type { Show } from '../model/units.ts';
import { judgingPage } from './judgingPage.ts';
import type { JudgedRule, JudgingItem, JudgingPage, JudgingWords } from './judgingPage.ts';
import type { Words } from './words.ts';

/**
 * Markdown, every quantity in customary units with the metric one behind it in brackets; a rule's number stands with it.
 *
 * @param judging  for each kind of unit
 * @param command  what makes the document anew
 */
export function judgingDocument(
  judging: Readonly<Record<'us' | 'metric', Judging>>,
  words: Words & { readonly judging: JudgingWords },
  command: string,
): string {
  const page = (units: 'us' | 'metric') => judgingPage(judging[units], words, marked(show(units)));
  const { title, opening, sections } = inBoth(page('us'), page('metric'));
  const lines = [
    `# ${title}`,
    `Made by \`${command}\` from the rules; do not edit.`,
    ...opening,
    ...sections.flatMap(({ title: heading, paragraphs, items, rules }) => [
      `## ${heading}`,
      ...paragraphs,
      ...(items.length === 0 ? [] : [items.map(({ name, text }) => `- ${name}: ${text}`).join('\n')]),
      ...rules.flatMap((rule) => [`### ${rule.title}`, ruleText(rule)]),
    ]),
  ];
  return `${lines.join('\n\n')}\n`;
}

function ruleText({ number, asks, why, source }: JudgedRule): string {
  return `${[asks, why].filter((text) => text !== '').join(' ')}\n\n${number}. Source: ${source}.`;
}

/** Isolates, which no sentence has of its own, stand round each quantity, so that it can be found again. */
const OPEN = '\u2068';
const CLOSE = '\u2069';

function marked(plain: Show): Show {
  const found = Object.entries(plain).map(([name, say]: [string, unknown]) =>
    typeof say === 'function' ? [name, (value: number) => `${OPEN}${String(say(value))}${CLOSE}`] : [name, say],
  );
  return Object.fromEntries(found) as Show;
}

/** Two sentences that differ in their quantities alone, as one. */
function both(us: string, metric: string): string {
  const [first, second] = [us, metric].map((text) => text.split(/[\u2068\u2069]/)) as [string[], string[]];
  const alike = first.length === second.length && first.every((piece, i) => i % 2 === 1 || piece === second[i]);
  if (!alike) return us === metric ? us : `${first.join('')} (${second.join('')})`;
  return first.map((piece, i) => (piece === second[i] ? piece : `${piece} (${second[i] ?? ''})`)).join('');
}

function inBoth(us: JudgingPage, metric: JudgingPage): JudgingPage {
  return {
    ...us,
    sections: us.sections.map((section, i) => {
      const { paragraphs = [], items = [], rules = [] } = metric.sections[i] ?? {};
      return {
        title: section.title,
        paragraphs: section.paragraphs.map((text, k) => both(text, paragraphs[k] ?? text)),
        items: itemsInBoth(section.items, items),
        rules: section.rules.map((rule, k) => ({
          ...rule,
          asks: both(rule.asks, rules[k]?.asks ?? rule.asks),
          source: both(rule.source, rules[k]?.source ?? rule.source),
        })),
      };
    }),
  };
}

/** What one side alone has stands for itself; items named by a quantity keep their order. */
function itemsInBoth(us: readonly JudgingItem[], metric: readonly JudgingItem[]): readonly JudgingItem[] {
  return us.map((item, i) => {
    const twin = metric.find(({ name }) => name === item.name) ?? (us.length === metric.length ? metric[i] : undefined);
    return twin === undefined
      ? { name: item.name, text: both(item.text, item.text) }
      : { name: both(item.name, twin.name), text: both(item.text, twin.text) };
  });
}
