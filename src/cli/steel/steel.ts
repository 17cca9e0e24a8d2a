import { builtInPacks } from '../../generated/built-in-packs.ts';
import { rulesOfMaterials } from '../../judge/material-rules.ts';
import type { RulesOfMaterials } from '../../judge/material-rules.ts';
import type { SteelAnswer, SteelReport, SteelRules } from '../../report/steel/steel-report.ts';
import { steelText } from '../../report/steel/steel-text.ts';
import { describeDesignation } from '../../steel/answer/describe-designation.ts';
import type { DesignationAnswer } from '../../steel/answer/designation-answer.ts';
import { dictionary } from '../dictionary.ts';
import { writeOut } from '../write-out.ts';

export interface SteelOptions {
  readonly format: 'text' | 'json';
  readonly find: boolean;
  readonly colour: boolean;
  readonly columns: number;
}

type Status = 0 | 1 | 2;

/**
 * The command `steel`: says what each designation is. Gives 0 when all are known, 1 when one is ambiguous or unknown, 2 when one is
 * none or none is given. As JSON the answer is an array in every case, one object a line.
 */
export function steel(designations: readonly string[], options: SteelOptions): Status {
  const rules = rulesOfMaterials(builtInPacks(), dictionary);
  const status =
    options.format === 'json'
      ? writeJson(designations, options, rules)
      : writeText(designations, options, rules);
  if (designations.length > 0) return status;
  writeOut('error: name a designation, as planish steel 22MnB5+AS150\n', 'complaints');
  return 2;
}

function writeText(designations: readonly string[], options: SteelOptions, rules: RulesOfMaterials): Status {
  const report = steelAnswers(designations, options.find, rules);
  if (designations.length > 0) writeOut(steelText(report, options));
  return worstOf(report.answers.map(statusOf));
}

/** A text of megabytes is made and sent in pieces: whole answers of a long list would be moved about in memory again and again. */
const linesAPiece = 64;

function writeJson(designations: readonly string[], { find }: SteelOptions, rules: RulesOfMaterials): Status {
  const answerTo = answering(find, rules);
  const told = new Map<string, { readonly line: string; readonly status: Status }>();
  const statuses = new Set<Status>();
  let piece: string[] = [];
  writeOut(designations.length === 0 ? '[]\n' : '[\n');
  for (const [at, text] of designations.entries()) {
    let one = told.get(text);
    if (one === undefined) {
      const answer = answerTo(text);
      one = { line: JSON.stringify(answer), status: statusOf(answer) };
      told.set(text, one);
    }
    statuses.add(one.status);
    piece.push(one.line);
    const isLast = at === designations.length - 1;
    if (!isLast && piece.length < linesAPiece) continue;
    writeOut(`${piece.join(',\n')}${isLast ? '\n]\n' : ',\n'}`);
    piece = [];
  }
  return worstOf([...statuses]);
}

/** What each designation is, in the order given, with the rules on such materials, each once. */
export function steelAnswers(
  designations: readonly string[],
  find: boolean,
  rules: RulesOfMaterials,
): SteelReport {
  const met = new Set<SteelRules>();
  const answerTo = answering(find, rules, met);
  // A list of a shop names few grades many times.
  const answered = new Map<string, SteelAnswer>();
  const answers = designations.map((text): SteelAnswer => {
    const answer = answered.get(text) ?? answerTo(text);
    answered.set(text, answer);
    return answer;
  });
  return { pack: rules.pack, answers, rules: [...met] };
}

/** Answers designations one by one and collects the rules that it met. */
function answering(
  find: boolean,
  { of }: RulesOfMaterials,
  met = new Set<SteelRules>(),
): (text: string) => SteelAnswer {
  return (text) => {
    const plain = describeDesignation(text, { find });
    const rules = of(plain);
    for (const one of rules) met.add(one);
    return { ...plain, rules: rules.flatMap(({ names }) => names) };
  };
}

function statusOf({ usable, known }: DesignationAnswer): Status {
  if (!usable) return 2;
  return known === 'known' ? 0 : 1;
}

function worstOf(statuses: readonly Status[]): Status {
  if (statuses.includes(2)) return 2;
  return statuses.includes(1) ? 1 : 0;
}
