import { saidInClause } from '../../plan/said-in-clause.ts';
import { listOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';
import { isJoinedIn } from '../step/joined-in.ts';
import type { MeasuredPoint } from './measured-points.ts';

/** Words for a point that nothing reaches any more. English alone is read; others are for a person to answer. */
const beyondReach =
  /\b(?:hidden|covered|under|behind|beneath|inside|closed|out of reach|inaccessible|unreachable|cut (?:away|out|off)|gone|went with|replaced|(?:welded|bonded|sealed) over|new part|no longer (?:there|on))\b/i;
const unreached =
  /\b(?:not|cannot|can(?:not|['’]t)|could(?: not|n['’]t)|no longer|no) (?:be )?(?:reach(?:ed|able)?|access(?:ed|ible)?)\b/i;
/** What the shop was short of, and not the point out of reach. */
const shopsOwn =
  /\b(?:time|late|hurry|rush|schedule|pressure|forgot(?:ten)?|skipped|overlooked|unnecessary|needed|cost|insurer|customer|owner|looks?|fine|ok(?:ay)?|battery|broken)\b/i;

/**
 * Whether the words for a point that was not measured again excuse it: another point that was measured stands for it, or nothing
 * reaches it any more. "No time left" excuses nothing.
 */
export function isExcuse(text: string, point: MeasuredPoint, points: readonly MeasuredPoint[]): boolean {
  if (standIns(text, point, points).length > 0) return true;
  if (shopsOwn.test(text)) return false;
  return unreached.test(text) || saidInClause(text, beyondReach) !== undefined;
}

/**
 * The same of a point that was out of tolerance before: one on its own part stands for it, or the plan itself shows the skin that closes over it,
 * the measuring of the clamped parts before that, and who looked at it then.
 */
export function isExcusedAlthoughOff(
  survey: Survey,
  text: string,
  point: MeasuredPoint,
  points: readonly MeasuredPoint[],
): boolean {
  const { on } = point.written;
  if (on === undefined) return false;
  if (standIns(text, point, points).some(({ written }) => written.on === on)) return true;
  return (
    isExcuse(text, point, points) &&
    layersOver(survey, on).some((layer) => names(text, layer)) &&
    survey.plan.measurements?.before_welding !== undefined &&
    (survey.plan.hold_points ?? []).some(({ done }) => done !== undefined)
  );
}

function standIns(
  text: string,
  point: MeasuredPoint,
  points: readonly MeasuredPoint[],
): readonly MeasuredPoint[] {
  const words = new Set(text.toLowerCase().match(/[\p{L}\p{N}_-]+/gu) ?? []);
  return points.filter(
    (other) =>
      other !== point &&
      other.after !== undefined &&
      other.written.name !== undefined &&
      words.has(other.written.name.toLowerCase()),
  );
}

/** Skins that were joined on over a part. */
function layersOver(survey: Survey, on: string): readonly PartSurvey[] {
  const under = listOf(survey.partById.get(on)?.part.under);
  return survey.parts.filter(
    ({ part, operations }) =>
      ((part.id !== undefined && under.includes(part.id)) || listOf(part.over).includes(on)) &&
      operations.some(isJoinedIn),
  );
}

function names(text: string, { name, part }: PartSurvey): boolean {
  const small = text.toLowerCase();
  const [called = ''] = name.toLowerCase().split(',');
  return (
    /\bskin\b|\bouter (?:panel|sheet)\b/.test(small) ||
    small.includes(called) ||
    (part.kind !== undefined && small.includes(part.kind))
  );
}
