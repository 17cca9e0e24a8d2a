import type { Part } from '../../generated/plan-types.ts';
import { damageKinds } from './part-damage-facts.ts';
import { isClosingSkin } from './part-kinds.ts';
import { listOf } from '../quantity-of.ts';
import { saysNone } from '../step/step-draft.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/** Damage of a bolted or hung skin that goes deep enough to have reached what lies behind it: of a door also a bend. Common practice. */
const folded: ReadonlySet<string> = new Set(['kink', 'tear', 'crack', 'rusted through']);

/**
 * Whether a skin hides structure that nobody has seen: welded and bonded skins always; once it is kinked or torn, also a fender
 * (the apron lies behind) and a door or its skin that stays on the vehicle (the beam lies behind).
 */
export function hidesStructure({ plan }: Survey, { part, operations }: PartSurvey): boolean {
  const kinds = damageKinds(part);
  if (isClosingSkin(part.kind)) return !isHailOnly(plan.damage?.impact, kinds);
  const isFolded = kinds.some((kind) => folded.has(kind));
  // A wing that is bolted on cracks at its edge under a knock that moves nothing behind it.
  if (part.kind === 'fender') return kinds.some((kind) => kind !== 'crack' && folded.has(kind));
  const isDeep = isFolded || kinds.includes('bend');
  if (part.kind === 'door skin') return isDeep;
  const goesWhole = operations.some(
    ({ operation, cutsPartWay }) => operation.do === 'replace' && cutsPartWay === false,
  );
  return part.kind === 'door' && isDeep && !goesWhole;
}

/** Hail dents the skin and nothing under it; a crease or a tear is no hail’s. Common practice, no source. */
function isHailOnly(impact: string | undefined, kinds: readonly string[]): boolean {
  const isHail =
    /hail/i.test(impact ?? '') &&
    /^(?:(?:by|from|in a|the) )?hail(?:stones?|storm)?\b(?!.*\b(?:and|then|also|with)\b)/i.test(
      (impact ?? '').trim(),
    );
  return isHail && kinds.length > 0 && kinds.every((kind) => kind === 'dent' || kind === 'scratch');
}

/** What the plan says of the structural layer under a skin. */
export function layerBelow(
  survey: Survey,
  one: PartSurvey,
): 'stated and seen' | 'stated, not seen' | 'nothing there' | 'not stated' {
  const { part } = one;
  if (layerUnseen(survey, one) !== undefined) return 'stated, not seen';
  if (layersUnder(survey, one).length > 0) return 'stated and seen';
  return part.over_nothing === true && wasOpened(part) ? 'nothing there' : 'not stated';
}

/** The first layer under a skin that nobody is said to have looked at behind it: in words, and where it stands. */
export function layerUnseen(
  survey: Survey,
  one: PartSurvey,
): { readonly text: string; readonly at: string } | undefined {
  const gone = listOf(one.part.over).find((id) => survey.partById.get(id) === undefined);
  if (gone !== undefined) return { text: `${gone} (no part of the plan)`, at: `${one.at}/over` };
  const isInView = wasInView(survey, one);
  const layer = layersUnder(survey, one).find(({ part }) => !wasSeen(part, isInView));
  return layer === undefined
    ? undefined
    : {
        text: `${layer.name} (${unseenBecause(layer.part)})`,
        at: layer.part.damage === undefined ? layer.at : `${layer.at}/damage`,
      };
}

function unseenBecause(part: Part): string {
  const by = part.damage?.found_by;
  const kinds = damageKinds(part);
  if (by === 'not looked at' || kinds.includes('not yet seen')) return 'not yet looked at';
  if (kinds.length === 0) return 'no damage and no `none` is stated';
  return by === 'seen' ? 'sound, and only `seen`' : 'sound, and not how that was found';
}

/** A lamp or a trim panel behind a skin is no layer that carries anything. */
function layersUnder(survey: Survey, one: PartSurvey): readonly PartSurvey[] {
  const listed = listOf(one.part.over).map((id) => survey.partById.get(id));
  return [...new Set([...listed, ...layersPointing(survey, one)])]
    .filter((layer) => layer !== undefined)
    .filter((layer) => layer.structural !== false);
}

/** Whether the skin came off whole and somebody looked into what it closes before the new one went on: then the layer was open to view. */
function wasInView({ plan }: Survey, { part: { id }, operations }: PartSurvey): boolean {
  return (
    id !== undefined &&
    operations.some(
      ({ operation, cutsPartWay }) =>
        operation.do === 'replace' && cutsPartWay === false && operation.done !== undefined,
    ) &&
    (plan.hold_points ?? []).some(
      ({ point, part, done, by }) =>
        point === 'cavity before the skin' && part === id && done !== undefined && !saysNone(by?.name),
    )
  );
}

function layersPointing(survey: Survey, one: PartSurvey): readonly PartSurvey[] {
  const { id } = one.part;
  if (id === undefined) return [];
  return (survey.namedBy.get(id) ?? []).filter(
    (other) => other !== one && listOf(other.part.under).includes(id),
  );
}

/** From outside nobody can say that nothing lies behind. */
function wasOpened({ damage }: Part): boolean {
  const by = damage?.found_by;
  return (
    by === 'outer panel cut back' ||
    by === 'part removed' ||
    by === 'probe camera' ||
    by === 'opened from inside'
  );
}

function wasSeen(part: Part, isInView: boolean): boolean {
  const { damage } = part;
  if (damage === undefined || damage.found_by === 'not looked at') return false;
  const kinds = damageKinds(part);
  if (kinds.length === 0 || kinds.includes('not yet seen')) return false;
  // Sound is a claim that needs a look behind the skin; damage that is named was evidently seen.
  return (
    !kinds.includes('none') || (damage.found_by !== undefined && (isInView || damage.found_by !== 'seen'))
  );
}
