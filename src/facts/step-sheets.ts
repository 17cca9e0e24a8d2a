import type { FactNames } from '../generated/fact-names.ts';
import type { Cites, Person, Planned } from '../generated/plan-types.ts';
import type { Fact } from './fact.ts';
import { computed, computedOr, statedOr, unknown } from './make-fact.ts';
import { coversVehicle } from './maker-evidence.ts';
import { listOf, notAfter, quantityOf, whenOf } from './quantity-of.ts';
import type { When } from './quantity-of.ts';
import type { FactSheet } from './sheet.ts';
import type { Survey } from './survey.ts';

type StepFacts = Readonly<Record<FactNames['step'], Fact>>;
type StepWord =
  | 'batteries disconnected'
  | 'restraints made safe'
  | 'high-voltage isolation'
  | 'absence of voltage proved'
  | 'high-voltage re-commissioning'
  | 'battery damage dealt with'
  | 'cavity protection'
  | 'bake';

interface StatedStep {
  readonly planned?: Planned;
  readonly done?: string;
  readonly by?: Person;
  readonly cite?: Cites;
}

interface StepDraft {
  readonly what: StepWord;
  readonly at: string;
  readonly step: StatedStep | undefined;
  readonly person?: Person | undefined;
  /** What belongs to the step and is not there; undefined when the plan does not state the step at all. */
  readonly missing?: readonly string[];
  /** Why nobody can tell whether the step is complete. */
  readonly doubt?: string | undefined;
  /** Must lie before the first hot or cutting operation, or after the last one. */
  readonly order?: 'before the work' | 'after the work';
}

/** The steps around the work that rules ask about; each has its sheet whether the plan states it or not. */
export function stepSheets(survey: Survey, vehicleSheet: FactSheet): readonly FactSheet[] {
  return stepDrafts(survey).map((draft) => ({
    kind: 'step',
    at: draft.at,
    facts: factsOf(survey, draft),
    standsOn: [vehicleSheet],
  }));
}

function stepDrafts(survey: Survey): readonly StepDraft[] {
  const { make_safe: makeSafe, finish, verify } = survey.plan;
  const { low_voltage: low, restraints, high_voltage: high } = makeSafe ?? {};
  const at = '/make_safe';
  return [
    {
      what: 'batteries disconnected',
      at: `${at}/low_voltage`,
      step: low,
      order: 'before the work',
      ...(low === undefined ? {} : { missing: batteriesMissing(survey, low) }),
      doubt:
        low === undefined || isDecided(low)
          ? undefined
          : 'That the batteries are disconnected is neither planned (`planned`) nor recorded (`done`).',
    },
    {
      what: 'restraints made safe',
      at: `${at}/restraints`,
      step: restraints,
      order: 'before the work',
      ...(restraints === undefined
        ? {}
        : { missing: restraints.units === undefined ? ['the list of units'] : [] }),
    },
    {
      what: 'high-voltage isolation',
      at: `${at}/high_voltage/isolation`,
      step: high?.isolation,
      person: high?.isolation?.by ?? high?.person,
      order: 'before the work',
      ...(high?.isolation === undefined
        ? {}
        : { missing: high.isolation.lock === undefined ? ['lock and tag'] : [] }),
    },
    {
      what: 'absence of voltage proved',
      at: `${at}/high_voltage/proof_of_absence`,
      step: high?.proof_of_absence,
      person: high?.proof_of_absence?.by ?? high?.person,
      order: 'before the work',
      ...(high?.proof_of_absence === undefined ? {} : { missing: proofMissing(high.proof_of_absence) }),
    },
    {
      what: 'battery damage dealt with',
      at: `${at}/high_voltage`,
      step: high,
      person: high?.person,
      ...(high?.quarantine === undefined ? {} : { missing: quarantineMissing(high.quarantine) }),
    },
    {
      what: 'high-voltage re-commissioning',
      at: '/verify/high_voltage',
      step: verify?.high_voltage,
      person: verify?.high_voltage?.by ?? high?.person,
      order: 'after the work',
      ...(verify?.high_voltage === undefined ? {} : { missing: recommissioningMissing(verify.high_voltage) }),
    },
    { what: 'bake', at: '/finish/bake', step: finish?.bake, missing: [] },
  ];
}

/** A list of batteries or units alone says neither that the step is to be taken nor that it was. */
function isDecided({ planned, done }: StatedStep): boolean {
  return planned !== undefined || done !== undefined;
}

/** Sources of current that the vehicle has by its drive or by the plan's own list, and that are not disconnected. */
function batteriesMissing(
  survey: Survey,
  low: NonNullable<NonNullable<Survey['plan']['make_safe']>['low_voltage']>,
): readonly string[] {
  const off = new Set<string>(low.planned === false && low.done === undefined ? [] : low.batteries);
  const drives = listOf(survey.plan.vehicle.drive);
  const fitted = new Set<string>([
    '12 V',
    ...(low.fitted ?? []),
    ...(drives.includes('mild-hybrid') ? ['48 V'] : []),
  ]);
  return [
    ...[...fitted].filter((battery) => !off.has(battery)).map((battery) => `the ${battery} battery`),
    // It keeps live what the disconnecting was to make dead.
    ...(low.memory_supply === true ? ['the memory supply'] : []),
  ];
}

