/** The bench's table: what was measured, the figure, and what it stands beside. */

export const row = (what: string, figure: string, against = ''): void => {
  process.stdout.write(`${what.padEnd(58)} ${figure.padStart(12)}   ${against}\n`);
};
export const ms = (value: number): string => `${value.toFixed(value < 1 ? 3 : 1)} ms`;
export const kb = (bytes: number): string => `${(bytes / 1024).toFixed(1)} KB`;
