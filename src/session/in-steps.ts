/**
 * Work told in steps, so that whoever does it where somebody waits for a tap to be answered can do other things in between.
 * What comes out is the same.
 */
export type InSteps<T> = Generator<undefined, T>;

/** Does all of it at once. */
export function finish<T>(work: InSteps<T>): T {
  for (;;) {
    const step = work.next();
    if (step.done) return step.value;
  }
}
