import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { adhesiveFacts } from './joint-adhesive.ts';
import { adhesiveLeftOut } from './adhesive-left-out.ts';
import { arcFacts } from './joint-arc.ts';
import { atCutFacts, isRestOfOnePiece, isToRestOfItself } from './joint-at-cut.ts';
import { bondCouponFacts } from './joint-bond-coupon.ts';
import { buttonFacts } from './joint-button.ts';
import { couponFacts } from './joint-coupon.ts';
import { coverFacts } from './joint-cover.ts';
import { cureFacts } from './joint-cure.ts';
import { fastenerFacts } from './joint-fastener.ts';
import { freshBondFact } from './joint-fresh-bond.ts';
import { classesOf, coldWorkedSheet, hasAluminium, unlikeMetals } from './joint-metals.ts';
import { isArc, isResistance, isWelded } from './joint-methods.ts';
import { insulatedFact } from './joint-insulated.ts';
import { insertWeaker } from './insert-weaker.ts';
import { otherJobFacts } from './joint-other-job.ts';
import { ownCiteFacts } from './joint-own-cites.ts';
import { patternFacts } from './joint-pattern.ts';
import { preparationFacts } from './joint-preparation.ts';
import { programFacts } from './program-unfit.ts';
import { jointRecordFacts } from './joint-record.ts';
import { rowFacts } from './joint-row.ts';
import { rowEvidence } from './row-evidence.ts';
import { seamFacts } from './joint-seam.ts';
import { settingsFacts } from './joint-settings.ts';
import { sizeFacts } from './joint-size.ts';
import { missingPartner, stackFacts } from './joint-stack.ts';
import { factGroups } from '../fact-groups.ts';
import type { FactGroups } from '../fact-groups.ts';
import { noMethod } from '../goes-on-unsaid.ts';
import type { JointMatter } from './joint-matter.ts';
import { assumed, computed, computedOr, stated, statedOr, unknown } from '../make-fact.ts';
import { listOf, notAfter, whenOf } from '../quantity-of.ts';
import type { CitationStanding, JointSurvey, PartSurvey } from '../survey.ts';
import { isNoBodyWorkOf } from '../papers/matter-of.ts';
import { bestCitation, surveyCitations } from '../papers/survey-references.ts';
import { unreadAt } from '../unread.ts';

type JointFacts = Readonly<Record<FactNames['joint'], Fact>>;

/** One joint or row of joints. */
export const jointFacts: FactGroups<[JointMatter], FactNames['joint']> = factGroups(
  ['joint.'],
  statedFacts,
  sheetFacts,
  pieceFacts,
  ({ laid }: JointMatter) => stackFacts(laid),
  ({ one, pattern }: JointMatter) => patternFacts(one, pattern),
  ({ one, laid }: JointMatter) => buttonFacts(one, laid),
  ({ one, laid, pattern }: JointMatter) => sizeFacts(one, laid, pattern),
  ({ one, laid }: JointMatter) => rowFacts(one, laid),
  ({ one, pattern }: JointMatter) => coverFacts(one, pattern.pitchMm),
  couponFacts,
  ({ survey, one, laid }: JointMatter) => settingsFacts(survey.context.windows, one, laid),
  ({ one, operation, laid }: JointMatter) => seamFacts(one, operation, laid),
  ({ one, laid }: JointMatter) => fastenerFacts(one, laid),
  ({ survey, operation, one }: JointMatter) =>
    adhesiveFacts(one, { done: operation.operation.done, asOfDay: survey.context.asOfDay }),
  cureFacts,
  bondCouponFacts,
  arcFacts,
  ({ survey, operation, one }: JointMatter) => jointRecordFacts(survey, operation, one),
  ({ one }: JointMatter) => rowEvidence(one),
  preparationFacts,
  programFacts,
  ({ survey, one }: JointMatter) => otherJobFacts(survey, one),
  ({ survey, one, operation, stack }: JointMatter) => ({
    'joint.missing_partner': computedOr(
      missingPartner(survey, operation.part, one.joint),
      `${one.at}/sheets`,
      'The other part is among the sheets, or one of the two is not stated.',
    ),
    'joint.insert_weaker': insertWeaker(one, stack),
  }),
  ({ one, operation, stack }: JointMatter) => atCutFacts(one, operation, stack),
  ({ survey, one, operation }: JointMatter) => ownCiteFacts(survey, one, operation.part),
  ({ survey, operation, one }: JointMatter) => ({
    'joint.arc_beside_fresh_bond': freshBondFact(survey, operation, one),
  }),
  ({ operation, one, stack }: JointMatter) => ({
    'joint.on_structure': onStructure(operation.part, stack, one.at),
  }),
);

