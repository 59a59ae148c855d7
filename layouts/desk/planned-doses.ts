/** The doses of one item in one week as the desk shows them, and what stands beside a step that must be earned. */
import type { Item } from '../../src/model/plan.js';
import { sayDoses } from '../../src/words/say-doses.js';
import { type Lifted, sayPlanned } from '../../src/words/say-planned.js';
import type { Account } from '../../src/words/why-account.js';

export interface PlannedDose {
  /** `16 kg × 9, 3 sets`. */
  readonly text: string;
  /** Only where the work is a step up: what must be done first, and the work if it was not. */
  readonly earn?: { readonly needs: string; readonly otherwise: string };
}

interface Meant extends Lifted {
  readonly exercise: string;
}

/** Another exercise is named; the item's own is not. */
function doseOf({ plan, speech, names }: Account, item: Item, of: Meant): string {
  const said = sayPlanned(of, plan.inputs.kit, speech).text;
  return of.exercise === item.exercise ? said : speech.words.sets.versionDose(names.exercise(of.exercise), said);
}

function earnOf(account: Account, item: Item, week: number): PlannedDose['earn'] {
  const { plan, speech } = account;
  const { sets: words, doses } = speech.words;
  const otherwise = item.sets.flatMap((set) => set.otherwise ?? [])[0];
  if (otherwise === undefined) return undefined;
  const needs = item.sets.flatMap(({ gate }) => gate?.needs ?? [])[0];
  const gated = plan.weeks.filter(
    ({ number, sessions }) =>
      number <= week &&
      sessions.some(({ groups }) =>
        groups.some(({ items }) =>
          items.some((one) => one.row === item.row && one.sets.some(({ gate }) => gate !== undefined)),
        ),
      ),
  );
  const tempo = words.tempo[otherwise.tempo];
  const said = doses.withSets(doseOf(account, item, otherwise), otherwise.sets);
  return {
    needs:
      needs === undefined
        ? words.gateStill(gated.at(-1)?.number ?? week)
        : words.gateNeeds(
            doseOf(account, item, needs),
            needs.weeks.length === 0 ? '' : words.weekList(needs.weeks),
            needs.reserve === undefined ? undefined : Math.ceil(needs.reserve / 10),
          ),
    otherwise: tempo === '' ? said : `${said}, ${tempo}`,
  };
}

/** In the order done. A gate is held by the work alone: what comes before it is done either way. */
export function dosesOf(account: Account, item: Item, week: number): readonly PlannedDose[] {
  const { plan, speech } = account;
  const earn = earnOf(account, item, week);
  const before = sayDoses(
    plan,
    item.sets.filter(({ kind }) => kind !== 'work'),
    speech,
  );
  return sayDoses(plan, item.sets, speech).map((text) =>
    earn === undefined || before.includes(text) ? { text } : { text, earn },
  );
}
