import type { FactDictionary } from '../../packs/fact-dictionary.ts';
import type { Case, Rule, RuleSeverity, Stage } from '../../packs/pack.ts';
import { sourceSentence } from '../../packs/source-sentence.ts';
import { lineWords } from './line-words.ts';
import { ruleSentence } from './rule-sentence.ts';

/** Everything that a pack says of one rule, in words, without any plan. */
export interface RulePage {
  readonly id: string;
  readonly pack: string;
  /** Version of the pack that judges. */
  readonly version: string;
  readonly topic: string;
  readonly severity: RuleSeverity;
  /** Where a layer above takes the rule more seriously: as what the pack states it, and which pack raises it. */
  readonly raised?: { readonly from: RuleSeverity; readonly by: string };
  /** Whether the version that judges holds it. */
  readonly inForce: boolean;
  /** Kind of fact sheet. */
  readonly judges: string;
  readonly from: Stage;
  readonly since: string;
  readonly until?: string;
  /** The rule in force that took its place, at the end of the line of successors; else the one that the pack names. */
  readonly replacedBy?: string;
  /** What it finds, in one sentence. */
  readonly finds: string;
  readonly instead: string;
  readonly why: string;
  readonly source: string;
  /** Lines in words; all must hold. */
  readonly when: readonly string[];
  /** Exceptions; the lines of one together lift it. */
  readonly unless: readonly (readonly string[])[];
  readonly cases: { readonly [List in 'finds' | 'passes' | 'asks']: readonly Case[] };
}

/** Where a rule stands, and what of it the rule itself does not know. */
export interface RuleStandingShown extends Pick<RulePage, 'pack' | 'version' | 'inForce' | 'raised'> {
  readonly replacedBy?: string;
}

export function rulePage(rule: Rule, standing: RuleStandingShown, dictionary: FactDictionary): RulePage {
  const { pack, version, inForce, raised } = standing;
  const replacedBy = standing.replacedBy ?? rule.replacedBy;
  return {
    id: rule.id,
    ...{ pack, version, topic: rule.topic, severity: rule.severity },
    ...(raised === undefined ? {} : { raised }),
    ...{ inForce, judges: rule.judges, from: rule.from, since: rule.since },
    ...(rule.until === undefined ? {} : { until: rule.until }),
    ...(replacedBy === undefined ? {} : { replacedBy }),
    finds: ruleSentence(rule, rule.message),
    instead: ruleSentence(rule, rule.instead),
    why: rule.why,
    source: sourceSentence(rule.source),
    when: rule.when.map((line) => lineWords(line, dictionary)),
    unless: rule.unless.map((lines) => lines.map((line) => lineWords(line, dictionary))),
    cases: rule.cases ?? { finds: [], passes: [], asks: [] },
  };
}

/** A made-up sheet of a case in one line: `operation.do: section, part.class: press-hardened`. */
export function caseWords(one: Case): string {
  const words = Object.entries(one).map(([fact, value]) => {
    const text = typeof value === 'boolean' ? (value ? 'yes' : 'no') : value;
    return `${fact}: ${typeof text === 'object' ? text.join(' + ') : String(text)}`;
  });
  return words.length === 0 ? 'nothing is known' : words.join(', ');
}

/** What an old or a raised rule has to say before all else; undefined for any other. */
export function standingWords({
  id,
  pack,
  version,
  inForce,
  until,
  since,
  replacedBy,
  raised,
  severity,
}: RulePage): string | undefined {
  if (raised !== undefined) return `The pack ${raised.by} raises it from a ${raised.from} to a ${severity}.`;
  if (inForce) return undefined;
  if (until === undefined) return `${id} begins with ${pack} ${since}; ${version} judges here.`;
  const successor = replacedBy === undefined ? 'nothing took its place' : `${replacedBy} took its place`;
  return `${id} ended with ${pack} ${until}; ${successor}.`;
}
