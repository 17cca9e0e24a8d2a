import { fitCell } from '../fit-cell.ts';
import { paintWith } from '../paint.ts';
import type { Paint } from '../paint.ts';
import { steelLabels, steelLines } from './steel-lines.ts';
import type { SteelAnswer, SteelReport, SteelRules } from './steel-report.ts';
import { textWidth } from '../text-width.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

export interface SteelTextOptions {
  readonly colour: boolean;
  readonly columns: number;
}

const indent = '  ';
const labelWidth = 10;
const gap = '  ';
/** Side by side a fact must still be legible: three columns at 80. */
const mostBeside = 3;

/** Designations as a sheet of plain text: one below its facts, several side by side, then what to mind and what rules say of the classes. */
export function steelText(
  { answers, rules, pack }: SteelReport,
  { colour, columns }: SteelTextOptions,
): string {
  const paint = paintWith(colour);
  const blocks: string[] = [];
  for (let at = 0; at < answers.length; at += mostBeside) {
    const group = answers.slice(at, at + mostBeside);
    blocks.push(
      sheet(group, columns, paint),
      ...group.map((one) => remarks(one, group.length, columns, paint)),
    );
  }
  blocks.push(...rules.map((one) => rulesBlock(one, pack, columns, paint)));
  blocks.push(
    wrapText(
      'The designation on the spare part and the maker’s document for this vehicle and year decide.',
      columns,
      '',
    ).join('\n'),
  );
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

/** A line for each fact, a column for each designation. */
function sheet(group: readonly SteelAnswer[], columns: number, paint: Paint): string {
  const width = Math.floor((columns - indent.length - labelWidth + gap.length) / group.length) - gap.length;
  const facts = group.map((answer) => steelLines(answer));
  const heads = group.map((answer) => heading(answer));
  const rows: string[] = row('', heads, width).map((line) => paint.strong(line));
  const met = new Set(facts.flatMap((lines) => lines.map(([label]) => label)));
  for (const label of steelLabels.filter((one) => met.has(one))) {
    const cells = facts.map((lines) => lines.find(([name]) => name === label)?.[1] ?? '');
    rows.push(...row(label, cells, width));
  }
  return rows.join('\n');
}

function heading({ given, known }: SteelAnswer): string {
  const shown = visibleText(given.trim());
  return `${shown === '' ? '(nothing)' : shown}: ${known}`;
}

function row(label: string, cells: readonly string[], width: number): readonly string[] {
  const fitted = cells.map((cell) => fitCell(cell, width));
  const height = Math.max(1, ...fitted.map((lines) => lines.length));
  return Array.from({ length: height }, (_, line) => {
    const lead = `${indent}${(line === 0 ? label : '').padEnd(labelWidth)}`;
    const texts = fitted.map((lines) => {
      const text = lines[line] ?? '';
      return text + ' '.repeat(Math.max(0, width - textWidth(text)));
    });
    return `${lead}${texts.join(gap)}`.trimEnd();
  });
}

function remarks(answer: SteelAnswer, beside: number, columns: number, paint: Paint): string {
  const lines: string[] = [];
  const add = (name: string, text: string | null): void => {
    if (text !== null && text !== '')
      lines.push(
        ...fitText(`${name}: ${text}`, columns, `${indent}${indent}${indent}`, `${indent}${indent}`),
      );
  };
  add('Open', answer.reason);
  add('Nearest known', answer.nearest.join(', '));
  if (answer.readings.length > 1) {
    for (const one of answer.readings) {
      add('May be', `${one.designation} by ${one.standard}: ${one.class}, ${one.family}${leastOf(one)}`);
    }
  }
  add('Taken for granted', answer.note);
  add('Weld', answer.coating_means?.welding ?? null);
  add('Heat', answer.coating_means?.heat ?? null);
  for (const warning of answer.warnings) add('Mind', warning);
  if (lines.length === 0) return '';
  const head = fitText(
    `About ${answer.given.trim() === '' ? '(nothing)' : answer.given.trim()}`,
    columns,
    indent,
  );
  return [...(beside > 1 ? head.map((line) => paint.strong(line)) : []), ...lines].join('\n');
}

/** What the rules say of a kind of material that was met. */
function rulesBlock({ of, rules }: SteelRules, pack: string, columns: number, paint: Paint): string {
  const head = paint.strong(`${indent}What pack ${pack} says of ${of}`);
  const inside = `${indent}${indent}`;
  if (rules.length === 0)
    return [head, ...wrapText('No rule names them; the rules for every part hold.', columns, inside)].join(
      '\n',
    );
  const lines = rules.flatMap(({ severity, sentence, maker_may_permit: lifted }) => {
    const label = severity.toUpperCase();
    const text = `${sentence}${lifted ? ' A statement of the maker for this year that the plan cites lifts it.' : ''}`;
    const lead = `${inside}${label.padEnd(6)}`;
    const [first = '', ...rest] = fitText(text, columns, ' '.repeat(lead.length), lead);
    return [first.replace(label, paint.severity(severity, label)), ...rest];
  });
  return [head, ...lines].join('\n');
}

/** Running text whose every line fits: a word that is wider than a line, such as a thousand signs without a blank, is cut. */
function fitText(text: string, columns: number, inset: string, firstInset = inset): readonly string[] {
  return wrapText(visibleText(text), columns, inset, firstInset).flatMap((line, at) => {
    if (textWidth(line) <= columns) return [line];
    const lead = at === 0 ? firstInset : inset;
    const [first = '', ...rest] = fitCell(line.slice(lead.length), columns - lead.length);
    return [`${lead}${first}`, ...rest.map((piece) => `${inset}${piece}`)];
  });
}

/** The least tensile strength of a reading, or its least yield where only that is known. */
function leastOf({ tensile, yield: yielding }: SteelAnswer['readings'][number]): string {
  if (typeof tensile?.min === 'number') return `, from ${tensile.min} MPa tensile`;
  return typeof yielding?.min === 'number' ? `, from ${yielding.min} MPa yield` : '';
}
