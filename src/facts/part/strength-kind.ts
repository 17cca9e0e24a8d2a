import { strengthLeft } from '../../heat/strength/strength-left.ts';
import type { Delivered, StrengthKind, StrengthLeft } from '../../heat/strength/strength-answer.ts';
import type { TemperatureHistory } from '../../heat/point-history.ts';
import type { Neighbour } from '../heat/exposed-neighbour.ts';

/**
 * By which model a neighbour's steel loses strength to heat; undefined for what the limits of temperature alone are for. Of
 * ultra-high-strength steel whose family is not known martensite is taken: it loses most.
 */
export function strengthKind({ part, victim }: Pick<Neighbour, 'part' | 'victim'>): StrengthKind | undefined {
  if (victim !== 'hardened or multi-phase steel' || part === undefined) return undefined;
  const { class: strengthClass, family } = part.material;
  if (strengthClass === 'press-hardened') return 'press-hardened';
  if (family?.startsWith('dual-phase') === true) return 'dual-phase';
  if (family === 'complex-phase') return 'complex-phase';
  if (family === 'TRIP') return 'TRIP';
  return strengthClass === 'ultra-high-strength' ? 'martensitic' : undefined;
}

/** What is left of the strength of such a neighbour after a history; undefined where no model is made for it. */
export function strengthLeftOf(
  neighbour: Pick<Neighbour, 'part' | 'victim'>,
  history: TemperatureHistory,
): StrengthLeft | undefined {
  const kind = strengthKind(neighbour);
  return kind === undefined ? undefined : strengthLeft(kind, history, deliveredOf(kind, neighbour.part));
}

/** Harder steel than the usual 480 HV (1555 MPa by ISO 18265) tempers from where it is; for softer steel 480 HV errs high. */
const usualTensileMpa = 1555;

function deliveredOf(kind: StrengthKind, part: Neighbour['part']): Delivered {
  const tensileMpa = part?.material.tensileMinMpa;
  const isMartensite = kind === 'press-hardened' || kind === 'martensitic';
  return isMartensite && tensileMpa !== undefined && tensileMpa > usualTensileMpa ? { tensileMpa } : {};
}
