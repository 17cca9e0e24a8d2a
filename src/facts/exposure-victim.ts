import type { Item } from '../generated/plan-types.ts';
import { heatVictimOf } from '../steel/heat-victim.ts';
import type { HeatVictim } from '../steel/heat-victim.ts';
import { materialEvidence, trustedClass } from './maker-evidence.ts';
import type { PartSurvey, Survey } from './survey.ts';

export type VictimWord = HeatVictim | Item;

export interface Victim {
  readonly word: VictimWord;
  /** Said when the class is not known and the worst was taken. */
  readonly assumption?: string;
}

/**
 * What a neighbour is, as far as heat is concerned. Steel whose class is not known or not read by the maker counts as hardened on a structural part; a skin of
 * unknown metal counts as aluminium, the weaker of what skins are made of.
 */
export function victimOf(survey: Survey, one: PartSurvey): Victim {
  const { part, material, structural } = one;
  if (part.kind === 'glass') return { word: 'glass' };
  if (part.kind === 'traction battery') return { word: 'traction battery' };
  if (part.kind === 'restraint unit') return { word: 'airbag' };
  if (part.kind === 'trim') return { word: 'trim' };
  const strengthClass = trustedClass(survey, one);
  if (strengthClass === undefined) {
    return structural === false
      ? { word: 'aluminium', assumption: 'The metal of this skin is not known; it counts as aluminium.' }
      : {
          word: 'hardened or multi-phase steel',
          assumption:
            material.class === undefined
              ? 'The steel of this part is not known; it counts as hardened.'
              : `That this part is ${material.class} steel is read in no document of the maker; it counts as hardened.`,
        };
  }
  const { family, coldWork } = material;
  const sure = family === undefined || !isSureOfFamily(survey, one) ? {} : { family };
  return { word: heatVictimOf({ class: strengthClass, coldWork, ...sure }) };
}

/** A family that stands more heat than its class counts only when it was read, for certain, in the maker's document or on the part. */
function isSureOfFamily(survey: Survey, { part, material, structural }: PartSurvey): boolean {
  if (material.ambiguity !== undefined || material.contradictions.length > 0) return false;
  const evidence = materialEvidence(survey, part);
  return structural === false || evidence === 'maker document' || evidence === 'marking on part';
}
