/** `chalkleaf check`: reads and plans everything, writes nothing. */
import type { CommonOptions } from './options.js';
import { progressOn } from './progress.js';
import { chosenClients, concerning, planClient, publishable, readStudio } from './read-studio.js';
import { printReport, withheldClients } from './report.js';

export async function runCheck(options: CommonOptions): Promise<number> {
  const progress = progressOn(process.stderr);
  progress.step('Reading …');
  const studio = await readStudio(options);
  const problems = [...concerning(studio.problems, options.only)];
  const chosen = chosenClients(studio, options.only);
  if ('code' in chosen) problems.push(chosen);
  else {
    for (const client of publishable(studio, chosen)) {
      progress.step(`Planning ${client.id} …`);
      problems.push(...planClient(studio.content, client, options.today, 0).problems);
    }
  }
  progress.done();
  const { exercises, programmes } = studio.content.library;
  const withheld = withheldClients(problems).size;
  const summary = [
    `Checked: ${exercises.length} exercises, ${programmes.length} programmes, ${studio.content.clients.length} clients.`,
    ...(withheld > 0 ? [`Would be withheld: ${withheld}.`] : []),
  ];
  return printReport({ problems, sourceOf: studio.sourceOf, summary, facts: { command: 'check' } }, options.json);
}
