/** One client's page on the desk: the plan at a glance, figures, problems, findings, and every reason. */
import type { Item, Plan } from '../../src/model/plan.js';
import { sayFullDate } from '../../src/words/say-date.js';
import { sayTenths } from '../../src/words/say-dose.js';
import { PLAIN_NAMES } from '../../src/words/say-figures.js';
import { type Account, accountOf } from '../../src/words/why-account.js';
import { StudioPage } from '../studio-page.js';
import { Changes } from './changes.js';
import {
  type Desk,
  type DeskClient,
  type DeskEdition,
  type GlanceRow,
  type GlanceTable,
  glanceOf,
  programmeName,
} from './desk.js';
import { EditionStands } from './edition-stands.js';
import { Findings } from './findings.js';
import { Forms } from './forms.js';
import { dosesOf, type PlannedDose } from './planned-doses.js';
import { Problems } from './problems.js';
import { Reasons, reasonsId } from './reasons.js';
import { WeeklySetsTables } from './weekly-sets.js';
import { Wide } from './wide.js';

interface Planned {
  readonly desk: Desk;
  readonly account: Account;
}

const nameOf = ({ desk, account }: Planned, item: Item): string =>
  desk.library.exercises.find(({ id }) => id === item.exercise)?.name ?? account.names.exercise(item.exercise);

/** `Warm-up, chair squat`: where it stands, if that is not the work. */
function rowName(of: Planned, item: Item, group: GlanceRow['group']): string {
  const { why } = of.account.speech.coach;
  const where = why.groups[group];
  return where === '' ? nameOf(of, item) : why.within(where, nameOf(of, item));
}

function Dose({ of, dose }: { readonly of: Planned; readonly dose: PlannedDose }) {
  const { words } = of.desk;
  if (dose.earn === undefined) return <span class="figures">{dose.text}</span>;
  return (
    <span class="earn">
      <strong>{words.ifEarned}</strong>
      <span class="figures">{dose.text}</span>
      <span class="figures">{words.or(dose.earn.otherwise)}</span>
      <span class="note">{dose.earn.needs}</span>
    </span>
  );
}

