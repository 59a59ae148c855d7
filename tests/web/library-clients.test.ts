/** By its types alone the library's builder cannot be handed anything of a client: what is false here does not compile. */
import { expect, test } from 'vitest';
import type { Client } from '../../src/model/client.js';
import type { Edition } from '../../src/model/edition.js';
import type { Log } from '../../src/model/log.js';
import type { Plan } from '../../src/model/plan.js';
import { publicPartOf } from '../../src/model/public-library.js';
import type { StudioState } from '../../src/model/state.js';
import type { LibraryRun } from '../../src/web/library/render-library.js';
import { fixtureLibrary } from './library-fixture.js';

/** Whether a value of type `Whole` can hold one of type `Part`, however deep. */
type Holds<Whole, Part> = Whole extends Part
  ? true
  : Whole extends (...given: never) => unknown
    ? false
    : Whole extends ReadonlyMap<unknown, infer Value>
      ? Holds<Value, Part>
      : Whole extends readonly (infer Item)[]
        ? Holds<Item, Part>
        : Whole extends object
          ? true extends { [Key in keyof Whole]-?: Holds<Whole[Key], Part> }[keyof Whole]
            ? true
            : false
          : false;

type Private = Client | Plan | Edition | Log | StudioState;
type Content = Omit<LibraryRun, 'sources'>;

test('nothing that the library is made from holds a client, a plan, an edition, a log or the state', () => {
  const library: Holds<Content, Private> extends true ? 'holds one' : 'holds none' = 'holds none';
  // The same question of something that does hold one, so that the answer above is worth something.
  const desk: Holds<{ readonly deep: ReadonlyMap<string, { readonly clients: readonly Client[] }> }, Private> = true;
  expect([library, desk]).toEqual(['holds none', true]);
});

test('a whole library is refused: its programmes name clients in what they expect, and some are for one client', () => {
  // @ts-expect-error The public part alone is taken.
  const refused: LibraryRun['library'] = fixtureLibrary;
  expect(JSON.stringify(refused)).toContain('Kept for one client');
  const text = JSON.stringify(publicPartOf(fixtureLibrary));
  expect(text).toContain('Two steady days');
  expect(text).not.toMatch(/Kept for one client|expectations|overrides/);
});
