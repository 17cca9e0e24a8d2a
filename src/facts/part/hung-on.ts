import type { PartKind } from '../../generated/plan-types.ts';
import { endOfPart } from '../step/vehicle-end.ts';
import type { OperationSurvey, PartSurvey, Survey } from '../survey.ts';
import { linkedParts } from './linked-parts.ts';
import { goesOnWithoutWelding } from './part-kinds.ts';

const glazed = [
  'a-pillar',
  'c-pillar',
  'd-pillar',
  'door ring',
  'roof rail',
  'roof bow',
  'roof skin',
] as const;
const skins = ['side panel', 'quarter panel'] as const;
const underBattery = ['sill', 'floor', 'crossmember'] as const;

/** On which kinds of part a bolted one usually sits and pulls by its weight or its bolts. Common practice, no source. */
const sitsOn: Readonly<Partial<Record<PartKind, readonly PartKind[]>>> = {
  'bumper beam': ['front rail', 'rear rail', 'crossmember', 'back panel'],
  'radiator support': ['front rail', 'apron'],
  subframe: ['front rail', 'rear rail', 'strut tower', 'crossmember', 'floor', 'sill'],
  'suspension part': ['front rail', 'rear rail', 'strut tower', 'apron', 'wheelhouse', 'subframe'],
  'steering part': ['front rail', 'subframe', 'bulkhead', 'crossmember'],
  'battery tray': underBattery,
  'traction battery': underBattery,
  seat: ['floor', 'tunnel', 'crossmember'],
  fender: ['apron', 'a-pillar'],
  bonnet: ['apron', 'bulkhead', 'radiator support'],
  door: ['a-pillar', 'b-pillar', 'door ring', 'side panel'],
  'boot lid': ['c-pillar', 'back panel', ...skins],
  tailgate: ['c-pillar', 'd-pillar', 'back panel', 'roof bow', 'roof skin', ...skins],
  glass: [...glazed, ...skins],
};

/** Operations that bolt or hang something on one of the parts: by what the plan links to it, or by what usually sits there. */
export function hungOn(
  survey: Survey,
  parts: readonly (PartSurvey | undefined)[],
): readonly OperationSurvey[] {
  const carriers = parts.filter((one) => one !== undefined);
  return survey.operations.filter(({ operation, part }) => {
    const goesOn = operation.do === 'replace' || operation.do === 'remove and refit';
    if (!goesOn || carriers.includes(part)) return false;
    // A cover, a lamp or a trim pulls at nothing.
    const { kind } = part.part;
    if (!goesOnWithoutWelding(kind) || kind === undefined || sitsOn[kind] === undefined) return false;
    return carriers.some((carrier) => linkedParts(survey, part).has(carrier) || usuallySitsOn(part, carrier));
  });
}

function usuallySitsOn(one: PartSurvey, carrier: PartSurvey): boolean {
  const [part, other] = [one.part, carrier.part];
  if (part.kind === undefined || other.kind === undefined) return false;
  if (sitsOn[part.kind]?.includes(other.kind) !== true) return false;
  const [end, otherEnd] = [endOfPart(one.name, part.kind), endOfPart(carrier.name, other.kind)];
  const isSameEnd = end === undefined || otherEnd === undefined || end === otherEnd;
  return isSameEnd && !(isOneSide(part.side) && isOneSide(other.side) && part.side !== other.side);
}

function isOneSide(side: PartSurvey['part']['side']): boolean {
  return side === 'left' || side === 'right';
}
