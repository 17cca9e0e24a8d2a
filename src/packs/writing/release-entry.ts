import type { Pack, Release } from '../pack.ts';
import { diffPacks } from '../versions/diff-packs.ts';
import { packAt, versionsOf } from '../versions/pack-at.ts';
import { brokenPromises } from '../versions/semantic-promise.ts';
import { readVersion } from '../versions/semantic-version.ts';
import { yamlScalar } from './yaml-scalar.ts';

/** Why the version that the files of a pack give cannot be released, a sentence each; none when it can. */
export function againstRelease(pack: Pack): readonly string[] {
  const last = pack.releases?.at(-1);
  if (pack.released) {
    return [
      `${pack.name} ${pack.version} is released already: give pack.yaml the next version, and what is new \`since\` it.`,
    ];
  }
  const broken = brokenPromises(pack)
    .filter(({ version }) => version === pack.version)
    .map(({ sentence }) => `${sentence} ${leastMajor(last)}`.trim());
  const before = versionsOf(pack).find(({ version }) => version === last?.version);
  if (before === undefined) return broken;
  const now = { version: pack.version, digest: pack.digest, released: false };
  const same = diffPacks(packAt(pack, before), packAt(pack, now)).length === 0;
  const sameVehicle = JSON.stringify(packAt(pack, before).vehicle) === JSON.stringify(pack.vehicle);
  return same && sameVehicle
    ? [`Nothing that judges differs from ${before.version}; there is nothing to release.`]
    : broken;
}

function leastMajor(last: Release | undefined): string {
  const version = last === undefined ? undefined : readVersion(last.version);
  return version === undefined ? '' : `A major one, ${String(version[0] + 1)}.0.0, may.`;
}

/** What releases.yaml says of a pack with one more release; `text` is the file as it is, undefined where there is none. */
export function withRelease(text: string | undefined, pack: string, release: Release): string {
  const { version, date, facts, digest, reasons } = release;
  const head =
    text ??
    `# What was released of the pack. A released version never changes: the digest is that of its canonical form.
pack: ${pack}
releases:
`;
  const lines = [
    `  - version: ${version}`,
    `    date: ${date}`,
    `    facts: ${String(facts)}`,
    `    digest: ${digest}`,
    '    reasons:',
    ...reasons.map((reason) => `      - ${yamlScalar(reason)}`),
  ];
  return `${head}${head.endsWith('\n') ? '' : '\n'}${lines.join('\n')}\n`;
}
