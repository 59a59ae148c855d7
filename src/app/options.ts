/** What every command is told, and what it answers with. */

export interface CommonOptions {
  readonly content: string;
  readonly out: string;
  readonly state: string;
  /** `YYYY-MM-DD`. */
  readonly today: string;
  readonly only?: string;
  readonly json: boolean;
}

/** Exit codes; documented in `--help` and in DEVELOPERS.md. */
export const EXIT = { well: 0, content: 1, usage: 2, notWritten: 3, fault: 70 } as const;
