import type { Item } from '../../generated/plan-types.ts';
import { heatVictimOf } from '../../steel/heat-victim.ts';
import type { HeatVictim } from '../../steel/heat-victim.ts';
import { materialEvidence, trustedClass } from '../papers/maker-evidence.ts';
import { isMetalTold } from '../part/metal-told.ts';
import type { PartSurvey, Survey } from '../survey.ts';

export type VictimWord =
  | HeatVictim
  | Item
  | 'aluminium 7xxx'
  | 'aluminium casting'
  | 'aluminium of unknown alloy'
  | 'unknown material';

export interface Victim {
  readonly word: VictimWord;
  /** Said when something of the material is not known and the worst was taken. */
  readonly assumption?: string;
}

/**
 * What a neighbour is, as far as heat is concerned. What is not known at all may be any material, and a strength alone does not tell
 * the metal. Steel that is called soft and read in no document of the maker counts as hardened where it may carry load.
 */
export function victimOf(survey: Survey, one: PartSurvey): Victim {
  const { part, material, structural } = one;
  if (part.kind === 'glass') return { word: 'glass' };
  if (part.kind === 'traction battery') return { word: 'traction battery' };
  if (part.kind === 'restraint unit') return { word: 'airbag' };
  if (part.kind === 'trim') return { word: 'trim' };
  if (material.class === undefined)
    return { word: 'unknown material', assumption: 'What this part is made of is not known.' };
  const strengthClass = trustedClass(survey, one);
  if (strengthClass === undefined) {
    return {
      word: 'hardened or multi-phase steel',
      assumption: `That this part is ${material.class} steel is read in no document of the maker; it counts as hardened.`,
    };
  }
  if (strengthClass === 'aluminium') return aluminiumOf(material.family, structural);
  const { family, coldWork } = material;
  const sure = family === undefined || !isSureOfFamily(survey, one) ? {} : { family };
  const word = heatVictimOf({ class: strengthClass, coldWork, ...sure });
  return word === 'plain steel' && !isMetalTold(material)
    ? { word: 'unknown material', assumption: 'A strength alone does not tell of what metal this part is.' }
    : { word };
}

/** A family that stands more heat than its class counts only when it was read, for certain, in the maker's document or on the part. */
function isSureOfFamily(survey: Survey, { part, material, structural }: PartSurvey): boolean {
  if (material.ambiguity !== undefined || material.contradictions.length > 0) return false;
  const evidence = materialEvidence(survey, part);
  return structural === false || evidence === 'maker document' || evidence === 'marking on part';
}

/** A skin is of rolled sheet; what may carry load may be cast, or of the alloys that stand least heat. */
function aluminiumOf(family: string | undefined, structural: PartSurvey['structural']): Victim {
  if (family === 'aluminium 7xxx' || family === 'aluminium casting') return { word: family };
  if (family !== undefined || structural === false) return { word: 'aluminium' };
  return { word: 'aluminium of unknown alloy', assumption: 'Which aluminium this part is of is not known.' };
}
