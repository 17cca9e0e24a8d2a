import type { SteelAnswer, SteelReport, SteelRules } from '../report/steel-report.ts';
import { steelText } from '../report/steel-text.ts';
import { describeDesignation } from '../steel/describe-designation.ts';
import type { DesignationAnswer } from '../steel/designation-answer.ts';
import { rulesOfMaterials } from './steel-rules.ts';
import type { RulesOfMaterials } from './steel-rules.ts';
import { writeOut } from './write-out.ts';

export interface SteelOptions {
  readonly format: 'text' | 'json';
  readonly find: boolean;
  readonly colour: boolean;
  readonly columns: number;
}

/**
 * The command `steel`: says what each designation is. Gives 0 when all are known, 1 when one is ambiguous or unknown, 2 when one is
 * none or none is given. As JSON the answer is an array in every case, one object a line.
 */
export function steel(designations: readonly string[], options: SteelOptions): 0 | 1 | 2 {
  const { pack, answers, rules } = steelAnswers(designations, options.find, rulesOfMaterials());
  if (options.format === 'json')
    writeOut(
      answers.length === 0 ? '[]\n' : `[\n${answers.map((one) => JSON.stringify(one)).join(',\n')}\n]\n`,
    );
  else if (answers.length > 0) writeOut(steelText({ answers, rules, pack }, options));
  if (answers.length === 0)
    writeOut('error: name a designation, as planish steel 22MnB5+AS150\n', 'complaints');
  return statusOf(answers);
}

/** What each designation is, in the order given, with the rules on such materials, each once. */
export function steelAnswers(
  designations: readonly string[],
  find: boolean,
  { pack, of }: RulesOfMaterials,
): SteelReport {
  const met = new Set<SteelRules>();
  // A list of a shop names few grades many times.
  const answered = new Map<string, SteelAnswer>();
  const answers = designations.map((text): SteelAnswer => {
    const known = answered.get(text);
    if (known !== undefined) return known;
    const plain = describeDesignation(text, { find });
    const rules = of(plain);
    for (const one of rules) met.add(one);
    const answer = { ...plain, rules: rules.flatMap(({ names }) => names) };
    answered.set(text, answer);
    return answer;
  });
  return { pack, answers, rules: [...met] };
}

function statusOf(answers: readonly DesignationAnswer[]): 0 | 1 | 2 {
  if (answers.length === 0 || answers.some(({ usable }) => !usable)) return 2;
  return answers.every(({ known }) => known === 'known') ? 0 : 1;
}
