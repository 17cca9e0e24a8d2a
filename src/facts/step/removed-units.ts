import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, statedOr } from '../make-fact.ts';
import { saysNone, saysNotDone } from './step-draft.ts';
import type { Survey } from '../survey.ts';

type RemovedFact = Extract<
  FactNames['plan'],
  `plan.${'units_off' | 'units_stored' | 'restraint_connectors_open' | 'memory_supply' | 'key_kept_away'}`
>;

/** Restraint units that come off live, and what could wake the vehicle while they do. */
export function removedUnitFacts({ plan }: Survey): Readonly<Record<RemovedFact, Fact>> {
  const { low_voltage: low, restraints } = plan.make_safe ?? {};
  const units = restraints?.units ?? [];
  const comesOff = units.filter(({ treatment }) => treatment === 'removed' || treatment === 'replaced');
  const live = comesOff.filter(({ state }) => state !== 'deployed');
  const at = '/make_safe/restraints';
  const storage = restraints?.storage;
  return {
    'plan.units_off': computedOr(
      live.map(({ name, unit }) => name ?? unit ?? 'a unit without a name').join(', ') || undefined,
      `${at}/units`,
      'No undeployed unit comes off.',
    ),
    'plan.units_stored': computed(
      storage !== undefined && !saysNone(storage) && !saysNotDone(storage),
      `${at}/storage`,
    ),
    'plan.restraint_connectors_open': computed(
      comesOff.length > 0 || (restraints?.wiring !== undefined && restraints.wiring !== 'untouched'),
      `${at}/units`,
    ),
    'plan.memory_supply': statedOr(
      low?.memory_supply,
      '/make_safe/low_voltage/memory_supply',
      'Whether a memory supply is connected is not stated.',
    ),
    'plan.key_kept_away': computed(!saysNone(low?.key), '/make_safe/low_voltage/key'),
  };
}
