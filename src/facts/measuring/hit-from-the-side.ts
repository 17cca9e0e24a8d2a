import { kindIs } from '../part/kind-table.ts';
import type { PartSurvey, Survey } from '../survey.ts';

const alongOrAbove = /\b(?:front|head[- ]?on|nose|rear|behind|back|above|roof|hail|tree)\b/iu;
const sideways = /\b(?:side|sides|sideways|door|doors|sill|pillar|post|ring|right[- ]angles?)\b/iu;

/**
 * Whether what stands around a door was pushed inwards: it is not said to be sound, and the words on the blow do not put it at an end of
 * the vehicle or on its roof. Diagonals do not show that: 33 mm inwards over 1,400 mm lengthen one by 0.4 mm (Pythagoras).
 */
export function isHitFromTheSide({ plan }: Survey, { part }: PartSurvey): boolean {
  if (!kindIs(part.kind, 'frames an opening') || part.damage?.kind === 'none') return false;
  const words = plan.damage?.impact ?? '';
  return sideways.test(words) || !alongOrAbove.test(words);
}
