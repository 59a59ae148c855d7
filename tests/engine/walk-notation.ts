/** Strands and walks in a coach's notation, for the tables of the walk's tests. */
import { planStrand } from '../../src/engine/plan-strand.js';
import type { RuleOfWalk } from '../../src/engine/walk/walk-rule.js';
import type { Option, WalkResult, WalkStep } from '../../src/engine/walk-step.js';
import { exerciseId, rowId, sessionId } from '../../src/model/identity.js';
import type { MakeableLoad } from '../../src/model/kit.js';
import type { Occurrence, StrandInput, VersionInput, WalkRules } from '../../src/model/strand.js';

/** One strand. Masses in kg, reserves in reps. What is left out is the commonest. */
export interface Written {
  /** `16, 20`, `12-24 by 4`, `bar 2.5` or `body`; versions easiest first, parted by ` | `. */
  readonly kit: string;
  /** `16 x 10, 2 left`, and `weak` where so. */
  readonly test: string;
  readonly range: string;
  /** Asked reserve week by week, `e` before an easy week's; two sessions of one week joined by `+`. */
  readonly asked: string;
  /** Sets, occurrence by occurrence, the last repeated. */
  readonly sets: string;
  /** Floor of reserve, occurrence by occurrence, the last repeated. */
  readonly floor?: string;
  /** Per cent a work week. */
  readonly gain?: number;
  /** Body shares of the versions in thousandths, `-` where not known; parted by ` | `. */
  readonly share?: string;
  readonly body?: number | null;
  /** `toHarder/toEasier` in thousandths between versions, parted by ` | `. */
  readonly ratios?: string;
  /** Factors of the tempi, in thousandths. */
  readonly tempi?: string;
  readonly trials?: boolean;
  readonly gates?: boolean;
  readonly bodyweight?: boolean;
  readonly brzycki?: boolean;
  readonly earned?: 0 | 1 | 2;
  /** Where to start, if not at the test in the first version. */
  readonly start?: { readonly version?: number; readonly load?: number; readonly tempo?: number };
  readonly greatest?: number;
  /** Opened by its trials, in kg, three of it in two weeks; `version` where not the first. */
  readonly tried?: { readonly kg: number; readonly version?: number };
  /** Occurrence by occurrence: `-` free, `held`, or a number of reps held to. The last is repeated. */
  readonly held?: string;
  readonly rules?: Partial<WalkRules>;
}

const DEFAULT_RULES: WalkRules = { tolerance: 2, smallStep: 100, trialMargin: 30, volume: 1100, weakAbove: 120 };

export function strandOf(written: Written): StrandInput {
  const kits = written.kit.split(' | ').map(loadsOf);
  const shares = (written.share ?? '0').split(' | ').map((text) => (text === '-' ? null : Number(text)));
  const ratios = (written.ratios ?? '').split(' | ').map((text) => text.split('/'));
  const versions = kits.map((loads, index): VersionInput => {
    const up = ratios[index]?.[0];
    const down = ratios[index - 1]?.[1];
    return {
      exercise: exerciseId(`version-${index}`),
      mode: 'total',
      share: shares[index] ?? shares[0] ?? null,
      toHarder: up ? Number(up) : null,
      toEasier: down ? Number(down) : null,
      loads,
      signedOffTo: null,
    };
  });
  const test = /^([\d.]+) x (\d+), (\d+) left( weak)?$/.exec(written.test);
  if (test === null) throw new Error(`not a test: ${written.test}`);
  const [, mass = '', reps = '', left = '', weak] = test;
  const version = written.start?.version ?? 0;
  const share = versions[version]?.share ?? 0;
  const body = written.body === undefined ? null : written.body === null ? null : written.body * 1000;
  const grams = Number(mass) * 1000;
  const load = (written.start?.load ?? Number(mass)) * 1000;
  const part = body === null ? 0 : Math.floor((share * body) / 1000);
  const [bottom = '', top = ''] = written.range.split('-');
  const occurrences = occurrencesOf(written);
  const weeks = [...new Map(occurrences.map(({ week, easy }) => [week, { week, easy }])).values()];
  return {
    id: 'session/row',
    session: sessionId('session'),
    row: rowId('row'),
    way: written.bodyweight ? 'bodyweight' : 'strength',
    equation: written.brzycki ? 'brzycki' : 'epley',
    bottom: Number(bottom),
    top: Number(top),
    bodyMass: body,
    versions,
    tempi: tempiOf(written.tempi ?? ''),
    trials: written.trials ?? true,
    ...(written.gates === undefined ? {} : { gates: written.gates }),
    gain: Math.round((written.gain ?? 0) * 100),
    capacity: {
      side: 'both',
      resisted: share > 0 && body === null ? 1 : grams + part,
      reps: 10 * (Number(reps) + Number(left)),
      weak: weak !== undefined,
    },
    start: { version, load, tempo: written.start?.tempo ?? 0, earned: written.earned ?? 0 },
    ...triedIn(written.tried),
    greatest: written.greatest ?? null,
    weeks,
    occurrences,
    rules: { ...DEFAULT_RULES, ...written.rules },
  };
}

