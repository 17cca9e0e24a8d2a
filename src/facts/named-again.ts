import type { EntryFault } from '../plan/entry-fault.ts';
import type { Survey } from './survey.ts';

/** What names itself where it must name another, and what stands twice in a list of different things. */
export function namedAgain(survey: Survey): readonly EntryFault[] {
  const { points, openings } = survey.plan.measurements ?? {};
  return [
    ...(points ?? []).flatMap((one, n) => pairedWithItself(one, `/measurements/points/${String(n)}`)),
    ...(openings ?? []).flatMap((one, n) => pairedWithItself(one, `/measurements/openings/${String(n)}`)),
    ...survey.operations.flatMap(({ joints }) =>
      joints.flatMap(({ joint, at }) => listedTwice(joint.sheets, `${at}/sheets`)),
    ),
  ];
}

function pairedWithItself(
  { name, other_side: other }: { readonly name?: string; readonly other_side?: string },
  at: string,
): readonly EntryFault[] {
  if (name === undefined || other !== name) return [];
  return [
    {
      fault: 'names itself',
      pointer: `${at}/other_side`,
      sentence: `\`${name}\` is named as its own other side, and nothing differs from itself.`,
    },
  ];
}

function listedTwice(ids: readonly string[] | undefined, at: string): readonly EntryFault[] {
  return (ids ?? []).flatMap((id, n) =>
    (ids ?? []).indexOf(id) === n
      ? []
      : [
          {
            fault: 'listed twice',
            pointer: `${at}/${String(n)}`,
            sentence: `\`${id}\` is listed already.`,
          } as const,
        ],
  );
}
