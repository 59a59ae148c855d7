/** The desk's first page: every client, ready or withheld with the reason, and what is wrong in the folder itself. */
import { isoOfDay } from '../../src/model/day.js';
import { sayFullDate } from '../../src/words/say-date.js';
import { StudioPage } from '../studio-page.js';
import { type Desk, type DeskClient, programmeName } from './desk.js';
import { EditionStands } from './edition-stands.js';
import { Forms } from './forms.js';
import { Problems } from './problems.js';

function Standing({ desk, of }: { readonly desk: Desk; readonly of: DeskClient }) {
  const { words } = desk;
  const wrong = of.problems.filter(({ problem }) => problem.severity === 'error');
  const errors =
    wrong.length === 0 ? null : (
      <ul>
        {wrong.map(({ message }) => (
          <li>{message}</li>
        ))}
      </ul>
    );
  if (!of.withheld) {
    const issued = desk.editions.get(of.id);
    return (
      <>
        {issued === undefined ? words.ready : <EditionStands desk={desk} of={issued} />}
        {errors}
        <Forms desk={desk} client={of.id} />
      </>
    );
  }
  return (
    <div class="withheld">
      <strong>{words.withheld}</strong>
      {errors}
    </div>
  );
}

export function DeskIndex({ desk, clients }: { readonly desk: Desk; readonly clients: readonly DeskClient[] }) {
  const { words, speech, library } = desk;
  const ofFolder = desk.problems.filter(({ problem }) => problem.scope.kind === 'folder');
  return (
    <div class="desk">
      <StudioPage title={words.title(library.studio.name)} foot={<p>{words.privatePages}</p>}>
        <section>
          <h2>{words.clients}</h2>
          {clients.length === 0 ? (
            <p>{words.none.clients}</p>
          ) : (
            <div class="wide">
              <table class="glance">
                <thead>
                  <tr>
                    <th scope="col">{words.client}</th>
                    <th scope="col">{words.programme}</th>
                    <th scope="col">{words.starts}</th>
                    <th scope="col">{words.standing}</th>
                  </tr>
                </thead>
                <tbody>
                  {clients.map((of) => (
                    <tr>
                      <th scope="row">
                        <a href={`clients/${encodeURIComponent(of.id)}.html`}>{of.name}</a>
                      </th>
                      <td>{programmeName(desk, of.client?.programme ?? of.plan?.programme ?? '')}</td>
                      <td>{of.client ? sayFullDate(isoOfDay(of.client.starts), speech) : ''}</td>
                      <td>
                        <Standing desk={desk} of={of} />
                      </td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </div>
          )}
        </section>
        <section>
          <h2>{words.folderProblems}</h2>
          <Problems desk={desk} problems={ofFolder} none={words.none.folder} />
        </section>
      </StudioPage>
    </div>
  );
}
