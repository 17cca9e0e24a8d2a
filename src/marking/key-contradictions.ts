import type { KeyFile, KeyPart } from '../generated/key-types.ts';
import type { FaultList } from '../packs/reading/fault-list.ts';
import { bareName } from './bare-name.ts';

/** Tells where a key says two things that cannot both hold; marks made by it would be anybody's. */
export function findContradictions({ parts }: KeyFile, list: FaultList): void {
  const named = new Map<string, { readonly name: string; readonly index: number }>();
  parts.forEach((part, index) => {
    const pointer = `/parts/${String(index)}`;
    [part.name, ...(part.also ?? [])].forEach((name, at) => {
      const bare = bareName(name);
      const other = named.get(bare);
      if (other !== undefined && other.index !== index)
        list.at(
          at === 0 ? `${pointer}/name` : `${pointer}/also/${String(at - 1)}`,
          other.name === part.name
            ? `\`${name}\` stands in this key already: a student’s part would fit both.`
            : `\`${name}\` is also a name of \`${other.name}\`: a student’s part would fit both.`,
        );
      named.set(bare, { name: part.name, index });
    });
    decidedAndForbidden(part, pointer, list);
    decidedTwice(part, pointer, list);
    nearlyAndRight(part, pointer, list);
    lessForMore(part, pointer, list);
  });
}

function decidedAndForbidden(
  { decisions, must_not: mustNot = [] }: KeyPart,
  pointer: string,
  list: FaultList,
): void {
  const forbidden = new Set(mustNot.flatMap((one) => one.do));
  decisions.forEach((one, index) => {
    if (forbidden.has(one.do))
      list.at(
        `${pointer}/decisions/${String(index)}/do`,
        `\`${one.do}\` is accepted here and forbidden in \`must_not\`.`,
      );
  });
}

function decidedTwice({ decisions }: KeyPart, pointer: string, list: FaultList): void {
  const met = new Map<string, number>();
  decisions.forEach(({ points, because: _, ...decision }, index) => {
    const said = JSON.stringify(Object.entries(decision).sort());
    const before = met.get(said);
    if (before !== undefined && before !== points)
      list.at(
        `${pointer}/decisions/${String(index)}/points`,
        `The same decision is worth ${String(before)} points above and ${String(points)} here.`,
      );
    met.set(said, points);
  });
}

function nearlyAndRight({ asked = [] }: KeyPart, pointer: string, list: FaultList): void {
  asked.forEach((one, index) => {
    if (one.nearly !== undefined && one.nearly.points >= one.points)
      list.at(
        `${pointer}/asked/${String(index)}/nearly/points`,
        'What is nearly right must be worth less than what is right.',
      );
  });
}

function lessForMore({ citation }: KeyPart, pointer: string, list: FaultList): void {
  if (citation === undefined) return;
  for (const name of ['without_revision', 'without_place'] as const) {
    if ((citation[name] ?? 0) >= citation.points)
      list.at(
        `${pointer}/citation/${name}`,
        'A citation that lacks something must be worth less than one that is whole.',
      );
  }
  if (citation.without_revision !== undefined && citation.revision === undefined)
    list.at(
      `${pointer}/citation/without_revision`,
      'No `revision` is asked for here, so that none can lack.',
      [],
      true,
    );
}
