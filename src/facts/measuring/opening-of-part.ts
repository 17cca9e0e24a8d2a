import type { Opening, PlanMeasurements } from '../../generated/plan-types.ts';
import { kindIs } from '../part/kind-table.ts';
import { sideOfWords } from '../part/side-named.ts';
import type { PartSurvey } from '../survey.ts';

/**
 * Which kinds of part stand around the opening that a name tells. The first row that fits counts; a door of which nobody says whether it
 * is the front or the rear one stands between all of them. Another opening (boot, bonnet, sunroof) is framed by no pillar.
 */
const framedBy: readonly (readonly [RegExp, readonly string[]])[] = [
  [
    /sliding door|rear.{0,8}\bdoor/u,
    ['b-pillar', 'c-pillar', 'door ring', 'sill', 'sill reinforcement', 'roof rail'],
  ],
  [
    /front.{0,8}\bdoor|(?:driver|passenger).{0,4}\bdoor/u,
    ['a-pillar', 'b-pillar', 'door ring', 'sill', 'sill reinforcement', 'roof rail'],
  ],
  [/\bdoor/u, ['a-pillar', 'b-pillar', 'c-pillar', 'door ring', 'sill', 'sill reinforcement', 'roof rail']],
  [/windscreen|front (?:window|glass|screen)/u, ['a-pillar', 'door ring']],
  [/tailgate|rear (?:window|glass|screen)/u, ['c-pillar', 'd-pillar']],
  [/(?:quarter|side) (?:window|glass)/u, ['c-pillar', 'd-pillar']],
];

/**
 * Whether the diagonals of an opening tell of this part: one of its corners lies on it, or its name says that this part stands around
 * it, on this side. An opening that nothing ties to the part may be any other, and tells nothing of it.
 */
export function isOpeningOf(
  { part }: PartSurvey,
  { name, corners }: Opening,
  points: PlanMeasurements['points'],
): boolean {
  if (part.kind === undefined || !kindIs(part.kind, 'frames an opening')) return false;
  const on = (corners ?? []).map((corner) => (points ?? []).find((point) => point.name === corner)?.on);
  if (part.id !== undefined && on.includes(part.id)) return true;
  const words = (name ?? '').toLowerCase();
  const side = sideOfWords(words);
  if (side !== undefined && (part.side === 'left' || part.side === 'right') && part.side !== side)
    return false;
  return framedBy.find(([said]) => said.test(words))?.[1].includes(part.kind) ?? false;
}
