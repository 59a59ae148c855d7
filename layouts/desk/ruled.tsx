/** A sentence of the planner's with the way to its rule, and the figures behind it folded away. */
import type { ReasonInput } from '../../src/model/reason.js';
import { sayRuleTitle } from '../../src/words/rulebook-words.js';
import { namesOf, sayInput } from '../../src/words/say-figures.js';
import type { Account } from '../../src/words/why-account.js';
import type { WhyReason } from '../../src/words/why-tree.js';
import type { Desk } from './desk.js';

/** Leads from a client's page to the rule in the rulebook; its name alone where there is no rulebook. */
export function RuleLink({ desk, rule }: { readonly desk: Desk; readonly rule: string }) {
  const title = sayRuleTitle(rule);
  if (desk.rulebook === undefined) return <span class="ruled">{title}</span>;
  return (
    <a class="ruled" href={`../${desk.rulebook}#${rule}`}>
      {title}
    </a>
  );
}

const inputText = ({ speech, names }: Account, input: ReasonInput): string =>
  `${input.name} ${sayInput(input, names, speech)}`.trim();

/** The figures a reason used, where its rule comes from, and the coach's own value for it. */
export function figuresText(account: Account, reason: WhyReason): string {
  const { why } = account.speech.coach;
  const within = { ...account, names: namesOf(reason.inputs, account.names) };
  const inputs = reason.inputs.map((input) => inputText(within, input));
  return [
    ...(inputs.length === 0 ? [] : [why.with(inputs.join(', '))]),
    why.source(reason.rule, reason.source, why.confidence[reason.confidence]),
    ...(reason.own === undefined ? [] : [why.overridden(reason.own.value, reason.own.reason)]),
  ].join(' ');
}

/** One line for each text; `lines` are said already. */
export function Figures({ desk, lines }: { readonly desk: Desk; readonly lines: readonly string[] }) {
  return (
    <details class="inputs">
      <summary>{desk.words.inputs}</summary>
      {lines.map((line) => (
        <span class="note">{line}</span>
      ))}
    </details>
  );
}
