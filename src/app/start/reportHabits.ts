/**
 * How reports write a number: "about 40", "1,200", "+3 ft above", "<1 gpm", "40-45". What means one thing is made into
 * what a plan reads; what can mean two is asked back, with both to choose from.
 */
import { frostDoubt } from '../form/frostDoubt.ts';
import type { Units } from './lineSizes.ts';
import { isEmpty, MEASURES, REPORT_UNITS, type MeasuredField, type Report } from './report.ts';

/** A line that may mean more than one thing. */
export interface Doubt {
  /** One or two sentences that end with the question. */
  readonly question: string;
  /** Each puts its text in the place of what was typed. */
  readonly answers: readonly { readonly label: string; readonly text: string }[];
}

export type Habit = { readonly text: string } | { readonly doubt: Doubt };

/** Depths of water, which may stand above the ground. */
const LEVELS: ReadonlySet<MeasuredField> = new Set(['staticLevel', 'staticLowest', 'pumpingLevel']);
/** Where "below ground" may stand behind a number. */
const DEPTHS: ReadonlySet<MeasuredField> = new Set([
  ...LEVELS,
  ...(['depth', 'soundedDepth', 'casingBottom', 'screenTop', 'screenBottom', 'inflow', 'pumpSetting'] as const),
  ...(['frostDepth', 'adapterDepth'] as const),
]);

const NUMBER = String.raw`\d[\d.,]*(?:[-\s]+\d+\/\d+)?`;
const GROUND = String.raw`(?:the\s+)?(?:ground|grade|surface|land surface|g\.?\s?l\.?|g\.?\s?s\.?)(?:\s+level)?`;

const ABOUT = /^(?:about|approx\.?|approximately|roughly|around|circa|ca\.?|est\.?|estimated|~|≈|±|\+\/-)\s*/i;
const BELOW = new RegExp(
  String.raw`\s*(?:below|under|beneath|down from|from|b\.?\s?g\.?\s?[ls]\.?)(?:\s*${GROUND})?$`,
  'i',
);
const ABOVE = new RegExp(String.raw`^\+?\s*(.+?)\s*(?:above|over|a\.?\s?g\.?\s?[ls]\.?)(?:\s*${GROUND})?$`, 'i');
const AT_GROUND = new RegExp(String.raw`^(?:at\s+|to\s+)?${GROUND}$`, 'i');
const OF_CASING = /(?:top of (?:the )?casing|casing top|t\.?\s?o\.?\s?c\.?)$/i;
const FLOWS = /^(?:flow(?:s|ing)?|artesian|flowing artesian|overflow(?:s|ing)?)$/i;
const RANGE = new RegExp(String.raw`^(${NUMBER})\s*(?:-|–|to|or)\s*(${NUMBER})\s*([^\d\s].*)?$`, 'i');
const LESS = /^(?:<|less than|under|below)\s*/i;
const MORE = /^(?:>|more than|over|at least|better than)\s*|\s*\+$/i;
/** Three digits behind each comma: thousands where people write 1,200, a decimal comma where they write 1,2. */
const THOUSANDS = /^([1-9]\d{0,2})((?:,\d{3})+)(?=\D|$)/;

/** A house well gives less than this by the minute; what is more was likely counted by the hour. Common practice, no source. */
const MOST_A_MINUTE = { us: 120, metric: 450 } as const;
/** No casing is named wider than this in inches: it was likely millimetres. Wider ones are dug wells. Common practice, no source. */
const WIDEST_NAME = 60;
/** A flow of which only a limit is known is drawn at this share of it. */
const SHARE_OF_LIMIT = 0.5;

/** @param report  as typed */
export function habitOf(report: Report, field: MeasuredField): Habit {
  const unit = REPORT_UNITS[report.units][MEASURES[field]];
  const typed = report[field].trim();
  if (isEmpty(typed)) return { text: '' };
  const plain = typed.replace(ABOUT, '').trim();
  const commas = thousands(plain, unit, report.units);
  if (typeof commas !== 'string') return { doubt: commas };
  if (MEASURES[field] === 'flow') return flow(commas, report.units);
  if (field === 'casingSize') return casing(commas);
  const range = asRange(commas, unit);
  if (range !== null) return { doubt: range };
  if (field === 'frostDepth') return frost(commas.replace(BELOW, ''), unit);
  return DEPTHS.has(field) ? depth(commas, unit, LEVELS.has(field)) : { text: commas };
}

/** Every line that has to be answered first. */
export function doubtsOf(report: Report): Readonly<Partial<Record<MeasuredField, Doubt>>> {
  const doubts: Partial<Record<MeasuredField, Doubt>> = {};
  for (const field of Object.keys(MEASURES) as MeasuredField[]) {
    const habit = habitOf(report, field);
    if ('doubt' in habit) doubts[field] = habit.doubt;
  }
  return doubts;
}

