/** The sheet of a flick-book, for whoever cuts it: English, like the rest of what the coach reads. */
export interface FlickBookWords {
  readonly title: (exercise: string) => string;
  readonly how: string;
}

export const flickBookWords: FlickBookWords = {
  title: (exercise) => `Flick-book: ${exercise}`,
  how: 'Stiff paper, at 100 %. Cut along the dots. Leaf 1 on top, knock them even to the right, staple through the dash.',
};
