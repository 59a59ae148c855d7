/** Problems as the coach reads them: what is wrong, what to write instead, and where. */
import type { Place } from '../../src/model/place.js';
import type { Desk, SaidProblem } from './desk.js';

const placeText = (place: Place | undefined): string =>
  place === undefined ? '' : `${place.file}:${place.line}:${place.column} `;

export function Problems({ desk, problems }: { readonly desk: Desk; readonly problems: readonly SaidProblem[] }) {
  if (problems.length === 0) return <p>{desk.words.nothing}</p>;
  return (
    <ul>
      {problems.map(({ problem, message, hint }) => (
        <li>
          <strong>{desk.words.severity[problem.severity]}: </strong>
          {message} {hint}
          <span class="note">
            {placeText(problem.place)}[{problem.code}]
          </span>
        </li>
      ))}
    </ul>
  );
}
