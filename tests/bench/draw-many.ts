/**
 * So many booklets, each drawn in every form and let go as `build` does it, in book print and in large print in turn: a
 * process of its own, in which nothing else is loaded.
 */
import { sweepOften } from '../../src/app/sweep-often.js';
import { bookletOf, readDemo, shownOf } from './demo.js';
import { drawnForms } from './drawn-forms.js';

sweepOften();
const demo = await readDemo();
const booklet = bookletOf(demo);
const shown = shownOf(demo);
for (let i = 0; i < Number(process.argv[2]); i += 1) {
  await drawnForms(i % 2 === 0 ? booklet : { ...booklet, largePrint: true }, shown);
}
