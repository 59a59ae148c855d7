/** Where a client's booklet stands: on the phone, on paper, and the plan for other programs. */
import type { Desk } from './desk.js';

/** `up` leads from the page to the desk's own folder. */
export function Forms({
  desk,
  client,
  up = '',
}: {
  readonly desk: Desk;
  readonly client: string;
  readonly up?: string;
}) {
  const forms = desk.forms.get(client) ?? [];
  if (forms.length === 0) return null;
  return (
    <ul class="forms">
      {forms.map(({ kind, path }) => (
        <li>
          <a href={`${up}${path}`}>{desk.words.forms[kind]}</a>
        </li>
      ))}
    </ul>
  );
}
