import { header } from './generated-file.ts';
import type { Pack } from '../src/packs/pack.ts';

/**
 * The packs that come with planish, loaded and checked ahead. Each is one string of JSON, which costs next to nothing
 * until it is parsed; a run parses only the packs that its plans ask for.
 */
export function builtInPacksSource(madeFrom: readonly string[], packs: readonly Pack[]): string {
  const sorted = [...packs].sort((a, b) => (a.name < b.name ? -1 : 1));
  return `${header(madeFrom)}import type { Pack } from '../packs/pack.ts';

export interface BuiltInPack {
  readonly name: string;
  readonly version: string;
  readonly digest: string;
  /** Parses the pack at the first call and gives the same object at the next ones. */
  readonly load: () => Pack;
}

export const builtInPacks: readonly BuiltInPack[] = [
${sorted.map(entry).join('\n')}
];

function parsedOnce(text: string): () => Pack {
  let pack: Pack | undefined;
  return () => (pack ??= JSON.parse(text) as Pack);
}
`;
}

function entry(pack: Pack): string {
  const [name, version, digest] = [pack.name, pack.version, pack.digest].map((text) => JSON.stringify(text));
  return `  {
    name: ${name},
    version: ${version},
    digest: ${digest},
    load: parsedOnce(${JSON.stringify(JSON.stringify(pack))}),
  },`;
}