function thousands(text: string, unit: string, units: Units): string | Doubt {
  const found = THOUSANDS.exec(text);
  if (found === null) return text;
  const [all, lead = '', groups = ''] = found;
  const rest = text.slice(all.length);
  const whole = `${lead}${groups.replaceAll(',', '')}${rest}`;
  const own = rest.trim() === '' ? unit : rest.trim();
  // Several groups, or units in which nobody writes a decimal comma.
  if (groups.length > 4 || units === 'us' || /^(?:ft|feet|foot|'|in\b|inch|"|gpm|gph|gal)/i.test(own)) return whole;
  const decimal = `${lead}.${groups.slice(1)} ${own}`;
  return {
    question: `${text} can be thousands or a decimal comma. Which is it?`,
    answers: [answer(rest.trim() === '' ? `${whole} ${own}` : whole), answer(decimal)],
  };
}

function asRange(text: string, unit: string): Doubt | null {
  const found = RANGE.exec(text);
  // A whole number and a fraction make one size: 6-5/8.
  if (found === null || text.includes('/')) return null;
  const [, from = '', to = '', own = unit] = found;
  return {
    question: `${text} is a range. Which end shall be drawn?`,
    answers: [answer(`${from} ${own}`), answer(`${to} ${own}`)],
  };
}

function depth(text: string, unit: string, isLevel: boolean): Habit {
  if (OF_CASING.test(text))
    return {
      doubt: {
        question:
          'Depths from the top of the casing: choose that under “Depths count from”. Then take the number alone:',
        answers: [answer(withUnit(text.replace(OF_CASING, '').trim().replace(BELOW, ''), unit))],
      },
    };
  if (!isLevel) return { text: text.replace(BELOW, '') };
  if (AT_GROUND.test(text)) return { text: '0' };
  if (FLOWS.test(text))
    return {
      doubt: {
        question: 'It flows: how high over the ground would the water stand in a pipe? Type it as “3 ft above”.',
        answers: [{ label: 'Not known: draw it just above the ground', text: unit === 'm' ? '-0.1 m' : '-0.3 ft' }],
      },
    };
  const above = ABOVE.exec(text)?.[1];
  if (above !== undefined) return { text: `-${above.replace(/^[-+]\s*/, '')}` };
  if (/^\+/.test(text)) {
    const height = withUnit(text.replace(/^\+\s*/, ''), unit);
    return {
      doubt: {
        question: 'A plus can be read both ways. Which is it?',
        answers: [
          { label: `${height} below the ground`, text: height },
          { label: `${height} above it: the well flows`, text: `-${height}` },
        ],
      },
    };
  }
  return { text: text.replace(BELOW, '') };
}

function flow(text: string, units: Units): Habit {
  const unit = REPORT_UNITS[units].flow;
  const range = asRange(text, unit);
  if (range !== null) return { doubt: range };
  if (LESS.test(text)) {
    const limit = withUnit(text.replace(LESS, ''), unit);
    const [, number = '', own = ''] = /^([\d.]+)\s*(.*)$/.exec(limit) ?? [];
    const half = number === '' ? null : `${Number((Number(number) * SHARE_OF_LIMIT).toPrecision(3))} ${own}`;
    return {
      doubt: {
        question: `Less than ${limit}: how much less, nobody said. What shall be drawn?`,
        answers: [
          ...(half === null ? [] : [{ label: `${half}, with care`, text: half }]),
          { label: 'Not known', text: 'unknown' },
        ],
      },
    };
  }
  // At least so much: no more is counted on.
  const least = text.replace(MORE, '').trim();
  const bare = /^\d[\d.]*$/.test(least) ? Number(least) : 0;
  if (bare < MOST_A_MINUTE[units]) return { text: least };
  const hourly = units === 'us' ? 'gph' : 'L/h';
  return {
    doubt: {
      question: `${least} ${unit} is a lot for a house well. Was it by the hour?`,
      answers: [answer(`${least} ${hourly}`), answer(`${least} ${unit}`)],
    },
  };
}

function casing(text: string): Habit {
  const bare = /^\d[\d.]*$/.test(text) ? Number(text) : 0;
  if (bare < WIDEST_NAME) return { text };
  return {
    doubt: {
      question: `${text} in is wider than any casing. Millimetres?`,
      answers: [answer(`${text} mm`), answer(`${text} in`)],
    },
  };
}

function frost(text: string, unit: string): Habit {
  const doubt = frostDoubt(text, unit);
  if (doubt === null) return { text };
  return {
    doubt: {
      question: `${doubt.read}. Did you mean ${doubt.meant}? Choose one: nothing is drawn before.`,
      answers: [answer(doubt.meant), answer(doubt.read)],
    },
  };
}

function answer(text: string): Doubt['answers'][number] {
  return { label: text, text };
}

/** A bare number, also one with a fraction ("6-5/8"). */
const BARE_NUMBER = /^[-+]?[\d.,]+(?:[-\s]+\d+\/\d+)?$/;

/** A bare number takes the unit that the form shows beside the line. */
export function withUnit(text: string, unit: string): string {
  const trimmed = text.trim();
  return BARE_NUMBER.test(trimmed) ? `${trimmed} ${unit}` : trimmed;
}
