import { goesOnWithoutWelding, partKindNouns } from '../part/part-kinds.ts';
import type { JointSurvey, OperationSurvey, PartSurvey, Survey } from '../survey.ts';
import { isJoinedIn } from './joined-in.ts';
import { saysScant } from './scant-words.ts';

/** Words that say how or where on a thing, and not which thing. */
const besides = new Set(
  'a an the at on in of to and or only just along round around inside outside under seam seams joint joints side sides left right front rear lh rh inner upper lower new'.split(
    ' ',
  ),
);

/**
 * What is wanting in the words for where the seams are sealed: that they tell of too little, or name parts alone that nothing was joined in at.
 * Undefined where they reach what was joined, or hold a word that is no kind of part: then nobody can tell.
 */
export function sealerWanting(survey: Survey): string | undefined {
  const { sealer } = survey.plan.finish ?? {};
  const places = sealer?.places;
  if (places === undefined || (sealer?.planned === false && sealer.done === undefined)) return undefined;
  if (saysScant(places)) return `“${places}” tells of too little`;
  const words = wordsOf(places).filter((word) => !besides.has(word));
  if (words.length === 0 || !words.every((word) => partKindNouns.has(word))) return undefined;
  const joined = survey.operations.filter(
    (one) => isJoinedIn(one) && !goesOnWithoutWelding(one.part.part.kind),
  );
  const isNamed = (parts: readonly PartSurvey[]): boolean => {
    const names = new Set(parts.flatMap(({ name, part }) => [...wordsOf(name), ...wordsOf(part.kind ?? '')]));
    return words.some((word) => names.has(word));
  };
  const seams = joined.flatMap((one) =>
    one.joints.map((joint) => ({ one, parts: around(survey, one, joint) })),
  );
  const bare = seams.filter(({ parts }) => !isNamed(parts));
  // "Sill" names one seam of several; "sill only" says that there is no other.
  const isAlone = /\b(?:only|just)\b/i.test(places);
  return bare.length === 0 || (!isAlone && bare.length < seams.length)
    ? undefined
    : `“${places}” leaves out ${[...new Set(bare.map(({ one }) => one.part.name))].join('; ')}`;
}

/** The parts that a joint holds together. */
function around(
  { partById }: Survey,
  { part }: OperationSurvey,
  { joint }: JointSurvey,
): readonly PartSurvey[] {
  const ids = [joint.to, ...(joint.sheets ?? [])];
  return [part, ...ids.map((id) => partById.get(id ?? '')).filter((one) => one !== undefined)];
}

function wordsOf(text: string): readonly string[] {
  return text.toLowerCase().match(/[a-z]+/gu) ?? [];
}
