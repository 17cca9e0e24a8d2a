import type { FactDictionary } from '../packs/fact-dictionary.ts';
import { readTemplate } from '../packs/message-template.ts';
import type { Bounds, Line, Rule, RuleSeverity } from '../packs/pack.ts';
import { fillMessage } from './fill-message.ts';

/** What a rule says of a material, whatever the part. */
export interface ClassRule {
  readonly rule: string;
  readonly severity: RuleSeverity;
  readonly sentence: string;
  /** Whether a statement of the maker that the plan cites lifts it. */
  readonly maker_may_permit: boolean;
}

/** What is known of a material before any plan: its class, if it has one, and whether its name leaves something open. */
export interface MaterialKnown {
  readonly class?: string;
  readonly ambiguous: boolean;
  /** What is known beside the class, as a fact of a part: that it is cold-worked, which aluminium it is. */
  readonly also?: { readonly fact: string; readonly value: string | boolean };
}

/**
 * The rules whose `when` asks for such a material, in the part or in a sheet of a joint, each as a sentence on "the part". A fact
 * that the rule bounds stands there with its bound, as "more than 650 °C"; the rules themselves are not asked, so nothing is judged
 * here.
 */
export function classRules(
  rules: readonly Rule[],
  material: MaterialKnown,
  dictionary: FactDictionary,
): readonly ClassRule[] {
  return rulesOn(rules, material).map((rule) => toldOf(rule, material, dictionary));
}

/** The same rules, without their sentences. */
export function rulesOn(rules: readonly Rule[], material: MaterialKnown): readonly Rule[] {
  return rules.filter((rule) => rule.when.some((line) => asksFor(line, material)));
}

/** Facts of a material as a whole, beside those that `also` names. */
const materialFacts: ReadonlySet<string> = new Set([
  'part.material_ambiguous',
  'part.class',
  'joint.classes',
]);

/** The rules that ask for anything of a material; `also` holds further facts of a part that may be asked about. */
export function rulesOnMaterials(rules: readonly Rule[], also: readonly string[]): readonly Rule[] {
  return rules.filter(({ when }) =>
    when.some(({ fact }) => materialFacts.has(fact) || also.some((known) => isFactOf(fact, known))),
  );
}

function asksFor({ fact, test }: Line, material: MaterialKnown): boolean {
  if (fact === 'part.material_ambiguous') return material.ambiguous && isTrue(test);
  if (material.also !== undefined && isFactOf(fact, material.also.fact))
    return 'anyOf' in test && test.anyOf.includes(material.also.value);
  if (fact !== 'part.class' && fact !== 'joint.classes') return false;
  if ('known' in test) return material.class === undefined && !test.known && fact === 'part.class';
  return material.class !== undefined && 'anyOf' in test && test.anyOf.includes(material.class);
}

/** The fact itself, or that of a sheet in a joint: part.cold_worked and joint.cold_worked. */
function isFactOf(fact: string, known: string): boolean {
  return fact === known || fact === known.replace('part.', 'joint.');
}

function isTrue(test: Line['test']): boolean {
  return 'anyOf' in test && test.anyOf.includes(true);
}

/** What stands for a fact that no rule bounds and that only a plan knows. */
const spoken: readonly (readonly [fact: string, text: string])[] = [
  ['part.name', 'the part'],
  ['joint.method', 'an arc process'],
  ['part.material_question', ''],
  ['provision.to_type_in', ''],
];

function toldOf(rule: Rule, material: MaterialKnown, dictionary: FactDictionary): ClassRule {
  const texts = new Map(spoken);
  if (material.class !== undefined) {
    for (const fact of ['part.class', 'joint.classes', 'part.tensile_text']) texts.set(fact, material.class);
  }
  if (typeof material.also?.value === 'string') texts.set(material.also.fact, material.also.value);
  for (const { fact, test } of rule.when) {
    if (texts.has(fact)) continue;
    if ('range' in test) texts.set(fact, boundsText(test.range, dictionary.facts[fact]?.unit));
    else if ('anyOf' in test) texts.set(fact, eitherOf(test.anyOf.map(String)));
  }
  // The noun of an operation belongs to its word.
  const work = texts.get('operation.do');
  if (work !== undefined) texts.set('operation.work', work);
  const template = readTemplate(rule.message);
  const sentence = template.ok ? fillMessage(template.segments, texts) : rule.message;
  return {
    rule: rule.id,
    severity: rule.severity,
    sentence: capital(sentence.trim()),
    maker_may_permit: rule.unless.some((lines) =>
      lines.some(({ fact, test }) => fact === 'provision.permits' && isTrue(test)),
    ),
  };
}

function capital(sentence: string): string {
  return sentence.charAt(0).toUpperCase() + sentence.slice(1);
}

function eitherOf(words: readonly string[]): string {
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
}

function boundsText({ min, max, above, below }: Bounds, unit: string | undefined): string {
  const low = above === undefined ? (min === undefined ? undefined : `${min} or more`) : `more than ${above}`;
  const high = below === undefined ? (max === undefined ? undefined : `up to ${max}`) : `less than ${below}`;
  const text = [low, high].filter((one) => one !== undefined).join(' and ');
  return unit === undefined ? text : `${text} ${unit}`;
}
