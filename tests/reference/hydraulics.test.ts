/** Hydraulics against published and recomputed values: hydraulics.json names the publication beside each. */
import { hydraulicsSheet } from './sheets.ts';
import { testSheet } from './testSheet.ts';

testSheet(hydraulicsSheet);
