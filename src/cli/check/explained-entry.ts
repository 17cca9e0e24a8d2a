import type { Plan } from '../../generated/plan-types.ts';
import type { FactSheet } from '../../facts/sheet.ts';
import { nearestWords } from '../../plan/nearest-word.ts';

/** The sheets that are about one part or one operation, and what it is called. */
export type ChosenEntry =
  | { readonly ok: true; readonly of: string; readonly sheets: readonly FactSheet[] }
  | { readonly ok: false; readonly sentence: string };

/**
 * Finds PART or PART/OPERATION in a plan: a part by its id or name, an operation by its word or its number from 1. A word that
 * several operations of the part bear means all of them.
 */
export function chooseEntry(plan: Plan, sheets: readonly FactSheet[], given: string): ChosenEntry {
  const whole = partsNamed(plan, given);
  const cut = given.lastIndexOf('/');
  const [partName, operation] =
    whole.length > 0 || cut === -1 ? [given, undefined] : [given.slice(0, cut), given.slice(cut + 1)];
  const found = whole.length > 0 ? whole : partsNamed(plan, partName);
  const [index, ...more] = found;
  if (index === undefined) return noSuchPart(plan, partName);
  if (more.length > 0) {
    return refuse(`Several parts are called \`${partName}\`; name it by its id.`);
  }
  const at = `/parts/${String(index)}`;
  if (operation === undefined) {
    const own = sheets.filter((sheet) => isBelow(sheet.at, at) || isBelow(sheet.operation ?? '', at));
    return { ok: true, of: partName, sheets: own };
  }
  const operations = plan.parts[index]?.operations ?? [];
  const chosen = operations.flatMap(({ do: word }, place) =>
    word === operation || String(place + 1) === operation ? [`${at}/operations/${String(place)}`] : [],
  );
  if (chosen.length === 0) {
    const known = operations.flatMap(({ do: word }) => (word === undefined ? [] : [word]));
    const list = known.map((word, place) => `${String(place + 1)} ${word}`).join(', ');
    const has = list === '' ? 'it has none' : `it has ${list}`;
    return refuse(`The part \`${partName}\` has no operation \`${operation}\`; ${has}.`);
  }
  const own = sheets.filter((sheet) =>
    chosen.some((one) => isBelow(sheet.at, one) || sheet.operation === one),
  );
  return { ok: true, of: `${partName}/${operation}`, sheets: own };
}

function partsNamed(plan: Plan, given: string): readonly number[] {
  const all = [...plan.parts.entries()];
  const byId = all.filter(([, { id }]) => id === given);
  const found = byId.length > 0 ? byId : all.filter(([, { name }]) => name === given);
  return found.map(([index]) => index);
}

function isBelow(pointer: string, at: string): boolean {
  return pointer === at || pointer.startsWith(`${at}/`);
}

function noSuchPart(plan: Plan, given: string): ChosenEntry {
  const known = plan.parts.flatMap(({ id, name }) => [id, name]).filter((one) => one !== undefined);
  const nearest = nearestWords(given, known);
  const list = plan.parts.flatMap(({ id }) => (id === undefined ? [] : [id])).join(', ');
  const hint = nearest.length > 0 ? `Nearest known: \`${nearest.join('`, `')}\`.` : `It has ${list}.`;
  return refuse(`The plan has no part \`${given}\`. ${hint}`);
}

function refuse(sentence: string): ChosenEntry {
  return { ok: false, sentence };
}
