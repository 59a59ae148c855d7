/** How numbers are written among the operators of a page. */

/** Thousandths of a point are finer than any press. */
export const number = (value: number): string => String(Math.round(value * 1000) / 1000);
