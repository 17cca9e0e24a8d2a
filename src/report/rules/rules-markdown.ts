import { markdownText } from '../forms/markdown-text.ts';
import { caseWords, standingWords } from './rule-page.ts';
import type { RulePage } from './rule-page.ts';
import { firstSentence } from './rules-text.ts';

/** The list as one table. */
export function rulesListMarkdown(pages: readonly RulePage[]): string {
  const rows = pages.map(({ id, severity, topic, finds, pack }) =>
    [id, severity, topic, pack, firstSentence(finds)].map(markdownText).join(' | '),
  );
  const head = ['Rule | Severity | Topic | Pack | Finds', '--- | --- | --- | --- | ---'];
  return `${[...head, ...rows].map((row) => `| ${row} |`).join('\n')}\n`;
}

/** One rule's whole page. */
export function rulePageMarkdown(page: RulePage): string {
  const standing = standingWords(page);
  const history = page.until === undefined ? `since ${page.since}` : `from ${page.since} until ${page.until}`;
  const list = (texts: readonly string[]): string =>
    texts.map((text) => `- ${markdownText(text)}`).join('\n');
  const cases = [
    ...page.cases.finds.map((one) => `finds: ${caseWords(one)}`),
    ...page.cases.passes.map((one) => `lets pass: ${caseWords(one)}`),
    ...page.cases.asks.map((one) => `asks: ${caseWords(one)}`),
  ];
  const about = `${page.severity}, topic ${page.topic}, from stage ${page.from}, for each ${page.judges}; pack ${page.pack}, ${history}`;
  const blocks = [
    `# ${markdownText(page.id)}`,
    markdownText(about),
    ...(standing === undefined ? [] : [markdownText(standing)]),
    `## Finds\n\n${markdownText(page.finds)}`,
    `## Why\n\n${markdownText(page.why)}`,
    `## Instead\n\n${markdownText(page.instead)}`,
    `## Source\n\n${markdownText(page.source)}`,
    `## Found when all of these hold\n\n${list(page.when)}`,
    ...page.unless.map((one) => `## Not found when\n\n${list(one)}`),
    `## Cases\n\n${list(cases)}`,
  ];
  return `${blocks.join('\n\n')}\n`;
}
