/** What a browser of the oldest years served lacks of the language itself, as the standard has it (ECMA-262, 2022 and 2023). */
type Test<T> = (value: T, index: number, all: readonly T[]) => boolean;

function placeOfLast<T>(this: readonly T[], test: Test<T>): number {
  const end = this.length - 1;
  const back = [...this].reverse().findIndex((value, index) => test(value, end - index, this));
  return back === -1 ? -1 : end - back;
}

function last<T>(this: readonly T[], test: Test<T>): T | undefined {
  const index = placeOfLast.call<readonly T[], [Test<T>], number>(this, test);
  return index === -1 ? undefined : this[index];
}

function elementAt<T>(this: ArrayLike<T>, index: number): T | undefined {
  const place = Math.trunc(index) || 0;
  return this[place < 0 ? this.length + place : place];
}

const hasOwn = (of: object, name: PropertyKey): boolean => Object.getOwnPropertyDescriptor(of, name) !== undefined;

function fill(holder: object, name: string, value: unknown): void {
  if (!(name in holder)) Object.defineProperty(holder, name, { value, writable: true, configurable: true });
}

fill(Array.prototype, 'at', elementAt);
fill(Array.prototype, 'findLast', last);
fill(Array.prototype, 'findLastIndex', placeOfLast);
fill(String.prototype, 'at', elementAt);
fill(Object, 'hasOwn', hasOwn);
