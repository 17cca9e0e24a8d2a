import { builtInPacks } from '../generated/built-in-packs.ts';
import { classRules } from '../judge/class-rules.ts';
import type { ClassRule } from '../judge/class-rules.ts';
import { rulesInForce } from '../packs/rules-in-force.ts';
import type { SteelAnswer } from '../report/steel-report.ts';
import { steelText } from '../report/steel-text.ts';
import { describeDesignation } from '../steel/describe-designation.ts';
import type { DesignationAnswer } from '../steel/designation-answer.ts';
import { dictionary } from './dictionary.ts';
import { writeOut } from './write-out.ts';

export interface SteelOptions {
  readonly format: 'text' | 'json';
  readonly find: boolean;
  readonly colour: boolean;
  readonly columns: number;
}

/** The command `steel`: says what each designation is. Gives 0 when all are known, 1 when one is ambiguous or unknown, 2 when one is none. */
export function steel(designations: readonly string[], options: SteelOptions): 0 | 1 | 2 {
  const general = builtInPacks().find(({ name }) => name === 'general');
  const inForce = general === undefined ? [] : rulesInForce(general.rules, general.version);
  const byClass = new Map<string, readonly ClassRule[]>();
  const rulesOf = (strengthClass: string | null): readonly ClassRule[] => {
    if (strengthClass === null) return [];
    const rules = byClass.get(strengthClass) ?? classRules(inForce, strengthClass, dictionary);
    byClass.set(strengthClass, rules);
    return rules;
  };
  const answers: readonly SteelAnswer[] = designations.map((text) => {
    const answer = describeDesignation(text, { find: options.find });
    return { ...answer, rules: rulesOf(answer.class) };
  });
  const pack = `general ${general?.version ?? ''}`;
  writeOut(
    options.format === 'json'
      ? `${JSON.stringify(answers, null, 2)}\n`
      : steelText({ answers, pack }, options),
  );
  return statusOf(answers);
}

function statusOf(answers: readonly DesignationAnswer[]): 0 | 1 | 2 {
  if (answers.some(({ usable }) => !usable)) return 2;
  return answers.every(({ known }) => known === 'known') ? 0 : 1;
}
