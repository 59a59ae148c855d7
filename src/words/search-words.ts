/** What the library's script says: why something was found, and the sentence that filters read back. */
import { listed } from './listed.js';

/** What a typed word came upon, and where. */
interface Reason {
  readonly typed: string;
  readonly word: string;
  readonly spelling: 'same' | 'begins' | 'near';
  readonly where: 'name' | 'text' | 'movement' | 'kit' | 'works' | 'asks';
  readonly heading: string;
}

export interface SearchWords {
  readonly search: string;
  readonly hint: string;
  /** Why one exercise was found, for each word typed. */
  readonly why: (reasons: readonly Reason[]) => string;
  readonly found: (count: number, shown: number) => string;
  readonly nothing: (typed: string) => string;
  /** So many were found, and the sentence leaves out all of them. */
  readonly leftOut: (count: number) => string;
  /** The index could not be had. */
  readonly notThere: string;
  /**
   * `I have a chair and one bell; leave out overhead.` Empty where nothing is chosen. `spare` are parts of the body of
   * which nothing is to be asked.
   */
  readonly sentence: (have: readonly string[], out: readonly string[], spare: readonly string[]) => string;
  readonly left: (left: number, all: number) => string;
}

const PLACES: Readonly<Record<Reason['where'], (heading: string) => string>> = {
  name: () => 'in its name',
  text: () => 'in what is said of it',
  movement: (name) => `its movement, ${name.toLowerCase()}`,
  kit: (name) => `what you need, ${name}`,
  works: (name) => `what it works, ${name}`,
  asks: (name) => `what it asks, ${name}`,
};

function because({ typed, word, spelling, where, heading }: Reason): string {
  const said = PLACES[where](heading);
  return spelling === 'near' ? `‘${typed}’ read as ‘${word}’: ${said}` : `‘${word}’: ${said}`;
}

const englishSearch: SearchWords = {
  search: 'Look for an exercise',
  hint: 'A movement, what you have, a part of the body, in your own words. The spelling need not be right.',
  why: (reasons) => `${reasons.map(because).join('; ')}.`,
  found: (count, shown) =>
    count > shown
      ? `The ${shown} that fit best, of ${count}.`
      : count === 1
        ? 'One exercise found.'
        : `${count} exercises found.`,
  nothing: (typed) => `Nothing here goes by ‘${typed}’. Try what the body does, or what you have.`,
  leftOut: (count) =>
    count === 1
      ? 'One exercise goes by that. The sentence below leaves it out.'
      : `${count} exercises go by that. The sentence below leaves them out.`,
  notThere: 'What is needed to search is not here. The lists below are whole without it.',
  sentence: (have, out, spare) => {
    const leave = [
      ...(out.length > 0 ? [listed(out)] : []),
      ...(spare.length > 0 ? [`whatever asks anything of the ${listed(spare, 'or')}`] : []),
    ];
    const said = [
      ...(have.length > 0 ? [`I have ${listed(have)}`] : []),
      ...(leave.length > 0 ? [`leave out ${leave.join(', and ')}`] : []),
    ].join('; ');
    return said === '' ? '' : `${said.slice(0, 1).toUpperCase()}${said.slice(1)}.`;
  },
  left: (left, all) => (left === all ? `All ${all} exercises stand below.` : `${left} of ${all} exercises are left.`),
};

/** English until another language has them. */
export const saySearchWords = (_language: string): SearchWords => englishSearch;
