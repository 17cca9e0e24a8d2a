import path from 'node:path';
import { validatePack } from '../generated/validate-pack.js';
import { canonicalForm } from './versions/canonical-form.ts';
import type { StatedPack } from './versions/canonical-form.ts';
import { checkWhole } from './reading/check-whole.ts';
import { textDigest } from './digest.ts';
import type { FactDictionary } from './fact-dictionary.ts';
import { mostFaults } from './reading/fault-list.ts';
import { emptyGathered, gatherTopic } from './reading/gather-topic.ts';
import type { Gathered } from './reading/gather-topic.ts';
import type { PackFault, PackPlace } from './pack-fault.ts';
import type { Cases, Pack, Rule } from './pack.ts';
import { readManifest } from './reading/read-manifest.ts';
import type { PackHead } from './reading/read-manifest.ts';
import { readPackFile } from './reading/read-pack-file.ts';
import type { FileRead } from './reading/read-pack-file.ts';
import { readPackFiles } from './sources/read-pack-files.ts';
import type { PackFiles } from './sources/read-pack-files.ts';
import { checkDigests, readReleases, releasesName } from './reading/read-releases.ts';
import { tellSchemaErrors } from './reading/tell-schema-errors.ts';

/** Where a case of a rule stands; undefined for a rule that the pack does not hold. */
export type CasePlaces = (rule: string, list: keyof Cases, index: number) => PackPlace | undefined;

export type PackLoading =
  | {
      readonly ok: true;
      readonly pack: Pack;
      readonly placeOfCase: CasePlaces;
      /** The canonical form of a version and fact schema; see `canonicalForm`. */
      readonly canonicalForm: (version: string, facts: number) => string;
    }
  | {
      readonly ok: false;
      readonly faults: readonly PackFault[];
      /** The rules that are sound by themselves, so that their cases can be told with the faults. */
      readonly rules: readonly Rule[];
      readonly placeOfCase: CasePlaces;
    };

/** Number of the pack format that this planish reads. */
export const packFormat = 1;

const manifestName = 'pack.yaml';

/**
 * Loads a rule pack from its folder, whole or not at all: `pack.yaml`, `releases.yaml` where there is one, and every other
 * `.yaml` file directly in it. Sub-folders are passed over. Everything that cannot be right is told at once, but for what
 * only shows once the rest is right. The cases of the rules are not run here; see `checkCases`.
 */
export function loadPackFolder(folder: string, dictionary: FactDictionary): PackLoading {
  return loadPackFiles(readPackFiles(folder), folder, dictionary);
}

/** Loads a pack from files that are read already. `where` is put before their names where they are shown. */
export function loadPackFiles(
  { files, faults: unread, isRefused }: PackFiles,
  where: string,
  dictionary: FactDictionary,
): PackLoading {
  const read = files.map((file) => readPackFile(where, file));
  const manifestFile = read.find(({ name }) => name === manifestName);
  const releasesFile = read.find(({ name }) => name === releasesName);
  const gathered = emptyGathered();
  const placeOfCase = placesIn(gathered);
  const otherFormat = manifestFile === undefined ? undefined : otherFormatIn(manifestFile);
  if (otherFormat !== undefined) return { ok: false, faults: [otherFormat], rules: [], placeOfCase };

  const manifest = manifestFile === undefined ? undefined : manifestIn(manifestFile, dictionary);
  for (const file of read) {
    if (file !== manifestFile && file !== releasesFile) takeTopic(file, manifest, dictionary, gathered);
  }
  const releases = releasesFile === undefined ? [] : readReleases(releasesFile, manifest?.stated.pack);
  const isWhole = unread.length === 0 && read.every(({ list }) => list.faults.length === 0);
  const head = manifest?.head;
  const stated: StatedPack | undefined =
    manifest === undefined || head === undefined
      ? undefined
      : { ...gathered.stated, manifest: manifest.stated, layer: head.layer };
  if (
    manifestFile !== undefined &&
    manifest !== undefined &&
    head !== undefined &&
    stated !== undefined &&
    isWhole
  ) {
    checkWhole(manifest.stated, head, releases, gathered, manifestFile.list);
    if (releasesFile !== undefined) checkDigests(releases, stated, releasesFile);
  }

  const faults = [...unread, ...read.flatMap(({ list }) => inOrder(list.faults))];
  const manifestPath = path.join(where, manifestName);
  if (manifestFile === undefined && !isRefused && unread.every(({ file }) => file !== manifestPath)) {
    const sentence = 'A pack needs a pack.yaml that says what it is.';
    faults.push({ file: manifestPath, line: 1, column: 1, sentence, nearest: [] });
  }
  if (faults.length > 0 || head === undefined || stated === undefined) {
    return { ok: false, faults, rules: gathered.rules, placeOfCase };
  }
  const form = (version: string, facts: number): string => canonicalForm(stated, version, facts);
  const { places, ids: _, stated: _stated, open, ...items } = gathered;
  if (manifestFile !== undefined) places['pack'] = manifestFile.list.placeAt('/pack');
  const pack: Pack = {
    ...head,
    released: releases.some(({ version }) => version === head.version),
    ...items,
    ...(open.length === 0 ? {} : { open }),
    releases,
    digest: textDigest(form(head.version, head.facts)),
    places,
  };
  return { ok: true, pack, placeOfCase, canonicalForm: form };
}

