import type { Item, Part, PartKind } from '../../generated/plan-types.ts';
import { kindIs, partKinds } from './kind-table.ts';

/** What the kinds are called: of `roof rail` the two words. */
export const partKindNouns: ReadonlySet<string> = new Set(
  partKinds.filter((kind) => kind !== 'other').flatMap((kind) => kind.match(/[a-z]{2,}/gu) ?? []),
);

export function carriesCrashLoad(kind: PartKind | undefined): boolean {
  return kindIs(kind, 'carries crash load');
}

/** Nobody draws a cosmetic skin of the strongest steels. */
export function carriesCrashLoadByStrength(strengthClass: string | undefined): boolean {
  return strengthClass === 'press-hardened' || strengthClass === 'ultra-high-strength';
}

export function usuallyCosmetic(kind: PartKind | undefined): boolean {
  return kindIs(kind, 'cosmetic');
}

export function isClosingSkin(kind: PartKind | undefined): boolean {
  return kindIs(kind, 'closing skin');
}

export function closesHollowMember(kind: PartKind | undefined): boolean {
  return kindIs(kind, 'hollow');
}

export function goesOnWithoutWelding(kind: PartKind | undefined): boolean {
  return kindIs(kind, 'goes on without welding');
}

export function isWeldedIn(kind: PartKind | undefined): boolean {
  return kindIs(kind, 'welded in');
}

export function canBeEither(kind: PartKind | undefined): boolean {
  return kind === undefined || kindIs(kind, 'either');
}

/** Whether a part of the kind can be cut or welded with the part off the vehicle; of the body itself it cannot. */
export function canBeWorkedOffVehicle(kind: PartKind | undefined): boolean {
  return goesOnWithoutWelding(kind) || kindIs(kind, 'on a carrier that comes off');
}

export function usuallyCarriesRestraintUnit(kind: PartKind | undefined): boolean {
  return kindIs(kind, 'carries restraint units');
}

/** Whether a part is made in one piece. */
export function isOnePiece({ one_piece: onePiece, kind }: Part): boolean {
  return onePiece ?? kindIs(kind, 'one piece');
}

/** Items of a plan that are pyrotechnic units. */
export function isPyrotechnic(item: Item): boolean {
  return item === 'airbag' || item === 'belt pretensioner';
}

/** The reason why it is not known whether a part carries load, in the words in which every fact gives it, so that it is asked once. */
export function loadNotTold({ name }: { readonly name: string }): string {
  return `Whether ${name} is structural is neither stated nor clear from its kind.`;
}
