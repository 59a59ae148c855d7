/** The version of the planner's definition: raised when the same inputs may give another plan. */
export const ENGINE_VERSION = '1.0.0';
