/** Working sets by week, for the coach to hold against what is advised: by muscle, and by movement. */
import type { SetsByWeek, WeeklySets } from '../../src/model/weekly-sets.js';
import { sayLibraryWords } from '../../src/words/library-words.js';
import { sayTenths } from '../../src/words/say-dose.js';
import { type Desk, sentenceOf } from './desk.js';
import { Wide } from './wide.js';

interface Row {
  readonly name: string;
  readonly weeks: SetsByWeek;
  /** Part of the row above it. */
  readonly part: boolean;
}

function Table(props: {
  readonly desk: Desk;
  readonly weeks: readonly number[];
  readonly caption: string;
  readonly head: string;
  readonly rows: readonly Row[];
}) {
  const { desk, weeks, caption, head, rows } = props;
  return (
    <Wide>
      <table class="counts">
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{head}</th>
            {weeks.map((week) => (
              <th scope="col">{desk.words.week(week)}</th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr class={row.part ? 'part' : undefined}>
              <th scope="row">{sentenceOf(row.name)}</th>
              {row.weeks.map((tenths) => (
                <td>{sayTenths(tenths)}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Wide>
  );
}

export function WeeklySetsTables({ desk, sets }: { readonly desk: Desk; readonly sets: WeeklySets }) {
  const { words } = desk;
  const { patterns } = sayLibraryWords(desk.library.studio.language);
  const muscles = sets.groups.flatMap(({ group, weeks }): readonly Row[] => [
    { name: words.muscleGroups[group], weeks, part: false },
    ...sets.muscles
      .filter((muscle) => muscle.group === group)
      .map((muscle) => ({ name: muscle.muscle, weeks: muscle.weeks, part: true })),
  ]);
  const movements = sets.patterns.map(({ pattern, weeks }) => ({ name: patterns[pattern], weeks, part: false }));
  const table = { desk, weeks: sets.weeks };
  return (
    <>
      <Table {...table} caption={words.setsByMuscle} head={words.muscle} rows={muscles} />
      <p class="note">{words.countedHow}</p>
      <Table {...table} caption={words.setsByMovement} head={words.movement} rows={movements} />
    </>
  );
}
