import type { Item, Part, PartKind } from '../../generated/plan-types.ts';

// What a part of a kind usually is. Common practice, no source; a plan's own statement can only make it stricter.

/** Kinds that carry load or energy in a crash, or carry a wheel: structural whatever the plan says. */
const loadBearing: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['door ring', 'a-pillar', 'b-pillar', 'c-pillar', 'd-pillar', 'sill', 'sill reinforcement'] as const),
  ...(['roof rail', 'roof bow', 'front rail', 'rear rail', 'apron', 'strut tower', 'crossmember'] as const),
  ...(['bulkhead', 'floor', 'tunnel', 'wheelhouse', 'reinforcement', 'bumper beam', 'door beam'] as const),
  ...(['battery tray', 'subframe', 'suspension part', 'steering part', 'traction battery'] as const),
]);

/** Kinds that carry none in usual bodies, unless the plan says that this one does. */
const bolted: ReadonlySet<PartKind> = new Set<PartKind>([
  ...([
    'bumper cover',
    'fender',
    'bonnet',
    'boot lid',
    'tailgate',
    'door skin',
    'lamp',
    'trim',
    'glass',
  ] as const),
  ...(['seat', 'restraint unit', 'wheel'] as const),
]);

/** Skins that are welded or bonded over structure, so that nobody sees what lies under them. */
const closingSkins: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['side panel', 'quarter panel', 'sill skin', 'roof skin'] as const),
]);

/** Kinds that close a hollow member. */
const hollow: ReadonlySet<PartKind> = new Set<PartKind>([
  ...([
    'door ring',
    'a-pillar',
    'b-pillar',
    'c-pillar',
    'd-pillar',
    'sill',
    'roof rail',
    'front rail',
  ] as const),
  ...(['rear rail', 'crossmember'] as const),
]);

/** Kinds that are taken off and put on without welding. */
const withoutWelding: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['bumper cover', 'fender', 'bonnet', 'boot lid', 'tailgate', 'door', 'lamp', 'trim', 'glass'] as const),
  ...([
    'seat',
    'restraint unit',
    'wheel',
    'bumper beam',
    'subframe',
    'suspension part',
    'steering part',
  ] as const),
  ...(['battery tray', 'traction battery', 'radiator support'] as const),
]);

/** Kinds that are welded or bonded into the body, whatever is bolted to them. */
const weldedIn: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['door ring', 'a-pillar', 'b-pillar', 'c-pillar', 'd-pillar', 'sill', 'sill reinforcement'] as const),
  ...(['roof rail', 'front rail', 'rear rail', 'apron', 'strut tower', 'bulkhead', 'floor'] as const),
  ...(['wheelhouse', 'side panel', 'quarter panel', 'sill skin', 'roof skin'] as const),
]);

/** Kinds of which some carry crash load and some do not, body by body. */
const either: ReadonlySet<PartKind> = new Set<PartKind>([
  'back panel',
  'radiator support',
  'bracket',
  'other',
]);

/** Kinds that are welded or bonded to a carrier which itself comes off: a door lies on the bench with its skin. */
const onCarrierThatComesOff: ReadonlySet<PartKind> = new Set<PartKind>(['door skin', 'door beam', 'bracket']);

/** Kinds in which airbags or pretensioners usually sit. */
const carriesUnits: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['roof rail', 'a-pillar', 'b-pillar', 'c-pillar', 'd-pillar', 'door ring', 'seat'] as const),
]);

export function carriesCrashLoad(kind: PartKind | undefined): boolean {
  return kind !== undefined && loadBearing.has(kind);
}

/** Nobody draws a cosmetic skin of the strongest steels. */
export function carriesCrashLoadByStrength(strengthClass: string | undefined): boolean {
  return strengthClass === 'press-hardened' || strengthClass === 'ultra-high-strength';
}

export function usuallyCosmetic(kind: PartKind | undefined): boolean {
  return kind !== undefined && bolted.has(kind);
}

export function isClosingSkin(kind: PartKind | undefined): boolean {
  return kind !== undefined && closingSkins.has(kind);
}

export function closesHollowMember(kind: PartKind | undefined): boolean {
  return kind !== undefined && hollow.has(kind);
}

export function goesOnWithoutWelding(kind: PartKind | undefined): boolean {
  return kind !== undefined && withoutWelding.has(kind);
}

export function isWeldedIn(kind: PartKind | undefined): boolean {
  return kind !== undefined && weldedIn.has(kind);
}

export function canBeEither(kind: PartKind | undefined): boolean {
  return kind === undefined || either.has(kind);
}

/** Whether a part of the kind can be cut or welded with the part off the vehicle; of the body itself it cannot. */
export function canBeWorkedOffVehicle(kind: PartKind | undefined): boolean {
  return goesOnWithoutWelding(kind) || (kind !== undefined && onCarrierThatComesOff.has(kind));
}

export function usuallyCarriesRestraintUnit(kind: PartKind | undefined): boolean {
  return kind !== undefined && carriesUnits.has(kind);
}

/** Whether a part is made in one piece; a ring is, unless the plan says that it has joints. */
export function isOnePiece({ one_piece: onePiece, kind }: Part): boolean {
  return onePiece ?? kind === 'door ring';
}

/** Items of a plan that are pyrotechnic units. */
export function isPyrotechnic(item: Item): boolean {
  return item === 'airbag' || item === 'belt pretensioner';
}
