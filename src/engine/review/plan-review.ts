/**
 * The coach's weekly review of one client: what was done of what was planned, what each side can lift now, pain, load, and
 * what is proposed. REVIEW.md is the definition. It changes nothing; every fact it proposes is the coach's to write.
 */

import type { Client } from '../../model/client.js';
import { type Day, isoOfDay } from '../../model/day.js';
import type { Exercise } from '../../model/exercise.js';
import type { History } from '../../model/history.js';
import type { Programme } from '../../model/programme.js';
import type { Need, Proposal, Review, ReviewedBlock } from '../../model/review.js';
import type { Rulebook } from '../rulebook.js';
import { DONE_QUIET } from '../rules/done-quiet.js';
import { knownOf, sidesApart } from './abilities.js';
import type { Asking } from './asked-days.js';
import { alarmsIn, painPlaces, painsIn } from './pains.js';
import { effortReviewed, rowsReviewed } from './planned-and-done.js';
import {
  messagesForGap,
  proposeBreaks,
  proposeFewerDays,
  proposeMinutes,
  proposeNext,
  silentDays,
} from './propose-for-days.js';
import { proposeMainBells, proposeTests } from './propose-for-lifts.js';
import {
  messagesForAlarm,
  messagesForPain,
  proposeCautions,
  proposeLooks,
  proposeSignOffs,
} from './propose-for-pain.js';
import { type BlockDays, blockUnderWay, type EditWords, inOrder, sessionsOf } from './reviewing.js';
import { sessionsReviewed, weekLoads, weeksDone } from './session-weeks.js';

export interface ReviewInput {
  readonly client: Client;
  readonly history: History;
  readonly rules: Rulebook;
  readonly today: Day;
  /** By id, former ones too. */
  readonly exercises: ReadonlyMap<string, Exercise>;
  /** Those a next block may be chosen from; none where absent. */
  readonly programmes?: readonly Programme[];
  readonly words: EditWords;
  /** The day the latest edition was withdrawn; absent where it was not. */
  readonly withdrawn?: Day;
}

/** Marks dated after today say nothing. In whatever order sessions and blocks are given, the review is the same. */
export function planReview(input: ReviewInput): Review {
  const { withdrawn: gone, programmes = [], ...rest } = input;
  const { client, today } = rest;
  const withdrawn = gone !== undefined && gone <= today ? gone : undefined;
  const history = inOrder(input.history, today);
  const reviewing: Asking = { ...rest, history, programmes, ...(withdrawn === undefined ? {} : { withdrawn }) };
  const block = blockUnderWay(history, today);
  const own = sessionsOf(history, block);
  const known = knownOf(reviewing, own);
  const pains = painsIn(reviewing);
  const proposals: readonly Proposal[] = [
    ...messagesForAlarm(reviewing),
    ...messagesForPain(pains),
    ...proposeSignOffs(reviewing),
    ...proposeCautions(reviewing, pains),
    ...messagesForGap(reviewing),
    ...proposeBreaks(reviewing),
    ...proposeNext(reviewing),
    ...proposeTests(reviewing, known, pains),
    ...proposeFewerDays(reviewing),
    ...proposeMinutes(reviewing, block),
    ...proposeMainBells(reviewing),
    ...proposeLooks(reviewing, pains),
  ];
  const rows = rowsReviewed(own);
  const reviewed = block === null ? null : blockReviewed(block, today);
  const quiet = rows.some((row) => row.quiet >= input.rules.valueOf(DONE_QUIET));
  return {
    client: client.id,
    today: isoOfDay(today),
    need: needOf(proposals, quiet, reviewed, withdrawn !== undefined),
    block: reviewed,
    withdrawn: withdrawn === undefined ? null : isoOfDay(withdrawn),
    lastMark: history.lastMark === null ? null : isoOfDay(history.lastMark),
    silentDays: silentDays(reviewing),
    weeks: block === null ? [] : weeksDone(reviewing, block),
    sessions: block === null ? [] : sessionsReviewed(history, block),
    rows,
    effort: effortReviewed(own),
    abilities: known.map(({ ability }) => ability),
    sides: sidesApart(known),
    alarms: alarmsIn(reviewing),
    pain: painPlaces(pains, today),
    loads: block === null ? [] : weekLoads(reviewing, block),
    notes: notesIn(history, block, today),
    proposals,
  };
}

function blockReviewed({ planned, first, last, weeks }: BlockDays, today: Day): ReviewedBlock {
  const week = Math.floor((today - first) / 7) + 1;
  return {
    block: planned.block,
    edition: planned.edition,
    programme: planned.plan.programme,
    begins: isoOfDay(first),
    ends: isoOfDay(last),
    week: Math.min(Math.max(week, 0), weeks + 1),
    weeks,
  };
}

/** Since the block began; the same words of the same day once. */
function notesIn({ notes }: History, block: BlockDays | null, today: Day): Review['notes'] {
  return notes
    .filter(({ day }) => day <= today && day >= (block?.first ?? day))
    .sort((a, b) => a.day - b.day || (a.text < b.text ? -1 : 1))
    .filter((one, index, all) => one.day !== all[index - 1]?.day || one.text !== all[index - 1]?.text)
    .map(({ day, text }) => ({ date: isoOfDay(day), text }));
}

const NEED_OF: Readonly<Record<string, Need>> = {
  'propose-sign-off': 'pain',
  'propose-caution': 'pain',
  'propose-next-block': 'block ends',
  'propose-repeat': 'block ends',
};
const NEED_OF_MESSAGE: Readonly<Record<string, Need>> = { alarm: 'alarm', pain: 'pain', gap: 'gap' };

/** That of the first proposal: they stand in order. Where nothing holds any more, only pain and alarm come before that. */
function needOf(proposals: readonly Proposal[], quiet: boolean, block: ReviewedBlock | null, withdrawn: boolean): Need {
  const need = needByProposals(proposals, quiet, block);
  return withdrawn && need !== 'alarm' && need !== 'pain' ? 'withdrawn' : need;
}

function needByProposals([first]: readonly Proposal[], quiet: boolean, block: ReviewedBlock | null): Need {
  if (first !== undefined) {
    const why = String(first.reason.inputs.find(({ name }) => name === 'why')?.value ?? '');
    return NEED_OF_MESSAGE[why] ?? NEED_OF[first.reason.rule] ?? 'worth a look';
  }
  if (quiet) return 'worth a look';
  return block === null || block.week === 0 ? 'not begun' : 'as planned';
}
