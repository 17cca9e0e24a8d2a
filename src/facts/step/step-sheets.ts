import type { FactNames } from '../../generated/fact-names.ts';
import { alignmentFacts } from './alignment-facts.ts';
import { batteryFacts } from './battery-facts.ts';
import { checkFacts } from './check-facts.ts';
import { calibrationFacts } from './calibration-facts.ts';
import { checkSteps } from './check-steps.ts';
import { codesFacts } from './code-facts.ts';
import type { Fact } from '../fact.ts';
import { faultsLeft } from '../faults-left.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf, notAfter, quantityOf, voltsOf, whenOf } from '../quantity-of.ts';
import type { When } from '../quantity-of.ts';
import { isNoQualification } from '../refusals.ts';
import { expiredAtVoltage, isHighVoltageStep, unqualifiedAtVoltage } from './high-voltage-person.ts';
import { lampFacts } from './lamp-facts.ts';
import { ownWorkReleased } from '../papers/by-who-did-it.ts';
import { safetySteps } from './safety-steps.ts';
import { factGroups } from '../fact-groups.ts';
import type { FactGroups } from '../fact-groups.ts';
import { lazySheet } from '../lazy-sheet.ts';
import type { FactSheet } from '../sheet.ts';
import { doubtOf, saysNone } from './step-draft.ts';
import { stepOrderFacts } from './step-order-facts.ts';
import type { StepDraft } from './step-draft.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { momentsOf } from './work-moments.ts';

type StepFacts = Readonly<Record<FactNames['step'], Fact>>;

/** What the steps are written from, in the order of their sheets. */
export function stepDrafts(survey: Survey): readonly StepDraft[] {
  return [...safetySteps(survey), ...checkSteps(survey)];
}

/** The steps around the work that rules ask about; each has its sheet whether the plan states it or not. */
export function stepSheets(survey: Survey, vehicleSheet: FactSheet): readonly FactSheet[] {
  return stepDrafts(survey).map((draft) =>
    lazySheet(stepFacts, [survey, draft], { kind: 'step', at: draft.at, standsOn: [vehicleSheet] }),
  );
}

const stepFacts: FactGroups<[Survey, StepDraft], FactNames['step']> = factGroups(
  ['step.'],
  anyStepFacts,
  neededFacts,
  insulationFacts,
  stepOrderFacts,
  batteryFacts,
  checkFacts,
  resultFacts,
  waitFacts,
  alignmentFacts,
  calibrationFacts,
  codesFacts,
  lampFacts,
  doerFacts,
);

type Group<Name extends FactNames['step']> = Pick<StepFacts, Name>;

function neededFacts(_survey: Survey, draft: StepDraft): Group<'step.needed' | 'step.needed_because'> {
  const { at, neededBecause } = draft;
  return {
    'step.needed': computed(neededBecause !== undefined, at),
    'step.needed_because': computedOr(neededBecause, at, 'Nothing that is reckoned here asks for it.'),
  };
}

function anyStepFacts(
  survey: Survey,
  draft: StepDraft,
): Group<
  | `step.${'what' | 'name' | 'stated' | 'done' | 'person' | 'qualified' | 'person_unqualified' | 'person_expired'}`
  | `step.${'cited' | 'complete' | 'missing' | 'in_order'}`
