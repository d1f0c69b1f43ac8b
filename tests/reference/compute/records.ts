/** Checks on what is read from other people's records. */
import { readGroundwaterLevels } from '../../../src/model/records/groundwaterLevels.ts';
import { lithologicPattern } from '../../../src/model/tables/lithology.ts';
import { toFeet } from '../../../src/model/units.ts';
import type { WellInputs } from './wells.ts';

export const records: Readonly<Record<string, (inputs: WellInputs) => Readonly<Record<string, unknown>>>> = {
  level_table: ({ table_text }) => {
    const table = readGroundwaterLevels(String(table_text));
    if (!table.ok) throw new Error(table.problem);
    return {
      rows: table.readings.length,
      static_rows: table.statics.length,
      latest_static_depth_ft: toFeet(table.latest!.depth),
      latest_static_date: table.latest!.date,
      deepest_static_depth_ft: toFeet(table.lowest!.depth),
      excluded_status_codes: table.excluded.map(({ code }) => code),
    };
  },
  lithologic_patterns: ({ words }) => ({
    patterns: (words as unknown as readonly string[]).map((word) => lithologicPattern(word)?.number ?? null),
  }),
};
