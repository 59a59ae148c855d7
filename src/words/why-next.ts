/** Why not the next one up: each option that stood at a step, what becomes of it, and what would open it. */

import type { RungDose } from '../model/ladder.js';
import type { AllowedOption, Item, PlanSet } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import type { DoseWords } from './catalogue.js';
import type { Figure } from './rule-words.js';
import { sayUnlock } from './rules/unlocks.js';
import { figuresOf } from './say-figures.js';
import { coachSaying, sayReason } from './say-reason.js';
import { type Account, tellReason } from './why-account.js';
import type { WhyNext, WhyStanding } from './why-tree.js';

/** `null` for the option the work is done with: that is no other one. */
export function tellNext(account: Account, item: Item, option: AllowedOption): WhyNext | null {
  const standing = standingOf(item, option);
  if (standing === 'taken') return null;
  const { why } = account.speech.coach;
  const refusals = item.reasons.filter((reason) => refuses(reason, item, option) && isAbout(reason, option));
  const told = refusals.map((refusal) => sayReason(refusal, 'coach', account.speech, account.names)).join(' ');
  const becomes = { tried: why.tried, 'if-earned': why.ifEarned, open: why.open, refused: '' }[standing];
  const { refusedBy } = option;
  const bare = refusedBy === undefined ? '' : (coachSaying(refusedBy)?.(() => '') ?? refusedBy);
  const says = [becomes, told || bare].filter((part) => part !== '').join(' ');
  const unlock = refusedBy === undefined ? '' : sayUnlock(refusedBy, figureOf(account, refusals[0]));
  return {
    option: optionText(account, item, option),
    exercise: option.exercise,
    tempo: option.tempo,
    load: option.grams > 0 ? { value: option.grams, unit: 'g' } : null,
    ...(option.rung === undefined ? {} : { rung: option.rung }),
    predicted: option.predicted > 0 ? { value: option.predicted, unit: 'tenths' } : null,
    standing,
    ...(refusedBy === undefined ? {} : { refusedBy }),
    says,
    ...(unlock === '' ? {} : { unlock }),
    reasons: refusals.map((refusal) => tellReason(account, refusal)),
  };
}

const figureOf = ({ names, speech }: Account, reason: Reason | undefined): Figure =>
  reason === undefined ? () => '' : figuresOf(reason, speech, names);

/** What becomes of an option this week. */
function standingOf(item: Item, option: AllowedOption): WhyStanding {
  if (option.refusedBy !== undefined) return 'refused';
  if (option.rung !== undefined) {
    if (option.rung !== item.rung?.number) return 'open';
    return item.sets.some(({ otherwise }) => otherwise !== undefined) ? 'if-earned' : 'taken';
  }
  const meant = ({ exercise, load }: PlanSet): boolean =>
    (exercise ?? item.exercise) === option.exercise && (load?.grams ?? 0) === option.grams;
  if (item.sets.some((set) => set.kind === 'trial' && meant(set))) return 'tried';
  const work = item.sets.filter((set) => set.kind === 'work' && meant(set) && item.tempo === option.tempo);
  if (work.length === 0) return 'open';
  return work.some(({ otherwise }) => otherwise !== undefined) ? 'if-earned' : 'taken';
}

/** Whether a reason does nothing but say why this option is not what the work is done with. */
export const refuses = (reason: Reason, item: Item, option: AllowedOption): boolean =>
  reason.audience === 'coach' &&
  (reason.rule === option.refusedBy || (standingOf(item, option) === 'tried' && isAbout(reason, option)));

function isAbout({ inputs }: Reason, option: AllowedOption): boolean {
  const value = (name: string) => inputs.find((input) => input.name === name)?.value;
  if (option.rung !== undefined) return value('rung') === undefined || value('rung') === option.rung;
  return (
    value('exercise') === option.exercise &&
    (value('load') ?? 0) === option.grams &&
    (value('tempo') ?? 'normal') === option.tempo
  );
}

function optionText(account: Account, item: Item, option: AllowedOption): string {
  const { speech, names } = account;
  const other = option.exercise === item.exercise ? '' : names.exercise(option.exercise);
  const parts =
    option.rung === undefined
      ? [
          other,
          option.grams > 0 ? names.load(option.grams, option.exercise) : '',
          speech.words.sets.tempo[option.tempo],
        ]
      : [other, ...rungText(account, item, option.rung)];
  const said = parts.filter((part) => part !== '');
  return said.length === 0 ? names.exercise(option.exercise) : said.join(', ');
}

/** The load and the dose of a rung, from the ladder the plan carries. */
function rungText({ plan, speech }: Account, item: Item, rung: number): readonly string[] {
  const [session = '', row = ''] = item.id.split('/');
  const at = plan.inputs.ladders.find(({ id }) => id === `${session}/${row}`)?.rungs[rung - 1];
  if (at === undefined) return [];
  const load = at.load === null || ('grams' in at.load && at.load.grams === 0) ? '' : at.load.label;
  return [load, doseText(at.dose, speech.words.doses)];
}

function doseText(dose: RungDose, doses: DoseWords): string {
  switch (dose.kind) {
    case 'reps':
      return doses.reps(`${dose.reps}`);
    case 'seconds':
      return doses.seconds(`${dose.seconds}`);
    case 'metres':
      return doses.metres(`${dose.metres}`);
    case 'every':
      return doses.every(`${dose.minutes}`, `${dose.reps}`, dose.everySeconds);
    case 'main-next':
      return doses.mainNext(`${dose.main}`, `${dose.next}`);
    case 'steps':
      return dose.reps.join('-');
    case 'round':
      return doses.rounds(1);
  }
}
