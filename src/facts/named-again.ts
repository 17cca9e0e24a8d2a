import type { EntryFault } from '../plan/entry-fault.ts';
import { doubledOperations } from './doubled-operations.ts';
import { layersInARing, partsNamingThemselves } from './layers-in-a-ring.ts';
import type { JointSurvey, OperationSurvey, Survey } from './survey.ts';

/** What names itself where it must name another, and what stands twice in a list of different things. */
export function namedAgain(survey: Survey): readonly EntryFault[] {
  const { points, openings, zero_points: zero } = survey.plan.measurements ?? {};
  return [
    ...(points ?? []).flatMap((one, n) => pairedWithItself(one, `/measurements/points/${String(n)}`)),
    ...(openings ?? []).flatMap((one, n) => pairedWithItself(one, `/measurements/openings/${String(n)}`)),
    ...listedTwice(zero, '/measurements/zero_points'),
    ...partsNamingThemselves(survey),
    ...layersInARing(survey),
    ...survey.parts.flatMap(doubledOperations),
    ...survey.operations.flatMap((operation) =>
      operation.joints.flatMap((one) => [
        ...listedTwice(one.joint.sheets, `${one.at}/sheets`),
        ...joinedToItself(operation, one),
      ]),
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

/** A new piece may be joined to the rest of its own part, edge to edge or lapped at the cut; nothing else can be joined to itself. */
function joinedToItself(
  { part, cutsPartWay }: OperationSurvey,
  { joint, at }: JointSurvey,
): readonly EntryFault[] {
  const own = part.part.id;
  const isButt = joint.form === 'open butt' || joint.form === 'butt with insert';
  if (own === undefined || joint.to !== own || isButt || cutsPartWay !== false) return [];
  return [
    {
      fault: 'names itself',
      pointer: `${at}/to`,
      sentence: `\`${own}\` is said to be joined to itself, and it is not cut.`,
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
