/** Every reason of a plan by exercise: what holds in several weeks is told once, with the weeks it holds in. */
import type { Item } from '../../src/model/plan.js';
import { type Account, type Desk, type GlanceTable, optionText, reasonNote, reasonText } from './desk.js';
import { dosesOf } from './planned-doses.js';

export const reasonsId = (table: GlanceTable, row: string): string => `why-${table.id}-${row}`;

interface Standing {
  readonly week: number;
  readonly item: Item;
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

/** Weeks with the same doses for the same reasons. */
function groupsOf(desk: Desk, account: Account, standings: readonly Standing[]): readonly Group[] {
  const groups = new Map<string, { readonly doses: string; readonly standings: Standing[] }>();
  for (const standing of standings) {
    const doses = doseText(desk, account, standing);
    const like = [doses, ...standing.item.reasons.map((reason) => reasonText(account, reason))].join('\n');
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

/** With the weeks before a text that does not hold in all of the group's. */
function lineOf({ account }: Of, { text, weeks }: Told, of: Group): string {
  const all = new Set(of.standings.map(({ week }) => week)).size;
  if (weeks.length === all) return text;
  const list = account.speech.words.sets.weekList(weeks);
  return `${list.slice(0, 1).toUpperCase()}${list.slice(1)}: ${text}`;
}

function GroupReasons({ of, group }: { readonly of: Of; readonly group: Group }) {
  const { account, desk } = of;
  const first = group.standings[0]?.item;
  const weeks = account.speech.words.sets.weekList([...new Set(group.standings.map(({ week }) => week))]);
  const options = toldOnce(
    group.standings.flatMap(({ week, item }) =>
      item.allowed.map((option) => ({ text: optionText(account, item, option), week })),
    ),
  );
  return (
    <>
      <p class="lead">
        {`${weeks.slice(0, 1).toUpperCase()}${weeks.slice(1)}`}: {group.doses}
      </p>
      <ul class="reasons">
        {(first?.reasons ?? []).map((reason, nth) => {
          const notes = toldOnce(
            group.standings.flatMap(({ week, item }) => {
              const own = item.reasons[nth];
              return own ? [{ text: reasonNote(account, own), week }] : [];
            }),
          );
          return (
            <li>
              {reasonText(account, reason)}
              {notes.map((note) => (
                <span class="note">{lineOf(of, note, group)}</span>
              ))}
            </li>
          );
        })}
      </ul>
      {options.length === 0 ? null : (
        <>
          <p>
            <strong>{desk.words.whyNot}</strong>
          </p>
          <ul class="reasons">
            {options.map((option) => (
              <li>{lineOf(of, option, group)}</li>
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
}: Of & { readonly table: GlanceTable; readonly nameOf: (item: Item) => string }) {
  return (
    <section>
      <h3>{table.name}</h3>
      {table.rows.map(({ row, weeks }) => {
        const standings = weeks.flatMap(({ week, items }) => items.map((item) => ({ week, item })));
        const first = standings[0];
        return (
          <details>
            <summary>
              <h4 id={reasonsId(table, row)}>{first ? nameOf(first.item) : row}</h4>
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
