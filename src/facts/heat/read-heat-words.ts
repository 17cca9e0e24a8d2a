import type { Item, StrengthClass } from '../../generated/plan-types.ts';
import { explainUnknownWord, planWords } from '../../plan/plan-words.ts';
import type { PlanWords } from '../../plan/plan-words.ts';
import { describeDesignation } from '../../steel/answer/describe-designation.ts';
import type { HeatQuestion } from './heat-question.ts';

/** Takes one sentence on what is wrong with an option. */
export type Fault = (sentence: string) => void;

/** One word of a key of the plan, or what the trade writes for it. */
export function readPlanWord(
  option: string,
  given: string | undefined,
  words: PlanWords,
  readings: string[],
  fault: Fault,
): string | undefined {
  if (given === undefined) return undefined;
  const plain = given.trim().toLowerCase();
  if (words.known.includes(plain)) return plain;
  const meant = words.synonyms.get(plain);
  if (meant === undefined) {
    fault(explainUnknownWord(option, given.trim(), words));
    return undefined;
  }
  readings.push(`${option} ${plain} is read as ${meant}.`);
  return meant;
}

/** A class, an item, or any designation of a material: of several readings the strongest counts, as in a plan. */
export function readNear(
  given: string | undefined,
  readings: string[],
  fault: Fault,
): HeatQuestion['near'] | undefined {
  if (given === undefined) return undefined;
  const plain = given.trim().toLowerCase();
  const classes = planWords('strength_class');
  const items = planWords('item');
  if (isClass(plain, classes)) return { class: plain };
  if (items.known.includes(plain) || items.synonyms.has(plain)) {
    const item = readPlanWord('--near', given, items, readings, fault);
    return isItem(item, items) ? { item } : undefined;
  }
  const { usable, class: strengthClass, known } = describeDesignation(given, { find: false });
  if (usable && strengthClass !== null) {
    readings.push(
      `--near ${given.trim()} is read as ${strengthClass}${known === 'ambiguous' ? ', the strongest that it can be' : ''}.`,
    );
    // The grade tells more than its class where that is settled: which aluminium, how hard a steel.
    return known === 'ambiguous' ? { class: strengthClass } : { class: strengthClass, grade: given.trim() };
  }
  const all = { known: [...classes.known, ...items.known], synonyms: items.synonyms };
  fault(explainUnknownWord('--near', given.trim(), all));
  return undefined;
}

/** The heated metal. What is not sure stays unknown: then the best conductor among steels is taken. */
export function readMetal(
  given: string | undefined,
  readings: string[],
  fault: Fault,
): StrengthClass | undefined {
  if (given === undefined) return undefined;
  const plain = given.trim().toLowerCase();
  const classes = planWords('strength_class');
  if (isClass(plain, classes)) return plain;
  const { usable, class: strengthClass, known } = describeDesignation(given, { find: false });
  if (!usable || strengthClass === null) {
    fault(explainUnknownWord('--metal', given.trim(), classes));
    return undefined;
  }
  if (known === 'ambiguous') {
    readings.push(`--metal ${given.trim()} can be read in several ways and counts as not known.`);
    return undefined;
  }
  readings.push(`--metal ${given.trim()} is read as ${strengthClass}.`);
  return strengthClass;
}

function isClass(text: string, { known }: PlanWords): text is StrengthClass {
  return known.includes(text);
}

function isItem(text: string | undefined, { known }: PlanWords): text is Item {
  return text !== undefined && known.includes(text);
}
