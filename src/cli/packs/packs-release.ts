import path from 'node:path';
import { checkCases } from '../../judge/check-cases.ts';
import { loadPackFiles } from '../../packs/load-pack.ts';
import type { Release } from '../../packs/pack.ts';
import { readPackFiles } from '../../packs/sources/read-pack-files.ts';
import { releasesName } from '../../packs/reading/read-releases.ts';
import { againstRelease, withRelease } from '../../packs/writing/release-entry.ts';
import { visibleText } from '../../report/visible-text.ts';
import { refuse } from '../complain.ts';
import { dictionary } from '../dictionary.ts';
import { faultLine } from '../judging/given-packs.ts';
import { openOutputFile } from '../writing/output-file.ts';
import { plansThatWorsen } from './plans-that-worsen.ts';
import { writeOut } from '../write-out.ts';

export interface ReleaseOptions {
  readonly reasons: readonly string[];
  /** ISO 8601 calendar date. */
  readonly date: string;
  /** Plans that are judged by the version before and by this one. */
  readonly plans: readonly string[];
  readonly asOfDay: number;
}

/** The command `packs release`: writes the next entry of a pack's releases.yaml, or says why not; gives the exit status. */
export function release(folder: string, options: ReleaseOptions): 0 | 2 {
  const read = readPackFiles(folder);
  const loaded = loadPackFiles(read, folder, dictionary);
  const failed = checkCases(loaded.ok ? loaded.pack : { rules: loaded.rules }, loaded.placeOfCase);
  const faults = [
    ...(loaded.ok ? [] : loaded.faults.map((fault) => faultLine(fault.sentence, fault))),
    ...failed.map(({ place, sentence }) => faultLine(sentence, place)),
  ];
  if (!loaded.ok || faults.length > 0) return refuse(faults);
  const { pack } = loaded;
  const against = againstRelease(pack);
  if (against.length > 0) return refuse(against);
  const worsened = plansThatWorsen(pack, options.plans, options.asOfDay);
  if (worsened.length > 0) return refuse(worsened);

  const file = path.join(folder, releasesName);
  const { version, digest, facts } = pack;
  const entry: Release = { version, date: options.date, facts, digest, reasons: options.reasons };
  const before = read.files.find(({ name }) => name === releasesName)?.text;
  const text = withRelease(before, pack.name, entry);
  const files = [...read.files.filter(({ name }) => name !== releasesName), { name: releasesName, text }];
  const after = loadPackFiles({ ...read, files }, folder, dictionary);
  if (!after.ok) {
    return refuse([
      `${file} was not written, because with the new entry the pack would not load:`,
      ...after.faults.map((fault) => faultLine(fault.sentence, fault)),
    ]);
  }
  const opened = openOutputFile(file, before !== undefined);
  if (!opened.ok) return refuse([opened.sentence]);
  const wrong = opened.file.write(text) ?? opened.file.finish();
  if (wrong !== undefined) return refuse([wrong]);
  writeOut(visibleText(`${pack.name} ${version} of ${options.date} is written to ${file}.`) + '\n');
  writeOut(`${digest}\n`);
  for (const { part, operation } of pack.open ?? []) {
    writeOut(visibleText(`Not part of it, still to be filled in: ${operation}, ${part}.`) + '\n');
  }
  return 0;
}
