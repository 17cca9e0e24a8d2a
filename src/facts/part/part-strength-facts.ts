import type { FactNames } from '../../generated/fact-names.ts';
import { aluminiumKind } from '../../steel/aluminium-kind.ts';
import type { ColdWork } from '../../steel/cold-work.ts';
import type { Fact } from '../fact.ts';
import { assumed, computed, computedOr, unknown } from '../make-fact.ts';
import { isMetalTold } from './metal-told.ts';
import { isClosingSkin, usuallyCosmetic } from './part-kinds.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { strongerTwin } from './twin-weaker.ts';

type StrengthFact =
  | 'part.grade_read'
  | 'part.cold_worked'
  | 'part.cold_worked_to'
  | 'part.aluminium'
  | 'part.metal_told'
  | 'part.strength_fits'
  | 'part.strength_doubt'
  | 'part.weaker_than_twin'
  | 'part.twin_stronger';

/** Where the strength of a part comes from, and what of its statement does not fit or is left open. */
export function partStrengthFacts(
  survey: Survey,
  one: PartSurvey,
): Readonly<Record<StrengthFact & FactNames['part'], Fact>> {
  const { at, material } = one;
  const grade = `${at}/grade`;
  const { coldWork, strengthDoubt: doubt } = material;
  const twin = strongerTwin(survey, one);
  return {
    'part.grade_read': computed(gradeRead(one), grade),
    'part.cold_worked': coldWorked(coldWork, grade),
    'part.cold_worked_to': computedOr(
      coldWork.is === true ? coldWork.toMpa : undefined,
      grade,
      coldWork.is === true
        ? 'How far the cold work has hardened it is not stated.'
        : 'It is not stated as cold-hardened.',
    ),
    'part.aluminium': aluminium(one),
    'part.metal_told': computed(isMetalTold(material), `${at}/strength`),
    'part.strength_fits': computed(
      doubt === undefined ? 'fits' : doubt.changesClass ? 'outside, and another class' : 'outside',
      `${at}/strength`,
    ),
    'part.strength_doubt': computedOr(doubt?.sentence, `${at}/strength`, 'The strength fits the grade.'),
    'part.weaker_than_twin': computed(twin !== undefined, grade),
    'part.twin_stronger': computedOr(twin, grade, 'It is not the weaker of two.'),
  };
}

function gradeRead({ part, material }: PartSurvey): string {
  if (material.mistyped === true) return 'mistyped or left open';
  const isRead = material.readings.length > 0 && material.unreadable !== true;
  const names = [part.grade, ...(part.zones ?? []).map((zone) => zone.grade)];
  if (names.every((name) => name === undefined)) return 'none stated';
  if (!isRead) return 'not read';
  if (material.ambiguity === undefined) return 'read';
  return material.byForm === true && (part.zones ?? []).length === 0
    ? 'read by its form'
    : 'several readings';
}

export function coldWorked(coldWork: ColdWork, at: string): Fact {
  return coldWork.is === 'unknown' ? unknown(coldWork.reason, at) : computed(coldWork.is, at);
}

function aluminium({ part, at, material }: PartSurvey): Fact {
  const place = `${at}/grade`;
  if (material.class === undefined)
    return unknown(material.reason ?? 'What it is made of is not known.', place);
  if (material.class !== 'aluminium') return computed('no aluminium', place);
  const kind = aluminiumKind(material.readings);
  if (kind !== undefined) return computed(kind, place);
  const isSkin = usuallyCosmetic(part.kind) || isClosingSkin(part.kind);
  return isSkin
    ? assumed('sheet of a skin', 'A skin is drawn from sheet (common practice).', `${at}/kind`)
    : unknown('Whether it is sheet, a profile or a casting, and of which alloy, is not stated.', place);
}
