import { testSheet } from './testSheet.ts';
import { mechanicalSheet } from './sheets.ts';

testSheet(mechanicalSheet);
