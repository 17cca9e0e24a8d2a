import { header } from './generated-file.ts';

/** The page on every fact that a rule can ask about, from the fact schema: for those who write packs. */
export async function factReference(factsSchema: string): Promise<string> {
  // Only now: the same run may just have made the dictionary anew.
  const { factDictionary, factSchemaVersion, sheetKinds } = await import('../src/generated/fact-names.ts');
  const facts: readonly (readonly [string, Entry])[] = Object.entries(factDictionary);
  const kinds: readonly (readonly [string, { readonly standsOn: readonly string[] }])[] =
    Object.entries(sheetKinds);
  const blocks = kinds.map(([kind, { standsOn }]) => {
    const rows = facts
      .filter(([, entry]) => entry.kind === kind)
      .map(([name, entry]) => `| \`${name}\` | ${valueOf(entry)} | ${cell(entry.description)} |`);
    const sees = standsOn.length === 0 ? '' : `\n\nIt also sees the facts of: ${standsOn.join(', ')}.`;
    return `## ${kind}${sees}\n\n| fact | value | meaning |\n| --- | --- | --- |\n${rows.join('\n')}`;
  });
  const head = `<!-- ${header([factsSchema])
    .replace(/^\/\/ /u, '')
    .trim()} -->

# Facts that a rule can ask about

Fact schema ${String(factSchemaVersion)}. A rule names its kind of sheet under \`judges\`, and asks in \`when\` and \`unless\` for facts of that sheet
and of those that it stands on. A number is written with its unit; a fact that nothing tells is _unknown_.`;
  return `${[head, ...blocks].join('\n\n')}\n`;
}

interface Entry {
  readonly kind: string;
  readonly type: string;
  readonly words?: readonly string[];
  readonly unit?: string;
  readonly description: string;
}

function valueOf({ type, words, unit }: Entry): string {
  if (words !== undefined) return cell(words.join(', '));
  if (unit !== undefined) return `number, ${cell(unit)}`;
  return { 'yes-no': 'true or false', count: 'whole number', number: 'number' }[type] ?? 'text';
}

function cell(text: string): string {
  return text.replaceAll('|', '\\|').replaceAll('<', '&lt;').replaceAll(/\s+/gu, ' ');
}
