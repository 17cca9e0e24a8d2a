// Writes the digests of every releases.yaml of the checkout anew: npx tsx .build/renew-digests.ts. Only for as long as planish itself has not
// been published; afterwards a digest that no longer fits says that a released version was changed, and the rule is put
// back instead. The next entry is written by `planish packs release`.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './json-schema.ts';

const folders = ['rules', 'examples/rules'].flatMap((folder) =>
  readdirSync(path.join(root, folder)).map((name) => path.join(root, folder, name)),
);
const facts = await import('../src/generated/fact-names.ts');
const { loadPackFolder } = await import('../src/packs/load-pack.ts');
const dictionary = {
  version: facts.factSchemaVersion,
  facts: facts.factDictionary,
  kinds: facts.sheetKinds,
};

for (const folder of folders) {
  const file = path.join(folder, 'releases.yaml');
  if (!existsSync(file)) continue;
  const loaded = loadPackFolder(folder, dictionary);
  if (loaded.ok) continue;
  const lines = readFileSync(file, 'utf8').split('\n');
  for (const fault of loaded.faults) {
    const digest = /^The files give (sha256:[0-9a-f]{64}) for /u.exec(fault.sentence)?.[1];
    if (digest === undefined || fault.file !== file) {
      throw new Error(`${fault.file}, line ${String(fault.line)}: ${fault.sentence}`);
    }
    const line = lines[fault.line - 1] ?? '';
    lines[fault.line - 1] = line.replace(/sha256:[0-9a-f]{64}/u, digest);
    process.stdout.write(`${path.relative(root, folder)}: ${digest}\n`);
  }
  writeFileSync(file, lines.join('\n'));
}
