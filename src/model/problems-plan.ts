/** Codes of problems found while planning for a client. Codes are permanent: never rename, never reuse. */
export interface PlanProblems {
  /** A fact in a client's file that no rule reads yet. */
  readonly 'not-handled': { readonly fact: string; readonly why: string };
}
