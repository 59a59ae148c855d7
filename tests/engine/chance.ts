/** Chance that can be repeated: the same seed gives the same draws on every machine (a 32-bit mixing generator). */
export interface Chance {
  /** A whole number from `least` to `most`, both included. */
  readonly whole: (least: number, most: number) => number;
  /** True about `percent` times in a hundred. */
  readonly happens: (percent: number) => boolean;
  readonly oneOf: <Value>(values: readonly Value[]) => Value;
  /** Each kept about `percent` times in a hundred, in order. */
  readonly some: <Value>(values: readonly Value[], percent: number) => readonly Value[];
}

export function chanceFrom(seed: number): Chance {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
  const whole = (least: number, most: number): number => least + Math.floor(next() * (most - least + 1));
  const happens = (percent: number): boolean => next() * 100 < percent;
  return {
    whole,
    happens,
    oneOf: (values) => {
      const [value] = values
        .slice(whole(0, values.length - 1))
        .slice(0, 1)
        .map((chosen) => ({ chosen }));
      if (value === undefined) throw new Error('nothing to choose from');
      return value.chosen;
    },
    some: (values, percent) => values.filter(() => happens(percent)),
  };
}
