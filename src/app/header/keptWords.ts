/** When a well was kept, in a few words: by the minute, and by the second where two of one name would sound alike. */
import type { WellEntry } from '../keeping/keptWell.ts';

const DAY = new Intl.DateTimeFormat('en', { day: 'numeric', month: 'short', year: 'numeric' });
const MINUTE = new Intl.DateTimeFormat('en', { hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
const SECOND = new Intl.DateTimeFormat('en', {
  hour: '2-digit',
  minute: '2-digit',
  second: '2-digit',
  hourCycle: 'h23',
});

/** "14:05" today, "29 Nov 2026, 14:05" before. */
export function whenKept({ id, title, saved }: WellEntry, all: readonly WellEntry[], now: number): string {
  if (saved === 0) return 'no time known';
  const minute = Math.floor(saved / 60_000);
  const alike = all.some(
    (each) => each.id !== id && each.title === title && Math.floor(each.saved / 60_000) === minute,
  );
  const time = (alike ? SECOND : MINUTE).format(saved);
  const day = DAY.format(saved);
  return day === DAY.format(now) ? time : `${day}, ${time}`;
}

export function nameOfKept({ title, raw }: WellEntry): string {
  if (title !== '') return title;
  return raw === null ? 'A well without a name' : 'A well that cannot be read';
}
