import { settleMaterial } from '../../steel/settling/settle-material.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { JointSurvey, PartSurvey } from '../survey.ts';

/** An insert of steel as strong as this share of the sheet is taken for the same. Common practice. */
const asStrong = 0.8;

/** By how much an insert is weaker than the strongest sheet that it lies under, in words; unknown where it is not. */
export function insertWeaker({ joint, at }: JointSurvey, stack: readonly (PartSurvey | undefined)[]): Fact {
  const grade = joint.insert?.grade;
  const place = `${at}/insert/grade`;
  const own = grade === undefined ? undefined : settleMaterial({ grade }).tensileMinMpa;
  const sheets = stack.flatMap((sheet) => sheet?.material.tensileMinMpa ?? []);
  const strongest = sheets.length === 0 ? undefined : Math.max(...sheets);
  return computedOr(
    own === undefined || strongest === undefined || own >= asStrong * strongest
      ? undefined
      : `${grade ?? ''}, ${String(own)} MPa at least, under sheet of ${String(strongest)} MPa`,
    place,
    'The insert is as strong as the sheet, or a grade is not known.',
  );
}
