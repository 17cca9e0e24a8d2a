import { existsSync } from 'node:fs';
import path from 'node:path';
import { builtInPacks } from '../../generated/built-in-packs.ts';
import { lockName, readLock } from '../../packs/layers/read-lock.ts';
import { resolvePacks } from '../../packs/layers/resolve-packs.ts';
import { lockText } from '../../packs/writing/write-lock.ts';
import { visibleText } from '../../report/visible-text.ts';
import { faultLine, loadGivenPacks } from '../judging/given-packs.ts';
import { openOutputFile } from '../writing/output-file.ts';
import { writeOut } from '../write-out.ts';
import { refuse } from '../complain.ts';

/** The command `packs lock`: writes the lock of a folder of jobs, tells what changes in it, and gives the exit status. */
export function lock(folder: string, rules: readonly string[], pins: readonly string[]): 0 | 2 {
  const given = loadGivenPacks(rules);
  if (!given.ok) return refuse(given.lines);
  const resolved = resolvePacks([...builtInPacks(), ...given.packs], pins);
  if (!resolved.ok) return refuse([faultLine(resolved.sentence, resolved.place)]);
  const { layers } = resolved.packs;
  const file = path.join(folder, lockName);
  const old = existsSync(file) ? readLock(file) : undefined;
  const before = old?.ok === true ? old.versions : new Map<string, never>();
  const opened = openOutputFile(file, true);
  if (!opened.ok) return refuse([opened.sentence]);
  const wrong = opened.file.write(lockText(layers)) ?? opened.file.finish();
  if (wrong !== undefined) return refuse([wrong]);
  if (old?.ok === false) writeOut('The lock that was there could not be read, and is replaced.\n');
  for (const { name, version, digest, released } of layers) {
    const was = before.get(name);
    const change =
      was === undefined
        ? 'new'
        : was.version !== version
          ? `was ${was.version}`
          : was.digest === digest
            ? 'as before'
            : 'same version, other content than before';
    const state = released ? '' : ' (not released)';
    writeOut(visibleText(`${name} ${version}${state}, ${digest}: ${change}.`) + '\n');
  }
  for (const [name, { version }] of before) {
    if (layers.some((layer) => layer.name === name)) continue;
    writeOut(visibleText(`${name} ${version}: no longer locked.`) + '\n');
  }
  writeOut(visibleText(`Written to ${file}.`) + '\n');
  return 0;
}
