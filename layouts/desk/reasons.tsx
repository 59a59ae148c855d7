/** Every reason of a plan by exercise: what holds in several weeks is told once, with the weeks it holds in. */
import type { Item } from '../../src/model/plan.js';
import { sayTenths } from '../../src/words/say-dose.js';
import { tellItem } from '../../src/words/tell-why.js';
import { type Account, withinItem } from '../../src/words/why-account.js';
import type { WhyItem, WhyNext } from '../../src/words/why-tree.js';
import { type Desk, type GlanceRow, type GlanceTable, sentenceOf } from './desk.js';
import { dosesOf } from './planned-doses.js';
import { Figures, figuresText, RuleLink } from './ruled.js';

export const reasonsId = (table: GlanceTable, row: string): string => `why-${table.id}-${row}`;

interface Standing {
  readonly week: number;
  readonly item: Item;
  readonly told: WhyItem;
}

/** One text with the weeks it holds in. */
interface Told {
  readonly text: string;
  readonly weeks: readonly number[];
}

function toldOnce(all: readonly { readonly text: string; readonly week: number }[]): readonly Told[] {
  const texts = new Map<string, number[]>();
  for (const { text, week } of all) texts.set(text, [...(texts.get(text) ?? []), week]);
  return [...texts].map(([text, weeks]) => ({ text, weeks: [...new Set(weeks)] }));
}

const doseText = (desk: Desk, account: Account, { item, week }: Standing): string =>
  dosesOf(account, item, week)
    .map(({ text, earn }) =>
      earn === undefined ? text : `${desk.words.ifEarned} ${text}, ${desk.words.or(earn.otherwise)}`,
    )
    .join('; ');

interface Group {
  readonly doses: string;
  readonly standings: readonly Standing[];
}

/** Weeks with the same doses by the same rules, whose figures may differ. */
function groupsOf(desk: Desk, account: Account, standings: readonly Standing[]): readonly Group[] {
  const groups = new Map<string, { readonly doses: string; readonly standings: Standing[] }>();
  for (const standing of standings) {
    const doses = doseText(desk, account, standing);
    const like = [doses, ...standing.told.reasons.map(({ rule }) => rule)].join('\n');
    const group = groups.get(like) ?? { doses, standings: [] };
    group.standings.push(standing);
    groups.set(like, group);
  }
  return [...groups.values()];
}

interface Of {
  readonly desk: Desk;
  readonly account: Account;
}

const weekCount = (weeks: readonly number[]): number => new Set(weeks).size;

/** With its weeks before a text that does not hold in as many as those it stands among. */
function lineOf({ account }: Of, { text, weeks }: Told, among: number): string {
  return weeks.length === among ? text : `${sentenceOf(account.speech.words.sets.weekList(weeks))}: ${text}`;
}

/** The same rule's reason over a group's weeks: each sentence once, and folded beneath it each set of figures once. */
function Reason({ of, group, nth }: { readonly of: Of; readonly group: Group; readonly nth: number }) {
  const { account, desk } = of;
  const own = group.standings.flatMap(({ week, told }) => {
    const reason = told.reasons[nth];
    if (reason === undefined) return [];
    return [{ week, rule: reason.rule, text: reason.says, note: figuresText(withinItem(account, told), reason) }];
  });
  const among = weekCount(own.map(({ week }) => week));
  return toldOnce(own).map((told) => {
    const alike = own.filter(({ text }) => text === told.text);
    const notes = toldOnce(alike.map(({ week, note }) => ({ week, text: note })));
    return (
      <li>
        {lineOf(of, told, among)} <RuleLink desk={desk} rule={alike[0]?.rule ?? ''} />
        <Figures desk={desk} lines={notes.map((note) => lineOf(of, note, told.weeks.length))} />
      </li>
    );
  });
}

/** An option that stood at a step: why it was not taken, or what becomes of it, and what would open it. */
function Option({ of, next, weeks, among }: { readonly of: Of; readonly next: WhyNext } & Among) {
  const { why } = of.account.speech.coach;
  const asked = why.next(next.option, next.predicted === null ? '' : sayTenths(next.predicted.value));
  const text = [asked, next.says, next.unlock ?? ''].filter((part) => part !== '').join(' ');
  return (
    <li>
      {lineOf(of, { text, weeks }, among)}{' '}
      {next.refusedBy === undefined ? null : <RuleLink desk={of.desk} rule={next.refusedBy} />}
    </li>
  );
}

interface Among {
  readonly weeks: readonly number[];
  readonly among: number;
}

function GroupReasons({ of, group }: { readonly of: Of; readonly group: Group }) {
  const { account, desk } = of;
  const own = [...new Set(group.standings.map(({ week }) => week))];
  const weeks = account.speech.words.sets.weekList(own);
  const all = group.standings.flatMap(({ week, told }) =>
    told.next.map((next) => ({ text: [next.option, next.predicted?.value, next.says].join(), week, next })),
  );
  const options = toldOnce(all).flatMap(({ text, weeks: during }) => {
    const next = all.find((one) => one.text === text)?.next;
    return next === undefined ? [] : [{ next, weeks: during }];
  });
  return (
    <>
      <p class="lead">
        {sentenceOf(weeks)}: {group.doses}
      </p>
      <ul class="reasons">
        {(group.standings[0]?.told.reasons ?? []).map((_, nth) => (
          <Reason of={of} group={group} nth={nth} />
        ))}
      </ul>
      {options.length === 0 ? null : (
        <>
          <p>
            <strong>{desk.words.whyNot}</strong>
          </p>
          <ul class="reasons">
            {options.map(({ next, weeks: during }) => (
              <Option of={of} next={next} weeks={during} among={own.length} />
            ))}
          </ul>
        </>
      )}
    </>
  );
}

export function Reasons({
  desk,
  account,
  table,
  nameOf,
}: Of & { readonly table: GlanceTable; readonly nameOf: (item: Item, group: GlanceRow['group']) => string }) {
  return (
    <section>
      <h3>{table.name}</h3>
      {table.rows.map(({ row, group, weeks }) => {
        const standings = weeks.flatMap(({ week, items }) =>
          items.map((item) => ({ week, item, told: tellItem(account, group, item) })),
        );
        const first = standings[0];
        return (
          <details>
            <summary>
              <h4 id={reasonsId(table, row)}>{first ? nameOf(first.item, group) : row}</h4>
            </summary>
            {groupsOf(desk, account, standings).map((group) => (
              <GroupReasons of={{ desk, account }} group={group} />
            ))}
          </details>
        );
      })}
    </section>
  );
}
