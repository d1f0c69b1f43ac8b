/** Dates of old records: a year, a year and month, or a day. */

const PARTIAL_DATE = /^(\d{4})(?:-(\d{2})(?:-(\d{2}))?)?$/;

/** True for "1987", "1987-05" and "1987-05-31", where that month and day exist. */
export function isPartialDate(text: string): boolean {
  const [, year, month = '01', day = '01'] = PARTIAL_DATE.exec(text) ?? [];
  if (year === undefined) return false;
  const inMonth = DAYS[Number(month) - 1];
  if (inMonth === undefined) return false;
  const most = Number(month) === 2 && isLeapYear(Number(year)) ? 29 : inMonth;
  return Number(day) >= 1 && Number(day) <= most;
}

const DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

function isLeapYear(year: number): boolean {
  return (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
}

/**
 * Negative when the first comes before the second. Such dates sort as text: one without its day counts as the start of
 * its month or year, so that it never passes for later than a day that is known.
 */
export function compareDates(first: string, second: string): number {
  return first < second ? -1 : first > second ? 1 : 0;
}
