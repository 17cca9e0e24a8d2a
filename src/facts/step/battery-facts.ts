import type { FactNames } from '../../generated/fact-names.ts';
import { isBatteryFitted } from './battery-fitted.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type BatteryFact = Extract<
  FactNames['step'],
  | `step.${'unchecked' | 'battery_off' | 'quarantine_distance' | 'quarantine_watch'}`
  | `step.${'coolant' | 'coolant_opened_by' | 'state_of_charge'}`
>;

const lookedAt = ['connectors', 'enclosure', 'mounting', 'coolant'] as const;

/** The traction battery: whether it came out, what was looked at when it went on again, and how a damaged one is kept away. */
export function batteryFacts(survey: Survey, { what, at }: StepDraft): Readonly<Record<BatteryFact, Fact>> {
  const { high_voltage: high } = survey.plan.make_safe ?? {};
  const quarantine = high?.quarantine;
  const checked = survey.plan.verify?.high_voltage?.checked ?? [];
  const coolant = survey.plan.verify?.high_voltage?.coolant;
  const unchecked =
    lookedAt
      .filter((one) => !checked.includes(one) && (one !== 'coolant' || coolant === undefined))
      .join(', ') || undefined;
  const place = '/make_safe/high_voltage/quarantine';
  return {
    'step.unchecked':
      what === 'high-voltage re-commissioning'
        ? computedOr(unchecked, `${at}/checked`, 'Everything was looked at.')
        : unknown('The step is another.', at),
    'step.coolant': statedOr(
      what === 'high-voltage re-commissioning' ? coolant : undefined,
      `${at}/coolant`,
      'How the leak test came out is not stated, or the step is another.',
    ),
    'step.coolant_opened_by': computedOr(
      what === 'high-voltage re-commissioning' && coolant === 'not opened' ? batteryOutBy(survey) : undefined,
      `${at}/coolant`,
      'The cooling is not said to be unopened, or the battery does not come out.',
    ),
    'step.state_of_charge': chargeOf(survey, what, at),
    'step.battery_off': computed(isBatteryOff(survey), '/make_safe/high_voltage/battery_removed'),
    'step.quarantine_distance': statedOr(
      quantityOf(quarantine?.distance, 'length'),
      `${place}/distance`,
      'The distance of the quarantine is not stated.',
    ),
    'step.quarantine_watch': statedOr(
      quantityOf(quarantine?.watch, 'time'),
      `${place}/watch`,
      'How long the quarantine is watched is not stated.',
    ),
  };
}

/** As the vehicle came, of the isolation; as it goes, of re-commissioning. */
function chargeOf({ plan }: Survey, what: StepDraft['what'], at: string): Fact {
  const written =
    what === 'high-voltage isolation'
      ? plan.make_safe?.high_voltage?.state_of_charge
      : what === 'high-voltage re-commissioning'
        ? plan.verify?.high_voltage?.state_of_charge
        : undefined;
  const percent = quantityOf(written, 'percent');
  const place = what === 'high-voltage isolation' ? '/make_safe/high_voltage' : at;
  if (percent !== undefined && (percent < 0 || percent > 100))
    return unknown(
      'No battery is charged to less than nothing, or to more than 100 %.',
      `${place}/state_of_charge`,
    );
  return statedOr(percent, `${place}/state_of_charge`, 'The state of charge is not stated.');
}

/** Where the plan takes the traction battery out, and with it opens what is piped to it. */
function batteryOutBy({ plan, operations }: Survey): string | undefined {
  const fitted = operations.find(isBatteryFitted);
  if (fitted !== undefined) return fitted.part.name;
  return plan.make_safe?.high_voltage?.battery_removed === true
    ? 'the battery, by the steps before the work'
    : undefined;
}

export function isBatteryOff({ plan, operations }: Survey): boolean {
  return (
    plan.make_safe?.high_voltage?.battery_removed === true ||
    plan.finish?.bake?.traction_battery === 'removed' ||
    operations.some(isBatteryFitted)
  );
}
