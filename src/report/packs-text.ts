import type { PackChange } from '../packs/versions/pack-change.ts';
import type { Pack, PackVehicle } from '../packs/pack.ts';
import { versionsOf } from '../packs/versions/pack-at.ts';
import { countOf } from './count-words.ts';
import { visibleText } from './visible-text.ts';
import { wrapText } from './wrap-text.ts';

/** What of an installed pack is shown. */
export interface ShownPack {
  readonly pack: Pack;
  /** `built in`, or where it lies. */
  readonly where: string;
}

const indent = '  ';

/** What is installed: versions, digests, and the vehicles that it covers. */
export function packsText(shown: readonly ShownPack[], columns: number): string {
  const lines = shown.flatMap(({ pack, where }) => {
    const state = pack.released ? '' : ' (not released)';
    const add = (text: string): readonly string[] =>
      wrapText(visibleText(text), columns, `${indent}  `, indent);
    return [
      visibleText(`${pack.name} ${pack.version}${state}`),
      ...add(pack.title),
      ...add(`Layer ${pack.layer ?? 'general'}, ${where}`),
      ...add(`For ${coverage(pack)}`),
      ...add(contents(pack)),
      ...(pack.open === undefined
        ? []
        : add(
            `${countOf(pack.open.length, 'statement')} still to be filled in; until then nothing is lifted by it.`,
          )),
      ...versionsOf(pack).flatMap(({ version, digest, released }) => [
        `${indent}${version}${released ? '' : ' (not released)'}`,
        `${indent}  ${digest}`,
      ]),
      '',
    ];
  });
  return `${lines.slice(0, -1).join('\n')}\n`;
}

export function coverage({
  vehicle,
  markets,
  vehicleBefore,
}: Pick<Pack, 'vehicle' | 'markets' | 'vehicleBefore'>): string {
  if (vehicle === undefined) {
    return markets === undefined ? 'every vehicle' : `every vehicle of the market ${markets.join(', ')}`;
  }
  const before = (vehicleBefore ?? []).map((one) => `; before ${one.until}: ${vehicleWords(one.vehicle)}`);
  return `${vehicleWords(vehicle)}${before.join('')}`;
}

function vehicleWords({ maker, models, bodies, years, vins }: PackVehicle): string {
  const words = [
    `${maker} ${models.join(', ')}`,
    bodies?.join(', '),
    years === undefined
      ? 'all years'
      : years.from === years.to
        ? String(years.from)
        : `${String(years.from)}-${String(years.to)}`,
    vins === undefined ? undefined : `numbers ${vins.from} to ${vins.to}`,
  ];
  return words.filter((word) => word !== undefined).join(', ');
}

function contents({ rules, limits, provisions, parts = [] }: Pack): string {
  const counts = [
    countOf(rules.length, 'rule'),
    countOf(limits.length, 'limit'),
    countOf(provisions.length, 'statement'),
    countOf(parts.length, 'part'),
  ];
  return `${counts.join(', ')}, with those that ended`;
}

/** The list of packs as JSON: `{"packs": [...]}`. */
export function packsJson(shown: readonly ShownPack[]): string {
  const packs = shown.map(({ pack, where }) => ({
    pack: pack.name,
    version: pack.version,
    released: pack.released,
    digest: pack.digest,
    title: pack.title,
    layer: pack.layer ?? 'general',
    where,
    fact_schema: pack.facts,
    ...(pack.markets === undefined ? {} : { markets: pack.markets }),
    ...(pack.vehicle === undefined ? {} : { vehicle: pack.vehicle }),
    ...(pack.vehicleBefore === undefined ? {} : { vehicle_before: pack.vehicleBefore }),
    rules: pack.rules.length,
    limits: pack.limits.length,
    provisions: pack.provisions.length,
    parts: (pack.parts ?? []).length,
    to_fill_in: (pack.open ?? []).length,
    versions: versionsOf(pack),
  }));
  return `${JSON.stringify({ packs }, undefined, 2)}\n`;
}

const titles = {
  rule: 'Rules',
  limit: 'Limits',
  provision: 'Statements of the maker',
  table: 'Other tables',
} as const;

/** What differs between two packs. `from` and `to` name them. */
export function diffText(from: string, to: string, changes: readonly PackChange[], columns: number): string {
  const lines = [...wrapText(visibleText(`From ${from} to ${to}:`), columns, '')];
  if (changes.length === 0) lines.push(`${indent}nothing that judges differs.`);
  for (const what of ['rule', 'limit', 'provision', 'table'] as const) {
    const some = changes.filter((change) => change.what === what);
    if (some.length === 0) continue;
    lines.push('', titles[what]);
    for (const { kind, name, detail } of some) {
      const text = `${kind.padEnd(10)} ${name}${detail === undefined ? '' : `: ${detail}`}`;
      const lead = `${indent}${kind.padEnd(10)} `;
      lines.push(...wrapText(visibleText(text.slice(11)), columns, ' '.repeat(lead.length), lead));
    }
  }
  return `${lines.join('\n')}\n`;
}

export function diffJson(from: string, to: string, changes: readonly PackChange[]): string {
  return `${JSON.stringify({ from, to, changes }, undefined, 2)}\n`;
}
