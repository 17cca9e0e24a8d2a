import { asSentence } from '../../judge/fact-title.ts';
import { countOf } from '../count-words.ts';
import { paintWith } from '../paint.ts';
import type { Paint } from '../paint.ts';
import { caseWords, standingWords } from './rule-page.ts';
import type { RulePage } from './rule-page.ts';
import { visibleText } from '../visible-text.ts';
import { wrapText } from '../wrap-text.ts';

const indent = '  ';

/** The list of rules: under each topic the severity, the id and what it finds in one sentence. */
export function rulesListText(pages: readonly RulePage[], columns: number, colour: boolean): string {
  const paint = paintWith(colour);
  const lines: string[] = [];
  const topics = [...new Set(pages.map(({ topic }) => topic))];
  for (const topic of topics) {
    lines.push(paint.strong(visibleText(topic)));
    for (const page of pages.filter((one) => one.topic === topic)) {
      const label = page.severity.toUpperCase();
      const pack = page.pack === 'general' ? '' : ` (${page.pack})`;
      lines.push(
        `${indent}${paint.severity(page.severity, label)} ${visibleText(`${page.id}${pack}`)}`,
        ...wrapText(visibleText(firstSentence(page.finds)), columns, '       '),
      );
    }
    lines.push('');
  }
  const packs = [...new Set(pages.map(({ pack, version }) => `${pack} ${version}`))].join(', ');
  const closing = `${countOf(pages.length, 'rule')} of ${packs}. planish rules ID shows one whole.`;
  lines.push(...wrapText(visibleText(closing), columns, ''));
  return `${lines.join('\n')}\n`;
}

/** Up to the first full stop that ends a sentence. */
export function firstSentence(text: string): string {
  return /^.*?[.!?](?=\s|$)/su.exec(text)?.[0] ?? text;
}

/** One rule's whole page. */
export function rulePageText(page: RulePage, columns: number, colour: boolean): string {
  const paint = paintWith(colour);
  const standing = standingWords(page);
  const history = page.until === undefined ? `since ${page.since}` : `from ${page.since} until ${page.until}`;
  const label = page.severity.toUpperCase();
  const about = `topic ${page.topic}; judged from stage ${page.from} on, for each ${page.judges}; pack ${page.pack}, ${history}`;
  const lines = [
    `${paint.severity(page.severity, label)} ${paint.strong(visibleText(page.id))}`,
    ...wrapText(visibleText(`${about.slice(0, 1).toUpperCase()}${about.slice(1)}.`), columns, indent),
    ...(standing === undefined ? [] : wrapText(visibleText(standing), columns, indent)),
    ...section('Finds', [page.finds], columns, paint),
    ...section('Why', [page.why], columns, paint),
    ...section('Instead', [page.instead], columns, paint),
    ...section('Source', [asSentence(page.source)], columns, paint),
    ...section(
      `Found when ${page.when.length === 1 ? 'this holds' : 'all of these hold'}`,
      page.when,
      columns,
      paint,
      true,
    ),
    ...page.unless.flatMap((one, index) =>
      section(index === 0 ? 'Not found when' : 'Nor when', one, columns, paint, true),
    ),
    ...caseLines(page, columns, paint),
  ];
  return `${lines.join('\n')}\n`;
}

function section(
  title: string,
  texts: readonly string[],
  columns: number,
  paint: Paint,
  isList = false,
): readonly string[] {
  const deep = isList ? `${indent}  ` : indent;
  return [
    '',
    paint.strong(title),
    ...texts.flatMap((text) => wrapText(visibleText(text), columns, deep, isList ? `${indent}- ` : indent)),
  ];
}

const caseTitles = {
  finds: 'Cases that it finds',
  passes: 'Cases that it lets pass',
  asks: 'Cases in which it asks for what is unknown',
} as const;

function caseLines({ cases }: RulePage, columns: number, paint: Paint): readonly string[] {
  return (['finds', 'passes', 'asks'] as const).flatMap((list) =>
    cases[list].length === 0
      ? []
      : section(caseTitles[list], cases[list].map(caseWords), columns, paint, true),
  );
}
