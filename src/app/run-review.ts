/**
 * `chalkleaf review [CLIENT]`: what came back, for one client or for all in order of need, and what is proposed. What
 * would be written on a client's page is shown as a difference; only `--apply` writes it.
 */
import { planReview } from '../engine/review/plan-review.js';
import { layOverrides, RULE_IDS } from '../engine/rulebook.js';
import { RULES_OF_REVIEW } from '../engine/rules-of-review.js';
import type { Client } from '../model/client.js';
import { dayOfIso } from '../model/day.js';
import { NO_HISTORY } from '../model/history.js';
import { compareIds } from '../model/identity.js';
import type { Problem } from '../model/problem.js';
import { invariant } from '../model/result.js';
import { NEEDS, type Review } from '../model/review.js';
import { coachSpeechOf } from '../words/coach-speech.js';
import { sayFullDate } from '../words/say-date.js';
import { PLAIN_NAMES } from '../words/say-figures.js';
import { namesAmong } from '../words/say-names.js';
import { type ReviewNames, sayProposal, sayReview, sayReviewLine } from '../words/say-review.js';
import { sayReviewEdits } from '../words/say-review-edits.js';
import { plainSpaces } from '../words/spacing.js';
import { wrapLine } from '../words/wrap-lines.js';
import { type CommonOptions, EXIT } from './options.js';
import { proposedPage } from './proposed-page.js';
import { chosenClients, concerning, type ReadStudio, readStudio } from './read-studio.js';
import { printReport } from './report.js';
import { diffOf, wantsColour } from './show-diff.js';
import { writePage } from './write-page.js';

/** `true` for everything that can be written, or the rules whose proposals are to be; absent for none. */
export interface ReviewWanted {
  readonly apply?: true | readonly string[];
}

interface Reviewed {
  readonly client: Client;
  readonly review: Review;
  readonly names: ReviewNames;
}

/** What would be, or was, changed on one client's page. */
interface PageChange {
  readonly client: string;
  readonly path: string;
  readonly diff: string;
  readonly written: boolean;
}

export async function runReview(options: CommonOptions, { apply }: ReviewWanted): Promise<number> {
  const misunderstood = refuse(options, apply);
  if (misunderstood !== undefined) {
    process.stderr.write(`error: ${misunderstood}\n`);
    return EXIT.usage;
  }
  const studio = await readStudio(options);
  const problems: Problem[] = concerning(studio.problems, options.only).filter(({ severity }) => severity === 'error');
  const chosen = chosenClients(studio, options.only);
  if ('code' in chosen) problems.push(chosen);
  const all: Reviewed[] = [];
  for (const client of 'code' in chosen ? [] : chosen) {
    const withdrawn = studio.issued.get(client.id)?.withdrawal?.date;
    all.push(reviewOne(studio, client, { isoToday: options.today, withdrawn }));
  }
  const reviewed = all.sort(
    (a, b) => NEEDS.indexOf(a.review.need) - NEEDS.indexOf(b.review.need) || compareIds(a.client.id, b.client.id),
  );
  const changes: PageChange[] = [];
  const told = new Map<Reviewed, readonly string[]>();
  for (const one of reviewed) {
    const wanted = one.review.proposals.filter(
      ({ reason }) => apply === undefined || apply === true || apply.includes(reason.rule),
    );
    const { page, problems: refused } = proposedPage(studio.files, one.client.place.file, wanted, {
      rules: RULE_IDS,
      read: studio.read,
    });
    problems.push(...refused);
    if (page === null) continue;
    const { path, before, after } = page;
    const plain = diffOf(path, before, after);
    if (plain === '') continue;
    const unwritten = apply === undefined ? undefined : await writePage(options.content, page);
    if (unwritten !== undefined) problems.push(unwritten);
    const written = apply !== undefined && unwritten === undefined;
    changes.push({ client: one.client.id, path, diff: plain, written });
    const shown = diffOf(path, before, after, !options.json && wantsColour(process.stdout, process.env));
    told.set(one, ['', written ? 'Written' : 'Would be written', shown.trimEnd(), '', sayWritten(one, written, apply)]);
  }
  const { language } = studio.content.library.studio;
  const summary = options.only === undefined && reviewed.length > 0 ? sayAll(reviewed, language, options.today) : [];
  for (const one of reviewed) {
    if (options.only === undefined && isQuiet(one)) continue;
    const rule = options.only === undefined ? ['', '-'.repeat(80)] : [];
    summary.push(...rule, ...sayReview(one.review, one.names, language), ...(told.get(one) ?? []));
  }
  if (reviewed.length === 0) summary.push('Nothing was reviewed.');
  const facts = {
    command: 'review',
    reviews: reviewed.map(({ review, names }) => ({
      ...review,
      name: names.client,
      proposals: review.proposals.map((proposal) => ({ ...proposal, says: sayProposal(proposal, names, language) })),
    })),
    changes,
  };
  return printReport({ problems, sourceOf: studio.sourceOf, summary, facts }, options.json);
}

