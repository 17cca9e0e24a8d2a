import type { EntryFault } from '../plan/entry-fault.ts';
import { listOf } from './quantity-of.ts';
import type { PartSurvey, Survey } from './survey.ts';

const keys = ['under', 'over', 'joined_to'] as const;
const inWords = {
  under: 'lie under itself',
  over: 'lie over itself',
  joined_to: 'be joined to itself',
} as const;

/** Parts that are said to lie under or over themselves, or to be joined to themselves. */
export function partsNamingThemselves({ parts }: Survey): readonly EntryFault[] {
  return parts.flatMap(({ part, at }) =>
    keys.flatMap((key): readonly EntryFault[] => {
      const named = part[key];
      const index = listOf(named).findIndex((id) => id === part.id);
      if (index < 0 || part.id === undefined) return [];
      return [
        {
          fault: 'names itself',
          pointer: Array.isArray(named) ? `${at}/${key}/${String(index)}` : `${at}/${key}`,
          sentence: `\`${part.id}\` is said to ${inWords[key]}.`,
        },
      ];
    }),
  );
}

/** Layers that hide each other in a circle: of each circle one finding, at the first of its parts in the plan. */
export function layersInARing({ parts, partById }: Survey): readonly EntryFault[] {
  const over = hidersOf(parts, partById);
  const told = new Set<PartSurvey>();
  const faults: EntryFault[] = [];
  for (const one of parts) {
    if (told.has(one)) continue;
    const ring = ringThrough(one, over);
    if (ring === undefined) continue;
    ring.forEach((part) => told.add(part));
    const names = [...ring.slice(1), one].map(({ part }) => `\`${part.id ?? ''}\``);
    faults.push({
      fault: 'names itself',
      pointer: `${one.at}/${one.part.under === undefined ? 'over' : 'under'}`,
      sentence: `\`${one.part.id ?? ''}\` is said to lie under ${names.join(', and that under ')}: layers cannot hide each other in a circle.`,
    });
  }
  return faults;
}

type Hiders = ReadonlyMap<PartSurvey, readonly PartSurvey[]>;

/** Of each part those that lie over it, itself left out: that is told of its own. */
function hidersOf(parts: readonly PartSurvey[], partById: ReadonlyMap<string, PartSurvey>): Hiders {
  const hiders = new Map<PartSurvey, PartSurvey[]>();
  const add = (hidden: PartSurvey | undefined, hider: PartSurvey | undefined): void => {
    if (hidden === undefined || hider === undefined || hidden === hider) return;
    hiders.set(hidden, [...(hiders.get(hidden) ?? []), hider]);
  };
  for (const one of parts) {
    for (const id of listOf(one.part.under)) add(one, partById.get(id));
    for (const id of listOf(one.part.over)) add(partById.get(id), one);
  }
  return hiders;
}

/** The shortest way from a part over what hides it back to itself. */
function ringThrough(start: PartSurvey, hiders: Hiders): readonly PartSurvey[] | undefined {
  const cameFrom = new Map<PartSurvey, PartSurvey>();
  const open: PartSurvey[] = [start];
  for (let part = open.shift(); part !== undefined; part = open.shift()) {
    for (const hider of hiders.get(part) ?? []) {
      if (hider === start) return wayBack(part, start, cameFrom);
      if (cameFrom.has(hider)) continue;
      cameFrom.set(hider, part);
      open.push(hider);
    }
  }
  return undefined;
}

function wayBack(
  last: PartSurvey,
  start: PartSurvey,
  cameFrom: ReadonlyMap<PartSurvey, PartSurvey>,
): readonly PartSurvey[] {
  const way: PartSurvey[] = [];
  for (
    let part: PartSurvey | undefined = last;
    part !== undefined && part !== start;
    part = cameFrom.get(part)
  ) {
    way.unshift(part);
  }
  return [start, ...way];
}
