import { margin } from '../../joint/margin.ts';
import { settleMaterial } from '../../steel/settling/settle-material.ts';
import type { SettledMaterial } from '../../steel/settling/settle-material.ts';
import { steelRank } from '../../steel/strength-class.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr } from '../make-fact.ts';
import { whyNot } from '../papers/cited-elsewhere.ts';
import { isNoBodyWorkOf } from '../papers/matter-of.ts';
import { bestCitation, surveyCitations } from '../papers/survey-references.ts';
import { listOf, quantityOf } from '../quantity-of.ts';
import type { JointSurvey, PartSurvey, Survey } from '../survey.ts';

type OwnCiteFact =
  | 'joint.cited_elsewhere'
  | `joint.${'insert_lesser' | 'insert_share' | 'insert_cited'}`
  | `joint.${'gap_cited' | 'flange_coat_cited' | 'filler_cited' | 'access_cited'}`;

/** What is unusual in a joint and takes a page of its own: a lesser insert, another gap, primer in the joint, another wire, one side. */
export function ownCiteFacts(
  survey: Survey,
  { joint, at }: JointSurvey,
  own: PartSurvey,
): Readonly<Record<OwnCiteFact, Fact>> {
  const cited = (cites: typeof joint.gap_cite, key: string): Fact =>
    computed(
      surveyCitations(listOf(cites), () => `${at}/${key}`, survey.referenceById).some(
        ({ standing, reference }) => standing === 'covers' && !isNoBodyWorkOf(own, reference),
      ),
      `${at}/${key}`,
    );
  return {
    'joint.insert_lesser': computedOr(
      lesserIn(joint.insert, own).join(', ') || undefined,
      `${at}/insert`,
      'The insert is no less than the member, or what would tell it is not stated.',
    ),
    'joint.cited_elsewhere': computedOr(
      whyNoneCounts(survey, joint.cite),
      `${at}/cite`,
      'A page counts, or none is cited.',
    ),
    'joint.insert_share': computedOr(
      insertShare(joint.insert, own),
      `${at}/insert/thickness`,
      'The thickness of the insert, or that of the member, is not stated.',
    ),
    'joint.insert_cited': cited(joint.insert?.cite, 'insert/cite'),
    'joint.gap_cited': cited(joint.gap_cite, 'gap_cite'),
    'joint.flange_coat_cited': cited(joint.flange_coat_cite, 'flange_coat_cite'),
    'joint.filler_cited': cited(joint.filler_cite, 'filler_cite'),
    'joint.access_cited': cited(joint.access_cite, 'access_cite'),
  };
}

/** Of the best page that the joint itself cites: which one it is, and what does not fit. */
function whyNoneCounts(survey: Survey, cites: JointSurvey['joint']['cite']): string | undefined {
  const best = bestCitation(surveyCitations(listOf(cites), () => '', survey.referenceById));
  return best?.reference === undefined || best.standing === 'covers' ? undefined : whyNot(best.reference);
}

/** Sheets are named to the tenth; half of that is no other sheet, mm. */
const sameSheetMm = 0.05;

function lesserIn(insert: JointSurvey['joint']['insert'], { part, material }: PartSurvey): readonly string[] {
  if (insert === undefined) return [];
  const said: string[] = [];
  if (insert.grade !== undefined && isLesserSteel(settleMaterial({ grade: insert.grade }), material)) {
    said.push(`${insert.grade} in ${part.grade ?? part.strength ?? String(material.class)}`);
  }
  const [own, member] = [quantityOf(insert.thickness, 'length'), quantityOf(part.thickness, 'length')];
  if (own !== undefined && member !== undefined && margin(member - sameSheetMm, own) > 0) {
    said.push(`${insert.thickness ?? ''} in ${part.thickness ?? ''}`);
  }
  return said;
}

function insertShare(insert: JointSurvey['joint']['insert'], { part }: PartSurvey): number | undefined {
  const [own, member] = [quantityOf(insert?.thickness, 'length'), quantityOf(part.thickness, 'length')];
  return own === undefined || member === undefined || member <= 0 ? undefined : own / member;
}

/** By class first: within one class the least tensile strength tells. Another metal is none of the same. */
function isLesserSteel(insert: SettledMaterial, member: SettledMaterial): boolean {
  if (insert.class === undefined || member.class === undefined) return false;
  const [own, asked] = [steelRank(insert.class), steelRank(member.class)];
  if (own === undefined || asked === undefined) return insert.class !== member.class;
  if (own !== asked) return own < asked;
  const { tensileMinMpa: least } = insert;
  return least !== undefined && member.tensileMinMpa !== undefined && margin(member.tensileMinMpa, least) > 0;
}
