import type { FactNames } from '../../generated/fact-names.ts';
import { isBatteryFitted } from './battery-fitted.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { quantityOf } from '../quantity-of.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type BatteryFact = Extract<
  FactNames['step'],
  'step.unchecked' | 'step.battery_off' | 'step.quarantine_distance' | 'step.quarantine_watch'
>;

const lookedAt = ['connectors', 'enclosure', 'mounting', 'coolant'] as const;

/** The traction battery: whether it came out, what was looked at when it went on again, and how a damaged one is kept away. */
export function batteryFacts(survey: Survey, { what, at }: StepDraft): Readonly<Record<BatteryFact, Fact>> {
  const { high_voltage: high } = survey.plan.make_safe ?? {};
  const quarantine = high?.quarantine;
  const checked = survey.plan.verify?.high_voltage?.checked ?? [];
  const unchecked = lookedAt.filter((one) => !checked.includes(one)).join(', ') || undefined;
  const place = '/make_safe/high_voltage/quarantine';
  return {
    'step.unchecked':
      what === 'high-voltage re-commissioning'
        ? computedOr(unchecked, `${at}/checked`, 'Everything was looked at.')
        : unknown('The step is another.', at),
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

export function isBatteryOff({ plan, operations }: Survey): boolean {
  return (
    plan.make_safe?.high_voltage?.battery_removed === true ||
    plan.finish?.bake?.traction_battery === 'removed' ||
    operations.some(isBatteryFitted)
  );
}
