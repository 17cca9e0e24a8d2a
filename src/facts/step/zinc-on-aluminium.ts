import { saidInClause } from '../../plan/said-in-clause.ts';
import { partsJoined } from '../joint/joint-at-cut.ts';
import type { Survey } from '../survey.ts';

/** Zinc phosphate in an epoxy is a pigment, and is laid on aluminium. */
const zincRich =
  /\bzinc[- ](?:rich|dust|spray|paint)\b|\bcold[- ]galvani[sz]\w*|\bweld[- ]?(?:through|thru)\b|\bweldable primer\b/i;

/** The aluminium that a primer made for steel is laid on, by name: one primer is stated for all bared metal. */
export function zincOnAluminium(survey: Survey): string | undefined {
  const clause = saidInClause(survey.plan.finish?.primer?.product, zincRich);
  if (clause === undefined || /\bsteel\b/i.test(clause)) return undefined;
  const names = survey.operations.flatMap(({ part, joints }) =>
    joints.flatMap(({ joint }) =>
      partsJoined(survey, part, joint).flatMap((sheet) =>
        sheet?.material.class === 'aluminium' ? sheet.name : [],
      ),
    ),
  );
  return names.length === 0 ? undefined : [...new Set(names)].join(', ');
}
