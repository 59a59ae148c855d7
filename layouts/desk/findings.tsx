/** What is worth knowing of one plan: what the coach decides first, then what is worth a look, and the rest folded away. */
import { type Gathered, gatherFindings, plansBy } from '../../src/words/gather-findings.js';
import { OPENS } from '../../src/words/matters.js';
import { type Finding, findingsOf } from '../../src/words/say-findings.js';
import { type Account, tellReason } from '../../src/words/why-account.js';
import type { Desk } from './desk.js';
import { Figures, figuresText, RuleLink } from './ruled.js';

interface Of {
  readonly desk: Desk;
  readonly account: Account;
}

/** Where one finding stands, and the figures behind it. */
function lineOf({ account }: Of, { session, exercise, weeks, reason }: Finding): string {
  const { sets, booklet } = account.speech.words;
  const where = [
    session === undefined ? '' : booklet.sessionTitle(session, ''),
    exercise ?? '',
    weeks.length === 0 ? '' : sets.weekList(weeks),
  ];
  const figures = reason === undefined ? '' : figuresText(account, tellReason(account, reason));
  return [where.filter((part) => part !== '').join(', '), figures].filter((part) => part !== '').join(': ');
}

function Matters({ of, all }: { readonly of: Of; readonly all: readonly Gathered[] }) {
  return (
    <ul class="reasons">
      {all.map(({ says, findings }) => {
        const [reason] = findings.flatMap((finding) => finding.reason ?? []);
        return (
          <li>
            {says} {reason === undefined ? null : <RuleLink desk={of.desk} rule={reason.rule} />}
            {reason === undefined ? null : (
              <Figures desk={of.desk} lines={findings.map((finding) => lineOf(of, finding))} />
            )}
          </li>
        );
      })}
    </ul>
  );
}

function Folded({ of, head, all }: { readonly of: Of; readonly head: string; readonly all: readonly Gathered[] }) {
  if (all.length === 0) return null;
  return (
    <details>
      <summary>{head}</summary>
      <Matters of={of} all={all} />
    </details>
  );
}

export function Findings(of: Of) {
  const { words } = of.desk;
  const { plan, speech } = of.account;
  const all = gatherFindings(findingsOf(of.account), plansBy([plan]), speech);
  if (all.length === 0) return <p>{words.none.findings}</p>;
  const asked = (asks: Gathered['asks']): readonly Gathered[] => all.filter((one) => one.asks === asks);
  const opens = asked('desk').filter(({ matter }) => matter === OPENS);
  const rest = asked('desk').filter(({ matter }) => matter !== OPENS);
  return (
    <>
      {(['decide', 'look'] as const).map((asks) =>
        asked(asks).length === 0 ? null : (
          <>
            <h3>{speech.coach.why.asks[asks]}</h3>
            <Matters of={of} all={asked(asks)} />
          </>
        ),
      )}
      <Folded of={of} head={words.asPlanned(rest.length)} all={rest} />
      <Folded of={of} head={words.wouldOpen} all={opens} />
    </>
  );
}
