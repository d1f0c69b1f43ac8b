/** Round the list of causes: choosing what is noticed, what was looked at, and taking the list along. */

/** What came of a look. */
export type Result = 'fine' | 'this';

export const trouble = {
  title: 'What is the matter?',
  about: 'For a well in use. Choose what you notice: you get what to look at first, and what this well says of it.',
  choose: 'What do you notice?',
  other: 'Choose something else',
  first: 'Do this first',
  order: (causes: number): string => `Then look at these ${causes}, in this order`,
  marks: { likely: 'more likely here', open: '', unlikely: 'less likely here' },
  looked: 'Looked at',
  results: { none: 'Not yet', fine: 'Fine', this: 'This is it' },
  /** After a title, where something was ticked. */
  ticked: { fine: 'looked at: fine', this: 'this is it' } satisfies Readonly<Record<Result, string>>,
  own: 'In this well',
  look: 'Look',
  tells: 'What it tells',
  then: 'Then',
  caution: 'Caution.',
  deciding: 'Not known, and would tell more:',
  assumed: 'Rests on what is assumed:',
  place: (name: string): string => `Where: ${name}`,
  toDrawing: 'See it on the drawing',
  next: 'Go on to the next',
  copy: 'Copy as text',
  copied: 'The list is copied: paste it into a message.',
  notCopied: 'This browser did not let the list be copied. Print it instead.',
  none: 'Choose under Trouble what you notice, and print again.',
};
