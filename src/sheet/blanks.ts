/** Lines to write on: for whom, where, who and when. */
import { installSheet as words } from '../words/en/installSheet.ts';
import { element, type Markup } from './html.ts';

export function blanks(date: string | undefined): Markup {
  const { customer, place, who, when } = words.blanks;
  const line = (name: string, value = ''): Markup => element('span', {}, value === '' ? name : `${name}: ${value}`);
  return element('div', { class: 'blank keep' }, line(customer), line(place), line(who), line(when, date));
}
