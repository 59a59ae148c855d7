/** The version of the planner's definition: raised when the same inputs may give another plan. */
export const ENGINE_VERSION = '2.0.0';
