import type { PartKind } from '../../generated/plan-types.ts';

/** The end of the vehicle at which something sits. */
export type VehicleEnd = 'front' | 'rear';

const front = /\b(?:front|forward|windscreen|windshield)\b/iu;
const rear = /\b(?:rear|back|tail|reversing|blind.spot|lane.change)\b/iu;

const frontKinds: ReadonlySet<PartKind> = new Set<PartKind>([
  'front rail',
  'apron',
  'strut tower',
  'radiator support',
]);
const rearKinds: ReadonlySet<PartKind> = new Set<PartKind>([
  'rear rail',
  'back panel',
  'boot lid',
  'tailgate',
]);

/** The end that a text names; undefined where it names none or both. */
export function endNamed(text: string): VehicleEnd | undefined {
  const [isFront, isRear] = [front.test(text), rear.test(text)];
  if (isFront === isRear) return undefined;
  return isFront ? 'front' : 'rear';
}

/** The end at which a part sits, by its name or else its kind. */
export function endOfPart(name: string, kind: PartKind | undefined): VehicleEnd | undefined {
  const named = endNamed(name);
  if (named !== undefined || kind === undefined) return named;
  if (frontKinds.has(kind)) return 'front';
  return rearKinds.has(kind) ? 'rear' : undefined;
}
