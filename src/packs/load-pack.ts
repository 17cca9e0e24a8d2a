import { lstatSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Manifest, TopicFile } from '../generated/pack-types.ts';
import { validatePack } from '../generated/validate-pack.js';
import { decodeText } from '../plan/decode-text.ts';
import { nearestWords } from '../plan/nearest-word.ts';
import { plainValue } from '../plan/plain-value.ts';
import { pointerTo } from '../plan/pointer.ts';
import { readYaml } from '../plan/read-yaml.ts';
import type { SchemaError } from '../plan/schema-error.ts';
import { readYears } from '../quantity/year-range.ts';
import { packDigest } from './digest.ts';
import type { PackFile } from './digest.ts';
import type { FactDictionary } from './fact-dictionary.ts';
import { FaultList } from './fault-list.ts';
import type { PackFault } from './pack-fault.ts';
import type { Limit, Pack, PackVehicle, Provision, Rule } from './pack.ts';
import { readLimit } from './read-limit.ts';
import { readProvision } from './read-provision.ts';
import { readRule } from './read-rule.ts';
import { readVersion } from './semantic-version.ts';

export type PackLoading =
  { readonly ok: true; readonly pack: Pack } | { readonly ok: false; readonly faults: readonly PackFault[] };

/** Number of the pack format that this planish reads. */
export const packFormat = 1;

/** A pack of 400 rules has half a megabyte; the rest is room. */
const mostBytes = 8 * 1024 * 1024;
const mostFiles = 500;

/**
 * Loads a rule pack from its folder, whole or not at all: `pack.yaml` and every other `.yaml` file directly in it but
 * `releases.yaml`. Links and sub-folders are passed over. Everything that cannot be right is told at once. The cases of the
 * rules are not run here; see `checkCases`.
 */
export function loadPackFolder(folder: string, dictionary: FactDictionary): PackLoading {
  const files = readFiles(folder);
  if (!files.ok) return files;
  const faults: PackFault[] = [];
  const gathered: Gathered = { rules: [], limits: [], provisions: [], ids: new Map() };
  let manifest: Manifest | undefined;
  const topics: { readonly name: string; readonly pack: string; readonly list: FaultList }[] = [];

  for (const file of files.files) {
    const source = { path: path.join(folder, file.name), text: file.text };
    const yaml = readYaml(file.text);
    const list = new FaultList(source, yaml.ok ? yaml.root : undefined);
    if (yaml.ok) {
      const value = plainValue(yaml.root);
      if (!validatePack(value)) tellSchemaErrors(validatePack.errors ?? [], list);
      else if ('format' in value) {
        manifest = value;
        checkManifest(value, dictionary, list);
      } else {
        topics.push({ name: file.name, pack: value.pack, list });
        gather(value, file.name, dictionary, list, gathered);
      }
    } else {
      for (const fault of yaml.faults) list.atRange(fault.range, fault.sentence);
    }
    faults.push(...list.faults);
  }
  if (manifest === undefined) {
    if (faults.length === 0)
      faults.push(
        fileFault(path.join(folder, 'pack.yaml'), 'A pack needs a pack.yaml that says what it is.'),
      );
    return { ok: false, faults };
  }
  for (const { name, pack } of topics) {
    if (pack !== manifest.pack) {
      faults.push(
        fileFault(
          path.join(folder, name),
          `This file belongs to pack \`${pack}\`, not to \`${manifest.pack}\`.`,
        ),
      );
    }
  }
  if (faults.length > 0) return { ok: false, faults };
  return {
    ok: true,
    pack: {
      name: manifest.pack,
      version: manifest.version,
      released: manifest.released,
      title: manifest.title,
      format: manifest.format,
      facts: manifest.facts,
      ...(manifest.vehicle === undefined ? {} : { vehicle: vehicleOf(manifest.vehicle) }),
      rules: gathered.rules,
      limits: gathered.limits,
      provisions: gathered.provisions,
      digest: packDigest(files.files),
    },
  };
}

interface Gathered {
  readonly rules: Rule[];
  readonly limits: Limit[];
  readonly provisions: Provision[];
  /** Rule id → where it first stands. */
  readonly ids: Map<string, string>;
}

function gather(
  file: TopicFile,
  name: string,
  dictionary: FactDictionary,
  list: FaultList,
  into: Gathered,
): void {
  file.rules?.forEach((stated, index) => {
    const at = `/rules/${String(index)}`;
    const before = into.ids.get(stated.id);
    if (before === undefined) into.ids.set(stated.id, name);
    else list.at(`${at}/id`, `The id \`${stated.id}\` is taken by a rule in ${before}.`);
    const rule = readRule(stated, at, dictionary, list);
    if (rule !== undefined) into.rules.push(rule);
  });
  file.limits?.forEach((stated, index) => {
    const limit = readLimit(stated, `/limits/${String(index)}`, dictionary, list);
    if (limit === undefined) return;
    if (into.limits.some(({ victim }) => victim === limit.victim)) {
      list.at(`/limits/${String(index)}/victim`, `\`${limit.victim}\` has a limit in this pack already.`);
    } else into.limits.push(limit);
  });
  file.provisions?.forEach((stated, index) => {
    const provision = readProvision(stated, `/provisions/${String(index)}`, dictionary, list);
    if (provision !== undefined) into.provisions.push(provision);
  });
}

