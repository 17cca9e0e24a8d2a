import type { FactDictionary } from '../packs/fact-dictionary.ts';
import { readTemplate } from '../packs/message-template.ts';
import type { Bounds, Rule, RuleSeverity } from '../packs/pack.ts';
import { fillMessage } from './fill-message.ts';

/** What a rule says of a strength class, whatever the part. */
export interface ClassRule {
  readonly rule: string;
  readonly severity: RuleSeverity;
  readonly sentence: string;
  /** Whether a statement of the maker that the plan cites lifts it. */
  readonly maker_may_permit: boolean;
}

/**
 * The rules whose `when` names a strength class, each as a sentence on "the part". A fact that the rule bounds stands there with
 * its bound, as "above 650 °C"; the rules themselves are not asked, so nothing is judged here.
 */
export function classRules(
  rules: readonly Rule[],
  strengthClass: string,
  dictionary: FactDictionary,
): readonly ClassRule[] {
  return rules
    .filter((rule) => namesClass(rule, strengthClass))
    .map((rule) => toldOf(rule, strengthClass, dictionary));
}

function namesClass(rule: Rule, strengthClass: string): boolean {
  return rule.when.some(
    ({ fact, test }) => fact === 'part.class' && 'anyOf' in test && test.anyOf.includes(strengthClass),
  );
}

function toldOf(rule: Rule, strengthClass: string, dictionary: FactDictionary): ClassRule {
  const texts = new Map([
    ['part.name', 'The part'],
    ['part.class', strengthClass],
    ['part.tensile_text', strengthClass],
  ]);
  for (const { fact, test } of rule.when) {
    if ('range' in test) texts.set(fact, boundsText(test.range, dictionary.facts[fact]?.unit));
  }
  const template = readTemplate(rule.message);
  return {
    rule: rule.id,
    severity: rule.severity,
    sentence: template.ok ? fillMessage(template.segments, texts) : rule.message,
    maker_may_permit: rule.unless.some((lines) => lines.some(({ fact }) => fact === 'provision.permits')),
  };
}

function boundsText({ min, max, above, below }: Bounds, unit: string | undefined): string {
  const low = above === undefined ? (min === undefined ? undefined : `${min} or more`) : `above ${above}`;
  const high = below === undefined ? (max === undefined ? undefined : `up to ${max}`) : `below ${below}`;
  const text = [low, high].filter((one) => one !== undefined).join(' and ');
  return unit === undefined ? text : `${text} ${unit}`;
}
