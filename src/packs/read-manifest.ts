import type { Manifest } from '../generated/pack-types.ts';
import { readYears } from '../quantity/year-range.ts';
import type { FactDictionary } from './fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { Pack } from './pack.ts';
import { readVersion } from './semantic-version.ts';

/** The part of a pack that its `pack.yaml` says. */
export type PackHead = Omit<Pack, 'rules' | 'limits' | 'allowances' | 'reaches' | 'provisions' | 'digest'>;

/** Reads a manifest that has the form of the schema; undefined when something in it cannot be right. */
export function readManifest(
  stated: Manifest,
  dictionary: FactDictionary,
  faults: FaultList,
): PackHead | undefined {
  const before = faults.faults.length;
  if (!/^[a-z0-9]+(?:-[a-z0-9]+)*$/u.test(stated.pack)) {
    faults.at('/pack', 'The name of a pack has lower-case letters, digits and single hyphens between them.');
  }
  if (stated.facts !== dictionary.version) {
    faults.at(
      '/facts',
      `The pack was written for fact schema ${String(stated.facts)}; this planish has ${String(dictionary.version)}.`,
    );
  }
  if (readVersion(stated.version) === undefined) {
    faults.at('/version', 'A version is three numbers: 1.0.0.');
  }
  const { vehicle } = stated;
  const years = vehicle?.years === undefined ? undefined : readYears(vehicle.years);
  if (years?.ok === false) faults.at('/vehicle/years', years.reason);
  if (faults.faults.length > before) return undefined;
  return {
    name: stated.pack,
    version: stated.version,
    released: stated.released,
    title: stated.title,
    format: stated.format,
    facts: stated.facts,
    ...(vehicle === undefined
      ? {}
      : {
          vehicle: {
            maker: vehicle.maker,
            models: vehicle.models,
            ...(vehicle.bodies === undefined ? {} : { bodies: vehicle.bodies }),
            ...(years?.ok === true ? { years: { from: years.from, to: years.to } } : {}),
          },
        }),
  };
}
