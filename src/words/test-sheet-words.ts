/** The sheet that shows how a printer turns paper, for whoever prints: English, like the rest of what the coach reads. */
export interface TestSheetWords {
  readonly title: string;
  readonly front: string;
  readonly back: string;
  readonly onFront: readonly string[];
  readonly onBack: readonly string[];
  /** `100 mm`, beside a line that is as long. */
  readonly measure: (millimetres: number) => string;
  /** Before a line to write on. */
  readonly mine: string;
}

export const testSheetWords: TestSheetWords = {
  title: 'Test sheet for a booklet to fold',
  front: 'Front',
  back: 'Back',
  onFront: [
    'Print both sides of this sheet as you mean to print the booklet: sheet across, at 100 %, both sides, turned on the short edge.',
    'Measure the line. If it is shorter or longer, the printer scales: turn that off and print again.',
    'A printer that prints one side only: print page 1, lay the sheet back in, print page 2. Then write below how it has to lie, and do the same with the fronts and the backs of a booklet. If the sheets come out in reverse, print the backs in reverse.',
  ],
  onBack: [
    'Turn the sheet like the page of a book. If this side now hangs upside down, choose the other edge to turn on.',
    'Hold the sheet against the light. The crosses of both sides should meet within 2 mm. If they do not, the booklet is still good to read; fold it along the front.',
    'Fold along the dotted line, front outside, and staple through the two long dashes from outside. With needle and thread go through the three dots from inside, the middle one first.',
  ],
  measure: (millimetres) => `${millimetres} mm`,
  mine: 'How the paper has to lie in this printer:',
};
