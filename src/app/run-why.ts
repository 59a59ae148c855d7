/** `chalkleaf why CLIENT`: where the numbers of a plan come from, and why not the next one up. */
import { listMaxima } from '../engine/repetition-maximum.js';
import type { Plan } from '../model/plan.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { Content } from '../model/studio.js';
import { PLAIN_NAMES } from '../words/say-figures.js';
import { sayWhyTree } from '../words/say-why.js';
import { tellWhy } from '../words/tell-why.js';
import type { Called } from '../words/why-account.js';
import type { CommonOptions } from './options.js';
import { chosenClients, concerning, planClient, publishable, readStudio } from './read-studio.js';
import { printReport } from './report.js';

export interface WhyWanted {
  readonly week?: number;
  readonly session?: string;
  readonly exercise?: string;
}

export async function runWhy(options: CommonOptions, wanted: WhyWanted): Promise<number> {
  const studio = await readStudio(options);
  const problems: Problem[] = [...concerning(studio.problems, options.only)];
  const plans: Plan[] = [];
  const chosen = chosenClients(studio, options.only);
  if ('code' in chosen) problems.push(chosen);
  else {
    for (const client of publishable(studio, chosen)) {
      const result = planClient(studio, client, options.today, 0);
      problems.push(...result.problems);
      if (result.planned !== null) plans.push(result.planned.plan);
    }
  }
  const { language } = studio.content.library.studio;
  const why = plans.flatMap((plan) => tellWhy(plan, wanted, calledIn(studio.content, plan), language) ?? []);
  const summary = why.map((tree) => sayWhyTree(tree, language));
  if (plans.length > 0 && why.length === 0) {
    const data = { week: String(wanted.week ?? ''), session: wanted.session ?? '', exercise: wanted.exercise ?? '' };
    problems.push({ code: 'nothing-there', severity: 'error', scope: FOLDER, data });
  }
  return printReport({ problems, sourceOf: studio.sourceOf, summary, facts: { command: 'why', why } }, options.json);
}

/** The names the coach gave them, in place of the ids of their files. */
function calledIn({ library, clients }: Content, plan: Plan): Called {
  return {
    client: clients.find(({ id }) => id === plan.client)?.name ?? plan.client,
    programme: library.programmes.find(({ id }) => id === plan.programme)?.name ?? plan.programme,
    exercise: (id) => library.exercises.find((exercise) => exercise.id === id)?.name ?? PLAIN_NAMES.exercise(id),
    maxima: listMaxima,
  };
}