function Glance({ of, table }: { readonly of: Planned; readonly table: GlanceTable }) {
  const { words } = of.desk;
  return (
    <Wide>
      <table class="glance planned">
        <caption>{table.name}</caption>
        <thead>
          <tr>
            <th scope="col">{words.row}</th>
            {of.account.plan.weeks.map(({ number, deload }) => (
              <th scope="col">
                {words.week(number)}
                {deload ? `, ${words.easier}` : ''}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(({ row, group, weeks }) => {
            const first = weeks.flatMap(({ items }) => items)[0];
            return (
              <tr>
                <th scope="row">
                  <a href={`#${reasonsId(table, row)}`}>{first ? rowName(of, first, group) : row}</a>
                </th>
                {weeks.map(({ week, items }) => (
                  <td>
                    {items.flatMap((item) => [
                      ...(first && item.exercise !== first.exercise
                        ? [<span class="note">{nameOf(of, item)}</span>]
                        : []),
                      ...dosesOf(of.account, item, week).map((dose) => <Dose of={of} dose={dose} />),
                    ])}
                  </td>
                ))}
              </tr>
            );
          })}
        </tbody>
      </table>
    </Wide>
  );
}

/** Figures the coach can hold against the programme: minutes, sets of work, reserve asked, loads used. */
function Figures({ of }: { readonly of: Planned }) {
  const { words } = of.desk;
  const { plan } = of.account;
  return (
    <Wide>
      <table class="counts">
        <thead>
          <tr>
            <th scope="col">{words.weekHead}</th>
            <th scope="col">{words.sessionMinutes}</th>
            <th scope="col">{words.setsOfWork}</th>
            <th scope="col">{words.askedReserve}</th>
            <th scope="col">{words.loads}</th>
          </tr>
        </thead>
        <tbody>
          {plan.weeks.map(({ number, sessions }) => {
            const items = sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items));
            const sets = items.flatMap((item) => item.sets).filter(({ kind }) => kind === 'work' || kind === 'feeler');
            const loads = new Map(
              sets.flatMap(({ load }) => (load ? [[load.grams ?? load.step, load.label] as const] : [])),
            );
            const reserves = [...new Set(items.flatMap(({ asked }) => asked.reserve ?? []))].sort((a, b) => a - b);
            return (
              <tr>
                <th scope="row">{number}</th>
                <td>{sessions.map(({ minutes }) => minutes).join(', ')}</td>
                <td>{sets.length}</td>
                <td>{reserves.map(sayTenths).join(', ')}</td>
                <td>
                  {[...loads]
                    .sort(([a], [b]) => a - b)
                    .map(([, label]) => label)
                    .join(', ')}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
      <p class="note">{words.atMost(plan.inputs.minutesCap)}</p>
    </Wide>
  );
}

function PlanParts({ desk, plan, sets }: { readonly desk: Desk; readonly plan: Plan } & Pick<DeskClient, 'sets'>) {
  const called = {
    client: plan.client,
    programme: programmeName(desk, plan.programme),
    exercise: (id: string) => desk.library.exercises.find((one) => one.id === id)?.name ?? PLAIN_NAMES.exercise(id),
  };
  const of: Planned = { desk, account: accountOf(plan, called, desk.library.studio.language) };
  const tables = glanceOf(plan);
  return (
    <>
      <section>
        <h2>{desk.words.glance}</h2>
        {tables.map((table) => (
          <Glance of={of} table={table} />
        ))}
      </section>
      <section>
        <h2>{desk.words.figures}</h2>
        <Figures of={of} />
        {sets === undefined ? null : <WeeklySetsTables desk={desk} sets={sets} />}
      </section>
      <section>
        <h2>{desk.words.findings}</h2>
        <Findings desk={desk} account={of.account} />
      </section>
      <section>
        <h2>{desk.words.reasons}</h2>
        {tables.map((table) => (
          <Reasons desk={desk} account={of.account} table={table} nameOf={(item, group) => rowName(of, item, group)} />
        ))}
      </section>
    </>
  );
}

/** How the latest edition stands, and how a draft beside it becomes the next. */
function Stands({ desk, client, of }: { readonly desk: Desk; readonly client: string; readonly of: DeskEdition }) {
  return (
    <p>
      <EditionStands desk={desk} of={of} />
      {of.draft === null ? null : (
        <>
          {` ${desk.words.draftBeside(of.edition.n + 1)} `}
          <code>chalkleaf issue {client}</code>
        </>
      )}
    </p>
  );
}

/** What a draft beside the latest edition would change, and what that edition changed. */
function Issued({ desk, of }: { readonly desk: Desk; readonly of: DeskEdition }) {
  const { words, speech } = desk;
  const { edition, draft, since } = of;
  return (
    <>
      {draft === null ? null : (
        <section>
          <h2>{words.changedSince}</h2>
          <Changes desk={desk} changes={since} plan={draft} />
        </section>
      )}
      {edition.changes === undefined ? null : (
        <section>
          <h2>{words.changedBy(edition.n)}</h2>
          <p class="note">{words.from(sayFullDate(edition.from, speech))}.</p>
          <Changes desk={desk} changes={edition.changes} plan={edition.plan} />
        </section>
      )}
    </>
  );
}

export function ClientPage({ desk, of }: { readonly desk: Desk; readonly of: DeskClient }) {
  const { words, speech } = desk;
  const { plan } = of;
  const issued = desk.editions.get(of.id);
  return (
    <div class="desk">
      <StudioPage title={of.name} home={{ href: '../index.html', text: words.back }} foot={<p>{words.privatePages}</p>}>
        <p>
          {of.withheld ? <strong>{words.withheld}. </strong> : null}
          {plan
            ? `${programmeName(desk, plan.programme)}. ${words.from(sayFullDate(plan.starts, speech))}. ${
                plan.edition === 0 ? words.draft : words.edition(plan.edition)
              }.`
            : of.client
              ? programmeName(desk, of.client.programme)
              : words.notRead}
        </p>
        {issued === undefined ? null : <Stands desk={desk} client={of.id} of={issued} />}
        {desk.handOvers.has(of.id) ? (
          <p>
            <a href={`../hand-over/${encodeURIComponent(of.id)}.html`}>{words.handOver.link}</a>
          </p>
        ) : null}
        <Forms desk={desk} client={of.id} up="../" />
        <section>
          <h2>{words.problems}</h2>
          <Problems desk={desk} problems={of.problems} none={words.none.client} />
        </section>
        {issued === undefined ? null : <Issued desk={desk} of={issued} />}
        {plan ? <PlanParts desk={desk} plan={plan} {...(of.sets ? { sets: of.sets } : {})} /> : null}
      </StudioPage>
    </div>
  );
}
