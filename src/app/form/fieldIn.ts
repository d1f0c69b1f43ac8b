/** Finds where the record takes a field, and opens what it is folded into. */
import { askedPath } from './knowing.ts';

/**
 * The input of a field; of a part or a list its first input, or the button that adds it; where none of them shows, the
 * same of what it belongs to. Null where the record has nothing of that name.
 */
export function fieldIn(form: HTMLElement, path: string): HTMLElement | null {
  const shown = [...form.querySelectorAll<HTMLElement>('[data-path]')];
  const place = placeOf(askedPath(path), shown);
  if (place === null) return null;
  for (let fold = place.closest('details'); fold !== null; fold = fold.parentElement?.closest('details') ?? null)
    fold.open = true;
  return place.matches('button') ? place : place.querySelector('.entry :is(input, select), button');
}

function placeOf(path: string, shown: readonly HTMLElement[]): HTMLElement | null {
  const at = (wanted: (own: string) => boolean, from = shown) =>
    from.find(({ dataset }) => wanted(dataset['path'] ?? '')) ?? null;
  const fields = shown.filter((each) => !each.matches('button'));
  // A list that has items shows them; only an empty one shows just its button.
  const found = at((own) => own === path || own.startsWith(`${path}.`), fields) ?? at((own) => own === path);
  const end = path.lastIndexOf('.');
  return found ?? (end > 0 ? placeOf(path.slice(0, end), shown) : null);
}
