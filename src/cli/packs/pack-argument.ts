import { builtInPacks } from '../../generated/built-in-packs.ts';
import { packAt, versionsOf } from '../../packs/versions/pack-at.ts';
import type { Pack } from '../../packs/pack.ts';
import { fitsRange } from '../../packs/versions/version-range.ts';
import { readVersion } from '../../packs/versions/semantic-version.ts';
import { loadGivenPacks } from '../judging/given-packs.ts';

/** A pack in one version, and with its whole history. */
export type NamedPack =
  | { readonly ok: true; readonly at: Pack; readonly whole: Pack }
  | { readonly ok: false; readonly lines: readonly string[] };

/** `general`, `general@1.1`, `packs/mine`, `packs/mine@1.0.0`: a built-in pack or one that lies somewhere, in the newest version that fits. */
export function packFrom(given: string): NamedPack {
  const cut = given.lastIndexOf('@');
  const [name, range] = cut > 0 ? [given.slice(0, cut), given.slice(cut + 1)] : [given, undefined];
  const builtIn = builtInPacks().filter((pack) => pack.name === name);
  const found = builtIn.length > 0 ? { ok: true as const, packs: builtIn } : loadGivenPacks([name]);
  if (!found.ok) return found;
  const [whole, ...more] = found.packs;
  if (whole === undefined || more.length > 0) return refuse(`${given}: name one pack.`);
  const versions = versionsOf(whole);
  const fitting = versions.filter(({ version }) => {
    const read = readVersion(version);
    return range === undefined || (read !== undefined && fitsRange(read, range) === true);
  });
  const newest = fitting.at(-1);
  if (newest === undefined) {
    const known = versions.map(({ version }) => version).join(', ');
    return refuse(`${given}: ${whole.name} has no such version; it has ${known}.`);
  }
  return { ok: true, at: packAt(whole, newest), whole };
}

function refuse(sentence: string): NamedPack {
  return { ok: false, lines: [sentence] };
}
