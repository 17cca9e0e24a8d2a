import { listOf, voltsOf, whenOf } from '../quantity-of.ts';
import { lockWanting } from './lock-told.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type MakeSafe = NonNullable<Survey['plan']['make_safe']>;
type HighVoltage = NonNullable<MakeSafe['high_voltage']>;

/** The steps that make the vehicle safe before the work, and what becomes of its traction voltage after it. */
export function safetySteps(survey: Survey): readonly StepDraft[] {
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
      refusedAsAWhole: high?.planned === false,
      person: high?.isolation?.by ?? high?.person,
      order: 'before the work',
      ...(high?.isolation === undefined ? {} : { missing: listOf(lockWanting(high.isolation.lock)) }),
    },
    {
      what: 'absence of voltage proved',
      at: `${at}/high_voltage/proof_of_absence`,
      step: high?.proof_of_absence,
      refusedAsAWhole: high?.planned === false,
      person: high?.proof_of_absence?.by ?? high?.person,
      order: 'before the work',
      ...(high?.proof_of_absence === undefined ? {} : { missing: proofMissing(high.proof_of_absence) }),
    },
    {
      what: 'battery damage dealt with',
      at: `${at}/high_voltage`,
      step: high,
      person: high?.person,
      missing: quarantineMissing(high?.quarantine ?? {}),
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

/** Sources of current that the vehicle has by its drive or by the plan's own list, and that are not disconnected. */
function batteriesMissing(survey: Survey, low: NonNullable<MakeSafe['low_voltage']>): readonly string[] {
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

function proofMissing(proof: NonNullable<HighVoltage['proof_of_absence']>): readonly string[] {
  const volts = voltsOf(proof.reading);
  return [
    ...(proof.meter_proved_before === true ? [] : ['the meter proved before']),
    ...(volts === undefined ? ['the reading'] : []),
    ...(volts !== undefined && volts > liveVolts ? [`a reading below ${String(liveVolts)} V`] : []),
    ...(proof.meter_proved_after === true ? [] : ['the meter proved after']),
    ...(whenOf(proof.done)?.minute === undefined ? ['day and time'] : []),
  ];
}

function recommissioningMissing(step: {
  readonly done?: string;
  readonly insulation?: string;
  readonly faults?: string;
}): readonly string[] {
  return [
    ...(step.insulation === undefined ? ['the insulation value'] : []),
    ...(step.faults === undefined ? ['the faults that are left'] : []),
    ...(step.done === undefined ? ['the day'] : []),
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
