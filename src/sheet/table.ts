import { element, type Content, type Markup } from './html.ts';

/** Its head is printed again on every page. */
export function table(heads: readonly string[], rows: readonly (readonly Content[])[], name = ''): Markup {
  return element(
    'table',
    name === '' ? {} : { class: name },
    element('thead', {}, element('tr', {}, ...heads.map((head) => element('th', { scope: 'col' }, head)))),
    element('tbody', {}, ...rows.map((row) => element('tr', {}, ...row.map((cell) => element('td', {}, cell))))),
  );
}
