import type { Part } from '../../generated/plan-types.ts';
import { designationKey } from '../../steel/designation-key.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/** Thickness of one sheet as two people read it off, in mm. */
const readingMm = 0.05;

/**
 * What differs between a part and the same part of the other side that stands before it in the plan; undefined where there is no
 * such part or nothing differs. Bodies are built alike on both sides, so a difference is more likely a slip than a fact.
 */
export function twinDifference(survey: Survey, one: PartSurvey): string | undefined {
  const twin = survey.twins.get(one);
  if (twin === undefined) return undefined;
  const differing = [...differences(one.part, twin.part), ...classes(one, twin)];
  return differing.length === 0 ? undefined : `${differing.join('; ')} (${one.name} against ${twin.name})`;
}

/** Whether the grade of a part and that of its twin are read at the same place of one document: it says only one of two unlike things. */
export function isTwinOnSamePage(survey: Survey, one: PartSurvey): boolean {
  const twin = survey.twins.get(one);
  if (twin === undefined || key(one.part.grade) === key(twin.part.grade)) return false;
  if (one.part.grade === undefined || twin.part.grade === undefined) return false;
  const theirs = listOf(twin.part.grade_from);
  return listOf(one.part.grade_from).some(
    ({ reference, at }) =>
      at !== undefined && theirs.some((other) => other.reference === reference && other.at === at),
  );
}

function differences(one: Part, other: Part): readonly string[] {
  const found: string[] = [];
  const add = (what: string, mine: string | undefined, theirs: string | undefined, differ: boolean): void => {
    if (mine !== undefined && theirs !== undefined && differ) found.push(`${what} ${mine} against ${theirs}`);
  };
  add('grade', one.grade, other.grade, key(one.grade) !== key(other.grade));
  add('class', one.class, other.class, one.class !== other.class);
  const strengths = [quantityOf(one.strength, 'stress'), quantityOf(other.strength, 'stress')] as const;
  add('strength', one.strength, other.strength, apart(strengths, 1));
  const thicknesses = [quantityOf(one.thickness, 'length'), quantityOf(other.thickness, 'length')] as const;
  add('thickness', one.thickness, other.thickness, apart(thicknesses, readingMm));
  return found;
}

/** Said in unlike keys on the two sides, a grade here and a class there. */
function classes(one: PartSurvey, twin: PartSurvey): readonly string[] {
  const [mine, theirs] = [one.material.class, twin.material.class];
  const likeKeys = one.part.class !== undefined && twin.part.class !== undefined;
  const likeGrades = one.part.grade !== undefined && twin.part.grade !== undefined;
  if (mine === undefined || theirs === undefined || mine === theirs || likeKeys || likeGrades) return [];
  return [`class ${mine} against ${theirs}`];
}

function key(grade: string | undefined): string {
  return designationKey(grade ?? '');
}

function apart([a, b]: readonly [number | undefined, number | undefined], by: number): boolean {
  return a !== undefined && b !== undefined && Math.abs(a - b) > by;
}
