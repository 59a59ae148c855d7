/** What one edition or draft changes, in full: a line for each row and each stretch of days it is alike in. */
import type { Change } from '../../src/model/change.js';
import type { Plan } from '../../src/model/plan.js';
import type { Reason } from '../../src/model/reason.js';
import { type ChangeLine, sayChangeTable } from '../../src/words/say-change-table.js';
import { namesOf, PLAIN_NAMES } from '../../src/words/say-figures.js';
import { namesIn } from '../../src/words/say-plan.js';
import { sayReason } from '../../src/words/say-reason.js';
import { type Desk, programmeName } from './desk.js';
import { Wide } from './wide.js';

function Line({ line, nth }: { readonly line: ChangeLine; readonly nth: number }) {
  const stretch = line.stretches[nth];
  if (stretch === undefined) return null;
  const rows = line.stretches.length;
  return (
    <tr>
      {nth > 0 ? null : (
        <th scope="rowgroup" rowSpan={rows}>
          {line.name === '' ? line.session : line.name}
          {line.name === '' ? null : <span class="note">{`${line.session}: ${line.what}`}</span>}
        </th>
      )}
      <td>{stretch.from}</td>
      <td>{stretch.before}</td>
      <td>{stretch.after}</td>
      {nth > 0 ? null : <td rowSpan={rows}>{line.why}</td>}
    </tr>
  );
}

export function Changes({
  desk,
  changes,
  plan,
}: {
  readonly desk: Desk;
  readonly changes: readonly Change[];
  /** The plan that has them. */
  readonly plan: Plan;
}) {
  const { words, speech, library } = desk;
  if (changes.length === 0) return <p>{words.sameWork}</p>;
  const exercise = (id: string): string =>
    library.exercises.find((one) => one.id === id)?.name ?? PLAIN_NAMES.exercise(id);
  const programme = (id: string): string => programmeName(desk, id);
  const inside = { ...namesIn(plan), exercise: (id: string) => speech.words.sets.inSentence(exercise(id)) };
  const why = (reason: Reason): string =>
    sayReason(reason, 'coach', speech, namesOf(reason.inputs, inside)) || reason.says;
  const lines = sayChangeTable({ changes, speech, names: { exercise, programme }, why });
  return (
    <Wide>
      <table class="glance changes">
        <thead>
          <tr>
            <th scope="col">{words.row}</th>
            <th scope="col">{words.changeFrom}</th>
            <th scope="col">{words.changeBefore}</th>
            <th scope="col">{words.changeAfter}</th>
            <th scope="col">{words.changeWhy}</th>
          </tr>
        </thead>
        {lines.map((line) => (
          <tbody>
            {line.stretches.map((_, nth) => (
              <Line line={line} nth={nth} />
            ))}
          </tbody>
        ))}
      </table>
    </Wide>
  );
}
