import type { PartKind } from '../../generated/plan-types.ts';
import type { Fact } from '../fact.ts';
import { isPermanent } from '../joint/joint-methods.ts';
import { computedOr } from '../make-fact.ts';
import type { JointSurvey, OperationSurvey, Survey } from '../survey.ts';
import { kindIs } from './kind-table.ts';

/** What stands or lies between two others. A rail, a sill or a ring may be joined along one part alone. */
const spans: ReadonlySet<PartKind> = new Set<PartKind>(['b-pillar', 'crossmember']);

/**
 * The one part to which all joints of a pillar or crossmember go that is replaced whole. A skin over it holds neither end. Where the part
 * says that it is joined to that one alone, and a page is cited at the joint, that is what the page draws.
 */
export function joinedAtOneEnd(survey: Survey, one: OperationSurvey): Fact {
  const found = onlyNeighbour(survey, one);
  return computedOr(
    found === undefined ? undefined : (survey.partById.get(found)?.name ?? found),
    one.joints[0]?.at ?? one.at,
    'It is no pillar or crossmember that is replaced whole, or its joints go to more than one part.',
  );
}

function onlyNeighbour(
  survey: Survey,
  { operation, part: { part }, joints, cutsPartWay }: OperationSurvey,
): string | undefined {
  if (part.kind === undefined || !spans.has(part.kind) || part.id === undefined) return undefined;
  if (operation.do !== 'replace' || cutsPartWay !== false) return undefined;
  if (operation.planned === false && operation.done === undefined) return undefined;
  const own = part.id;
  const rows = survey.operations
    .flatMap((other) => other.joints.map((row) => ({ row, ids: idsOf(other, row) })))
    .filter(({ row, ids }) => ids.has(own) && isHolding(row));
  const others = new Set(
    rows.flatMap(({ ids }) => [...ids]).filter((id) => id !== own && !isSkin(survey, id)),
  );
  const [only, ...more] = others;
  if (only === undefined || more.length > 0 || !joints.some(isHolding)) return undefined;
  const named = part.joined_to ?? [];
  const isDrawn = named.length > 0 && named.every((id) => id === only) && joints.every(isCited);
  return isDrawn ? undefined : only;
}

function idsOf(
  { part: { part } }: OperationSurvey,
  { joint: { to, sheets } }: JointSurvey,
): ReadonlySet<string> {
  return new Set([part.id, to, ...(sheets ?? [])].filter((id) => id !== undefined));
}

/** A row of which the method is not stated may be one that holds. */
function isHolding({ joint: { method } }: JointSurvey): boolean {
  return method === undefined || isPermanent(method);
}

function isCited({ joint: { cite, pattern } }: JointSurvey): boolean {
  return cite !== undefined || pattern?.cite !== undefined;
}

function isSkin({ partById }: Survey, id: string): boolean {
  return kindIs(partById.get(id)?.part.kind, 'closing skin');
}