/** Above this a circuit counts as live, V. UN R100's limit for direct current (from memory). */
const liveVolts = 60;

function proofMissing(
  proof: NonNullable<
    NonNullable<NonNullable<Survey['plan']['make_safe']>['high_voltage']>['proof_of_absence']
  >,
): readonly string[] {
  const volts = quantityOf(proof.reading, 'voltage');
  return [
    ...(proof.meter_proved_before === true ? [] : ['the meter proved before']),
    ...(volts === undefined ? ['the reading'] : []),
    ...(volts !== undefined && volts > liveVolts ? [`a reading below ${String(liveVolts)} V`] : []),
    ...(proof.meter_proved_after === true ? [] : ['the meter proved after']),
    ...(whenOf(proof.done)?.minute === undefined ? ['day and time'] : []),
  ];
}

function recommissioningMissing(step: {
  readonly insulation?: string;
  readonly faults?: string;
}): readonly string[] {
  return [
    ...(step.insulation === undefined ? ['the insulation value'] : []),
    ...(step.faults === undefined ? ['the faults that are left'] : []),
  ];
}

function quarantineMissing(quarantine: {
  readonly place?: string;
  readonly distance?: string;
  readonly watch?: string;
}): readonly string[] {
  return (['place', 'distance', 'watch'] as const)
    .filter((key) => quarantine[key] === undefined)
    .map((key) => `the ${key} of the quarantine`);
}

function factsOf(survey: Survey, draft: StepDraft): StepFacts {
  const { step, at } = draft;
  const isStated = step !== undefined && step.planned !== false;
  const person = draft.person ?? step?.by;
  const restraints = survey.plan.make_safe?.restraints;
  const condition = survey.plan.make_safe?.high_voltage?.battery_condition;
  const wait = quantityOf(restraints?.wait, 'time');
  const asked = quantityOf(restraints?.wait_asked, 'time');
  return {
    'step.what': computed(draft.what, at),
    'step.stated': computed(isStated, at),
    'step.done': computed(step?.done !== undefined, `${at}/done`),
    'step.person': computed(person?.name !== undefined, `${at}/by`),
    'step.qualified': computed(person?.qualification !== undefined, `${at}/by`),
    'step.cited': computed(
      listOf(step?.cite).some((cite) => coversVehicle(survey, cite.reference)),
      `${at}/cite`,
    ),
    'step.complete': isComplete(draft),
    'step.missing': computedOr(missingText(draft), at, 'Nothing is missing.'),
    'step.in_order': inOrder(survey, draft),
    'step.insulation_margin': insulationMargin(survey, draft),
    'step.reading': statedOr(
      draft.what === 'absence of voltage proved'
        ? quantityOf(survey.plan.make_safe?.high_voltage?.proof_of_absence?.reading, 'voltage')
        : undefined,
      `${at}/reading`,
      'No reading is written.',
    ),
    'step.wait_short':
      wait === undefined || asked === undefined
        ? unknown(
            'The wait, or the wait that the page asks for, is not stated.',
            '/make_safe/restraints/wait',
          )
        : computed(wait < asked, '/make_safe/restraints/wait'),
    'step.wait_cited': computed(
      wait !== undefined &&
        listOf(restraints?.wait_cite).some((cite) => coversVehicle(survey, cite.reference)),
      '/make_safe/restraints/wait_cite',
    ),
    'step.battery_condition': statedOr(
      condition,
      '/make_safe/high_voltage/battery_condition',
      'The state of the traction battery is not stated.',
    ),
  };
}

/** Insulation where the maker's limit is not stated, Ω/V: that of UN R100 for circuits with alternating current (from memory). */
const usualInsulation = 500;

function insulationMargin(survey: Survey, { what, at }: StepDraft): Fact {
  const step = what === 'high-voltage re-commissioning' ? survey.plan.verify?.high_voltage : undefined;
  const measured = quantityOf(step?.insulation, 'insulation');
  const place = `${at}/insulation`;
  if (measured === undefined) return unknown('No insulation value is written.', place);
  return computed(measured - (quantityOf(step?.limit, 'insulation') ?? usualInsulation), place);
}

function isComplete({ missing, doubt, at }: StepDraft): Fact {
  if (missing === undefined || missing.length > 0) return computed(false, at);
  return doubt === undefined ? computed(true, at) : unknown(doubt, at);
}

function missingText({ missing, what }: StepDraft): string | undefined {
  if (missing === undefined) return `the whole step (${what})`;
  return missing.join(', ') || undefined;
}

function inOrder(survey: Survey, { step, order, at, what }: StepDraft): Fact {
  if (order === undefined) return unknown('The step has no fixed place.', at);
  const own = whenOf(step?.done);
  if (own === undefined) return unknown('When it was done is not written.', `${at}/done`);
  const work = survey.operations
    .filter(({ hot, works }) => hot !== false || (what !== 'batteries disconnected' && works !== false))
    .map(({ operation }) => whenOf(operation.done))
    .filter((when) => when !== undefined);
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
        'It was done on the day of the work; the times that would tell the order are not written.',
        `${at}/done`,
      )
    : computed(true, `${at}/done`);
}
