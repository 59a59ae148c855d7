/** `chalkleaf check`: reads and plans everything, writes nothing. */
import { compareIds } from '../model/identity.js';
import type { Plan } from '../model/plan.js';
import { sayFindings } from '../words/print-findings.js';
import { counted } from '../words/problems/said.js';
import { sayAdviceTold } from '../words/say-advice.js';
import { accountIn, findingsOf, recordsOf } from '../words/say-findings.js';
import { checkFigures } from './check-figures.js';
import type { CommonOptions } from './options.js';
import { lookThroughPictures } from './prepare-pictures.js';
import { progressOn } from './progress.js';
import { chosenClients, concerning, planClient, publishable, readStudio } from './read-studio.js';
import { printReport, withheldClients } from './report.js';

export async function runCheck(options: CommonOptions): Promise<number> {
  const progress = progressOn(process.stderr);
  progress.step('Reading …');
  const studio = await readStudio(options);
  const advice = concerning(studio.advice, options.only);
  progress.step('Posing …');
  const figures = checkFigures(studio.content.library.exercises);
  const pictures = await lookThroughPictures(options.content, studio.content.library.exercises, studio.problems);
  const problems = [...concerning(studio.problems, options.only), ...figures, ...pictures, ...advice];
  const plans: Plan[] = [];
  const chosen = chosenClients(studio, options.only);
  if ('code' in chosen) problems.push(chosen);
  else {
    for (const client of publishable(studio, chosen)) {
      progress.step(`Planning ${client.id} …`);
      const result = planClient(studio, client, options.today, 0);
      problems.push(...result.problems);
      if (result.planned !== null) plans.push(result.planned.plan);
    }
  }
  progress.done();
  const { exercises, programmes } = studio.content.library;
  const withheld = [...withheldClients(problems)].sort(compareIds);
  const findings = plans.flatMap((plan) => findingsOf(accountIn(plan, studio.content.library)));
  const counts = [
    counted(exercises.length, 'exercise'),
    counted(programmes.length, 'programme'),
    counted(studio.content.clients.length, 'client'),
  ];
  const summary = [
    ...sayFindings(findings, plans),
    `Checked: ${counts.join(', ')}.`,
    ...(advice.length > 0 ? [sayAdviceTold(advice.length)] : []),
    ...(withheld.length > 0 ? [`Would be withheld: ${withheld.join(', ')}.`] : []),
  ];
  const facts = { command: 'check', withheld, findings: recordsOf(findings) };
  return printReport({ problems, sourceOf: studio.sourceOf, summary, facts }, options.json);
}
