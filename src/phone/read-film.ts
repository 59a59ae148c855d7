/** What the page of an exercise asks to be filmed: its words stand there already and are said once. */
import type { FilmAsked } from '../../layouts/training/shown.js';
import type { ClientPlan } from '../model/client-plan.js';

const PAGE = 'exercise-';

/** Of the session at this place in the queue; `null` where no film of anything in it is asked for. */
export function readFilm({ weeks }: ClientPlan, occurrence: number): FilmAsked | null {
  const asked = document.querySelector('.film');
  const leaf = asked?.closest('.leaf');
  if (!asked || !leaf) return null;
  const exercise = leaf.id.slice(PAGE.length);
  const own = weeks.flatMap(({ sessions }) => sessions).find((session) => session.occurrence === occurrence);
  const isDone = own?.groups.some(({ items }) => items.some((item) => item.exercise === exercise)) ?? false;
  if (!isDone) return null;
  return {
    page: leaf.id,
    exercise,
    name: leaf.querySelector('h2')?.textContent ?? '',
    lines: [...asked.querySelectorAll('li')].map(({ textContent }) => textContent ?? ''),
  };
}
