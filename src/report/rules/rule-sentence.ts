import { fillMessage } from '../../judge/fill-message.ts';
import { factsOf, readTemplate } from '../../packs/message-template.ts';
import type { Rule } from '../../packs/pack.ts';

/**
 * A message of a rule, or its `instead`, without any plan: a fact that the rule asks for by one word has that word, the part is
 * "the part", and every other fact stands as its name in ‹ ›.
 */
export function ruleSentence(rule: Rule, template: string): string {
  const read = readTemplate(template);
  if (!read.ok) return template;
  const texts = new Map<string, string>();
  for (const name of factsOf(read.segments)) texts.set(name, spoken(rule, name));
  const sentence = fillMessage(read.segments, texts).trim();
  return sentence.slice(0, 1).toUpperCase() + sentence.slice(1);
}

function spoken(rule: Rule, name: string): string {
  if (name === 'part.name') return 'the part';
  const line = rule.when.find(({ fact }) => fact === name);
  if (line !== undefined && 'anyOf' in line.test) {
    const [only, ...more] = line.test.anyOf;
    if (typeof only === 'string' && more.length === 0) return only;
  }
  return `‹${name.replaceAll(/[._]/gu, ' ')}›`;
}
