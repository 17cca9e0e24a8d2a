import type { Joint, Operation } from '../generated/plan-types.ts';
import { quantityOf } from '../facts/quantity-of.ts';
import { lookUp } from '../facts/sheet.ts';
import type { FactSheet } from '../facts/sheet.ts';
import type { AskedName } from './asked-names.ts';
import type { PartMatch } from './match-parts.ts';

/** What a plan states for a part of what a key can ask: numbers in canonical units, words as the plan has them. */
export function statedValues(
  name: AskedName,
  { part, index }: PartMatch,
  sheets: readonly FactSheet[],
): readonly (number | string)[] {
  const operations = part.operations ?? [];
  const heats = operations.filter((one) => one.do === 'heat' || one.temperature !== undefined);
  const joints = operations.flatMap((one) => one.joints ?? []);
  const ofHeats = (get: (heat: Operation) => number | string | undefined): readonly (number | string)[] =>
    heats.flatMap((one) => get(one) ?? []);
  const ofJoints = (get: (joint: Joint) => number | string | undefined): readonly (number | string)[] =>
    joints.flatMap((one) => get(one) ?? []);
  switch (name) {
    case 'thickness':
      return present(quantityOf(part.thickness, 'length'));
    case 'class':
      return classOf(index, sheets);
    case 'coating':
      return present(part.coating);
    case 'damage':
      return present(part.damage?.kind);
    case 'heat source':
      return ofHeats((one) => one.source);
    case 'heat temperature':
      return ofHeats((one) => quantityOf(one.temperature, 'temperature'));
    case 'heat hold':
      return ofHeats((one) => quantityOf(one.hold, 'time'));
    case 'heat times':
      return ofHeats((one) => one.times);
    case 'clear within':
      return operations.flatMap((one) => quantityOf(one.clear_within, 'length') ?? []);
    case 'joint method':
      return ofJoints((one) => one.method);
    case 'joint form':
      return ofJoints((one) => one.form);
    case 'joint count':
      return ofJoints((one) => one.count);
    case 'joint factory count':
      return ofJoints((one) => one.factory_count);
    case 'joint nugget':
      return ofJoints((one) => quantityOf(one.nugget, 'length'));
    case 'joint pitch':
      return ofJoints((one) => quantityOf(one.pitch, 'length'));
    case 'joint edge':
      return ofJoints((one) => quantityOf(one.edge, 'length'));
    case 'joint hole':
      return ofJoints((one) => quantityOf(one.hole, 'length'));
  }
}

/** The class is what the grade, the strength and the stated class come to, not the word alone. */
function classOf(index: number, sheets: readonly FactSheet[]): readonly string[] {
  const sheet = sheets.find(({ kind, at }) => kind === 'part' && at === `/parts/${String(index)}`);
  const fact = sheet === undefined ? undefined : lookUp(sheet, 'part.class');
  return fact?.known === true && typeof fact.value === 'string' ? [fact.value] : [];
}

function present<T>(value: T | undefined): readonly T[] {
  return value === undefined ? [] : [value];
}
