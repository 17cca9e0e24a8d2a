import type { Material } from './material.ts';
import { steelFamily } from './steel-family.ts';
import type { StrengthClass } from './strength-class.ts';

/** Whether a sheet has its strength from cold work, which heat takes away for good. */
export type ColdWork =
  /** `toMpa` is the least that it stands at; left out where no figure is known. */
  | { readonly is: true; readonly toMpa?: number }
  | { readonly is: false }
  | { readonly is: 'unknown'; readonly reason: string };

/**
 * Annealed stainless sheet stands at 850 MPa at most where a body has it (1.4318), and cold-hardened sheet is ordered from 700 MPa
 * (+C700). Tensile strength in MPa, EN 10088-2, from memory.
 */
const coldHardenedFromMpa = 700;
const annealedUpToMpa = 850;

/**
 * Whether what is stated is cold-hardened. Soft and hardened stainless steel bear one number, and only the suffix (+C1000, +CP500,
 * +2B) or the strength tells which is meant.
 *
 * @param tensileMpa the stated tensile strength in MPa, if there is one.
 */
export function coldWorkOf(
  readings: readonly Material[],
  strengthClass: StrengthClass | undefined,
  tensileMpa: number | undefined,
): ColdWork {
  const worked = readings.filter(isColdWorked);
  if (worked.length > 0) {
    const strengths = worked.flatMap((one) => one.tensileMinMpa ?? one.yieldMinMpa ?? []);
    const toMpa = Math.max(...strengths, tensileMpa ?? 0);
    return toMpa > 0 ? { is: true, toMpa } : { is: true };
  }
  const isStainless = strengthClass === 'stainless' || readings.some((one) => one.class === 'stainless');
  if (!isStainless) return { is: false };
  if (tensileMpa !== undefined && tensileMpa > annealedUpToMpa) return { is: true, toMpa: tensileMpa };
  const isSoft = tensileMpa !== undefined && tensileMpa < coldHardenedFromMpa;
  if (isSoft || (readings.length > 0 && readings.every(isSoftByName))) return { is: false };
  return {
    is: 'unknown',
    reason:
      'Whether the stainless steel is annealed or cold-hardened is not stated; look up the suffix (+2B, +C850, +CP500) or the tensile strength on the maker’s material page.',
  };
}

function isColdWorked({ condition, family }: Material): boolean {
  return condition === 'cold hardened' || family === steelFamily('recovery_annealed').word;
}

/** Ferritic sheet is used annealed; a finish such as 2B says so of any. */
function isSoftByName({ family, designation }: Material): boolean {
  return family === steelFamily('stainless_ferritic').word || annealedFinish.test(designation);
}

/** Finishes of EN 10088-2 that are annealed last: 2B, 2D, 2R, 2E, 1D; and the states +A and +AT. From memory. */
const annealedFinish = /\+(?:2[BDRE]|1[CDE]|AT?)$/i;
