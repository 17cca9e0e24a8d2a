import type { Manifest, TopicFile } from '../../generated/pack-types.ts';
import { canonicalJson } from '../../plan/canonical-json.ts';
import type { PackLayer } from '../pack.ts';
import { inForce } from './rules-in-force.ts';
import { compareVersions, readVersion } from './semantic-version.ts';

type StatedList = (typeof lists)[number];

/** A pack as its files write it: files by name, and in each file as it stands. */
export type StatedItems = { readonly [Key in StatedList]: readonly NonNullable<TopicFile[Key]>[number][] };

export interface StatedPack extends StatedItems {
  readonly manifest: Manifest;
  readonly layer: PackLayer;
}

const lists = [
  ...(['rules', 'limits', 'allowances', 'reaches', 'windows', 'tolerances'] as const),
  ...(['triggers', 'orders', 'provisions', 'parts', 'documents', 'raises'] as const),
] as const;

/** Tells a pack's history and proofs, not what a version judges by. */
const apart: ReadonlySet<string> = new Set(['since', 'until', 'replaced_by', 'cases']);

/**
 * The canonical form of one version of a pack: what its digest is taken of. JSON in the form of RFC 8785 (keys in order, no
 * white space), and one line feed. It holds what that version judges by, as the files write it: the pack's name,
 * format, fact schema, layer, markets and vehicles, and the rules, limits, provisions, parts, documents and raises in force,
 * in the order of the files. Left out are lists with nothing in force, and of each item its history (`since`, `until`,
 * `replaced_by`) and its cases: an old version stays what it was when a rule ends, or proves itself better. Comments and
 * the form of the YAML do not count.
 */
export function canonicalForm(pack: StatedPack, version: string, facts: number): string {
  const { manifest } = pack;
  const vehicle = vehicleAt(manifest, version);
  const form: Record<string, unknown> = {
    pack: manifest.pack,
    format: manifest.format,
    facts,
    version,
    layer: pack.layer,
    ...(manifest.markets === undefined ? {} : { markets: manifest.markets }),
    ...(vehicle === undefined ? {} : { vehicle }),
  };
  for (const key of lists) {
    const items = inForce<object>(pack[key], version).map(judging);
    if (items.length > 0) form[key] = items;
  }
  return `${canonicalJson(form)}\n`;
}

function judging(item: object): object {
  return Object.fromEntries(Object.entries(item).filter(([key]) => !apart.has(key)));
}

function vehicleAt({ vehicle, vehicle_before: before }: Manifest, version: string): Manifest['vehicle'] {
  const at = readVersion(version);
  const former = before?.find(({ until }) => {
    const end = readVersion(until);
    return at !== undefined && end !== undefined && compareVersions(at, end) < 0;
  });
  return former?.vehicle ?? vehicle;
}
