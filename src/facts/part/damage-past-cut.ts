import type { FactNames } from '../../generated/fact-names.ts';
import type { PartKind } from '../../generated/plan-types.ts';
import { saidInClause } from '../../plan/said-in-clause.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { OperationSurvey } from '../survey.ts';

type PastFact = Extract<FactNames['operation'], 'operation.damage_past_cut'>;

const line = String.raw`\b(?:the )?(?:cut(?:ting)?|saw|drawn|section) (?:line|mark)\b`;
const past = new RegExp(String.raw`\b(?:past|beyond|across|on both sides of) ${line}`, 'i');
const ahead = new RegExp(String.raw`\b(?:ahead|forward|in front) of ${line}`, 'i');
const behind = new RegExp(String.raw`\b(?:behind|rearward of|aft of) ${line}`, 'i');

/** Of a rail the end comes off: what lies on the other side of the cut stays in the vehicle. */
const keptSide: Partial<Record<PartKind, RegExp>> = { 'rear rail': ahead, 'front rail': behind };

/** The words on the damage of a part that is cut part-way by which it goes on in the piece that stays. English alone is read. */
export function damagePastCut({ part, cutsPartWay }: OperationSurvey): Readonly<Record<PastFact, Fact>> {
  const { kind, damage } = part.part;
  const words = cutsPartWay === true && typeof damage === 'object' ? damage.extent : undefined;
  const kept = kind === undefined ? undefined : keptSide[kind];
  return {
    'operation.damage_past_cut': computedOr(
      saidInClause(words, past) ?? (kept === undefined ? undefined : saidInClause(words, kept)),
      `${part.at}/damage/extent`,
      'Nothing is cut part-way, or nothing says that the damage goes on beyond the cut.',
    ),
  };
}
