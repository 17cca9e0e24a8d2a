import { draftQuestions, wordsAt } from '../../draft/questions.ts';
import type { DraftQuestion } from '../../draft/questions.ts';
import { readAnswers } from '../../draft/read-answers.ts';
import type { AnswersReading } from '../../draft/read-answers.ts';
import { visibleText } from '../../report/visible-text.ts';
import { wrapText } from '../../report/wrap-text.ts';
import type { Asker } from '../ask.ts';
import { writeOut } from '../write-out.ts';

/** Answers as they were typed, by the option that each belongs to; parts as `kind, side, damage`. */
export interface TypedAnswers {
  readonly byOption: ReadonlyMap<string, string>;
  readonly parts: readonly string[];
}

/** Reads typed answers as those on standard input are read: one form, one set of faults. */
export function typedAnswers({ byOption, parts }: TypedAnswers): AnswersReading {
  const tooMuch = parts.find((part) => part.split(',').length > 3);
  if (tooMuch !== undefined)
    return {
      ok: false,
      sentences: [`A part is what it is, its side and its damage: not \`${tooMuch}\`.`],
    };
  const tree: Tree = {};
  for (const question of draftQuestions) {
    const answer = byOption.get(question.option);
    if (answer !== undefined) put(tree, question.path, typedValue(question, answer));
  }
  const listed = parts.map((part) => {
    const [kind = '', side = '', damage = ''] = part.split(',').map((word) => word.trim());
    return {
      ...(kind === '' ? {} : { kind }),
      ...(side === '' ? {} : { side }),
      ...(damage === '' ? {} : { damage: { kind: damage } }),
    };
  });
  return readAnswers(JSON.stringify({ ...tree, parts: listed }), false);
}

/**
 * Asks for what is not answered yet. An empty answer leaves the question open; one that a plan does not take is asked again.
 * Undefined when the answers end before the questions do.
 */
export async function askedAnswers(given: TypedAnswers, asker: Asker): Promise<TypedAnswers | undefined> {
  tell('An empty answer leaves the question open in the draft.');
  const byOption = new Map(given.byOption);
  for (const question of draftQuestions) {
    if (byOption.has(question.option)) continue;
    const hint = question.hint ?? wordsAt(question.path);
    if (hint !== undefined && hint.length > 40) tell(`${question.question}: ${hint}`);
    const asked =
      hint === undefined || hint.length > 40 ? question.question : `${question.question} (${hint})`;
    const answer = await askUntilTaken(asker, `${asked}: `, (text) =>
      typedAnswers({ byOption: new Map([[question.option, text]]), parts: [] }),
    );
    if (answer === undefined) return undefined;
    if (answer !== '') byOption.set(question.option, answer);
  }
  if (given.parts.length > 0) return { byOption, parts: given.parts };
  const parts: string[] = [];
  tell('Parts, one at a time: what it is, its side and its damage, such as `door ring, left, kink`.');
  for (;;) {
    const answer = await askUntilTaken(asker, `Part ${String(parts.length + 1)} (empty: no more): `, (text) =>
      typedAnswers({ byOption: new Map(), parts: [text] }),
    );
    if (answer === undefined) return undefined;
    if (answer === '') return { byOption, parts };
    parts.push(answer);
  }
}

async function askUntilTaken(
  asker: Asker,
  question: string,
  read: (text: string) => AnswersReading,
): Promise<string | undefined> {
  for (;;) {
    const answer = await asker.ask(question);
    if (answer === undefined || answer === '') return answer;
    const reading = read(answer);
    if (reading.ok) return answer;
    for (const sentence of reading.sentences) tell(sentence);
  }
}

function tell(text: string): void {
  writeOut(`${wrapText(visibleText(text), 80, '').join('\n')}\n`, 'complaints');
}

function typedValue({ path }: DraftQuestion, answer: string): string | number | readonly string[] {
  const key = path.at(-1);
  if (key === 'model_year' && /^\d{1,9}$/u.test(answer)) return Number(answer);
  return key === 'drive' && answer.includes(',') ? answer.split(',').map((word) => word.trim()) : answer;
}

interface Tree {
  [key: string]: Tree | string | number | readonly string[];
}

function put(tree: Tree, [key, ...rest]: readonly string[], value: Tree[string]): void {
  if (key === undefined) return;
  if (rest.length === 0) {
    tree[key] = value;
    return;
  }
  const below: Tree = {};
  const there = tree[key];
  if (typeof there === 'object' && !Array.isArray(there)) Object.assign(below, there);
  put(below, rest, value);
  tree[key] = below;
}
