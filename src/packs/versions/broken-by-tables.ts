import type { Pack, PackPart } from '../pack.ts';
import { begins, ends } from './version-step.ts';
import type { VersionStep } from './version-step.ts';

/**
 * What the tables of a pack beside its rules, limits and statements break of its promise. Numbers that ask for more, what is said of a
 * part and a document that is superseded may stop a plan; a check that is asked for, or an entry that is gone, may hold one.
 */
export function brokenByTables(pack: Pack, between: VersionStep): readonly string[] {
  return [
    ...byNumbers(pack, between),
    ...(pack.parts ?? [])
      .filter((entry) => begins(entry, between) && !isSaid(entry, between.old.parts))
      .map(({ part, document }) => `What ${document} says of a ${part} begins to contradict plans`),
    ...(pack.documents ?? [])
      .filter((entry) => begins(entry, between))
      .map(
        ({ document, revision }) =>
          `${[document, revision].filter((word) => word !== undefined).join(' ')} is superseded and begins to permit nothing`,
      ),
    ...(between.step === 'patch' ? holding(pack, between) : []),
  ];
}

function byNumbers(pack: Pack, between: VersionStep): readonly string[] {
  const { old } = between;
  // Only the bottom layer can ask for less by its first number; under any other the number of `general` stands already.
  const isBottom = pack.layer === 'general';
  const allowances = pack.allowances.filter((one) => {
    const before = old.allowances.find(({ means }) => means === one.means);
    return begins(one, between) && (before === undefined ? !isBottom : one.kelvin > before.kelvin);
  });
  const reaches = pack.reaches.filter((one) => {
    const before = old.reaches.find(({ from }) => from === one.from);
    return begins(one, between) && (before === undefined ? !isBottom : one.mm > before.mm);
  });
  const tolerances = (pack.tolerances ?? []).filter((one) => {
    const before = old.tolerances?.find(({ of }) => of === one.of);
    return begins(one, between) && (before === undefined || one.atMostMm < before.atMostMm);
  });
  return [
    ...allowances.map(({ means }) => `The allowance for \`${means}\` grows`),
    ...reaches.map(({ from }) => `The reach of \`${from}\` grows`),
    ...tolerances.map(({ of }) => `The tolerance of \`${of}\` is tightened`),
  ];
}

/** What leaves a question open that was none, or asks a new one. */
function holding(pack: Pack, between: VersionStep): readonly string[] {
  const now = (pack.parts ?? []).filter((entry) => begins(entry, between));
  return [
    ...(pack.triggers ?? [])
      .filter((one) => begins(one, between))
      .map(({ asksFor }) => `More work begins to ask for: ${asksFor}`),
    ...(pack.orders ?? [])
      .filter((one) => begins(one, between))
      .map(({ first, then }) => `Days begin to be compared: ${first} before ${then}`),
    ...(pack.parts ?? [])
      .filter((entry) => ends(entry, between) && !isSaid(entry, now))
      .map(({ part, document }) => `What ${document} says of a ${part} no longer completes plans`),
  ];
}

/** Whether an entry says the same of the same parts, in whatever revision of whatever document. */
function isSaid(entry: PackPart, others: readonly PackPart[] | undefined): boolean {
  return others?.some((other) => contentOf(other) === contentOf(entry)) === true;
}

function contentOf({ part, sides, bodies, years, vins, ...said }: PackPart): string {
  const { grade, tensileMpa, class: word, thicknessMm, onePiece, under } = said;
  return JSON.stringify([
    ...[part, sides, bodies, years.from, years.to, vins?.from, vins?.to],
    ...[grade, tensileMpa, word, thicknessMm, onePiece, under],
  ]);
}