function checkManifest(manifest: Manifest, dictionary: FactDictionary, list: FaultList): void {
  if (manifest.format !== packFormat) {
    list.at('/format', `This planish reads packs of format ${String(packFormat)}.`);
  }
  if (manifest.facts !== dictionary.version) {
    list.at(
      '/facts',
      `The pack was written for fact schema ${String(manifest.facts)}; this planish has ${String(dictionary.version)}.`,
    );
  }
  if (readVersion(manifest.version) === undefined) list.at('/version', 'A version is three numbers: 1.0.0.');
  if (manifest.vehicle?.years !== undefined) {
    const years = readYears(manifest.vehicle.years);
    if (!years.ok) list.at('/vehicle/years', years.reason);
  }
}

function vehicleOf(stated: NonNullable<Manifest['vehicle']>): PackVehicle {
  const years = stated.years === undefined ? undefined : readYears(stated.years);
  return {
    maker: stated.maker,
    models: stated.models,
    ...(stated.bodies === undefined ? {} : { bodies: stated.bodies }),
    ...(years?.ok === true ? { years: { from: years.from, to: years.to } } : {}),
  };
}

/** Errors of the form, in words. A choice that failed (`if`) only repeats what its branch says. */
function tellSchemaErrors(errors: readonly SchemaError[], list: FaultList): void {
  const told = new Set<string>();
  for (const { keyword, instancePath, params } of errors) {
    if (keyword === 'if') continue;
    const extra = params['additionalProperty'];
    const pointer = typeof extra === 'string' ? pointerTo(instancePath, extra) : instancePath;
    const key = JSON.stringify([pointer, keyword, params['missingProperty']]);
    if (told.has(key)) continue;
    told.add(key);
    switch (keyword) {
      case 'additionalProperties':
        list.at(
          pointer,
          `\`${String(extra)}\` is not a key that a pack has here.`,
          nearestWords(String(extra), packKeys),
          true,
        );
        break;
      case 'required':
        list.at(pointer, `\`${String(params['missingProperty'])}\` is missing here.`, [], true);
        break;
      case 'enum':
        list.at(pointer, `This is not one of the words known here: ${wordsOf(params['allowedValues'])}.`);
        break;
      case 'type':
        list.at(pointer, `Something of another kind is expected here: ${String(params['type'])}.`);
        break;
      case 'minItems':
      case 'minProperties':
      case 'minLength':
        list.at(pointer, 'Something is missing here: too little is written.');
        break;
      default:
        list.at(pointer, 'This is not of the form that a pack has here.');
    }
  }
}

const packKeys = [
  ...['pack', 'format', 'facts', 'version', 'released', 'title', 'vehicle', 'rules', 'limits', 'provisions'],
  ...[
    'id',
    'topic',
    'since',
    'until',
    'replaced_by',
    'judges',
    'severity',
    'from',
    'place',
    'when',
    'unless',
  ],
  ...['message', 'instead', 'why', 'source', 'cases', 'finds', 'passes', 'asks', 'victim', 'hold_above'],
  ...['stop_above', 'time_above', 'part', 'sides', 'bodies', 'years', 'document', 'revision', 'published'],
  ...[
    'page',
    'shall',
    'shall_not',
    'may',
    'conditions',
    'maker',
    'models',
    'min',
    'max',
    'above',
    'below',
    'known',
  ],
];

function wordsOf(values: unknown): string {
  return Array.isArray(values) ? values.map(String).join(', ') : '';
}

type Files =
  | { readonly ok: true; readonly files: readonly PackFile[] }
  | { readonly ok: false; readonly faults: readonly PackFault[] };

function readFiles(folder: string): Files {
  let names: readonly string[];
  try {
    names = readdirSync(folder)
      .filter((name) => name.endsWith('.yaml') && name !== 'releases.yaml')
      .sort();
  } catch {
    return refuse(folder, 'There is no such folder, or it cannot be read.');
  }
  if (names.length > mostFiles)
    return refuse(folder, `The folder holds more than ${String(mostFiles)} files.`);
  const files: PackFile[] = [];
  let bytes = 0;
  for (const name of names) {
    const file = path.join(folder, name);
    const stats = lstatSync(file);
    if (!stats.isFile()) continue;
    bytes += stats.size;
    if (bytes > mostBytes)
      return refuse(file, `The pack is larger than ${String(mostBytes / 1024 / 1024)} MiB.`);
    const text = decodeText(readFileSync(file));
    if (!text.ok) return refuse(file, text.fault.sentence);
    files.push({ name, text: text.text });
  }
  return { ok: true, files };
}

function refuse(file: string, sentence: string): Files {
  return { ok: false, faults: [fileFault(file, sentence)] };
}

function fileFault(file: string, sentence: string): PackFault {
  return { file, line: 1, column: 1, sentence, nearest: [] };
}
