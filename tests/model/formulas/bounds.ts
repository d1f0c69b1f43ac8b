/** Both sides of the bounds of a formula: from figures that it takes, one at a time is moved to an edge and past it. */
import { describe, expect, test } from 'vitest';

type Edges<Input> = {
  readonly [Name in keyof Input]?: {
    readonly takes?: readonly Input[Name][];
    readonly refuses?: readonly Input[Name][];
  };
};

export function testBounds<Input extends object>(
  name: string,
  compute: (input: Input) => unknown,
  sound: Input,
  edges: Edges<Input>,
): void {
  describe(name, () => {
    test('takes sound figures', () => {
      expect(() => compute(sound)).not.toThrow();
    });
    for (const [input, bounds] of Object.entries(edges) as [string, Edges<Input>[keyof Input]][]) {
      for (const value of bounds?.takes ?? []) {
        test(`takes ${input} ${String(value)}`, () => {
          expect(() => compute({ ...sound, [input]: value })).not.toThrow();
        });
      }
      for (const value of bounds?.refuses ?? []) {
        test(`refuses ${input} ${String(value)}`, () => {
          expect(() => compute({ ...sound, [input]: value })).toThrow(RangeError);
        });
      }
    }
  });
}
