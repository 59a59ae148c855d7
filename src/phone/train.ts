/** The second script’s work: opens what is kept of this booklet, and puts the training screens beside it. */
import type { ClientPlan } from '../model/client-plan.js';
import type { InSteps } from '../session/in-steps.js';
import type { ReplannedItem } from '../session/replan.js';
import { unpackInSteps } from '../session/travelling.js';
import { spokenWith } from '../words/language.js';
import type { PhoneCatalogue } from '../words/phone-speech.js';
import { finishInTurn, nextTask } from './give-way.js';
import { openKeep } from './keep/keep.js';
import { askForScript, takePart } from './parts.js';
import type { Between } from './replan-between.js';
import { showTraining } from './show-training.js';

/** Longer than this nobody waits for what is only a help. */
const PATIENCE_MS = 3000;

type PlanAgain = (between: Between) => InSteps<readonly ReplannedItem[]>;
const isPlanAgain = (part: unknown): part is PlanAgain => typeof part === 'function';

async function planAgainOf({ replan }: ClientPlan): Promise<PlanAgain | null> {
  if (replan === undefined) return null;
  askForScript('plan-again.js');
  const late = new Promise<null>((done) => setTimeout(() => done(null), PATIENCE_MS));
  const part = await Promise.race([takePart('plan again'), late]);
  return isPlanAgain(part) ? part : null;
}

/** Where what plans again did not come, what hurt is not left to it: the phone is one that does not plan. */
function asItPlans(plan: ClientPlan, again: PlanAgain | null): ClientPlan {
  const { replan, ...asPrinted } = plan;
  return again === null || replan === undefined ? asPrinted : plan;
}

const pageOf = (exercise: string): string => `#${CSS.escape(`exercise-${exercise}`)}`;

/** As the booklet's own page calls it. */
function called(exercise: string): string | undefined {
  return document.querySelector(`${pageOf(exercise)} h2`)?.textContent ?? undefined;
}

function leads(exercise: string): readonly string[] {
  const all = [...document.querySelectorAll(`${pageOf(exercise)} section li`)].map((line) =>
    line.querySelector('.lead'),
  );
  // A link leads elsewhere.
  return all.flatMap((lead) => (lead?.querySelector('a[href^="#"]') ? [] : [lead?.textContent?.trimEnd() ?? '']));
}

/** A plan asks the same page anew for every session. */
function oncePerExercise<T>(asked: (exercise: string) => T): (exercise: string) => T {
  const known = new Map<string, { readonly said: T }>();
  return (exercise) => {
    const said = known.get(exercise) ?? { said: asked(exercise) };
    known.set(exercise, said);
    return said.said;
  };
}

/** The book, once its leaves are in order. */
const bookReady = (): Promise<HTMLElement> =>
  new Promise((done) => {
    const ready = (): HTMLElement | undefined => {
      const book = document.querySelector<HTMLElement>('.book');
      return book?.classList.contains('ready') ? book : undefined;
    };
    const here = ready();
    if (here) return done(here);
    const watching = new MutationObserver(() => {
      const book = ready();
      if (!book) return;
      watching.disconnect();
      done(book);
    });
    watching.observe(document, { subtree: true, childList: true, attributes: true, attributeFilter: ['class'] });
  });

async function start(own: PhoneCatalogue): Promise<void> {
  const book = await bookReady();
  const data = document.getElementById('plan')?.textContent;
  if (data === undefined || data === null) return;
  // Each step is a task of its own: together they would hold up whoever is reading by now.
  await nextTask();
  const packed = JSON.parse(data);
  await nextTask();
  const page = { called: oncePerExercise(called), leads: oncePerExercise(leads) };
  const plan = await finishInTurn(unpackInSteps(packed, page));
  await nextTask();
  const { lang: language, dir } = document.documentElement;
  const [keep, again] = await Promise.all([openKeep(plan, document.title), planAgainOf(plan)]);
  await nextTask();
  await showTraining({
    book,
    plan: asItPlans(plan, again),
    keep,
    speech: spokenWith(own, language, dir === 'rtl' ? dir : 'ltr'),
    planAgain: again === null ? null : (events, now, today) => again({ plan, events, now, today, language, called }),
  });
}

/** `own` is the booklet’s language. Whatever fails here, the booklet can still be read. */
export const train = (own: PhoneCatalogue): void => {
  start(own).catch(() => undefined);
};
