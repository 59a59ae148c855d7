/** Planning a client: how long it takes, and how that grows with weeks, rows and loads. */
import { linkLibrary } from '../../src/engine/plan-block.js';
import type { Client } from '../../src/model/client.js';
import { kitItemId, rowId } from '../../src/model/identity.js';
import type { Programme } from '../../src/model/programme.js';
import type { Content } from '../../src/model/studio.js';
import { type Demo, planned } from './demo.js';
import { cpuOf } from './measure.js';
import { ms, row } from './table.js';

/** The client's programme with every session's rows repeated under new names, until it has so many. */
function longer(
  content: Content,
  client: Client,
  times: number,
  weeks: number,
): { content: Content; client: Client; rows: number } {
  let rows = 0;
  const programmes = content.library.programmes.map((programme): Programme => {
    if (programme.id !== client.programme) return programme;
    const curve = Array.from({ length: weeks }, (_, i) => programme.curve[i % programme.curve.length]).flatMap(
      (week) => (week === undefined ? [] : [week]),
    );
    const sessions = programme.sessions.map((session) => ({
      ...session,
      blocks: session.blocks.map((block) => ({
        ...block,
        rows: Array.from({ length: times }, (_, i) =>
          block.rows.map((each) => ({ ...each, id: rowId(`${each.id}-${i}`) })),
        ).flat(),
      })),
    }));
    rows = sessions.flatMap((session) => session.blocks.flatMap((block) => block.rows)).length;
    const ids = sessions.flatMap((session) => session.blocks.flatMap((block) => block.rows.map((each) => each.id)));
    return { ...programme, curve, sessions, neverCut: ids, cutFirst: [] };
  });
  return {
    content: { ...content, library: { ...content.library, programmes } },
    client: { ...client, minutes: 1000 },
    rows,
  };
}

/** So many bells in place of the client's own, evenly apart from 4 kg to 40 kg. */
function withBells(client: Client, bells: number): Client {
  const kit = Array.from({ length: bells }, (_, i) => {
    const grams = 4000 + Math.floor((36_000 * i) / Math.max(1, bells - 1));
    const mass = { grams, figure: `${grams / 1000}`, unit: 'kg' } as const;
    return { id: kitItemId(`bell-${i}`), kind: 'bell', mass } as const;
  });
  return { ...client, kit };
}

/** One figure for six weeks of some 21 rows; then each of weeks, rows and loads twice, and four times as many. */
export async function planning({ content, client }: Demo): Promise<void> {
  const more = Math.max(1, Math.round(21 / longer(content, client, 1, 6).rows));
  const measure = async (
    rows: number,
    weeks: number,
    loads: number,
    times = 30,
  ): Promise<readonly [number, number]> => {
    const made = longer(content, client, rows, weeks);
    const lifter = loads === 0 ? made.client : withBells(made.client, loads);
    // As a build does it: the library read once for all clients.
    const linked = linkLibrary(made.content.library.exercises);
    return [await cpuOf(times, () => planned(made.content, lifter, linked)), made.rows];
  };
  const [taken, rows] = await measure(more, 6, 0, 200);
  row(
    `planning one client, 6 weeks × ${rows} rows`,
    ms(taken),
    'at most 5 ms; screening, versions, sessions, reasons, audit',
  );
  const growth = async (what: string, sizes: readonly (readonly [string, number, number, number])[]): Promise<void> => {
    const figures: string[] = [];
    let first = 0;
    for (const [label, r, w, l] of sizes) {
      const [each] = await measure(r, w, l);
      first = first === 0 ? each : first;
      figures.push(`${label} ${ms(each)} (× ${(each / first).toFixed(1)})`);
    }
    row(`  growth over ${what}`, '', figures.join(', '));
  };
  await growth(
    'weeks',
    [6, 12, 24].map((weeks) => [`${weeks}`, more, weeks, 0] as const),
  );
  await growth(
    'rows',
    [1, 2, 4].map((fold) => [`${rows * fold}`, more * fold, 6, 0] as const),
  );
  await growth(
    'loads',
    [8, 16, 32].map((loads) => [`${loads}`, more, 6, loads] as const),
  );
}
