/** What days and minutes ask of the coach: to write, to write a break down, to talk, to plan the next block. */
import { addDays, type Day, dayOfIso, isoOfDay, weekdayOf } from '../../model/day.js';
import type { Edit } from '../../model/edit.js';
import type { Proposal, WeekDone } from '../../model/review.js';
import { reasonOf } from '../reason-of.js';
import { PROPOSE_BREAK } from '../rules/propose-break.js';
import { PROPOSE_FEWER_DAYS } from '../rules/propose-fewer-days.js';
import { PROPOSE_MESSAGE } from '../rules/propose-message.js';
import { PROPOSE_MINUTES } from '../rules/propose-minutes.js';
import { PROPOSE_MINUTES_OVER } from '../rules/propose-minutes-over.js';
import { PROPOSE_NEXT_BLOCK } from '../rules/propose-next-block.js';
import { PROPOSE_REPEAT } from '../rules/propose-repeat.js';
import { REVIEW_SHARE } from '../rules/review-share.js';
import { orderOf } from '../sessions/queue-sessions.js';
import { type Asking, askedGaps, askedUpTo, plannedDays } from './asked-days.js';
import {
  type BlockDays,
  count,
  daysOf,
  isDone,
  isLetBe,
  later,
  type Reviewing,
  sessionsOf,
  word,
} from './reviewing.js';
import { weeksDone } from './session-weeks.js';

/** The last mark; where nothing came back, the first day that was planned. */
const heardOf = (reviewing: Asking): Day | null => reviewing.history.lastMark ?? plannedDays(reviewing)[0] ?? null;

/** Up to today or the last day on which anything was asked; `null` where nothing is due yet, or any more. */
export function silentDays(reviewing: Asking): number | null {
  const heard = heardOf(reviewing);
  if (reviewing.withdrawn !== undefined || heard === null || heard > reviewing.today) return null;
  return Math.max(0, askedUpTo(reviewing, reviewing.today) - heard);
}

/** Silent for so long although a session was planned since, outside the breaks the coach wrote. */
export function messagesForGap(reviewing: Asking): readonly Proposal[] {
  const { client, history, rules, today } = reviewing;
  const silent = silentDays(reviewing);
  const heard = heardOf(reviewing);
  if (silent === null || heard === null || silent < rules.valueOf(PROPOSE_MESSAGE)) return [];
  const away = (day: Day): boolean => client.breaks.some(({ from, until }) => from <= day && until >= day);
  const missed = plannedDays(reviewing).filter(
    (day) => (day > heard || (history.lastMark === null && day === heard)) && day < today && !away(day),
  );
  if (missed.length === 0 || away(today)) return [];
  const marked = history.lastMark === null ? [] : [word('marked', isoOfDay(history.lastMark))];
  const inputs = [word('why', 'gap'), count('days', silent, 'days'), count('sessions', missed.length, 'sessions')];
  return [{ reason: reasonOf(PROPOSE_MESSAGE, 'coach', [...inputs, ...marked], 'measured'), edits: [] }];
}

/** One for each gap that the planner takes for a break of its own accord. */
export function proposeBreaks(reviewing: Asking): readonly Proposal[] {
  if (reviewing.rules.valueOf(PROPOSE_BREAK) === 0) return [];
  return askedGaps(reviewing).map(({ from, until, cause }): Proposal => {
    const entry = { from: isoOfDay(from), until: isoOfDay(until), cause };
    const inputs = [word('from', entry.from), word('until', entry.until), count('days', until - from + 1, 'days')];
    return {
      reason: reasonOf(PROPOSE_BREAK, 'coach', inputs, 'measured'),
      edits: [{ kind: 'add-to-list', path: ['breaks'], entry }],
    };
  });
}

/** What was let be since it hurt was not missed. */
const letBeIn = ({ history }: Reviewing, { begins, ends }: WeekDone): number =>
  history.sessions.filter((one) => isLetBe(one) && isoOfDay(one.day) >= begins && isoOfDay(one.day) <= ends).length;

const isFew = ({ rules }: Reviewing, { planned, done }: Pick<WeekDone, 'planned' | 'done'>, letBe = 0): boolean =>
  3 * (done + letBe) < rules.valueOf(REVIEW_SHARE) * planned;

