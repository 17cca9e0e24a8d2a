import path from 'node:path';
import { validatePack } from '../generated/validate-pack.js';
import type { LocatedNode } from '../plan/node.ts';
import { nodeAt } from '../plan/node-at.ts';
import { plainValue } from '../plan/plain-value.ts';
import { pointerSteps } from '../plan/pointer.ts';
import { readYaml } from '../plan/read-yaml.ts';
import { packDigest } from './digest.ts';
import type { PackFile } from './digest.ts';
import type { FactDictionary } from './fact-dictionary.ts';
import { FaultList, mostFaults } from './fault-list.ts';
import { gatherTopic } from './gather-topic.ts';
import type { Gathered } from './gather-topic.ts';
import type { PackFault, PackPlace } from './pack-fault.ts';
import type { Cases, Pack } from './pack.ts';
import { readManifest } from './read-manifest.ts';
import type { PackHead } from './read-manifest.ts';
import { readPackFiles } from './read-pack-files.ts';
import { compareVersions, readVersion } from './semantic-version.ts';
import { tellSchemaErrors } from './tell-schema-errors.ts';

/** Where a case of a rule stands; undefined for a rule that the pack does not hold. */
export type CasePlaces = (rule: string, list: keyof Cases, index: number) => PackPlace | undefined;

export type PackLoading =
  | { readonly ok: true; readonly pack: Pack; readonly placeOfCase: CasePlaces }
  | { readonly ok: false; readonly faults: readonly PackFault[] };

/** Number of the pack format that this planish reads. */
export const packFormat = 1;

const manifestName = 'pack.yaml';

/** No list of a pack may be longer (schema: provisions). The validator's work grows with the square of a list's faults. */
const mostItems = 1000;

/**
 * Loads a rule pack from its folder, whole or not at all: `pack.yaml` and every other `.yaml` file directly in it but
 * `releases.yaml`. Links and sub-folders are passed over. Everything that cannot be right is told at once, but for what only
 * shows once the rest is right. The cases of the rules are not run here; see `checkCases`.
 */
export function loadPackFolder(folder: string, dictionary: FactDictionary): PackLoading {
  const { files, faults: unread, isRefused } = readPackFiles(folder);
  const read = files.map((file) => readFile(folder, file));
  const manifestFile = read.find(({ name }) => name === manifestName);
  const otherFormat = manifestFile === undefined ? undefined : otherFormatIn(manifestFile);
  if (otherFormat !== undefined) return { ok: false, faults: [otherFormat] };

  const manifest = manifestFile === undefined ? undefined : manifestIn(manifestFile, dictionary);
  const gathered: Gathered = {
    ...{ rules: [], limits: [], allowances: [], reaches: [], provisions: [] },
    ids: new Map(),
  };
  for (const file of read) if (file !== manifestFile) takeTopic(file, manifest, dictionary, gathered);
  const isWhole = unread.length === 0 && read.every(({ list }) => list.faults.length === 0);
  if (manifest?.head !== undefined && isWhole) checkWhole(manifest.head, gathered);

  const faults = [...unread, ...read.flatMap(({ list }) => inOrder(list.faults))];
  const manifestPath = path.join(folder, manifestName);
  if (manifestFile === undefined && !isRefused && unread.every(({ file }) => file !== manifestPath)) {
    const sentence = 'A pack needs a pack.yaml that says what it is.';
    faults.push({ file: manifestPath, line: 1, column: 1, sentence, nearest: [] });
  }
  if (faults.length > 0 || manifest?.head === undefined) return { ok: false, faults };
  return {
    ok: true,
    pack: {
      ...manifest.head,
      rules: gathered.rules,
      limits: gathered.limits,
      allowances: gathered.allowances,
      reaches: gathered.reaches,
      provisions: gathered.provisions,
      digest: packDigest(files),
    },
    placeOfCase: (rule, list, index) => {
      const place = gathered.ids.get(rule);
      return place?.list.placeAt(`${place.pointer}/cases/${list}/${String(index)}`);
    },
  };
}

