import type { Part } from '../generated/plan-types.ts';
import { isClosingSkin } from './part-kinds.ts';
import { listOf } from './quantity-of.ts';
import type { PartSurvey, Survey } from './survey.ts';

/** Damage of a bolted or hung skin that goes deep enough to have reached what lies behind it. Common practice. */
const deepDamage: ReadonlySet<string> = new Set(['bend', 'kink', 'tear', 'crack', 'rusted through']);

/**
 * Whether a skin hides structure that nobody has seen: welded and bonded skins always, a door skin once it is folded or torn
 * (its beam lies behind), any part that the plan says lies over another.
 */
export function hidesStructure(part: Part, damage: readonly string[]): boolean {
  if (isClosingSkin(part.kind)) return true;
  return part.kind === 'door skin' && damage.some((kind) => deepDamage.has(kind));
}

/** What the plan says of the structural layer under a skin. */
export function layerBelow(
  survey: Survey,
  one: PartSurvey,
): 'stated and seen' | 'stated, not seen' | 'nothing there' | 'not stated' {
  const { part } = one;
  const listed = listOf(part.over).map((id) => survey.partById.get(id));
  const { id } = part;
  const pointing = (id === undefined ? [] : (survey.namedBy.get(id) ?? [])).filter(
    (other) => other !== one && id !== undefined && listOf(other.part.under).includes(id),
  );
  const layers = new Set([...listed.filter((layer) => layer !== undefined), ...pointing]);
  if (listed.includes(undefined)) return 'stated, not seen';
  if (layers.size === 0) return part.over_nothing === true ? 'nothing there' : 'not stated';
  return [...layers].every(({ part: layer }) => wasSeen(layer)) ? 'stated and seen' : 'stated, not seen';
}

function wasSeen(part: Part): boolean {
  const { damage } = part;
  if (damage === undefined || damage.found_by === 'not looked at') return false;
  const kinds = [...(damage.kind === undefined ? [] : [damage.kind]), ...(damage.kinds ?? [])];
  if (kinds.length === 0 || kinds.includes('not yet seen')) return false;
  // Sound is a claim that needs a look; damage that is named was evidently seen.
  return damage.found_by !== undefined || !kinds.includes('none');
}
