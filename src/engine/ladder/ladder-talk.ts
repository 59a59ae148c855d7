/** How hard breath may work in a row, by the talk test: never harder than the plan allows. */
import type { Way } from '../../model/exercise.js';
import type { Talk } from '../../model/plan.js';
import type { Row } from '../../model/programme.js';
import type { Reason, Rule } from '../../model/reason.js';
import { reasonOf } from '../reason-of.js';
import { TALK_LIMIT } from '../rules/talk-limit.js';
import { TALK_SENTENCES } from '../rules/talk-sentences.js';

export interface TalkOfRow {
  /** `null` where breath is not the measure. */
  readonly talk: Talk | null;
  readonly reasons: readonly Reason[];
}

/** `limit` is the plan's own, `null` where the row decides. */
export function talkOf({ effort }: Row, way: Way, limit: Talk | null): TalkOfRow {
  const own = effort?.kind === 'talk' ? effort.level : null;
  const asked = own ?? (way === 'conditioning' ? 'sentences' : null);
  const limited = limit === 'sentences' && asked !== 'sentences';
  const talk = limited ? 'sentences' : (asked ?? limit);
  const told = (rule: Rule): Reason => reasonOf(rule, 'client', [{ name: 'talk', value: talk ?? '', unit: '' }]);
  if (talk === null) return { talk, reasons: [] };
  if (limited || asked === null) return { talk, reasons: [told(TALK_LIMIT)] };
  return { talk, reasons: own === null ? [told(TALK_SENTENCES)] : [] };
}
