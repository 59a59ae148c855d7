/** A line of an author's words: runs of text, each plain, strong, emphasised or a link. */
export interface Run {
  readonly text: string;
  readonly strong?: true;
  readonly emphasis?: true;
  /** An address, or a path to another content file. */
  readonly link?: string;
  /** BCP 47, where it is another language than the words around it. */
  readonly lang?: string;
}
export type Line = readonly Run[];

export const plainText = (line: Line): string => line.map((run) => run.text).join('');
export const plainLine = (text: string): Line => [{ text }];
