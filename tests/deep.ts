/** How much is made up: little in a plain run, which is for every change, and much in `npm run verify:deep`. */
export const DEEP = process.env.CHALKLEAF_DEEP === '1';

export const runs = (plain: number, deep: number): number => (DEEP ? deep : plain);
