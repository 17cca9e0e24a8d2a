import type { Joint } from '../generated/plan-types.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr } from './make-fact.ts';
import { listOf, quantityOf } from './quantity-of.ts';
import type { JointSurvey, Survey } from './survey.ts';
import { surveyCitations } from './survey-references.ts';

type PatternFact =
  | 'joint.pattern'
  | 'joint.pattern_text'
  | 'joint.button_by_page'
  | 'joint.pitch_by_page'
  | 'joint.edge_by_page';

type Standing = 'kept' | 'not kept' | 'uncited' | 'open' | 'none';

/** What the maker’s page states for the joint, and whether the joint keeps it. A number of its own counts only from a page that is cited. */
export function patternFacts(
  survey: Survey,
  { joint, at }: JointSurvey,
): Readonly<Record<PatternFact, Fact>> {
  const place = `${at}/pattern`;
  const { standing, text } = standingOf(survey, joint, place);
  const isCited = standing !== 'uncited' && standing !== 'none';
  const { pattern } = joint;
  const noLess = (own: string | undefined, paged: string | undefined): boolean => {
    const [ownMm, pagedMm] = [quantityOf(own, 'length'), quantityOf(paged, 'length')];
    return isCited && ownMm !== undefined && pagedMm !== undefined && pagedMm > 0 && ownMm >= pagedMm;
  };
  return {
    'joint.pattern': computed(standing, place),
    'joint.pattern_text': computedOr(text, place, 'No pattern is stated, or it is kept.'),
    'joint.button_by_page': computed(noLess(joint.nugget, pattern?.nugget), place),
    'joint.pitch_by_page': computed(noLess(joint.pitch, pattern?.pitch), place),
    'joint.edge_by_page': computed(noLess(joint.edge, pattern?.edge), place),
  };
}

/** The distance that the page states, mm; undefined where none does, or the page is not of this vehicle. */
export function pitchOfPage(survey: Survey, { joint, at }: JointSurvey): number | undefined {
  const { standing } = standingOf(survey, joint, `${at}/pattern`);
  return standing === 'uncited' ? undefined : quantityOf(joint.pattern?.pitch, 'length');
}

interface Answer {
  readonly standing: Standing;
  readonly text?: string;
}

function standingOf(survey: Survey, joint: Joint, place: string): Answer {
  const { pattern } = joint;
  if (pattern === undefined) return { standing: 'none' };
  const cites = surveyCitations(listOf(pattern.cite), () => `${place}/cite`, survey.referenceById);
  const isCited = cites.some(
    ({ standing, place: page, reference }) =>
      standing === 'covers' && (page !== undefined || reference?.reference.single_sheet === true),
  );
  if (!isCited) return { standing: 'uncited' };
  const departures = departuresFrom(joint, pattern);
  if (departures.length > 0) return { standing: 'not kept', text: departures.join('; ') };
  const open = openIn(joint, pattern);
  return open === undefined ? { standing: 'kept' } : { standing: 'open', text: open };
}

function departuresFrom(
  { count, pitch, method }: Joint,
  pattern: NonNullable<Joint['pattern']>,
): readonly string[] {
  const [pitchMm, pagedMm] = [quantityOf(pitch, 'length'), quantityOf(pattern.pitch, 'length')];
  const said: string[] = [];
  if (count !== undefined && pattern.count !== undefined && count < pattern.count) {
    said.push(`${count} joints, and the page states ${pattern.count}`);
  }
  if (pitch !== undefined && pitchMm !== undefined && pagedMm !== undefined && pitchMm > pagedMm) {
    said.push(`${pitch} apart, and the page states ${pattern.pitch ?? ''}`);
  }
  if (method !== undefined && pattern.method !== undefined && method !== pattern.method) {
    said.push(`made by ${method}, and the page states ${pattern.method}`);
  }
  return said;
}

function openIn({ count, pitch }: Joint, pattern: NonNullable<Joint['pattern']>): string | undefined {
  if (pattern.count === undefined) return 'the number that the page states';
  if (count === undefined) return 'the number of joints that will be made';
  if (pattern.pitch !== undefined && pitch === undefined) return 'the distance between the joints';
  return undefined;
}
