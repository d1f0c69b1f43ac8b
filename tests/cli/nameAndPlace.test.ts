/** What the command line writes of a well begins with its name and where it is. */
import { describe, expect, test } from 'vitest';
import { sayReport } from '../../src/cli/checkCommand.ts';
import { solve } from '../../src/model/index.ts';
import { rockWell } from '../plans/build.ts';

const PLACE = 'Old Mill Lane, lot 7';
const TURNED = `Mill\u202E enaL\u0007\n\u001B[2J lot 7`;

describe('what is written of a well', () => {
  test('begins with name and place, and with neither where nobody said', () => {
    const lines = (change: object) => sayReport(solve(rockWell({ ...change }))).split('\n');
    expect(lines({ title: 'Birch Hollow', place: PLACE }).slice(0, 2)).toEqual(['Birch Hollow', PLACE]);
    expect(lines({ place: PLACE }).slice(1)).toEqual(lines({}));
  });

  test('moves no cursor and turns no line round', () => {
    const written = sayReport(solve(rockWell({ title: TURNED, place: TURNED })));
    expect(written.split('\n').slice(0, 2)).toEqual(['Mill enaL [2J lot 7', 'Mill enaL [2J lot 7']);
    expect(written.replaceAll('\n', '')).not.toMatch(/[\p{Cc}\p{Bidi_Control}]/u);
  });
});
