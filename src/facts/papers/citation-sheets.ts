import { computed } from '../make-fact.ts';
import type { FactSheet } from '../sheet.ts';
import type { OperationSurvey, ReferenceSurvey } from '../survey.ts';

/** One sheet for each citation of an operation; it sees the operation and the reference. */
export function citationSheets(
  operation: OperationSurvey,
  operationSheet: FactSheet,
  references: ReadonlyMap<ReferenceSurvey, FactSheet>,
): readonly FactSheet[] {
  return operation.citations.flatMap((citation): readonly FactSheet[] => {
    const reference = citation.reference === undefined ? undefined : references.get(citation.reference);
    // A citation of nothing listed is judged on the operation: there is no document to ask about.
    if (reference === undefined) return [];
    return [
      {
        kind: 'citation',
        at: citation.at,
        facts: {
          'citation.rested_on': computed(citation === operation.restsOn, citation.at),
          'citation.place_stated': computed(
            citation.place !== undefined || citation.reference?.reference.single_sheet === true,
            `${citation.at}/at`,
          ),
        },
        standsOn: [operationSheet, reference],
        ...(operationSheet.part === undefined ? {} : { part: operationSheet.part }),
        operation: operation.at,
      },
    ];
  });
}
