import type { FactNames } from '../../generated/fact-names.ts';
import type { JointMethod, PartKind } from '../../generated/plan-types.ts';
import { isBatteryOff } from './battery-facts.ts';
import { datedBeforeJob } from '../papers/dated-before-job.ts';
import { isNotAfter } from './day-order.ts';
import { fitCheckedBefore } from '../measuring/fit-checked-early.ts';
import { isJoinedIn } from './joined-in.ts';
import type { Fact } from '../fact.ts';
import { isPermanent, isWelded } from '../joint/joint-methods.ts';
import { computed, computedOr, contradicted, contradictedBy, statedOr, unknown } from '../make-fact.ts';
import { extinguisherAmiss, extinguisherMm } from './extinguisher.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { goesOnWithoutWelding } from '../part/part-kinds.ts';
import { listOf } from '../quantity-of.ts';
import { recordFacts } from '../papers/record-facts.ts';
import { primerUnfit } from './primer-unfit.ts';
import { saysScant } from './scant-words.ts';
import { sealerWanting } from './sealer-places.ts';
import { saysRefused } from '../../plan/names-nothing.ts';
import { saysNone } from './step-draft.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { anyYes } from '../tri-state.ts';
import { zincOnAluminium } from './zinc-on-aluminium.ts';

type AroundFact = Extract<
  FactNames['plan'],
  | `plan.${'impact_stated' | 'direct_listed' | 'extinguisher_stated' | 'extinguisher_amiss' | 'extinguisher_distance' | 'heavy_part_off' | 'lifting_cited'}`
  | `plan.${'earlier_repairs_stated' | 'structure_joined' | 'welded_in' | 'fit_checked' | 'fit_checked_late'}`
  | `plan.${'sealer' | 'sealer_wanting' | 'bared_primer' | 'primer_unfit' | 'zinc_on_aluminium' | 'dated_before_job' | 'record' | 'record_away' | 'record_missing' | 'record_years'}`
  | `plan.${'sealed_before_primer' | 'sealed_after_bake' | 'primed_after_bake'}`
  | `plan.${'fit_checked_early' | 'sealed_before_joints' | 'primed_before_joints'}`
  | `plan.restraint_${'wiring' | 'wiring_cited' | 'control_unit'}`
>;

/** What stands around the work on the parts: from the intake to the record that is kept. */
export function aroundFacts(survey: Survey): Readonly<Record<AroundFact, Fact>> {
  const { plan } = survey;
  const { fire, lifting, restraints } = plan.make_safe ?? {};
  const isCited = (cite: Parameters<typeof listOf<{ readonly reference?: string }>>[0]): boolean =>
    listOf(cite).some(({ reference }) => coversVehicle(survey, reference));
  const early = datedBeforeJob(survey);
  const primer = plan.finish?.primer;
  const at = '/make_safe/restraints';
  return {
    'plan.impact_stated': computed(
      !saysNone(plan.damage?.impact) && !saysRefused(plan.damage?.impact),
      '/damage/impact',
    ),
    'plan.direct_listed': computed((plan.damage?.direct ?? []).length > 0, '/damage/direct'),
    'plan.extinguisher_stated': computed(!saysNone(fire?.extinguisher), '/make_safe/fire/extinguisher'),
    'plan.extinguisher_amiss': computedOr(
      extinguisherAmiss(fire?.extinguisher),
      '/make_safe/fire/extinguisher',
      'None is stated, or nothing is said against it.',
    ),
    'plan.extinguisher_distance': computedOr(
      extinguisherMm(fire?.extinguisher),
      '/make_safe/fire/extinguisher',
      'How far it stands from the work is not stated.',
    ),
    'plan.heavy_part_off': computed(takesHeavyPartOff(survey), '/make_safe/lifting'),
    'plan.lifting_cited': computed(isCited(lifting?.cite), '/make_safe/lifting/cite'),
    'plan.earlier_repairs_stated': computed(
      plan.vehicle.earlier_repairs !== undefined,
      '/vehicle/earlier_repairs',
    ),
    ...fitFacts(survey),
    'plan.sealer_wanting': computedOr(
      sealerWanting(survey),
      '/finish/sealer/places',
      'The words for the seams reach what was joined, or do not tell.',
    ),
    'plan.sealer': computed(howFar(plan.finish?.sealer, plan.finish?.sealer?.places), '/finish/sealer'),
    'plan.bared_primer': computed(
      howFar(primer, saysScant(primer?.product) ? undefined : primer?.product),
      '/finish/primer',
    ),
    'plan.primer_unfit': computedOr(
      primerUnfit(primer?.product),
      '/finish/primer/product',
      'It is not stated, or names a primer.',
    ),
    'plan.zinc_on_aluminium': computedOr(
      zincOnAluminium(survey),
      '/finish/primer/product',
      'The primer is none of zinc dust, or no aluminium is joined.',
    ),
    'plan.dated_before_job':
      early === undefined
        ? unknown('Nothing is dated before the job, or the day of its opening is not written.', '/job/opened')
        : contradicted(early.written, early.pointer, ['/job/opened']),
    'plan.restraint_wiring': statedOr(
      restraints?.wiring,
      `${at}/wiring`,
      'What was done to restraint wiring is not stated.',
    ),
    'plan.restraint_wiring_cited': computed(isCited(restraints?.wiring_cite), `${at}/wiring_cite`),
    'plan.restraint_control_unit': computedOr(
      restraints?.control_unit === undefined
        ? undefined
        : restraints.control_unit === 'replaced'
          ? 'replaced'
          : isCited(restraints.control_unit_cite)
            ? 'by the maker’s page'
            : 'without a page',
      `${at}/control_unit`,
      'What becomes of the control unit is not stated.',
    ),
    ...recordFacts(survey),
  };
}