/** Why the command line makes no sense; `undefined` where it does. */
function refuse({ only }: CommonOptions, apply: ReviewWanted['apply']): string | undefined {
  if (apply === undefined) return undefined;
  const rules = RULES_OF_REVIEW.map(({ id }): string => id);
  const unknown = apply === true ? undefined : apply.find((rule) => !rules.includes(rule));
  if (unknown !== undefined) {
    const known = rules.filter((rule) => rule.startsWith('propose-')).join(', ');
    return `--apply wants rules of the review, with the client named before it; “${unknown}” is none of ${known}`;
  }
  return only === undefined ? '--apply writes one client’s page at a time: name the client before it' : undefined;
}

/** Nothing to be done about them this week. */
const isQuiet = ({ review }: Reviewed): boolean => review.need === 'as planned' || review.need === 'not begun';

interface ReviewedOn {
  readonly isoToday: string;
  /** The day the latest edition was withdrawn. */
  readonly withdrawn: string | undefined;
}

function reviewOne(
  { content, linked, histories }: ReadStudio,
  client: Client,
  { isoToday, withdrawn }: ReviewedOn,
): Reviewed {
  const { library } = content;
  const { language } = library.studio;
  const today = dayOfIso(isoToday);
  invariant(today !== undefined, `${isoToday} is not a day`);
  const gone = withdrawn === undefined ? undefined : dayOfIso(withdrawn);
  const review = planReview({
    client,
    history: histories.get(client.id) ?? NO_HISTORY,
    rules: layOverrides(library.overrides).value,
    today,
    exercises: linked.exercises,
    programmes: library.programmes,
    ...(gone === undefined ? {} : { withdrawn: gone }),
    words: sayReviewEdits(client.language, library.studio.coach),
  });
  const called = (id: string): string => linked.exercises.get(id)?.name ?? PLAIN_NAMES.exercise(id);
  const ids = [...review.rows, ...review.abilities].map(({ exercise }): string => exercise);
  const programme = review.block?.programme ?? client.programme;
  const names: ReviewNames = {
    client: client.name,
    programme: library.programmes.find(({ id }) => id === programme)?.name ?? programme,
    exercise: namesAmong(ids, called, coachSpeechOf(language)),
    load: PLAIN_NAMES.load,
  };
  return { client, review, names };
}

function sayAll(reviewed: readonly Reviewed[], language: string, today: string): string[] {
  const count = reviewed.length === 1 ? '1 client' : `${reviewed.length} clients`;
  const issued = reviewed.filter(({ review }) => review.block !== null || review.need !== 'not begun');
  const others = reviewed.filter((one) => !issued.includes(one)).map(({ client }) => client.name);
  return [
    plainSpaces(`Review of ${sayFullDate(today, coachSpeechOf(language))}: ${count}, in order of need`),
    '',
    ...issued.map(({ review, names }) => sayReviewLine(review, names, language)),
    ...(others.length === 0 ? [] : wrapLine('  ', `Nothing issued yet: ${others.join(', ')}`, 2)),
  ];
}

function sayWritten({ client, review }: Reviewed, written: boolean, apply: ReviewWanted['apply']): string {
  if (written)
    return `The page of ${client.name} has been changed.\nWhat was proposed and has no change to write is yours to do.`;
  if (apply !== undefined) return 'Nothing was written.';
  const rules = [...new Set(review.proposals.flatMap(({ edits, reason }) => (edits.length > 0 ? [reason.rule] : [])))];
  const some = rules.length > 1 ? `\nFor some of it: --apply ${rules[0]},${rules[1]}` : '';
  return `Nothing has been written. To write it: chalkleaf review ${client.id} --apply${some}`;
}