> {
  const { step, at, what } = draft;
  const person = draft.person ?? step?.by;
  const unqualified = unqualifiedAtVoltage(survey, draft);
  const personAt =
    step?.by === undefined && person !== undefined ? '/make_safe/high_voltage/person' : `${at}/by`;
  return {
    'step.what': computed(what, at),
    'step.name': computed(draft.name ?? what, at),
    'step.stated': isStated(draft),
    'step.done': computed(step?.done !== undefined, `${at}/done`),
    'step.person': computed(!saysNone(person?.name), `${at}/by`),
    'step.qualified': computed(
      isHighVoltageStep(draft) ? unqualified === undefined : !isNoQualification(person?.qualification),
      `${at}/by`,
    ),
    'step.person_unqualified': computedOr(
      unqualified,
      personAt,
      'Who does it is qualified by the plan, or told at another step, or the step is another.',
    ),
    'step.person_expired': computedOr(
      expiredAtVoltage(survey, draft),
      personAt,
      'The paper of who does it holds by its text, or is told at another step, or the step is another.',
    ),
    'step.cited': computed(
      listOf(step?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/cite`,
    ),
    'step.complete': isComplete(draft),
    'step.missing': computedOr(missingText(draft), at, 'Nothing is missing.'),
    'step.in_order': inOrder(survey, draft),
  };
}

function resultFacts(
  survey: Survey,
  draft: StepDraft,
): Group<
  | `step.${'after_isolation' | 'result' | 'faults' | 'reading' | 'battery_condition'}`
  | `step.${'checked' | 'scan_contradicted'}`
> {
  const { at, what } = draft;
  const proof = survey.plan.make_safe?.high_voltage?.proof_of_absence;
  return {
    'step.after_isolation': afterIsolation(survey, draft),
    'step.result': statedOr(draft.result, `${at}/result`, 'What came out is not stated.'),
    'step.faults':
      what === 'high-voltage re-commissioning'
        ? faultsLeft(survey.plan.verify?.high_voltage?.faults, `${at}/faults`)
        : unknown('The step is another.', at),
    'step.checked': computed(
      (survey.plan.verify?.high_voltage?.checked ?? []).length > 0,
      '/verify/high_voltage/checked',
    ),
    'step.scan_contradicted': scanContradicted(survey, draft),
    'step.reading': statedOr(
      what === 'absence of voltage proved' ? voltsOf(proof?.reading) : undefined,
      `${at}/reading`,
      'No reading is written.',
    ),
    'step.battery_condition': statedOr(
      survey.plan.make_safe?.high_voltage?.battery_condition,
      '/make_safe/high_voltage/battery_condition',
      'The state of the traction battery is not stated.',
    ),
  };
}

/** A scan that was made was possible. */
function scanContradicted({ plan }: Survey, { what, at }: StepDraft): Fact {
  const { scan_before: before, scan_after: after } = plan.verify ?? {};
  const scan =
    what === 'scan before the repair' ? before : what === 'scan after the repair' ? after : undefined;
  const isMade = scan?.done !== undefined || (scan?.codes ?? []).length > 0;
  return computedOr(
    isMade && !saysNone(scan?.not_possible) ? scan?.not_possible : undefined,
    `${at}/not_possible`,
    'The scan is not said to be impossible, or was not made.',
  );
}

function isStated(draft: StepDraft): Fact {
  const { step, at, result } = draft;
  const doubt = doubtOf(draft);
  if (doubt !== undefined) return unknown(doubt, at);
  return computed(step !== undefined && (step.planned !== false || result !== undefined), at);
}

function isComplete(draft: StepDraft): Fact {
  const { missing, at } = draft;
  if (missing === undefined || missing.length > 0) return computed(false, at);
  const doubt = doubtOf(draft);
  return doubt === undefined ? computed(true, at) : unknown(doubt, at);
}

function missingText({ missing, what }: StepDraft): string | undefined {
  if (missing !== undefined) return missing.join(', ') || undefined;
  return what === 'batteries disconnected'
    ? 'every battery, for nothing is said of them'
    : 'every part of it';
}

/** Whether who did the work releases it; of other steps it says nothing. */
function doerFacts(survey: Survey, { what, step, at, holdPoint }: StepDraft): Group<'step.by_who_did_it'> {
  const own = step?.by?.name;
  const isRelease = what === 'hold point' || what === 'structural release';
  return {
    'step.by_who_did_it': computedOr(
      isRelease ? whoAndWhat(own, ownWorkReleased(survey, own, holdPoint?.part), holdPoint?.part) : undefined,
      `${at}/by`,
      'The step is no release, or who releases it did none of the work.',
    ),
  };
}

/** A hold point of one part names it already. */
function whoAndWhat(
  who: string | undefined,
  parts: string | undefined,
  own: string | undefined,
): string | undefined {
  if (parts === undefined || who === undefined) return undefined;
  return own === undefined ? `${who} did the work on ${parts}` : `${who} did the work`;
}

function waitFacts(
  survey: Survey,
  { what }: StepDraft,
): Pick<StepFacts, 'step.wait_short' | 'step.wait_cited'> {
  const { restraints, high_voltage: high } = survey.plan.make_safe ?? {};
  const isIsolation = what === 'high-voltage isolation';
  const block = isIsolation ? high?.isolation : restraints;
  const wait = quantityOf(block?.wait, 'time');
  const asked = quantityOf(block?.wait_asked, 'time');
  const at = isIsolation ? '/make_safe/high_voltage/isolation/wait' : '/make_safe/restraints/wait';
  return {
    'step.wait_short':
      wait === undefined || asked === undefined
        ? unknown('The wait, or the wait that the page asks for, is not stated.', at)
        : computed(wait < asked, at),
    'step.wait_cited': computed(
      quantityOf(restraints?.wait, 'time') !== undefined &&
        listOf(restraints?.wait_cite).some((cite) => coversVehicle(survey, cite.reference)),
      '/make_safe/restraints/wait_cite',
    ),
  };
}

/** Insulation where the maker's limit is not stated, Ω/V: that of UN R100 for circuits with alternating current (from memory). */
const usualInsulation = 500;

function insulationFacts(
  survey: Survey,
  { what, at }: StepDraft,
): Pick<StepFacts, 'step.insulation' | 'step.insulation_limit' | 'step.insulation_margin'> {
  const step = what === 'high-voltage re-commissioning' ? survey.plan.verify?.high_voltage : undefined;
  const measured = quantityOf(step?.insulation, 'insulation');
  const place = `${at}/insulation`;
  const reason = 'No insulation value is written.';
  const limit = quantityOf(step?.limit, 'insulation') ?? usualInsulation;
  return {
    'step.insulation': statedOr(measured, place, reason),
    'step.insulation_limit': computedOr(measured === undefined ? undefined : limit, `${at}/limit`, reason),
    'step.insulation_margin': computedOr(
      measured === undefined ? undefined : measured - limit,
      place,
      reason,
    ),
  };
}

/** A proof made while the circuit was still live, or before it was cut, proves nothing of what came after. */
function afterIsolation(survey: Survey, { what, step, at }: StepDraft): Fact {
  if (what !== 'absence of voltage proved') return unknown('The step is another.', at);
  const proved = whenOf(step?.done);
  const isolated = whenOf(survey.plan.make_safe?.high_voltage?.isolation?.done);
  return computedOr(
    proved === undefined || isolated === undefined ? undefined : notAfter(isolated, proved),
    `${at}/done`,
    'The days and times of isolation and proof are not both written.',
  );
}

/**
 * What is only bolted on: no heat and no battery. A cover, a lamp or a trim undoes no step; a link or a beam, which is bolted on as well,
 * none of the traction voltage and of the restraint system.
 */
function isOnlyBoltedOn(
  what: StepDraft['what'],
  { hot, part: { part, structural } }: OperationSurvey,
): boolean {
  const { kind } = part;
  if (hot !== false || kind === 'traction battery' || kind === 'battery tray') return false;
  if (structural === false) return true;
  const isApart = what === 'high-voltage re-commissioning' || what === 'restraint completion';
  return isApart && (kind === 'suspension part' || kind === 'bumper beam');
}

function inOrder(survey: Survey, draft: StepDraft): Fact {
  const { step, order, at, what } = draft;
  if (order === undefined) return unknown('The step has no fixed place.', at);
  const own = whenOf(step?.done);
  if (own === undefined) return unknown('When it was done is not written.', `${at}/done`);
  const touching = survey.operations.filter(
    ({ hot, works }) => hot !== false || (what !== 'batteries disconnected' && works !== false),
  );
  const relying = touching.filter((one) => !isOnlyBoltedOn(what, one));
  if (touching.length > 0 && relying.length === 0)
    return computed(true, `${at}/done`, 'All that is done only bolts on what has no part in it.');
  const work = relying.flatMap(momentsOf);
  if (work.length === 0) {
    return survey.context.stage === 'release'
      ? unknown('When the work was done is not written.', `${at}/done`)
      : computed(true, `${at}/done`, 'None of the work is dated yet.');
  }
  const answers = work.map((when: When) =>
    order === 'before the work' ? notAfter(own, when) : notAfter(when, own),
  );
  if (answers.includes(false)) return computed(false, `${at}/done`);
  return answers.includes(undefined)
    ? unknown(
        `The ${draft.name ?? what} is dated on a day of the work, and the hours that would tell which came first are not written.`,
        `${at}/done`,
      )
    : computed(true, `${at}/done`);
}