function takesHeavyPartOff(survey: Survey): boolean {
  const heavy: readonly (string | undefined)[] = ['subframe', 'battery tray'];
  return (
    isBatteryOff(survey) ||
    survey.operations.some(
      ({ operation, part }) =>
        heavy.includes(part.part.kind) && (operation.do === 'replace' || operation.do === 'remove and refit'),
    )
  );
}

interface StatedWork {
  readonly planned?: boolean | string;
  readonly done?: string;
}

/** Where nothing names the seams, or the primer, a day alone is no record of them. */
function howFar(step: StatedWork | undefined, named: string | undefined): 'none' | 'stated' | 'recorded' {
  if (step === undefined) return 'none';
  if (step.done !== undefined && named !== undefined) return 'recorded';
  return step.planned === false ? 'none' : 'stated';
}

type FitFact = Extract<
  AroundFact,
  | `plan.${'structure_joined' | 'welded_in' | 'fit_checked' | 'fit_checked_late'}`
  | `plan.${'sealed_before_primer' | 'sealed_after_bake' | 'primed_after_bake'}`
  | `plan.${'fit_checked_early' | 'sealed_before_joints' | 'primed_before_joints'}`
>;

function fitFacts(survey: Survey): Readonly<Record<FitFact, Fact>> {
  const { plan, operations } = survey;
  const joining = operations.filter(isJoinedIn);
  const structural = joining.filter(({ part }) => part.structural !== false);
  const joined = joining.flatMap((each) => daysOf([each], opensSeam(each.part.part.kind)));
  // Metal to be bonded is primed first; a weld burns off whatever lay there.
  const welded = daysOf(joining, isWelded);
  const fit = plan.measurements?.before_welding;
  const at = '/measurements/before_welding';
  const made = daysOf(structural, undefined);
  const answers = made.map(({ done }) => {
    const isBefore = isNotAfter(fit, done);
    return isBefore === undefined ? undefined : !isBefore;
  });
  const earlier = made.filter(({ done }) => isNotAfter(fit, done) === false).map((one) => one.at);
  const early = fitCheckedBefore(survey);
  const { sealer, primer, bake } = plan.finish ?? {};
  const before = (done: string | undefined, days: readonly DatedJoint[]): readonly string[] =>
    days.filter((one) => isNotAfter(one.done, done) === false).map((one) => one.at);
  const weldedAfterPrimer = before(primer?.done, welded);
  return {
    'plan.structure_joined': computed(structural.length > 0, '/parts'),
    'plan.welded_in': computed(
      joining.some(({ part }) => !goesOnWithoutWelding(part.part.kind)),
      '/parts',
    ),
    'plan.sealed_before_joints': contradictedBy(sealerAt, before(sealer?.done, joined)),
    'plan.primed_before_joints': contradictedBy(
      primerAt,
      weldedAfterPrimer.length === welded.length ? weldedAfterPrimer : [],
    ),
    'plan.sealed_before_primer': isBefore(sealer, primer, sealerAt, primerAt),
    'plan.sealed_after_bake': isBefore(bake, sealer, sealerAt, bakeAt),
    'plan.primed_after_bake': isBefore(bake, primer, primerAt, bakeAt),
    'plan.fit_checked': computed(fit !== undefined, at),
    'plan.fit_checked_early':
      early === undefined
        ? unknown('It is dated before nothing that has to come first, or days are not written.', at)
        : contradicted(early.name, at, [early.at]),
    'plan.fit_checked_late':
      earlier.length > 0
        ? contradicted(true, at, earlier)
        : computedOr(
            answers.length === 0 ? undefined : anyYes(answers),
            at,
            'The days that would tell whether the fit was measured before the first joint are not written.',
          ),
  };
}

/** Only what days and times prove: on one day without times the order is the usual one. */
function isBefore(
  first: StatedWork | undefined,
  second: StatedWork | undefined,
  at: string,
  otherAt: string,
): Fact {
  return contradictedBy(at, isNotAfter(second?.done, first?.done) === false ? [otherAt] : []);
}

const sealerAt = '/finish/sealer/done';
const primerAt = '/finish/primer/done';
const bakeAt = '/finish/bake/done';

interface DatedJoint {
  readonly done: string | undefined;
  readonly at: string;
}

/** A windscreen is bonded onto a body that is sealed and painted; a weld or a rivet goes through what lies there. */
function opensSeam(kind: PartKind | undefined): (method: JointMethod) => boolean {
  return (method) => isPermanent(method) && (method !== 'adhesive' || !goesOnWithoutWelding(kind));
}

/** When the joints of some methods, or all, were made, as far as it is written. */
function daysOf(
  operations: readonly OperationSurvey[],
  isMeant: ((method: JointMethod) => boolean) | undefined,
): readonly DatedJoint[] {
  return operations.flatMap(({ operation, joints, at: place }) =>
    joints.flatMap(({ joint, at }) =>
      isMeant === undefined || (joint.method !== undefined && isMeant(joint.method))
        ? [
            {
              done: joint.done ?? operation.done,
              at: `${joint.done === undefined ? place : at}/done`,
            },
          ]
        : [],
    ),
  );
}
