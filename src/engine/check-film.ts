/** A film is asked of what is trained: of anything else nobody would be told. */
import { type Client, placeOfFact } from '../model/client.js';
import type { Plan } from '../model/plan.js';
import { ofClient, type Problem } from '../model/problem.js';

/** Reports `film-not-planned`. */
export function checkFilm(client: Client, { weeks }: Plan): readonly Problem[] {
  const { film } = client;
  const items = weeks.flatMap(({ sessions }) =>
    sessions.flatMap(({ groups }) => groups.flatMap((group) => group.items)),
  );
  if (film === undefined || items.some(({ exercise }) => exercise === film.exercise)) return [];
  return [
    {
      code: 'film-not-planned',
      severity: 'warning',
      scope: ofClient(client.id),
      place: placeOfFact(client, 'film'),
      data: { exercise: film.exercise },
    },
  ];
}