function statedFacts({
  one: { joint, at },
}: JointMatter): Pick<JointFacts, `joint.${'method' | 'form' | 'arc' | 'spot' | 'welded'}`> {
  const { method } = joint;
  return {
    'joint.method': statedOr(method, `${at}/method`, noMethod),
    'joint.form':
      joint.form === undefined && method !== undefined && !isArc(method)
        ? assumed('flange', 'Spots, rivets and adhesive need sheets that lie on each other.', `${at}/form`)
        : statedOr(joint.form, `${at}/form`, 'How the edges meet is not stated.'),
    'joint.arc': computedOr(method === undefined ? undefined : isArc(method), `${at}/method`, noMethod),
    'joint.spot': computedOr(
      method === undefined ? undefined : isResistance(method),
      `${at}/method`,
      noMethod,
    ),
    'joint.welded': computedOr(method === undefined ? undefined : isWelded(method), `${at}/method`, noMethod),
  };
}

/** What lies on what, and what of it the page draws. */
function sheetFacts(
  matter: JointMatter,
): Pick<
  JointFacts,
  `joint.${'to' | 'classes' | 'cold_worked' | 'unlike_metals' | 'to_like_part' | 'has_aluminium' | 'thicknesses_stated' | 'adhesive_left_out' | 'insulated' | 'citation' | 'insert_stated'}`
> {
  const { survey, operation, one } = matter;
  const { joint, at } = one;
  const stack = matter.stack;
  const isToItself = isToRestOfItself(joint, operation);
  const classes = classesOf(survey, stack, { at, own: operation.part, isToItself, insert: joint.insert });
  const to = joint.to === undefined ? undefined : (survey.partById.get(joint.to)?.name ?? joint.to);
  return {
    'joint.to': statedOr(to, `${at}/to`, 'The other part is not stated.'),
    'joint.classes': classes,
    'joint.cold_worked': coldWorkedSheet(stack, at),
    'joint.has_aluminium': hasAluminium(stack, at),
    'joint.unlike_metals': unlikeMetals(stack, isToItself, at),
    'joint.to_like_part': computed(
      stack.some((sheet) => isRestOfOnePiece(operation.part, sheet)),
      `${at}/to`,
    ),
    'joint.thicknesses_stated': computed(
      stack.every(
        (sheet) =>
          sheet?.part.thickness !== undefined ||
          (sheet !== undefined && unreadAt(survey, `${sheet.at}/thickness`) !== undefined),
      ),
      `${at}/sheets`,
    ),
    'joint.adhesive_left_out': adhesiveLeftOut(matter),
    'joint.insulated': insulatedFact(joint, to, at),
    'joint.citation': computed(jointCitation(matter), `${at}/cite`),
    'joint.insert_stated': computed(
      joint.insert?.grade !== undefined && joint.insert.thickness !== undefined,
      `${at}/insert`,
    ),
  };
}

/** How many, and how they were proved. */
function pieceFacts({
  survey,
  operation,
  one: { joint, at },
}: JointMatter): Pick<
  JointFacts,
  `joint.${'sheets' | 'count' | 'factory_count' | 'fewer' | 'coupon' | 'coupon_late' | 'coupon_days_before' | 'done_count_short' | 'count_made' | 'drawn'}`
