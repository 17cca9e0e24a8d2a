import { diffPacks } from '../../packs/versions/diff-packs.ts';
import { diffJson, diffText } from '../../report/packs-text.ts';
import { complain } from '../complain.ts';
import { packFrom } from './pack-argument.ts';
import { writeOut } from '../write-out.ts';

/** The command `packs diff`: what differs between two versions or packs, in trade words; gives the exit status. */
export function diff(from: string, to: string, format: 'text' | 'json', columns: number): 0 | 2 {
  const [before, after] = [packFrom(from), packFrom(to)];
  for (const one of [before, after]) for (const line of one.ok ? [] : one.lines) complain(line);
  if (!before.ok || !after.ok) return 2;
  const rules = [...before.whole.rules, ...after.whole.rules];
  const changes = diffPacks(before.at, after.at, { rules });
  const [old, now] = [before.at, after.at].map(({ name, version }) => `${name} ${version}`);
  const form = format === 'json' ? diffJson : diffText;
  writeOut(form(old ?? from, now ?? to, changes, columns));
  return 0;
}
