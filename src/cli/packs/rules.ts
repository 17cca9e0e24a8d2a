import { builtInPacksWithCases } from '../../generated/built-in-packs.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import { nearestWords } from '../../plan/nearest-word.ts';
import type { RulePage } from '../../report/rules/rule-page.ts';
import { rulesJson } from '../../report/rules/rules-json.ts';
import { rulePageMarkdown, rulesListMarkdown } from '../../report/rules/rules-markdown.ts';
import { rulePageText, rulesListText } from '../../report/rules/rules-text.ts';
import { refuse } from '../complain.ts';
import { faultLine, loadGivenPacks } from '../judging/given-packs.ts';
import { pageOutOfForce, pagesInForce } from './rule-pages.ts';
import { writeOut } from '../write-out.ts';

export interface RulesOptions {
  readonly rules: readonly string[];
  readonly format: 'text' | 'json' | 'markdown';
  readonly colour: boolean;
  readonly columns: number;
}

/** The command `rules`: the list, the rules of one topic, or one rule's whole page; gives the exit status. */
export function rules(word: string | undefined, options: RulesOptions): 0 | 2 {
  const given = loadGivenPacks(options.rules);
  if (!given.ok) return refuse(given.lines);
  const packs = [...builtInPacksWithCases(), ...given.packs];
  const resolved = resolvePacks(packs, undefined);
  if (!resolved.ok) return refuse([faultLine(resolved.sentence, resolved.place)]);
  const pages = pagesInForce(packs, resolved.packs);
  if (word === undefined) return showList(pages, options);
  const page = pages.find(({ id }) => id === word) ?? pageOutOfForce(packs, resolved.packs, word);
  if (page !== undefined) return showPage(page, options);
  const ofTopic = pages.filter(({ topic }) => topic === word);
  if (ofTopic.length > 0) return showList(ofTopic, options);
  const known = [...new Set(pages.flatMap(({ id, topic }) => [topic, id]))];
  const nearest = nearestWords(word, known);
  const hint =
    nearest.length === 0
      ? ` The topics are ${[...new Set(pages.map(({ topic }) => topic))].sort().join(', ')}.`
      : ` Nearest known: ${nearest.map((one) => `\`${one}\``).join(', ')}.`;
  return refuse([`There is no rule and no topic \`${word}\`.${hint}`]);
}

function showList(pages: readonly RulePage[], { format, columns, colour }: RulesOptions): 0 {
  const forms = {
    json: () => rulesJson(pages),
    markdown: () => rulesListMarkdown(pages),
    text: () => rulesListText(pages, columns, colour),
  };
  writeOut(forms[format]());
  return 0;
}

function showPage(page: RulePage, { format, columns, colour }: RulesOptions): 0 {
  const forms = {
    json: () => rulesJson([page]),
    markdown: () => rulePageMarkdown(page),
    text: () => rulePageText(page, columns, colour),
  };
  writeOut(forms[format]());
  return 0;
}
