/** What the coach is told of breaks: how gentle the weeks after each are and why, and what only a coach can decide. */
import { isoOfDay } from '../../model/day.js';
import type { Way } from '../../model/exercise.js';
import type { Finding } from '../../model/plan.js';
import type { Reason, ReasonInput, Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { reasonOf } from '../reason-of.js';
import { BREAK_AWAY } from '../rules/break-away.js';
import { BREAK_HELD } from '../rules/break-held.js';
import { BREAK_HELD_ILL } from '../rules/break-held-ill.js';
import { BREAK_HURT } from '../rules/break-hurt.js';
import { BREAK_ILL } from '../rules/break-ill.js';
import { MISSED_SESSION } from '../rules/missed-session.js';
import { RETURN_VOLUME } from '../rules/return-volume.js';
import { STRENGTH_KEPT } from '../rules/strength-kept.js';
import { daysOf } from './join-breaks.js';
import { CUTS, RESTS, type Return, returnOf, type Stretch, stretchesOf } from './returns.js';

/** Of each break in turn; then each week back with more sessions than are good for it. */
export function breakFindings(context: BlockContext): readonly Finding[] {
  if (context.client.breaks.length === 0) return [];
  return [...stretchesOf(context).flatMap((stretch) => ofStretch(context, stretch)), ...crowdedWeeks(context)];
}

const GENTLE_FOR: Readonly<Record<Stretch['cause'], Rule>> = { away: BREAK_AWAY, ill: BREAK_ILL, hurt: BREAK_HURT };

/** Each cause of it once, with its own days, and where there is more than one of them those of all together. */
function ofStretch(context: BlockContext, stretch: Stretch): readonly Finding[] {
  const own = context.days.filter(({ day }) => returnOf(context, day)?.stretch.from === stretch.from);
  const weeks = [...new Set(own.map(({ week }) => week))];
  // What was tested before it is what the block was begun with; how much of it is left, only a test says.
  const inside = stretch.from > context.firstDay && stretch.days >= context.rules.valueOf(STRENGTH_KEPT);
  const again: readonly ReasonInput[] = inside ? [{ name: 'test again', value: isoOfDay(stretch.back), unit: '' }] : [];
  const whole: readonly ReasonInput[] =
    stretch.parts.length > 1 ? [{ name: 'together', value: stretch.days, unit: 'days' }] : [];
  return stretch.causes.map((cause) => {
    const rule = stretch.gentle ? GENTLE_FOR[cause] : cause === 'ill' ? BREAK_HELD_ILL : MISSED_SESSION;
    const inputs = [...inputsOf({ ...stretch, cause, days: daysOf(stretch.parts, cause) }), ...whole, ...again];
    return { rule: rule.id, audience: 'coach', weeks, reason: reasonOf(rule, 'coach', inputs, 'measured') };
  });
}

type Told = Pick<Stretch, 'cause' | 'days' | 'from' | 'until'>;
const inputsOf = ({ cause, days, from, until }: Told): readonly ReasonInput[] => [
  { name: 'cause', value: cause, unit: '' },
  { name: 'days', value: days, unit: 'days' },
  { name: 'from', value: isoOfDay(from), unit: '' },
  { name: 'until', value: isoOfDay(until), unit: '' },
];

function crowdedWeeks(context: BlockContext): readonly Finding[] {
  const back = context.days.flatMap(({ day, week }) => {
    const after = returnOf(context, day);
    return after === null ? [] : [{ after, week, key: `${after.stretch.until}/${after.week}` }];
  });
  return [...new Set(back.map(({ key }) => key))].flatMap((key): readonly Finding[] => {
    const own = back.filter((each) => each.key === key);
    const limit = own[0]?.after.sessions ?? null;
    if (limit === null || own.length <= limit.most) return [];
    const inputs = [
      { name: 'sessions', value: own.length, unit: 'sessions' },
      { name: 'most', value: limit.most, unit: 'sessions' },
    ];
    const weeks = [...new Set(own.map(({ week }) => week))];
    return [{ rule: limit.rule.id, audience: 'coach', weeks, reason: reasonOf(limit.rule, 'coach', inputs) }];
  });
}

/** The causes whose words a client reads: having been away adds nothing to having been ill or hurt. */
const spokenOf = ({ causes }: Stretch): readonly Stretch['cause'][] => {
  const grave = causes.filter((cause) => cause !== 'away');
  return grave.length > 0 ? grave : causes;
};

/** Why a row is gentle on a day after a break: to the client by its cause, to the coach with its figures. */
export function returnReasons(back: Return | null, way: Way): readonly Reason[] {
  if (back === null) return [];
  const { stretch, week, held, setsShare, limited } = back;
  const rest = way === 'conditioning' && back.restTimes > 0 ? RESTS[week - 1] : undefined;
  const inputs = inputsOf(stretch);
  const rule = stretch.gentle ? BREAK_HELD : BREAK_HELD_ILL;
  const cut = setsShare < 1000 ? CUTS[week - 1] : undefined;
  return [
    ...(held === null
      ? []
      : [
          ...spokenOf(stretch).map((cause) => reasonOf(rule, 'client', inputsOf({ ...stretch, cause }), 'measured')),
          reasonOf(rule, 'coach', inputs, 'measured'),
        ]),
    ...(cut === undefined
      ? []
      : [reasonOf(cut, 'coach', [...inputs, { name: 'cut', value: 1000 - setsShare, unit: 'per-mille' }])]),
    ...(limited ? [reasonOf(RETURN_VOLUME, 'coach', inputs)] : []),
    ...(rest === undefined ? [] : [reasonOf(rest, 'coach', inputs)]),
  ];
}
