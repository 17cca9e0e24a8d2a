import type { Part, Plan } from '../../generated/plan-types.ts';
import { sameName } from '../../vehicle/same-name.ts';
import { inVinRange } from '../../vehicle/vin-range.ts';
import type { MakerEntry, MakerStatements } from '../context.ts';

/** An entry of a vehicle pack, with the pack that carries it. */
export interface PackEntry<Entry> {
  readonly pack: string;
  readonly entry: Entry;
}

type Vehicle = Plan['vehicle'];

/** The entries of all packs that are for this maker and model; none when the plan does not name both. */
export function entriesForModel<Entry>(
  { maker, model }: Vehicle,
  makers: readonly MakerStatements[],
  entriesOf: (makers: MakerStatements) => readonly Entry[],
): readonly PackEntry<Entry>[] {
  if (maker === undefined || model === undefined) return [];
  return makers
    .filter((one) => isForModel(one, maker, model))
    .flatMap((one) => entriesOf(one).map((entry) => ({ pack: one.pack, entry })));
}

export function isForModel({ maker, models }: MakerStatements, own: string, model: string): boolean {
  return sameName(maker, own) && models.some((one) => sameName(one, model));
}

/**
 * Whether an entry is for the body, year and number of a vehicle. Where the plan leaves out what would decide, `inDoubt` decides:
 * a prohibition counts in doubt, a permission does not.
 */
export function isForVehicle(
  entry: MakerEntry,
  { body, model_year: year, vin }: Vehicle,
  inDoubt: boolean,
): boolean {
  const yearFits = year === undefined ? inDoubt : year >= entry.years.from && year <= entry.years.to;
  const bodyFits =
    entry.bodies === undefined ||
    (body === undefined ? inDoubt : entry.bodies.some((one) => sameName(one, body)));
  return yearFits && bodyFits && vinFits(entry, vin, inDoubt);
}

function vinFits({ vins }: MakerEntry, vin: string | undefined, inDoubt: boolean): boolean {
  if (vins === undefined) return true;
  const answer = vin === undefined ? undefined : inVinRange(vin, vins);
  return answer === 'inside' || (answer !== 'outside' && inDoubt);
}

/** Whether an entry is about the side of a part; `both` and a side that is not stated are in doubt. */
export function isForSide({ sides }: MakerEntry, side: Part['side'], inDoubt: boolean): boolean {
  return sides === undefined || (side === undefined || side === 'both' ? inDoubt : sides.includes(side));
}

/** Where the maker's document says it, and which pack carries that. */
export function whereItSays(
  { document, revision, page }: Pick<MakerEntry, 'document' | 'revision' | 'page'>,
  pack: string,
): string {
  const parts = [
    document,
    ...(revision === undefined ? [] : [`revision ${revision}`]),
    ...(page === undefined ? [] : [page]),
  ];
  return `${parts.join(', ')}, in pack ${pack}`;
}
