import type { Material } from '../material.ts';
import { strongestFirst } from '../reading/merge-readings.ts';
import type { StrengthReading } from './strength-reading.ts';
import { materialsOfTensile } from './strength-materials.ts';
import type { StatedStrength } from './strength-name.ts';
import { statedStrength } from './strength-name.ts';
import { textSplits } from '../reading/text-splits.ts';

/**
 * Yield and tensile strength side by side, as drawings give them: `Re 340 Rm 590 MPa`, `YS 50 ksi / TS 65 ksi`, `340/590 MPa`. They
 * name no family, so the answer is never sure. Undefined for any other text.
 */
export function readStrengthPair(shown: string): StrengthReading | undefined {
  const pair = statedPair(shown);
  if (pair === undefined) return undefined;
  const [yieldMinMpa, tensile] = [pair.yield.mpa, pair.tensile];
  if (yieldMinMpa >= tensile.mpa)
    return {
      reason: `"${shown}" gives a yield (${yieldMinMpa} MPa) that is not below its tensile strength (${tensile.mpa} MPa). Read the drawing again.`,
    };
  const readings = materialsOfTensile(shown, tensile.mpa, tensile.maxMpa, tensile.upToMpa).map(
    (one): Material => ({ ...one, yieldMinMpa }),
  );
  return {
    mpa: tensile.mpa,
    readings: strongestFirst(readings),
    ambiguity: `"${shown}" gives yield and tensile strength, and no family. The strongest that has such strengths counts; state the grade.`,
    assumed: [`${yieldMinMpa} MPa is read as the yield, ${tensile.mpa} MPa as the tensile strength.`],
  };
}

interface StrengthPair {
  readonly yield: StatedStrength;
  readonly tensile: StatedStrength;
}

const units = /(?:MPa|N\/mm(?:2|²|\^2)|GPa|ksi|psi)\b/gi;
const bareFigures = /^(\d{3,4}) ?\/ ?(\d{3,4})(?: ?(?:MPa|N\/mm(?:2|²|\^2)))?$/i;

function statedPair(text: string): StrengthPair | undefined {
  const [, first, second] = bareFigures.exec(text) ?? [];
  if (first !== undefined && second !== undefined && areSteps(text, first, second)) {
    const [low, high] = [first, second].map(Number).toSorted((a, b) => a - b);
    return pairOf(`Re ${String(low)} MPa`, `Rm ${String(high)} MPa`);
  }
  // The unit stands once, behind the second figure.
  const unit = text.match(units)?.at(-1);
  for (const [left, right] of textSplits(text)) {
    const pair = pairOf(left, right) ?? (unit === undefined ? undefined : pairOf(`${left} ${unit}`, right));
    if (pair !== undefined) return pair;
  }
  return undefined;
}

/** Steps of five, as sheet is made; other figures only with their unit, since they may be years. */
function areSteps(text: string, ...figures: readonly string[]): boolean {
  return /[a-z]/i.test(text) || figures.every((one) => Number(one) % 5 === 0);
}

function pairOf(left: string, right: string): StrengthPair | undefined {
  const one = statedStrength(left);
  const other = one === undefined ? undefined : statedStrength(right);
  if (one === undefined || other === undefined || !isUsable(one) || !isUsable(other)) return undefined;
  if (one.of === 'yield' && other.of !== 'yield') return { yield: one, tensile: other };
  return other.of === 'yield' && one.of !== 'yield' ? { yield: other, tensile: one } : undefined;
}

function isUsable({ absurd, onlyMost }: StatedStrength): boolean {
  return !absurd && onlyMost !== true;
}
