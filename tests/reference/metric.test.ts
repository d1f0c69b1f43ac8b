import { testSheet } from './testSheet.ts';
import { metricSheet } from './sheets.ts';

testSheet(metricSheet);
