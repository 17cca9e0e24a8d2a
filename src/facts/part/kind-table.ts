import type { PartKind } from '../../generated/plan-types.ts';

/**
 * What a part of a kind usually is. Common practice, no source; a plan's own statement can only make it stricter. `carries crash load`,
 * or carries a wheel: structural whatever the plan says. `cosmetic`: carries none in usual bodies, unless the plan says that this one
 * does. `either`: body by body.
 */
type Trait =
  | 'carries crash load'
  | 'cosmetic'
  | 'either'
  /** Welded or bonded into the body, whatever is bolted to it. */
  | 'welded in'
  /** Taken off and put on without welding. */
  | 'goes on without welding'
  /** Welded or bonded to a carrier which itself comes off: a door lies on the bench with its skin. */
  | 'on a carrier that comes off'
  /** A skin that is welded or bonded over structure, so that nobody sees what lies under it. */
  | 'closing skin'
  /** Made in one piece, unless the plan says that it has joints. */
  | 'one piece'
  /** Closes a hollow member. */
  | 'hollow'
  /** Airbags or pretensioners usually sit in it. */
  | 'carries restraint units'
  /** Stands around a door or a windscreen: the two diagonals of the opening tell whether it came out right. */
  | 'frames an opening'
  /** Every data sheet gives points of it: a point on a neighbour says nothing of how it came out. */
  | 'bears points'
  /** Makes up the edge on which a vehicle stands on its lift. */
  | 'edge of the lift'
  /** Frames or roofs the traction battery in most electric cars. */
  | 'around the traction battery'
  /** Reaches across the vehicle, so that what befalls it befalls both sides. */
  | 'from side to side'
  | 'at the front'
  | 'at the rear';

/** A row for every kind of the schema, which the compiler demands: a kind that nobody thought of would err low. */
const table: Readonly<Record<PartKind, readonly Trait[]>> = {
  'door ring': [
    'carries crash load',
    'welded in',
    'one piece',
    'hollow',
    'carries restraint units',
    'frames an opening',
    'bears points',
    'edge of the lift',
  ],
  'a-pillar': [
    'carries crash load',
    'welded in',
    'hollow',
    'carries restraint units',
    'frames an opening',
    'bears points',
  ],
  'b-pillar': [
    'carries crash load',
    'welded in',
    'hollow',
    'carries restraint units',
    'frames an opening',
    'bears points',
  ],
  'c-pillar': [
    'carries crash load',
    'welded in',
    'hollow',
    'carries restraint units',
    'frames an opening',
    'bears points',
  ],
  'd-pillar': [
    'carries crash load',
    'welded in',
    'hollow',
    'carries restraint units',
    'frames an opening',
    'bears points',
  ],
  sill: [
    'carries crash load',
    'welded in',
    'hollow',
    'frames an opening',
    'edge of the lift',
    'around the traction battery',
  ],
  'sill reinforcement': [
    'carries crash load',
    'welded in',
    'frames an opening',
    'edge of the lift',
    'around the traction battery',
  ],
  'roof rail': ['carries crash load', 'welded in', 'hollow', 'carries restraint units', 'frames an opening'],
  'roof bow': ['carries crash load'],
  'front rail': ['carries crash load', 'welded in', 'hollow', 'bears points', 'at the front'],
  'rear rail': ['carries crash load', 'welded in', 'hollow', 'bears points', 'at the rear'],
  apron: ['carries crash load', 'welded in', 'bears points', 'at the front'],
  'strut tower': ['carries crash load', 'welded in', 'bears points', 'at the front'],
  crossmember: ['carries crash load', 'hollow', 'around the traction battery'],
  bulkhead: ['carries crash load', 'welded in'],
  floor: ['carries crash load', 'welded in', 'around the traction battery'],
  tunnel: ['carries crash load', 'around the traction battery'],
  wheelhouse: ['carries crash load', 'welded in'],
  reinforcement: ['carries crash load'],
  'bumper beam': ['carries crash load', 'goes on without welding', 'from side to side'],
  'door beam': ['carries crash load', 'on a carrier that comes off'],
  'battery tray': ['carries crash load', 'goes on without welding', 'around the traction battery'],
  subframe: ['carries crash load', 'goes on without welding'],
  'radiator support': ['either', 'goes on without welding', 'from side to side', 'at the front'],
  'back panel': ['either', 'from side to side', 'at the rear'],
  'side panel': ['welded in', 'closing skin'],
  'quarter panel': ['welded in', 'closing skin'],
  'sill skin': ['welded in', 'closing skin', 'edge of the lift', 'around the traction battery'],
  'roof skin': ['welded in', 'closing skin'],
  door: ['goes on without welding'],
  'door skin': ['cosmetic', 'on a carrier that comes off'],
  fender: ['cosmetic', 'goes on without welding'],
  bonnet: ['cosmetic', 'goes on without welding'],
  'boot lid': ['cosmetic', 'goes on without welding', 'at the rear'],
  tailgate: ['cosmetic', 'goes on without welding', 'at the rear'],
  'bumper cover': ['cosmetic', 'goes on without welding', 'from side to side'],
  bracket: ['either', 'on a carrier that comes off'],
  'suspension part': ['carries crash load', 'goes on without welding'],
  'steering part': ['carries crash load', 'goes on without welding'],
  wheel: ['cosmetic', 'goes on without welding'],
  glass: ['cosmetic', 'goes on without welding'],
  lamp: ['cosmetic', 'goes on without welding'],
  sensor: ['cosmetic', 'goes on without welding'],
  trim: ['cosmetic', 'goes on without welding'],
  seat: ['cosmetic', 'goes on without welding', 'carries restraint units'],
  'restraint unit': ['cosmetic', 'goes on without welding'],
  'traction battery': ['carries crash load', 'goes on without welding'],
  other: ['either'],
};

/** The kinds that there are. */
export const partKinds: readonly string[] = Object.keys(table);

const traits: ReadonlyMap<string, readonly Trait[]> = new Map(Object.entries(table));

/** False of a part of unknown kind: what follows from that is for the caller to say. */
export function kindIs(kind: PartKind | undefined, trait: Trait): boolean {
  return kind !== undefined && traits.get(kind)?.includes(trait) === true;
}