function triedIn(tried: Written['tried']): Pick<StrandInput, 'tried'> {
  if (tried === undefined) return {};
  return {
    tried: { exercise: exerciseId(`version-${tried.version ?? 0}`), grams: 1000 * tried.kg, reps: 3, weeks: 2 },
  };
}

function loadsOf(text: string): readonly MakeableLoad[] {
  const by = /^([\d.]+)-([\d.]+) by ([\d.]+)$/.exec(text);
  const bar = /^bar ([\d.]+)$/.exec(text);
  const masses: number[] = [];
  if (text === 'body') masses.push(0);
  else if (by || bar) {
    const [from, to, step] = by ? by.slice(1).map(Number) : [20, 200, Number(bar?.[1])];
    for (let mass = from ?? 0; mass <= (to ?? 0); mass += step ?? 1) masses.push(mass);
  } else masses.push(...text.split(', ').map(Number));
  return masses.map((mass) => ({ grams: mass * 1000, mode: 'total', pieces: [], label: `${mass} kg` }));
}

function tempiOf(factors: string): StrandInput['tempi'] {
  const [slow, pause] = factors.split(' ').filter((text) => text !== '');
  return [
    { step: 'normal', factor: 1000 },
    ...(slow ? [{ step: 'slow lowering' as const, factor: Number(slow) }] : []),
    ...(pause ? [{ step: 'slow with a pause' as const, factor: Number(pause) }] : []),
  ];
}

function occurrencesOf(written: Written): readonly Occurrence[] {
  const listed = (text: string | undefined, index: number, otherwise: string): string => {
    const all = (text ?? otherwise).split(' ');
    return all[index] ?? all[all.length - 1] ?? otherwise;
  };
  const occurrences: Occurrence[] = [];
  written.asked.split(' ').forEach((week, weekIndex) => {
    for (const text of week.split('+')) {
      const index = occurrences.length;
      const floor = Number(listed(written.floor, index, '2')) * 10;
      const held = listed(written.held, index, '-');
      occurrences.push({
        week: weekIndex + 1,
        easy: text.startsWith('e'),
        asked: Math.max(floor, Number(text.replace('e', '')) * 10),
        floor,
        sets: Number(listed(written.sets, index, '3')),
        ...(held === '-' ? {} : { held: { maxReps: held === 'held' ? null : Number(held), why: 'pain' } }),
      });
    }
  });
  return occurrences;
}

const TEMPO = ['', ' slow', ' pause'];

/** `7 @ 60`; `v1` before a version other than the first, ` slow` after a tempo. */
function option(reps: number, { version, load, tempo }: Option): string {
  return `${version === 0 ? '' : `v${version} `}${reps}@${load / 1000}${TEMPO[tempo] ?? ''}`;
}

function stepText(step: WalkStep): string {
  const gate = step.gate ? 'gate ' : '';
  const trial = step.trial ? ` + ${option(step.trial.reps, step.trial.option)}` : '';
  return `${step.easy ? 'e ' : ''}${gate}${option(step.reps, step.option)}${trial}`;
}

/** Occurrences parted by ` · `. */
export function walkText(result: WalkResult): string {
  if (result.kind === 'impossible') return `nothing in week ${result.week}`;
  return result.kind === 'feeler' ? 'feeler set' : result.steps.map(stepText).join(' · ');
}

export function otherwiseText(result: WalkResult): string {
  if (result.kind !== 'walked') return '';
  return result.steps
    .flatMap(({ otherwise, easy }) =>
      otherwise ? [`${easy ? 'e ' : ''}${option(otherwise.reps, otherwise.option)}`] : [],
    )
    .join(' · ');
}

/** `kit-too-light 20` (kg), `to-earn-a-try 21`, `range-too-high 5` (reps), `nothing-climbs`. */
export function findingsText(result: WalkResult): string {
  if (result.kind !== 'walked') return '';
  return result.findings
    .map(({ rule, reason }) => {
      const figure = reason.inputs.find(({ name }) => name === 'bell' || name === 'reach');
      return figure === undefined
        ? rule
        : `${rule} ${figure.unit === 'g' ? Number(figure.value) / 1000 : figure.value}`;
    })
    .join(' · ');
}

export function walkOf(written: Written, rules?: readonly RuleOfWalk[]): string {
  return walkText(rules ? planStrand(strandOf(written), rules) : planStrand(strandOf(written)));
}
