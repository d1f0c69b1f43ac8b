import { testSheet } from './testSheet.ts';
import { electricalSheet } from './sheets.ts';

testSheet(electricalSheet);
