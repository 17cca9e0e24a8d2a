import { bakesOf, warmthsOf } from './bakes.ts';
import type { Bake } from './bakes.ts';
import { listedNeighbours } from './exposed-neighbour.ts';
import type { Neighbour } from './exposed-neighbour.ts';
import { victimOf } from './exposure-victim.ts';
import type { VictimWord } from './exposure-victim.ts';
import { heldItems } from '../part/held-items.ts';
import { linkedParts } from '../part/linked-parts.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { allYes } from '../tri-state.ts';
import type { TriState } from '../tri-state.ts';

/** Something that a bake warms, the traction battery left out: that is judged by its own limit. */
export interface BakedNeighbour {
  readonly bake: Bake;
  readonly at: string;
  readonly name: string;
  readonly victim: VictimWord;
  readonly stays: TriState;
  readonly open?: string;
  readonly near?: Neighbour;
}

/** A lamp or a fan warms what stands before it and no more, mm. Common practice, no source. */
const reachMm = 300;

/** What each bake and each drying with heat warms: what is listed beside it, and what the parts that it reaches are or hold. */
export function bakedNeighbours(survey: Survey): readonly BakedNeighbour[] {
  return [...bakesOf(survey), ...warmthsOf(survey)].flatMap((bake) => {
    const listed = listedBeside(survey, bake);
    const named = new Set(listed.map(({ victim, near }) => `${victim} ${near?.part?.at ?? ''}`));
    const around = partsInReach(survey, bake).flatMap((part) => ofPart(survey, bake, part));
    return [...listed, ...together(around.filter(({ key }) => !named.has(key)))].filter(
      ({ victim }) => victim !== 'traction battery',
    );
  });
}

function listedBeside(survey: Survey, bake: Bake): readonly BakedNeighbour[] {
  const { by } = bake;
  if (by === undefined) return [];
  return (by.operation.near ?? [])
    .flatMap((near, index) => listedNeighbours(survey, by, near, index))
    .flatMap((near): readonly BakedNeighbour[] => {
      const { victim, at, name, stays, open, distanceMm } = near;
      const isFar = isLocal(bake) && distanceMm !== undefined && distanceMm >= reachMm;
      if (victim === undefined || isFar) return [];
      return [{ bake, at, name, victim, stays, ...(open === undefined ? {} : { open }), near }];
    });
}

/** A booth and an oven warm the whole vehicle, a lamp or a fan what it stands before. */
function isLocal({ by }: Bake): boolean {
  if (by === undefined) return false;
  const { source, do: word } = by.operation;
  return source === 'infra-red panel' || source === 'hot air' || (word !== 'bake' && word !== 'refinish');
}

function partsInReach(survey: Survey, bake: Bake): readonly PartSurvey[] {
  const { part } = bake;
  return isLocal(bake) && part !== undefined ? [part, ...linkedParts(survey, part)] : survey.parts;
}

type Found = BakedNeighbour & { readonly key: string };

function ofPart(survey: Survey, bake: Bake, part: PartSurvey): readonly Found[] {
  const entry = { bake, at: bake.at };
  const { word } = victimOf(survey, part);
  // Of what a part is made is for the rules on material to ask; no bake of a vehicle spoils a sheet that nobody knows.
  const isKnown = word !== 'unknown material' && word !== 'aluminium of unknown alloy';
  const itself: readonly Found[] = isKnown
    ? [{ key: `${word} ${part.at}`, ...entry, name: part.name, victim: word, stays: true }]
    : [];
  const held = heldItems(survey, part, bake.by?.operation.step).map(({ item, name, stays }): Found => ({
    key: `${item} ${part.at}`,
    ...entry,
    ...{ name, victim: item, stays },
    open: `Whether ${name} is off the vehicle by then is not stated.`,
  }));
  return [...itself, ...held];
}

/** One for each kind: what stands the same heat is told in one sentence. */
function together(found: readonly Found[]): readonly BakedNeighbour[] {
  const byVictim = new Map<VictimWord, Found[]>();
  for (const one of found) byVictim.set(one.victim, [...(byVictim.get(one.victim) ?? []), one]);
  return [...byVictim.values()].flatMap((like): readonly BakedNeighbour[] => {
    const certain = like.filter(({ stays }) => stays === true);
    const [first] = certain.length > 0 ? certain : like;
    if (first === undefined) return [];
    const names = (certain.length > 0 ? certain : like).map(({ name }) => name);
    const more = names.length - mostNamed;
    const name = `${names.slice(0, mostNamed).join(', ')}${more > 0 ? ` and ${String(more)} more` : ''}`;
    return [{ ...first, name, stays: certain.length > 0 ? true : allYes(like.map(({ stays }) => stays)) }];
  });
}

const mostNamed = 3;
