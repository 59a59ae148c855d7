/** Leaves out the sessions that would be after the last day a session may be held. */
import type { Queue } from '../sessions/queue-sessions.js';
import type { Standing } from './standing.js';

/** Weeks stay, empty or cut short; a session that never comes up any more is no longer among the templates. */
export function stopSessions(queue: Queue, { lastDay }: Standing): Queue {
  if (lastDay === null) return queue;
  const sessions = queue.sessions.filter(({ date }) => date <= lastDay.day);
  const used = new Set(sessions.map(({ template }) => template));
  return { ...queue, sessions, templates: queue.templates.filter((template) => used.has(template)) };
}
