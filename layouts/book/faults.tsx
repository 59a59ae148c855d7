/** What is seen, and what is said to it: two columns, as a coach would jot them. */
import type { Line } from '../../src/model/prose.js';
import { Words } from '../lines.js';
import type { Book } from './leaves.js';

export interface FaultsProps {
  readonly labels: Book['labels'];
  readonly faults: readonly { readonly see: Line; readonly say: Line }[];
}

export const Faults = ({ labels, faults }: FaultsProps) => (
  <table class="pairs">
    <thead>
      <tr>
        <th scope="col">{labels['you-see']}</th>
        <th scope="col">{labels.say}</th>
      </tr>
    </thead>
    <tbody>
      {faults.map(({ see, say }) => (
        <tr>
          <td>
            <Words line={see} />
          </td>
          <td>
            <Words line={say} />
          </td>
        </tr>
      ))}
    </tbody>
  </table>
);
