import type { Material } from './material.ts';
import { steelFamily } from './steel-family.ts';

export type AluminiumKind = 'casting' | '7xxx' | '6xxx' | '5xxx' | 'other wrought';

/** Families from the one that takes least heat and bending to the one that takes most. Common practice. */
const kinds: readonly (readonly [familyKey: string, kind: AluminiumKind])[] = [
  ['aluminium_casting', 'casting'],
  ['aluminium_7xxx', '7xxx'],
  ['aluminium_6xxx', '6xxx'],
  ['aluminium_5xxx', '5xxx'],
];

/**
 * Which aluminium a grade names; of several readings the one that takes least. Undefined where the alloy is not named, or not in
 * every reading: a casting is not told from sheet by the word aluminium.
 */
export function aluminiumKind(readings: readonly Material[]): AluminiumKind | undefined {
  for (const [familyKey, kind] of kinds) {
    if (readings.some(({ family }) => family === steelFamily(familyKey).word)) return kind;
  }
  const isNamed = readings.length > 0 && readings.every(({ from }) => from === 'table' || from === 'grammar');
  return isNamed ? 'other wrought' : undefined;
}
