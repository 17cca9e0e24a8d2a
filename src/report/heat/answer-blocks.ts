import { cautions } from '../cautions.ts';
import { paintWith } from '../paint.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';
import { packsSentence } from './clear-sentence.ts';
import type { AskedReport } from './heat-report.ts';

export interface HeatTextOptions {
  readonly colour: boolean;
  readonly columns: number;
}

const indent = '  ';

/** How an answer about heat is set at a terminal: blocks with a blank line between them, those that are empty left out. */
export interface AnswerBlocks {
  /** The sentence that a reader wants first. */
  readonly first: (sentence: string) => string;
  readonly wrapped: (text: string) => string;
  readonly listed: (head: string, sentences: readonly string[]) => string;
  /** What stands under every answer: how words were read, what was assumed, how sure it is, by what rules, and the cautions. */
  readonly last: (report: AskedReport, assumptions: readonly string[], howSure: string) => readonly string[];
}

export function answerBlocks({ colour, columns }: HeatTextOptions): AnswerBlocks {
  const paint = paintWith(colour);
  const lines = (text: string): readonly string[] => wrapText(visibleText(text), columns, '');
  const wrapped = (text: string): string => lines(text).join('\n');
  const listed = (head: string, sentences: readonly string[]): string =>
    sentences.length === 0
      ? ''
      : [
          paint.strong(head),
          ...sentences.flatMap((one) => wrapText(visibleText(one), columns, `${indent}${indent}`, indent)),
        ].join('\n');
  return {
    first: (sentence) =>
      lines(sentence)
        .map((line) => paint.strong(line))
        .join('\n'),
    wrapped,
    listed,
    last: (report, assumptions, howSure) => [
      listed('Read as', report.readings),
      listed('Assumed', assumptions),
      wrapped(`How sure: ${howSure}`),
      wrapped(packsSentence(report)),
      cautions.map(wrapped).join('\n'),
    ],
  };
}

export function joinBlocks(blocks: readonly string[]): string {
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}
