import type { Finding } from '../../judge/finding.ts';
import type { RuleHelp } from '../plan-report.ts';
import { sarifText } from './sarif-text.ts';

export interface RuleList {
  /** Place of the finding's rule in the list; a rule that is not there yet, of a version that a plan pins, is added. */
  readonly indexOf: (finding: Finding) => number;
  readonly indexOfNotJudged: () => number;
  /** SARIF reportingDescriptor objects (3.49), in the order of the indexes. */
  readonly descriptors: () => readonly object[];
}

const levels = { stop: 'error', hold: 'warning', note: 'note' } as const;

const notJudged: RuleHelp = {
  id: 'not-judged',
  pack: 'planish',
  topic: 'reading',
  severity: 'stop',
  instead: 'Mend what the message names, and check the plan again.',
  why: 'What cannot be judged is never cleared.',
  source: 'planish',
};

export function ruleList(given: readonly RuleHelp[]): RuleList {
  const rules: RuleHelp[] = [];
  const places = new Map<string, number>();
  const placeOf = (rule: RuleHelp): number => {
    const key = JSON.stringify([rule.pack, rule.id]);
    const before = places.get(key);
    if (before !== undefined) return before;
    const place = rules.push(rule) - 1;
    places.set(key, place);
    return place;
  };
  for (const rule of given) placeOf(rule);
  return {
    indexOf: ({ rule: id, pack, severity, instead, why, source }) =>
      placeOf({ id, pack, severity, instead, why, source, topic: '' }),
    indexOfNotJudged: () => placeOf(notJudged),
    descriptors: () => rules.map(descriptor),
  };
}

function descriptor({ id, pack, topic, severity, instead, why, source }: RuleHelp): object {
  const help = `Instead: ${instead}\nWhy: ${why}\nSource: ${source}. Rule ${id} of pack ${pack}.`;
  return {
    id,
    shortDescription: { text: sarifText(why) },
    help: { text: sarifText(help) },
    defaultConfiguration: { level: levels[severity] },
    properties: { pack, severity, tags: topic === '' ? [] : [topic] },
  };
}
