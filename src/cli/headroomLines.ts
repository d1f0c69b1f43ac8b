/** How far the well may go, for the two forms of `check`. */
import type { Headroom, HeadroomReport, Step } from '../model/headroom/told.ts';
import type { Solution } from '../model/solution.ts';
import { show, type Show } from '../model/units.ts';
import { headroom } from '../words/en/headroom.ts';
import { en } from '../words/en/index.ts';
import { nameOfPath } from '../words/en/plan/paths.ts';
import { sayHeadroom } from '../words/sayHeadroom.ts';

const WORDS = { short: en.short, headroom };

export function headroomReport({ refused, lines }: HeadroomReport, units: Show) {
  return {
    refused,
    lines: lines.map((line) => ({
      of: line.of,
      direction: line.direction,
      now: line.now,
      missing: line.missing,
      end: line.end,
      warning: stepReport(line.warning),
      danger: stepReport(line.danger),
      standing: line.standing,
      assumed: line.assumed,
      message: messageOf(line, units),
    })),
  };
}

function stepReport(step: Step | null) {
  if (step === null) return null;
  const { last, at, rule, severity, already, overWater } = step;
  return { last, at, rule, severity, already, overWater };
}

function messageOf(line: Headroom, units: Show): string {
  return sayHeadroom(line, WORDS, units)
    .steps.map(({ text }) => text)
    .join(' ');
}

export function headroomLines({ refused, lines }: HeadroomReport, { facts }: Solution): string[] {
  const { findings } = en.long;
  const units = show(facts.units);
  if (refused !== null) return [`${headroom.title}:`, `   ${headroom.refused[refused]}`];
  return [
    `${headroom.title}: ${headroom.about}`,
    ...lines.flatMap((line, i) => {
      const { name, now, steps } = sayHeadroom(line, WORDS, units);
      return [
        // A pump may go two ways, under one name.
        ...(lines[i - 1]?.of === line.of ? [] : [`   ${name}${now === '' ? '' : `, ${now}`}`]),
        ...steps.map(
          ({ severity, text }) => `      ${severity === null ? '' : `${findings.severities[severity]}: `}${text}`,
        ),
        ...(line.assumed.length > 0 ? [`      ${headroom.rests(line.assumed.map(nameOfPath))}`] : []),
      ];
    }),
  ];
}
