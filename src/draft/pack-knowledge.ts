import { entriesForModel, isForSide, isForVehicle } from '../facts/papers/maker-applies.ts';
import { nameOperation } from '../facts/papers/maker-statements.ts';
import type { MakerEntry, MakerPart, MakerStatement, MakerStatements } from '../facts/context.ts';
import type { Part, Plan } from '../generated/plan-types.ts';

type Vehicle = Plan['vehicle'];

/** What decides which entries of a pack are about a part. */
export interface PartInShort {
  readonly kind?: string | undefined;
  readonly side?: Part['side'] | undefined;
}

/** Something that a vehicle pack states, and where the maker's document says it. */
export interface Known<Entry extends MakerEntry> {
  readonly pack: string;
  readonly entry: Entry;
  /** That it is for this very vehicle and side; else something that would tell is not known yet. */
  readonly isSure: boolean;
}

/** What the packs state of the material and the layers of a part. */
export function knownOfPart(
  makers: readonly MakerStatements[],
  vehicle: Vehicle,
  part: PartInShort,
): readonly Known<MakerPart>[] {
  return applying(makers, vehicle, part, ({ parts = [] }) => parts);
}

/** What the packs state of the work on a part. */
export function knownOfWork(
  makers: readonly MakerStatements[],
  vehicle: Vehicle,
  part: PartInShort,
): readonly Known<MakerStatement>[] {
  return applying(makers, vehicle, part, ({ statements }) => statements);
}

/** The kinds of part that the packs describe for this vehicle, each once. */
export function knownKinds(makers: readonly MakerStatements[], vehicle: Vehicle): readonly string[] {
  const kinds = entriesForModel(vehicle, makers, ({ parts = [] }) => parts)
    .filter(({ entry }) => isForVehicle(entry, vehicle, false))
    .map(({ entry }) => entry.part);
  return [...new Set(kinds)];
}

/** `shall: replace whole; shall not: section, heat`. */
export function statementWords({ shall, shallNot, may, conditions }: MakerStatement): string {
  const words = [
    ['shall', shall.map(nameOperation)],
    ['shall not', shallNot.map(nameOperation)],
    ['may', may.map(nameOperation)],
    ['on condition', conditions],
  ] as const;
  return words
    .filter(([, named]) => named.length > 0)
    .map(([verb, named]) => `${verb}: ${named.join(', ')}`)
    .join('; ');
}

function applying<Entry extends MakerEntry>(
  makers: readonly MakerStatements[],
  vehicle: Vehicle,
  { kind, side }: PartInShort,
  entriesOf: (makers: MakerStatements) => readonly Entry[],
): readonly Known<Entry>[] {
  return entriesForModel(vehicle, makers, entriesOf)
    .filter(
      ({ entry }) =>
        entry.part === kind && isForVehicle(entry, vehicle, true) && isForSide(entry, side, true),
    )
    .map(({ pack, entry }) => ({
      pack,
      entry,
      isSure: isForVehicle(entry, vehicle, false) && isForSide(entry, side, false),
    }));
}
