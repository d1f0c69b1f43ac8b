/** Wells and aquifers against published and recomputed values: wells.json names the publication beside each. */
import { wellsSheet } from './sheets.ts';
import { testSheet } from './testSheet.ts';

testSheet(wellsSheet);
