/** How much advice there is, in a line of its own. */
import { counted } from './problems/said.js';

const pieces = (count: number): string => counted(count, 'piece');

/** Where all of it has been told. */
export const sayAdviceTold = (count: number): string =>
  `Advice: ${pieces(count)}. It holds nothing back; advice off: with its name, on its page or in studio.md, leaves it unsaid.`;

/** Where none of it has. */
export const sayAdviceCount = (count: number): string =>
  `Advice: ${pieces(count)}. It holds nothing back; check tells it.`;
