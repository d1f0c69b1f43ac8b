/** HTML as text: what a stranger typed is never markup. */

/** Markup that was made here, as against words. */
export interface Markup {
  readonly html: string;
}

export type Content = Markup | string | readonly Content[];

/** `raw` is for what this program wrote itself, such as a drawing. */
export function raw(html: string): Markup {
  return { html };
}

export function element(
  tag: string,
  attributes: Readonly<Record<string, string>>,
  ...content: readonly Content[]
): Markup {
  const attrs = Object.entries(attributes).map(([name, value]) => ` ${name}="${escaped(value)}"`);
  return raw(`<${tag}${attrs.join('')}>${content.map(textOf).join('')}</${tag}>`);
}

function textOf(content: Content): string {
  if (typeof content === 'string') return escaped(content);
  if ('html' in content) return content.html;
  return content.map(textOf).join('');
}

function escaped(words: string): string {
  return words
    .replace(/[\p{Cc}\p{Cs}]/gu, (sign) => (sign === '\n' || sign === '\t' ? sign : ' '))
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