> {
  const { count, factory_count: factoryCount } = joint;
  return {
    'joint.sheets':
      joint.sheets === undefined
        ? unknown('The sheets of the stack are not stated.', at)
        : stated(joint.sheets.length, `${at}/sheets`),
    'joint.count': statedOr(count, `${at}/count`, 'The number of joints is not stated.'),
    'joint.factory_count': statedOr(
      factoryCount,
      `${at}/factory_count`,
      'The number of factory joints is not stated.',
    ),
    'joint.fewer': computedOr(
      count === undefined || factoryCount === undefined ? undefined : factoryCount - count,
      unreadAt(survey, `${at}/factory_count`) ?? `${at}/count`,
      'The number of joints, or that of the factory, is not stated.',
    ),
    'joint.coupon': computed(couponOf(joint.coupon), `${at}/coupon`),
    'joint.coupon_late': computed(isCouponLate(joint, operation.operation.done), `${at}/coupon`),
    'joint.coupon_days_before': computedOr(
      daysBefore(joint, operation.operation.done),
      `${at}/coupon`,
      'The day of the coupon, or that of the joint, is not stated.',
    ),
    'joint.done_count_short': computed(
      isShort(joint) && unreadAt(survey, `${at}/count_done`) === undefined,
      `${at}/count_done`,
    ),
    'joint.count_made': statedOr(
      joint.count_done,
      `${at}/count_done`,
      'The number of joints made is not recorded.',
    ),
    'joint.drawn': statedOr(
      joint.drawn,
      `${at}/drawn`,
      'Whether the procedure draws this joint is not stated.',
    ),
  };
}

/** A sheet of which nobody says whether it carries load asks nothing here; the part itself does. */
function onStructure(own: PartSurvey, stack: readonly (PartSurvey | undefined)[], at: string): Fact {
  if (stack.some((sheet) => sheet?.structural === true)) return computed(true, at);
  return own.structural === undefined
    ? unknown(`Whether ${own.name} is structural is not stated.`, at)
    : computed(false, at);
}

/** A page that draws no joint of this part, since it is of another matter or part, is none of the joint's. */
function jointCitation({
  survey,
  operation,
  one: { joint, at },
}: JointMatter): CitationStanding | 'other matter' {
  const cites = surveyCitations(listOf(joint.cite), () => `${at}/cite`, survey.referenceById);
  const own = cites.filter(({ reference }) => !isNoBodyWorkOf(operation.part, reference));
  return bestCitation(own)?.standing ?? (cites.length === 0 ? 'none' : 'other matter');
}

/** A coupon tells of the joint only when it was torn before. Days alone are compared: on one day the order is not told. */
function isCouponLate({ coupon, done }: JointSurvey['joint'], operationDone: string | undefined): boolean {
  const torn = typeof coupon === 'object' ? whenOf(coupon.date) : undefined;
  const made = whenOf(done ?? operationDone);
  return torn !== undefined && made !== undefined && notAfter(torn, made) === false;
}

/** A seam that runs through is one, and is made when it is dated; nobody counts it. */
function isShort({ method, count, count_done: done }: JointSurvey['joint']): boolean {
  if (done !== undefined) return count !== undefined && done < count;
  const runsThrough = method === 'arc seam' || method === 'TIG seam' || method === 'laser seam';
  return !(runsThrough && (count === undefined || count === 1));
}

function daysBefore(
  { coupon, done }: JointSurvey['joint'],
  operationDone: string | undefined,
): number | undefined {
  const torn = typeof coupon === 'object' ? whenOf(coupon.date) : undefined;
  const made = whenOf(done ?? operationDone);
  return torn === undefined || made === undefined ? undefined : made.day - torn.day;
}

function couponOf(coupon: JointSurvey['joint']['coupon']): 'planned' | 'passed' | 'failed' | 'none' {
  if (coupon === undefined) return 'none';
  if (typeof coupon === 'string') return coupon;
  return coupon.result ?? 'planned';
}
