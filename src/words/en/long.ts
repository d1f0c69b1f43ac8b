/** English sentences, reasons, sources, cautions, buttons, advice, and what parts are for. */
import { advice } from './advice.ts';
import { findings } from './findings.ts';
import { fixes } from './fixes.ts';
import { long as levels } from './levels.ts';
import { longRules } from './longRules.ts';
import { measure } from './measure.ts';
import { missing } from './missing.ts';
import { parts } from './parts.ts';
import { places } from './places.ts';
import { sayWell } from './well.ts';

export const long = {
  rules: longRules,
  fixes,
  advice,
  missing,
  measure,
  findings,
  levels,
  parts,
  places,
  well: sayWell,
};
