import { nearestWords } from '../../plan/nearest-word.ts';
import { packAt, versionsOf } from '../versions/pack-at.ts';
import type { PackVersion } from '../versions/pack-at.ts';
import type { PackPlace } from '../pack-fault.ts';
import type { Pack } from '../pack.ts';
import { compareVersions, readVersion } from '../versions/semantic-version.ts';
import { fitsRange } from '../versions/version-range.ts';

/** A pack in the version in which it takes part. */
export interface ChosenPack {
  /** With its whole history. */
  readonly whole: Pack;
  /** With what the version holds, and nothing else. */
  readonly at: Pack;
  /** The newest release that is here, where it comes after the chosen version. */
  readonly newer?: string;
}

/** What a lock fixes of a pack. */
export interface LockedVersion {
  readonly version: string;
  readonly digest: string;
}

export interface Refusal {
  readonly ok: false;
  readonly sentence: string;
  /** Where in a pack, when one of them is at fault. */
  readonly place?: PackPlace;
}

export type Choice =
  { readonly ok: true; readonly chosen: readonly ChosenPack[]; readonly drift: readonly string[] } | Refusal;

interface Offer {
  readonly pack: Pack;
  readonly version: PackVersion;
}

/**
 * Of each pack the version that takes part: `general`, then the packs that a plan names, in its order, then the others that
 * were given. A lock decides where its version is here and fits what the plan asks; where it does not, that is
 * drift, which is told, and the newest version that fits is taken. A locked version with other content is refused.
 */
export function chooseVersions(
  available: readonly Pack[],
  pins: readonly string[],
  locked: ReadonlyMap<string, LockedVersion> | undefined,
): Choice {
  const shelf = shelve(available);
  if (!shelf.ok) return shelf;
  const { offers } = shelf;
  if (!offers.has('general')) return refuse('The general pack is not there.');
  const ranges = new Map<string, string[]>([['general', []]]);
  for (const pin of pins) {
    const [name = '', range, ...more] = pin.split('@');
    if (!offers.has(name)) return refuse(notHere(pin, name, [...offers.keys()]));
    if (more.length > 0 || (range !== undefined && fitsRange([1, 0, 0], range) === undefined)) {
      return refuse(`\`${pin}\` is not a pack with a version; write ${name}@1 or ${name}@1.0.0.`);
    }
    ranges.set(name, [...(ranges.get(name) ?? []), ...(range === undefined ? [] : [range])]);
  }
  for (const name of offers.keys()) if (!ranges.has(name)) ranges.set(name, []);

  const chosen: ChosenPack[] = [];
  const drift: string[] = [];
  for (const [name, asked] of ranges) {
    const all = offers.get(name) ?? [];
    const fitting = all.filter((offer) => asked.every((range) => fits(offer, range)));
    const newest = fitting.at(-1);
    if (newest === undefined) {
      return refuse(
        `The plan asks for \`${asked.map((range) => `${name}@${range}`).join('`, `')}\`; here is ${name} ${namesOf(all)}.`,
      );
    }
    const kept = fromLock(name, all, fitting, locked);
    if (typeof kept === 'object' && 'ok' in kept) return kept;
    if (typeof kept === 'string') drift.push(kept);
    const { pack, version } = typeof kept === 'object' ? kept : newest;
    const newer = all.filter((one) => one.version.released && comesAfter(one, version.version)).at(-1);
    chosen.push({
      whole: pack,
      at: packAt(pack, version),
      ...(newer === undefined ? {} : { newer: newer.version.version }),
    });
  }
  for (const [name, { version }] of locked ?? []) {
    if (!offers.has(name)) drift.push(`The lock fixes ${name} ${version}, and no such pack is here.`);
  }
  return { ok: true, chosen, drift };
}

function fits({ version }: Offer, range: string): boolean {
  const read = readVersion(version.version);
  return read !== undefined && fitsRange(read, range) === true;
}

function fromLock(
  name: string,
  all: readonly Offer[],
  fitting: readonly Offer[],
  locked: ReadonlyMap<string, LockedVersion> | undefined,
): Offer | string | Refusal | undefined {
  if (locked === undefined) return undefined;
  const lock = locked.get(name);
  if (lock === undefined) return `The lock does not name the pack ${name}.`;
  const offer = all.find(({ version }) => version.version === lock.version);
  if (offer === undefined) return `The lock fixes ${name} ${lock.version}; here is ${name} ${namesOf(all)}.`;
  if (offer.version.digest !== lock.digest) {
    return refuse(
      `The lock fixes ${name} ${lock.version} as ${lock.digest}; what is here is ${offer.version.digest}: another content under the same version.`,
      offer.pack.places?.['pack'],
    );
  }
  if (!fitting.includes(offer))
    return `The lock fixes ${name} ${lock.version}, which is not what the plan asks for.`;
  return offer;
}

/** All versions of each pack by its name, the oldest first. */
function shelve(
  available: readonly Pack[],
): { readonly ok: true; readonly offers: ReadonlyMap<string, readonly Offer[]> } | Refusal {
  const offers = new Map<string, Offer[]>();
  for (const pack of available) {
    // The loader refuses it; a pack made otherwise would lose its rules without a word.
    if (readVersion(pack.version) === undefined) {
      return refuse(
        `The version of the pack ${pack.name} cannot be read; it is three numbers, such as 1.0.0.`,
        pack.places?.['pack'],
      );
    }
    const here = offers.get(pack.name) ?? [];
    offers.set(pack.name, here);
    const isFirst = here.length === 0;
    for (const version of versionsOf(pack)) {
      const before = here.find((one) => one.version.version === version.version);
      if (before === undefined && (isFirst || pack.name !== 'general')) here.push({ pack, version });
      else if (before?.version.digest !== version.digest) return refuse(...twice(pack, version, before));
    }
    here.sort((a, b) => orderOf(a.version.version, b.version.version));
  }
  return { ok: true, offers };
}

function twice(
  pack: Pack,
  { version }: PackVersion,
  before: Offer | undefined,
): [string, PackPlace | undefined] {
  const sentence =
    pack.name === 'general'
      ? 'The pack general comes with planish; a pack of one’s own has another name.'
      : `The pack ${pack.name} ${version} was given more than once, with different content${before?.pack.places?.['pack'] === undefined ? '' : `; the other is ${before.pack.places['pack'].file}`}.`;
  return [sentence, pack.places?.['pack']];
}

function orderOf(one: string, other: string): number {
  const [a, b] = [readVersion(one), readVersion(other)];
  return a === undefined || b === undefined ? 0 : compareVersions(a, b);
}

function comesAfter({ version }: Offer, other: string): boolean {
  return orderOf(version.version, other) > 0;
}

function namesOf(offers: readonly Offer[]): string {
  return offers.map(({ version }) => version.version).join(', ');
}

function notHere(pin: string, name: string, known: readonly string[]): string {
  const near = nearestWords(name, known);
  const hint = near.length === 0 ? '' : ` Nearest known: \`${near.join('`, `')}\`.`;
  return `The plan asks for the pack \`${pin}\`, which is not here; give its folder with --rules.${hint}`;
}

/** A refusal, with the place in a pack where one is known. */
export function refuse(sentence: string, place?: PackPlace): Refusal {
  return { ok: false, sentence, ...(place === undefined ? {} : { place }) };
}
