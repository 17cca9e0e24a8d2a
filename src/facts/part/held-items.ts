import type { Item } from '../../generated/plan-types.ts';
import { isPyrotechnic } from './part-kinds.ts';
import { unitsAt, wasOffBefore } from '../step/restraint-units.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import type { TriState } from '../tri-state.ts';

/** Something sensitive that sits in or on a part and takes the heat with it. */
export interface HeldItem {
  readonly item: Item;
  readonly name: string;
  /** Undefined where the steps do not tell whether it is off by then. */
  readonly stays: TriState;
}

/** What a part carries while the work of a step is hot: what `holds` names, and the restraint units listed at it. */
export function heldItems(survey: Survey, part: PartSurvey, step: number | undefined): readonly HeldItem[] {
  const units = unitsAt(survey, part.part.id);
  const held = (part.part.holds ?? [])
    // The list of units says more of them than the word does.
    .filter((item) => units.length === 0 || !isPyrotechnic(item))
    .map((item) => ({ item, name: `${item} at ${part.name}`, stays: true }));
  const fitted = units.flatMap((unit): readonly HeldItem[] => {
    const off = wasOffBefore(unit, step);
    if (off === true) return [];
    return [
      {
        item: unit.unit === 'belt pretensioner' ? 'belt pretensioner' : 'airbag',
        name: unit.name ?? `${unit.unit ?? 'a restraint unit'} at ${part.name}`,
        stays: off === undefined ? undefined : true,
      },
    ];
  });
  return [...held, ...fitted];
}