/** The last weeks that are over, of whatever block, up to the week before today's; a week away breaks their run. */
export function proposeFewerDays(reviewing: Asking): readonly Proposal[] {
  const { client, history, rules, today } = reviewing;
  const wanted = rules.valueOf(PROPOSE_FEWER_DAYS);
  const away = [...client.breaks, ...askedGaps(reviewing)];
  const weeks = history.blocks
    .flatMap((planned) => daysOf(planned) ?? [])
    .flatMap((block) => weeksDone(reviewing, block))
    .filter(({ over }) => over)
    .map((week) => ({ ...week, few: isFew(reviewing, week, letBeIn(reviewing, week)) }));
  const last = weeks.slice(-wanted);
  const days = last.map(({ begins, ends }) => ({ begins: dayOfIso(begins) ?? today, ends: dayOfIso(ends) ?? today }));
  const running = days.every(({ begins }, index) => index === 0 || begins === (days[index - 1]?.begins ?? 0) + 7);
  const recent = (days.at(-1)?.ends ?? 0) >= today - 7;
  const wasAway = days.some(({ begins, ends }) => away.some(({ from, until }) => from <= ends && until >= begins));
  if (last.length < wanted || !running || !recent || wasAway) return [];
  if (!last.every((week) => week.planned > 0 && week.few)) return [];
  const sum = (of: (week: WeekDone) => number): number => last.reduce((all, week) => all + of(week), 0);
  const inputs = [
    count('weeks', wanted, 'weeks'),
    count(
      'done',
      sum(({ done }) => done),
    ),
    count(
      'planned',
      sum(({ planned }) => planned),
    ),
    count('days a week', client.days.length),
  ];
  return [{ reason: reasonOf(PROPOSE_FEWER_DAYS, 'coach', inputs, 'measured'), edits: [] }];
}

/**
 * The last sessions whose minutes were said, each longer than planned by more than the share. Nothing is written: with more
 * minutes on the page the sessions would be planned longer, not take less.
 */
export function proposeMinutes(reviewing: Reviewing, block: BlockDays | null): readonly Proposal[] {
  const { rules } = reviewing;
  const wanted = rules.valueOf(PROPOSE_MINUTES);
  const said = sessionsOf(reviewing.history, block).flatMap((session) =>
    isDone(session) && session.minutes !== null && session.minutesPlanned > 0
      ? [{ took: session.minutes, planned: session.minutesPlanned }]
      : [],
  );
  const last = said.slice(-wanted);
  const most = 1000 + rules.valueOf(PROPOSE_MINUTES_OVER);
  if (last.length < wanted || !last.every(({ took, planned }) => 1000 * took > most * planned)) return [];
  const over = last.map(({ took, planned }) => took - planned);
  const inputs = [
    count('sessions', wanted, 'sessions'),
    count('least', Math.min(...over)),
    count('most', Math.max(...over)),
    count('minutes', reviewing.client.minutes, 'minutes'),
  ];
  return [{ reason: reasonOf(PROPOSE_MINUTES, 'coach', inputs, 'measured'), edits: [] }];
}

/**
 * In the last weeks of the latest block, or after it, as long as the page still says that block and no later start: the same programme once
 * more where few of its sessions were done, else on. Another programme is the coach's choice: those that fit are named.
 */
export function proposeNext(reviewing: Asking): readonly Proposal[] {
  const { client, history, programmes, rules, today } = reviewing;
  const latest = history.blocks.at(-1);
  const block = latest === undefined ? null : daysOf(latest);
  if (block === null || client.blocksBefore + 1 !== block.planned.block) return [];
  if (client.starts > block.last || today < block.first || block.last - today >= 7 * rules.valueOf(PROPOSE_NEXT_BLOCK))
    return [];
  const starts = trainingDayAfter(reviewing, later(block.last, addDays(today, -1)));
  const weeks = weeksDone(reviewing, block).filter(({ over }) => over);
  // What breaks took was planned once: a block of which half was lost to them was not done.
  const planned = weeks.reduce((sum, week) => sum + week.trainingDays, 0);
  const done = weeks.reduce((sum, week) => sum + week.done, 0);
  const repeat = rules.valueOf(PROPOSE_REPEAT) > 0 && isFew(reviewing, { planned, done });
  const begun = history.sessions.some((session) => session.block === block.planned.block);
  const edits: readonly Edit[] = [
    { kind: 'set', path: ['starts'], value: isoOfDay(starts) },
    // A block of which nothing was marked is still to come: a first one keeps its gentle weeks.
    ...(begun ? [{ kind: 'set', path: ['blocks before'], value: String(client.blocksBefore + 1) } as const] : []),
  ];
  const others = programmes.filter(
    (programme) => programme.id !== client.programme && orderOf(programme, client.days.length) !== null,
  );
  const inputs = [
    count('done', done),
    count('planned', planned),
    word(block.last < today ? 'ended' : 'ends', isoOfDay(block.last)),
    word('starts', isoOfDay(starts)),
    ...others.map(({ name }) => word('other programme', name)),
  ];
  return [{ reason: reasonOf(repeat ? PROPOSE_REPEAT : PROPOSE_NEXT_BLOCK, 'coach', inputs, 'measured'), edits }];
}

/** The first one after a day, outside every break; the day after where the page names no training day. */
function trainingDayAfter({ client }: Reviewing, day: Day): Day {
  const open = (one: Day): boolean =>
    client.days.includes(weekdayOf(one)) && !client.breaks.some(({ from, until }) => one >= from && one <= until);
  const last = Math.max(day, ...client.breaks.map(({ until }) => until)) + 7;
  for (let one = addDays(day, 1); one <= last; one = addDays(one, 1)) if (open(one)) return one;
  return addDays(day, 1);
}