function placesIn({ ids }: Gathered): CasePlaces {
  return (rule, list, index) => {
    const place = ids.get(rule);
    return place?.list.placeAt(`${place.pointer}/cases/${list}/${String(index)}`);
  };
}

/** Of a format that is not known, nothing else can be told: what its keys mean is not known either. */
function otherFormatIn({ valueAt, list }: FileRead): PackFault | undefined {
  const format = valueAt('/format');
  if (typeof format !== 'number' || format === packFormat) return undefined;
  const sentence = `This planish reads packs of format ${String(packFormat)}; this one has format ${String(format)}.`;
  return { ...list.placeAt('/format'), sentence, nearest: [] };
}

interface ManifestRead {
  readonly stated: StatedPack['manifest'];
  /** Undefined when something in it cannot be right. */
  readonly head: PackHead | undefined;
}

function manifestIn(file: FileRead, dictionary: FactDictionary): ManifestRead | undefined {
  const { value, valueAt, list } = file;
  if (value === undefined) return undefined;
  if (valueAt('/format') === undefined) {
    list.at('', '`format` is missing here: pack.yaml says what the pack is, and topic files hold its rules.');
    return undefined;
  }
  if (validatePack(value) && 'format' in value) {
    return { stated: value, head: readManifest(value, dictionary, list) };
  }
  tellSchemaErrors(validatePack.errors ?? [], valueAt, list);
  return undefined;
}

function takeTopic(
  { name, value, valueAt, list }: FileRead,
  manifest: ManifestRead | undefined,
  dictionary: FactDictionary,
  into: Gathered,
): void {
  if (value === undefined) return;
  for (const [key, sentence] of elsewhere) {
    if (valueAt(`/${key}`) === undefined) continue;
    list.at(`/${key}`, sentence, [], true);
    return;
  }
  if (!validatePack(value)) tellSchemaErrors(validatePack.errors ?? [], valueAt, list);
  gatherTopic(value, name, dictionary, list, into);
  if (manifest === undefined) return;
  const pack = valueAt('/pack');
  if (typeof pack === 'string' && pack !== manifest.stated.pack) {
    list.at('/pack', `This file belongs to pack \`${pack}\`, not to \`${manifest.stated.pack}\`.`);
  }
  for (const key of ['provisions', 'parts', 'documents'] as const) {
    if (manifest.stated.vehicle !== undefined || valueAt(`/${key}`) === undefined) continue;
    list.at(
      `/${key}`,
      'Statements of a maker need the `vehicle` in pack.yaml; without it they would bind no plan.',
      [],
      true,
    );
  }
}

/** Keys that make a file another one than a topic file. */
const elsewhere = [
  ['format', 'Only pack.yaml says `format`; a folder holds one pack.'],
  ['releases', 'Only releases.yaml lists `releases`.'],
  ['lock', 'A lock belongs to a folder of jobs, not into a pack.'],
] as const;

function inOrder(faults: readonly PackFault[]): readonly PackFault[] {
  const sorted = faults.toSorted((a, b) => a.line - b.line || a.column - b.column);
  const next = sorted[mostFaults];
  if (next === undefined) return sorted;
  return [
    ...sorted.slice(0, mostFaults),
    { ...next, sentence: 'More faults follow in this file.', nearest: [] },
  ];
}
