import { builtInPacks } from '../../generated/built-in-packs.ts';
import { readPackSources } from '../../packs/sources/read-pack-sources.ts';
import { packsJson, packsText } from '../../report/packs-text.ts';
import type { ShownPack } from '../../report/packs-text.ts';
import { complain } from '../complain.ts';
import { loadFound } from '../judging/given-packs.ts';
import { writeOut } from '../write-out.ts';

/** The command `packs`: what is built in and what is given, with versions, digests and coverage; gives the exit status. */
export function listPacks(given: readonly string[], format: 'text' | 'json', columns: number): 0 | 2 {
  const shown: ShownPack[] = builtInPacks().map((pack) => ({ pack, where: 'built in' }));
  const lines: string[] = [];
  for (const one of given) {
    const found = readPackSources(one, process.cwd());
    if (!found.ok) lines.push(found.sentence);
    for (const source of found.ok ? found.packs : []) {
      const { pack, lines: faults } = loadFound(source);
      lines.push(...faults);
      if (pack !== undefined) shown.push({ pack, where: `in ${source.where}` });
    }
  }
  writeOut(format === 'json' ? packsJson(shown) : packsText(shown, columns));
  for (const line of lines) complain(line);
  return lines.length === 0 ? 0 : 2;
}
