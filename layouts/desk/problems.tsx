/** Problems as the coach reads them: what is wrong, what to write instead, and where. */
import type { Place } from '../../src/model/place.js';
import type { Desk, SaidProblem } from './desk.js';

const placeText = (place: Place | undefined): string =>
  place === undefined ? '' : `${place.file}:${place.line}:${place.column} `;

export function Problems({
  desk,
  problems,
  none,
}: {
  readonly desk: Desk;
  readonly problems: readonly SaidProblem[];
  /** Said where there are none. */
  readonly none: string;
}) {
  if (problems.length === 0) return <p>{none}</p>;
  return (
    <ul>
      {problems.map(({ problem, message, hint }) => (
        <li>
          <strong>{desk.words.severity[problem.severity]}: </strong>
          {message}
          {hint === '' ? null : ` ${desk.words.instead} ${hint}${/[.!?…]$/.test(hint) ? '' : '.'}`}
          <span class="note">
            {placeText(problem.place)}[{problem.code}]
          </span>
        </li>
      ))}
    </ul>
  );
}
