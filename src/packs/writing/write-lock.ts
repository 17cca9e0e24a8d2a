import type { Layer } from '../layers/resolve-packs.ts';

/** The text of a lock file that fixes packs in the versions in which they take part, by name. */
export function lockText(layers: readonly Pick<Layer, 'name' | 'version' | 'digest'>[]): string {
  const packs = layers
    .toSorted((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0))
    .map(
      ({ name, version, digest }) => `  - pack: ${name}\n    version: ${version}\n    digest: ${digest}\n`,
    );
  return `# The packs by which the plans here and below are judged. Written by \`planish packs lock\`; \`planish check --locked\` refuses others.\nlock: 1\npacks:\n${packs.join('')}`;
}
