import type { Joint } from '../../generated/plan-types.ts';
import { margin } from '../../joint/margin.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { JointSurvey, OperationSurvey, ReferenceSurvey, Survey } from '../survey.ts';
import { isTitledForNone } from '../papers/cited-for-other-part.ts';
import { isNoBodyWorkOf } from '../papers/matter-of.ts';
import { surveyCitations } from '../papers/survey-references.ts';

type PatternFact =
  | 'joint.pattern'
  | 'joint.pattern_text'
  | 'joint.button_by_page'
  | 'joint.pitch_by_page'
  | 'joint.edge_by_page';

type Standing = 'kept' | 'not kept' | 'uncited' | 'open' | 'none';

/** What the maker’s page states for the joint, and whether the joint keeps it. */
export interface PatternSurvey {
  readonly standing: Standing;
  /** In what the joint departs from it, or what of it is open. */
  readonly text?: string;
  /** A page of this vehicle on such work, with its place, is cited for it; without one no number of it counts. */
  readonly isCited: boolean;
  /** The distance that the cited page states, mm. */
  readonly pitchMm?: number;
}

export function surveyPattern(
  survey: Survey,
  operation: OperationSurvey,
  { joint, at }: JointSurvey,
): PatternSurvey {
  const { pattern } = joint;
  if (pattern === undefined) return { standing: 'none', isCited: false };
  const isCited = surveyCitations(
    listOf(pattern.cite),
    () => `${at}/pattern/cite`,
    survey.referenceById,
  ).some(
    ({ standing, place, reference }) =>
      standing === 'covers' &&
      !isOfOtherWork(survey, operation, joint, reference) &&
      (place !== undefined || reference?.reference.single_sheet === true),
  );
  const pitchMm = isCited ? quantityOf(pattern.pitch, 'length') : undefined;
  return { isCited, ...standingOf(joint, pattern, isCited), ...(pitchMm === undefined ? {} : { pitchMm }) };
}

/** A page of other work, or of a document that the operation does not cite and whose title names neither of the parts that are joined. */
function isOfOtherWork(
  { partById }: Survey,
  { part, citations }: OperationSurvey,
  { to }: Joint,
  reference: ReferenceSurvey | undefined,
): boolean {
  if (isNoBodyWorkOf(part, reference)) return true;
  if (reference === undefined || citations.some((one) => one.reference === reference)) return false;
  const partner = to === undefined ? undefined : partById.get(to);
  return isTitledForNone(reference, partner === undefined ? [part] : [part, partner]);
}

export function patternFacts(
  { joint, at }: JointSurvey,
  { standing, text, isCited }: PatternSurvey,
): Readonly<Record<PatternFact, Fact>> {
  const place = `${at}/pattern`;
  const noLess = (key: 'nugget' | 'pitch' | 'edge'): Fact => {
    const [own, paged] = [quantityOf(joint[key], 'length'), quantityOf(joint.pattern?.[key], 'length')];
    const isKept = own !== undefined && paged !== undefined && paged > 0 && margin(own, paged) >= 0;
    return computed(isCited && isKept, place);
  };
  return {
    'joint.pattern': computed(standing, place),
    'joint.pattern_text': computedOr(text, place, 'No pattern is stated, or it is kept.'),
    'joint.button_by_page': noLess('nugget'),
    'joint.pitch_by_page': noLess('pitch'),
    'joint.edge_by_page': noLess('edge'),
  };
}

type Pattern = NonNullable<Joint['pattern']>;

function standingOf(
  joint: Joint,
  pattern: Pattern,
  isCited: boolean,
): Pick<PatternSurvey, 'standing' | 'text'> {
  // First what it departs in: to leave the page out must not help.
  const departures = departuresFrom(joint, pattern);
  if (departures.length > 0) return { standing: 'not kept', text: departures.join('; ') };
  if (!isCited) return { standing: 'uncited' };
  // Only a diameter or a distance to the edge: no pattern of the row.
  if ([pattern.count, pattern.pitch, pattern.method].every((one) => one === undefined)) {
    return { standing: 'none' };
  }
  const open = openIn(joint, pattern);
  return open === undefined ? { standing: 'kept' } : { standing: 'open', text: open };
}

function departuresFrom(joint: Joint, pattern: Pattern): readonly string[] {
  const { count, pitch, method } = joint;
  const [pitchMm, pagedMm] = [quantityOf(pitch, 'length'), quantityOf(pattern.pitch, 'length')];
  const said: string[] = [];
  if (count !== undefined && pattern.count !== undefined && count < pattern.count) {
    said.push(`${count} ${count === 1 ? 'joint' : 'joints'}, and the page states ${pattern.count}`);
  }
  if (pitch !== undefined && pitchMm !== undefined && pagedMm !== undefined && margin(pitchMm, pagedMm) > 0) {
    said.push(`${pitch} apart, and the page states ${pattern.pitch ?? ''}`);
  }
  for (const [key, made] of atLeast) {
    const [own, paged] = [joint[key], pattern[key]];
    const [ownMm, leastMm] = [quantityOf(own, 'length'), quantityOf(paged, 'length')];
    if (own !== undefined && ownMm !== undefined && leastMm !== undefined && margin(leastMm, ownMm) > 0) {
      said.push(`${made} ${own}, and the page states ${paged ?? ''}`);
    }
  }
  if (method !== undefined && pattern.method !== undefined && method !== pattern.method) {
    said.push(`made by ${method}, and the page states ${pattern.method}`);
  }
  return said;
}

/** What a page states as a least: smaller is weaker. */
const atLeast = [
  ['nugget', 'buttons of'],
  ['edge', 'at an edge of'],
] as const;

function openIn({ count, pitch }: Joint, pattern: Pattern): string | undefined {
  if (pattern.count === undefined) return 'the number that the page states';
  if (count === undefined) return 'the number of joints that will be made';
  if (pattern.pitch !== undefined && pitch === undefined) return 'the distance between the joints';
  return undefined;
}
