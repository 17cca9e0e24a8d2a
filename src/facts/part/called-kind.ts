import type { Part, PartKind } from '../../generated/plan-types.ts';
import { carriesCrashLoad } from './part-kinds.ts';

/**
 * The kind that a part's name says, where that is a stricter one than its `kind`: a "Front rail, right" listed as a bracket is
 * judged as a rail, a "Door ring, left" listed as a reinforcement as a ring. Undefined where the name says nothing of the sort.
 */
export function calledKind({ name, kind }: Part): PartKind | undefined {
  const exact = name === undefined ? undefined : kindNamed(name);
  // A reinforcement of a ring may lie on it and be none; of what says little its piece is judged as the whole.
  const piece =
    exact === undefined && name !== undefined && (kind === undefined || barelySays.has(kind))
      ? kindNamed(name.replaceAll(pieces, ' '))
      : undefined;
  const called = exact ?? (piece === 'door ring' ? undefined : piece);
  if (called === undefined || called === kind) return undefined;
  const isRingUnderOtherName = called === 'door ring' && (kind === undefined || couldBeRing.has(kind));
  const isStructureUnderOtherName = kind === undefined || saysLittle.has(kind);
  return isRingUnderOtherName || isStructureUnderOtherName ? called : undefined;
}

/** A piece of a ring, by kind or by name; its skin or trim is none. */
export function isPieceOfRing({ name, kind }: Part): boolean {
  return kind === 'door ring' || (carriesCrashLoad(kind) && /\bring\b/i.test(name ?? ''));
}

/** Structural kinds as which a ring may have been listed. */
const couldBeRing: ReadonlySet<PartKind> = new Set<PartKind>([
  ...([
    'a-pillar',
    'b-pillar',
    'c-pillar',
    'sill',
    'sill reinforcement',
    'roof rail',
    'reinforcement',
  ] as const),
]);

/** Kinds that say little, or that only a slip gives to a part of the structure. A trim called after its pillar is a trim. */
const saysLittle: ReadonlySet<PartKind> = new Set<PartKind>([
  ...([
    'other',
    'bracket',
    'fender',
    'bonnet',
    'boot lid',
    'tailgate',
    'bumper cover',
    'back panel',
    'sensor',
  ] as const),
]);

/** Kinds that say nothing of what a part is: its name does. */
const barelySays: ReadonlySet<PartKind> = new Set<PartKind>(['bracket', 'other']);

/** What names a piece of a part. What is fitted at one (a holder, a trim, a brace, a plate) is none. */
const pieces = /\b(?:reinforcement|reinforcing|extension|section|stub|foot|half|end|tip)\b/gi;

/** Trade words for the kinds that carry crash load, without the side. */
const words: Readonly<Record<string, PartKind>> = {
  'door ring': 'door ring',
  'body side ring': 'door ring',
  'a pillar': 'a-pillar',
  'b pillar': 'b-pillar',
  'c pillar': 'c-pillar',
  'd pillar': 'd-pillar',
  'a post': 'a-pillar',
  'b post': 'b-pillar',
  'c post': 'c-pillar',
  'd post': 'd-pillar',
  sill: 'sill',
  rocker: 'sill',
  'front rail': 'front rail',
  'frame rail': 'front rail',
  'rear rail': 'rear rail',
  'roof rail': 'roof rail',
  crossmember: 'crossmember',
  'cross member': 'crossmember',
  'strut tower': 'strut tower',
  'shock tower': 'strut tower',
  'spring tower': 'strut tower',
  apron: 'apron',
  bulkhead: 'bulkhead',
  'bumper beam': 'bumper beam',
};

/** What says where a part sits, or of what it is, and not what it is. */
const qualifiers = /\b(?:left|right|lh|rh|l|r|inner|upper|lower|one|piece|complete|assembly)\b/gi;

function kindNamed(name: string): PartKind | undefined {
  const bare = name
    .toLowerCase()
    .replaceAll(/[^a-z]+/gu, ' ')
    .replaceAll(qualifiers, ' ')
    .replaceAll(/\s+/gu, ' ')
    .trim();
  return Object.hasOwn(words, bare) ? words[bare] : undefined;
}