interface FileRead {
  readonly name: string;
  /** Undefined when the file is no YAML or too long a list, which is told. */
  readonly value: unknown;
  readonly valueAt: (pointer: string) => unknown;
  readonly list: FaultList;
}

function readFile(folder: string, { name, text }: PackFile): FileRead {
  const source = { path: path.join(folder, name), text };
  const yaml = readYaml(text);
  if (!yaml.ok) {
    const list = new FaultList(source, undefined);
    for (const fault of yaml.faults) list.atRange(fault.range, fault.sentence);
    return { name, value: undefined, valueAt: () => undefined, list };
  }
  const valueAt = (pointer: string): unknown => {
    const node = nodeAt(yaml.root, pointerSteps(pointer));
    return node === undefined ? undefined : plainValue(node);
  };
  const list = new FaultList(source, yaml.root);
  tellLongLists(yaml.root, list);
  return { name, value: list.faults.length > 0 ? undefined : plainValue(yaml.root), valueAt, list };
}

function tellLongLists(node: LocatedNode, list: FaultList): void {
  if (node.kind === 'scalar') return;
  if (node.kind === 'list' && node.items.length > mostItems) {
    list.atRange(
      node.range,
      `More stands here than a pack ever takes: at most ${String(mostItems)} entries.`,
    );
    return;
  }
  const inner = node.kind === 'list' ? node.items : [...node.entries.values()].map(({ value }) => value);
  for (const one of inner) tellLongLists(one, list);
}

/** Of a format that is not known, nothing else can be told: what its keys mean is not known either. */
function otherFormatIn({ valueAt, list }: FileRead): PackFault | undefined {
  const format = valueAt('/format');
  if (typeof format !== 'number' || format === packFormat) return undefined;
  const sentence = `This planish reads packs of format ${String(packFormat)}; this one has format ${String(format)}.`;
  return { ...list.placeAt('/format'), sentence, nearest: [] };
}

interface ManifestRead {
  readonly name: string;
  readonly isForVehicle: boolean;
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
    const isForVehicle = value.vehicle !== undefined;
    return { name: value.pack, isForVehicle, head: readManifest(value, dictionary, list) };
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
  if (valueAt('/format') !== undefined) {
    list.at('/format', 'Only pack.yaml says `format`; a folder holds one pack.', [], true);
    return;
  }
  if (!validatePack(value)) tellSchemaErrors(validatePack.errors ?? [], valueAt, list);
  gatherTopic(value, name, dictionary, list, into);
  if (manifest === undefined) return;
  const pack = valueAt('/pack');
  if (typeof pack === 'string' && pack !== manifest.name) {
    list.at('/pack', `This file belongs to pack \`${pack}\`, not to \`${manifest.name}\`.`);
  }
  if (!manifest.isForVehicle && valueAt('/provisions') !== undefined) {
    list.at(
      '/provisions',
      'Statements of a maker need the `vehicle` in pack.yaml; without it they would bind no plan.',
      [],
      true,
    );
  }
}

/** What can only be told of a pack of which no rule is missing. */
function checkWhole({ version }: PackHead, { rules, ids }: Gathered): void {
  const now = readVersion(version);
  for (const rule of rules) {
    const place = ids.get(rule.id);
    const since = readVersion(rule.since);
    if (now !== undefined && since !== undefined && compareVersions(since, now) > 0) {
      place?.list.at(
        `${place.pointer}/since`,
        `The rule begins with ${rule.since} and the pack is ${version}: it would not judge.`,
      );
    }
    if (rule.replacedBy !== undefined && !ids.has(rule.replacedBy)) {
      place?.list.at(
        `${place.pointer}/replaced_by`,
        `The pack has no rule \`${rule.replacedBy}\`.`,
        place.list.nearest(rule.replacedBy, [...ids.keys()]),
      );
    }
  }
}

function inOrder(faults: readonly PackFault[]): readonly PackFault[] {
  const sorted = faults.toSorted((a, b) => a.line - b.line || a.column - b.column);
  const next = sorted[mostFaults];
  if (next === undefined) return sorted;
  return [
    ...sorted.slice(0, mostFaults),
    { ...next, sentence: 'More faults follow in this file.', nearest: [] },
  ];
}
