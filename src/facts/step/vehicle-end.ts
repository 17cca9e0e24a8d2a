import { kindIs } from '../part/kind-table.ts';
import type { PartKind } from '../../generated/plan-types.ts';

/** The end of the vehicle at which something sits. */
export type VehicleEnd = 'front' | 'rear';

const front = /\b(?:front|forward|windscreen|windshield)\b/i;
const rear = /\b(?:rear|back|tail|reversing|blind.spot|lane.change)\b/i;

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
  if (kindIs(kind, 'at the front')) return 'front';
  return kindIs(kind, 'at the rear') ? 'rear' : undefined;
}
