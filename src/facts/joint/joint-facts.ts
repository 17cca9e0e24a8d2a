import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { adhesiveFacts } from './joint-adhesive.ts';
import { arcFacts } from './joint-arc.ts';
import { atCutFacts, isRestOfOnePiece, isToRestOfItself } from './joint-at-cut.ts';
import { bondCouponFacts } from './joint-bond-coupon.ts';
import { buttonFacts } from './joint-button.ts';
import { couponFacts } from './joint-coupon.ts';
import { coverFacts } from './joint-cover.ts';
import { cureFacts } from './joint-cure.ts';
import { fastenerFacts } from './joint-fastener.ts';
import { freshBondFact } from './joint-fresh-bond.ts';
import { hasAdhesive, isArc, isResistance, isWelded } from './joint-methods.ts';
import { ownCiteFacts } from './joint-own-cites.ts';
import { patternFacts } from './joint-pattern.ts';
import { jointRecordFacts } from './joint-record.ts';
import { rowFacts } from './joint-row.ts';
import { rowEvidence } from './row-evidence.ts';
import { seamFacts } from './joint-seam.ts';
import { settingsFacts } from './joint-settings.ts';
import { sizeFacts } from './joint-size.ts';
import { stackFacts } from './joint-stack.ts';
import { factGroups } from '../fact-groups.ts';
import type { FactGroups } from '../fact-groups.ts';
import type { JointMatter } from './joint-matter.ts';
import { assumed, computed, computedOr, known, stated, statedOr, unknown } from '../make-fact.ts';
import { trustedClass } from '../papers/maker-evidence.ts';
import { coldWorked } from '../part/part-strength-facts.ts';
import { listOf, notAfter, whenOf } from '../quantity-of.ts';
import type { CitationStanding, JointSurvey, PartSurvey, Survey } from '../survey.ts';
import { bestCitation, surveyCitations } from '../papers/survey-references.ts';
import { unreadAt } from '../unread.ts';
import { settleMaterial } from '../../steel/settling/settle-material.ts';

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
  ({ survey, one, laid, operation }: JointMatter) => couponFacts(survey, one, laid, operation.operation.done),
  ({ survey, one, laid }: JointMatter) => settingsFacts(survey.context.windows, one, laid),
  ({ one, operation, laid }: JointMatter) => seamFacts(one, operation, laid),
  ({ one, laid }: JointMatter) => fastenerFacts(one, laid),
  ({ survey, operation, one }: JointMatter) =>
    adhesiveFacts(one, { done: operation.operation.done, asOfDay: survey.context.asOfDay }),
  cureFacts,
  bondCouponFacts,
  arcFacts,
  ({ one }: JointMatter) => jointRecordFacts(one),
  ({ one }: JointMatter) => rowEvidence(one),
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
  const noMethod = 'How it is joined is not stated.';
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
  const { method } = joint;
  const stack = matter.stack;
  const isToItself = isToRestOfItself(joint, operation);
  const classes = classesOf(survey, stack, { at, own: operation.part, isToItself, insert: joint.insert });
  return {
    'joint.to': statedOr(
      joint.to === undefined ? undefined : (survey.partById.get(joint.to)?.name ?? joint.to),
      `${at}/to`,
      'The other part is not stated.',
    ),
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
    'joint.adhesive_left_out':
      joint.factory_adhesive === undefined &&
      stack.some((sheet) => sheet?.part.holds?.includes('structural adhesive'))
        ? unknown(
            'A part of the joint holds structural adhesive; whether this joint did is not stated.',
            `${at}/factory_adhesive`,
          )
        : joint.factory_adhesive === undefined
          ? assumed(false, 'No factory adhesive is stated for the joint.', `${at}/factory_adhesive`)
          : computed(
              joint.factory_adhesive &&
                joint.adhesive === undefined &&
                !(method !== undefined && hasAdhesive(method)),
              `${at}/factory_adhesive`,
            ),
    'joint.insulated': computed(
      joint.insulation !== undefined ||
        joint.adhesive !== undefined ||
        (method !== undefined && hasAdhesive(method)),
      `${at}/insulation`,
    ),
    'joint.citation': computed(jointCitation(survey, joint, at), `${at}/cite`),
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
  `joint.${'sheets' | 'count' | 'factory_count' | 'fewer' | 'coupon' | 'coupon_late' | 'coupon_days_before' | 'done_count_short' | 'drawn'}`
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

interface StackContext {
  readonly at: string;
  readonly own: PartSurvey;
  /** End to end a new piece can be joined to the rest of its own part. */
  readonly isToItself: boolean;
  readonly insert: JointSurvey['joint']['insert'];
}

function classesOf(
  survey: Survey,
  stack: readonly (PartSurvey | undefined)[],
  { at, own, isToItself, insert }: StackContext,
): Fact {
  if (stack.length < 2 && !isToItself) return unknown(otherSheetOpen, at);
  // The part itself is asked for its evidence where it is worked on.
  const counted = stack.map((sheet) => ({
    name: sheet?.name ?? unlistedSheet,
    stated: sheet?.material.class,
    class: sheet === undefined || sheet === own ? sheet?.material.class : trustedClass(survey, sheet),
  }));
  if (insert?.grade !== undefined) {
    const ofInsert = settleMaterial({ grade: insert.grade }).class;
    counted.push({ name: `the insert (${insert.grade})`, stated: ofInsert, class: ofInsert });
  }
  const classes = [...new Set(counted.map((sheet) => sheet.class).filter((one) => one !== undefined))];
  const open = counted.find((sheet) => sheet.class === undefined);
  if (open === undefined) return known(classes, 'computed', at);
  // What is known still counts: a hardened sheet in the stack is there whatever the others are.
  if (classes.includes('press-hardened') || classes.includes('ultra-high-strength')) {
    return known(classes, 'computed', at, 'Not every sheet of the stack is known.');
  }
  return open.stated === undefined
    ? unknown(notKnown(open.name), at)
    : unknown(
        `That ${open.name} is ${open.stated} steel is read in no document of the maker for this vehicle.`,
        at,
      );
}

const otherSheetOpen = 'What it is joined to is not stated: neither `to` nor `sheets` names another part.';

/** One sheet is enough; what is open of the others does not matter then. */
function coldWorkedSheet(stack: readonly (PartSurvey | undefined)[], at: string): Fact {
  const all = stack.map((sheet) => sheet?.material.coldWork);
  const counts = all.find((one) => one?.is === true) ?? all.find((one) => one?.is === 'unknown');
  if (counts !== undefined) return coldWorked(counts, at);
  return all.includes(undefined)
    ? unknown('A sheet of the stack is no listed part.', at)
    : computed(false, at);
}

/** A magnet tells aluminium from steel; that takes no document. */
function hasAluminium(stack: readonly (PartSurvey | undefined)[], at: string): Fact {
  if (stack.some((sheet) => sheet?.material.class === 'aluminium')) return computed(true, at);
  const open = classNotKnown(stack);
  return open === undefined ? computed(false, at) : unknown(open, at);
}

/** Says which sheet it is, in the words of `classesOf`, so that one missing grade is asked for once. */
function classNotKnown(stack: readonly (PartSurvey | undefined)[]): string | undefined {
  const index = stack.findIndex((sheet) => sheet?.material.class === undefined);
  return index < 0 ? undefined : notKnown(stack[index]?.name ?? unlistedSheet);
}

const unlistedSheet = 'a sheet that is no listed part';

function notKnown(name: string): string {
  return `The strength class of ${name} is not known.`;
}

/** Metals are told apart by hand and magnet; that takes no document. */
function unlikeMetals(stack: readonly (PartSurvey | undefined)[], isToItself: boolean, at: string): Fact {
  if (stack.length < 2 && !isToItself) return unknown(otherSheetOpen, at);
  const open = classNotKnown(stack);
  if (open !== undefined) return unknown(open, at);
  const families = new Set(stack.map((sheet) => metalFamily(sheet?.material.class ?? '')));
  return computed(families.size > 1, at);
}

function jointCitation(survey: Survey, joint: JointSurvey['joint'], at: string): CitationStanding {
  const cites = surveyCitations(listOf(joint.cite), () => `${at}/cite`, survey.referenceById);
  return bestCitation(cites)?.standing ?? 'none';
}

function metalFamily(strengthClass: string): string {
  return ['aluminium', 'magnesium', 'composite'].includes(strengthClass) ? strengthClass : 'steel';
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
