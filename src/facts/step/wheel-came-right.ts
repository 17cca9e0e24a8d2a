import type { FactNames } from '../../generated/fact-names.ts';
import type { PartKind } from '../../generated/plan-types.ts';
import { readWheelSetting } from '../../quantity/read-wheel-setting.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { saysIndirectDamage } from '../part/indirect-damage.ts';
import { sharesSide, sideOfWords } from '../part/side-named.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { rangeOf, rowName } from './alignment-row.ts';
import type { AlignmentValue } from './alignment-row.ts';
import { endNamed, endOfPart } from './vehicle-end.ts';

type CameRightFact = Extract<FactNames['step'], 'step.wheel_came_right'>;

/** Rubber, load and the play of bolts explain less. From memory. */
const mostExplainedDegrees = 1;

/** Wheels that stood crooked, stand right, and of which nothing was renewed, taken off or pulled. */
export function cameRightFacts(
  survey: Survey,
  rows: readonly AlignmentValue[],
  place: string,
): Readonly<Record<CameRightFact, Fact>> {
  const found = rows.filter((row) => cameRight(row) && !isExplained(survey, row));
  return {
    'step.wheel_came_right': computedOr(
      found
        .map((row) => `${rowName(row)} ${row.before ?? ''} before, ${row.after ?? ''} after the repair`)
        .join('; ') || undefined,
      found[0] === undefined ? place : `${place}/${String(rows.indexOf(found[0]))}`,
      'No wheel stood crooked that stands right now, or the work at it explains that.',
    ),
  };
}

function cameRight(row: AlignmentValue): boolean {
  if (row.of !== 'camber' && row.of !== 'caster') return false;
  const [range, before, after] = [rangeOf(row), degrees(row.before), degrees(row.after)];
  if (typeof range === 'string' || before === undefined || after === undefined) return false;
  const isIn = (value: number): boolean => value >= range.from && value <= range.to;
  return (
    !isIn(before) && isIn(after) && Math.abs(before - (range.from + range.to) / 2) > mostExplainedDegrees
  );
}

function degrees(text: string | undefined): number | undefined {
  const reading = text === undefined ? undefined : readWheelSetting(text);
  return reading?.ok === true && reading.unit === '°' ? reading.value : undefined;
}

const runningGear: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['suspension part', 'steering part', 'subframe', 'wheel'] as const),
]);
/** Of the body, what the wheel hangs on. */
const bearsWheels: ReadonlySet<PartKind> = new Set<PartKind>([
  ...(['front rail', 'rear rail', 'strut tower', 'apron', 'wheelhouse'] as const),
]);

/** Its running gear was off or renewed; or the body was worked on there, unless the plan says that what the wheel hangs on was found sound. */
function isExplained(survey: Survey, row: AlignmentValue): boolean {
  const at: string = row.at ?? '';
  const worked = survey.parts.filter(
    (one) => isAtWheel(one, at) && one.operations.some(({ operation }) => isDone(operation)),
  );
  return (
    worked.some(({ part }) => part.kind === undefined || runningGear.has(part.kind)) ||
    (!mountsFoundSound(survey, at) &&
      worked.some(({ part }) => part.kind !== undefined && bearsWheels.has(part.kind)))
  );
}

function isDone({ do: work, planned }: PartSurvey['operations'][number]['operation']): boolean {
  return planned !== false && work !== 'refinish' && work !== 'leave' && work !== 'bake';
}

/** A part that does not say where it sits may sit there. */
function isAtWheel({ name, part }: PartSurvey, at: string): boolean {
  const end = endOfPart(name, part.kind);
  return (
    (end === undefined || end === endNamed(at)) && sharesSide(part.side ?? sideOfWords(name), sideOfWords(at))
  );
}

const mounts =
  /\b(?:axle|suspension|spring|strut|damper|arm|link|subframe)s?\b.{0,8}\b(?:mount|seat|tower|top|pick-?up)/iu;

function mountsFoundSound(survey: Survey, at: string): boolean {
  const { looked_at: lookedAt = [], found } = survey.plan.damage?.indirect ?? {};
  if (found === undefined || saysIndirectDamage(survey)) return false;
  return lookedAt.some(
    (place) =>
      mounts.test(place) &&
      (endNamed(place) ?? endNamed(at)) === endNamed(at) &&
      sharesSide(sideOfWords(place), sideOfWords(at)),
  );
}
