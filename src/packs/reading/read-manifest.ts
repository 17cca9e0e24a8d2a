import type { Manifest, Vehicle } from '../../generated/pack-types.ts';
import { readYears } from '../../quantity/year-range.ts';
import type { FactDictionary } from '../fact-dictionary.ts';
import { factEntry } from '../fact-dictionary.ts';
import type { FaultList } from './fault-list.ts';
import type { FormerVehicle, Pack, PackLayer, PackVehicle } from '../pack.ts';
import { readVins } from './read-vins.ts';
import { compareVersions, readVersion } from '../versions/semantic-version.ts';

/** The part of a pack that its `pack.yaml` says. */
export interface PackHead extends Pick<
  Pack,
  'name' | 'version' | 'title' | 'format' | 'facts' | 'markets' | 'vehicle' | 'vehicleBefore'
> {
  readonly layer: PackLayer;
}

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
  const layer = layerOf(stated, faults);
  checkMarkets(stated, layer, dictionary, faults);
  const vehicle = stated.vehicle === undefined ? undefined : readVehicle(stated.vehicle, '/vehicle', faults);
  const vehicleBefore = readFormer(stated, faults);
  if (faults.faults.length > before) return undefined;
  return {
    name: stated.pack,
    version: stated.version,
    title: stated.title,
    format: stated.format,
    facts: stated.facts,
    layer,
    ...(stated.markets === undefined ? {} : { markets: stated.markets }),
    ...(vehicle === undefined ? {} : { vehicle }),
    ...(vehicleBefore.length === 0 ? {} : { vehicleBefore }),
  };
}

/** What is left out follows from the vehicle. The bottom layer is one pack, and it comes with planish. */
function layerOf({ pack, layer, vehicle, markets }: Manifest, faults: FaultList): PackLayer {
  if (pack === 'general') {
    if (layer !== undefined && layer !== 'general') {
      faults.at('/layer', 'The pack `general` is the layer general.');
    }
    return 'general';
  }
  if (layer === 'general') {
    faults.at('/layer', 'Only the pack `general` is that layer: others are `market`, `vehicle` or `shop`.');
  }
  if (layer === 'vehicle' && vehicle === undefined) {
    faults.at('/layer', 'A vehicle pack names its `vehicle`.');
  }
  if (layer === 'market' && markets === undefined) {
    faults.at('/layer', 'A market pack names its `markets`.');
  }
  return layer ?? (vehicle === undefined ? 'shop' : 'vehicle');
}

function checkMarkets(
  { markets }: Manifest,
  layer: PackLayer,
  dictionary: FactDictionary,
  faults: FaultList,
): void {
  if (markets === undefined) return;
  if (layer !== 'market') faults.at('/markets', 'Only a pack of `layer: market` has markets.', [], true);
  const entry = factEntry(dictionary, 'vehicle.market');
  const known = entry?.words ?? [];
  markets.forEach((market, index) => {
    if (known.includes(market)) return;
    faults.at(
      `/markets/${String(index)}`,
      `\`${market}\` is not a market of the plan.`,
      faults.nearest(market, known, entry?.synonyms),
    );
  });
}

function readVehicle(stated: Vehicle, at: string, faults: FaultList): PackVehicle {
  const years = stated.years === undefined ? undefined : readYears(stated.years);
  if (years?.ok === false) faults.at(`${at}/years`, years.reason);
  const vins = stated.vins === undefined ? undefined : readVins(stated.vins, `${at}/vins`, faults);
  return {
    maker: stated.maker,
    models: stated.models,
    ...(stated.bodies === undefined ? {} : { bodies: stated.bodies }),
    ...(years?.ok === true ? { years: { from: years.from, to: years.to } } : {}),
    ...(vins === undefined ? {} : { vins }),
  };
}

function readFormer(
  { vehicle, vehicle_before: before }: Manifest,
  faults: FaultList,
): readonly FormerVehicle[] {
  if (before !== undefined && vehicle === undefined) {
    faults.at('/vehicle_before', 'A pack for all vehicles was for all before.', [], true);
  }
  let last: ReturnType<typeof readVersion>;
  return (before ?? []).map((one, index) => {
    const at = `/vehicle_before/${String(index)}`;
    const until = readVersion(one.until);
    if (until === undefined) faults.at(`${at}/until`, 'A version is three numbers: 1.0.0.');
    else if (last !== undefined && compareVersions(until, last) <= 0) {
      faults.at(`${at}/until`, 'These stand in order, the oldest first.');
    }
    last = until ?? last;
    return { until: one.until, vehicle: readVehicle(one.vehicle, `${at}/vehicle`, faults) };
  });
}
