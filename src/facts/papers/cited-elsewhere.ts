import type { Cites } from '../../generated/plan-types.ts';
import { coversVehicle } from './maker-evidence.ts';
import { isMakerText } from './survey-references.ts';
import { listOf } from '../quantity-of.ts';
import type { ReferenceSurvey, Survey } from '../survey.ts';

/** A page that is cited and counts for nothing here, and where it stands. */
export interface CitedElsewhere {
  /** Such as "SRM-TRN-0300 revision A, which covers model Strand, not Pell". */
  readonly text: string;
  readonly at: string;
}

/**
 * The first page that is cited and is not of this vehicle, or no maker’s own; nothing where a page counts, none is cited, or the plan
 * does not list it, which is told as such.
 */
export function citedElsewhere(
  survey: Survey,
  cites: Cites | undefined,
  at: string,
): CitedElsewhere | undefined {
  const all = listOf(cites);
  if (all.some(({ reference }) => coversVehicle(survey, reference))) return undefined;
  for (const [index, { reference: id }] of all.entries()) {
    const reference = id === undefined ? undefined : survey.referenceById.get(id);
    if (reference === undefined) continue;
    return { text: whyNot(reference), at: Array.isArray(cites) ? `${at}/${String(index)}` : at };
  }
  return undefined;
}

/** A document that does not count for this vehicle, and why. */
export function whyNot({ name, coverage, reference }: ReferenceSurvey): string {
  switch (coverage.covers) {
    case 'no':
      return `${name}, which ${phrase(coverage.reason, 'The reference ')}`;
    case 'cannot tell':
      return `${name} (${phrase(coverage.reason, '')})`;
    case 'yes':
      return `${name}, ${noProcedure(reference.kind)}`;
  }
}

function noProcedure(kind: ReferenceSurvey['reference']['kind']): string {
  if (kind === undefined) return 'of which the kind is not stated';
  return isMakerText(kind)
    ? `which is of the maker but no procedure (${kind})`
    : `which is no document of the maker (${kind})`;
}

/** A sentence without its beginning and its full stop. */
function phrase(sentence: string, beginning: string): string {
  const rest = sentence.startsWith(beginning) ? sentence.slice(beginning.length) : sentence;
  const open = rest.replace(/\.$/u, '');
  return beginning === '' ? `${open.charAt(0).toLowerCase()}${open.slice(1)}` : open;
}
