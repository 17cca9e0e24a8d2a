import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { sideOfWords } from '../part/side-named.ts';
import { inOrder } from '../in-order.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { listOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';

type ToldFact = Extract<
  FactNames['plan'],
  `plan.${'fired_by_scan' | 'battery_fault_by_scan' | 'impact_on_other_side'}`
>;

/** What the first scan, or the words on the blow, tell otherwise than the rest of the plan. */
export function toldOtherwiseFacts(survey: Survey): Readonly<Record<ToldFact, Fact>> {
  const codes = '/verify/scan_before/codes';
  const [fired, fault] = [firedByScan(survey), batteryFaultByScan(survey)];
  return {
    'plan.fired_by_scan': computedOr(
      fired?.text,
      `${codes}/${String(fired?.index ?? 0)}`,
      'No code of the scan before the repair tells of a unit that fired.',
    ),
    'plan.battery_fault_by_scan': computedOr(
      fault?.text,
      `${codes}/${String(fault?.index ?? 0)}`,
      'No code of the scan before the repair tells of a battery that is not sound, or the plan knows of it.',
    ),
    'plan.impact_on_other_side': computedOr(
      hitOnOtherSide(survey).join('; ') || undefined,
      '/damage/impact',
      'The words on the blow name no side, or one on which a part was hit directly.',
    ),
  };
}

interface Told {
  readonly text: string;
  readonly index: number;
}

type Code = NonNullable<NonNullable<NonNullable<Survey['plan']['verify']>['scan_before']>['codes']>[number];

function told({ plan }: Survey, tells: (code: Code) => boolean): Told | undefined {
  const codes = plan.verify?.scan_before?.codes ?? [];
  const index = codes.findIndex((code) => code.state !== 'cleared' && tells(code));
  const found = codes[index];
  if (found === undefined) return undefined;
  return { text: [found.code, found.explanation].filter((word) => word !== undefined).join(', '), index };
}

const denied = /\b(?:not|no|never|without|none)\b/iu;

function firedByScan(survey: Survey): Told | undefined {
  return told(
    survey,
    ({ system, explanation = '' }) =>
      (system === 'restraint' || /airbag|pretension|belt|curtain/iu.test(explanation)) &&
      /\b(?:fired|deployed|triggered|ignited|went off|blown)\b/iu.test(explanation) &&
      !denied.test(explanation),
  );
}

function batteryFaultByScan(survey: Survey): Told | undefined {
  const { battery_condition: condition, battery_fit_cite: fit } = survey.plan.make_safe?.high_voltage ?? {};
  if (condition !== 'sound' || listOf(fit).some(({ reference }) => coversVehicle(survey, reference)))
    return undefined;
  return told(
    survey,
    ({ system, explanation = '' }) =>
      (system === 'traction battery' || /battery|high.?voltage|traction/iu.test(explanation)) &&
      /isolation|insulation|leak|over.?heat|over.?temperature|short.?circuit/iu.test(explanation) &&
      !denied.test(explanation),
  );
}

/** Parts that were hit directly, all of them on the side that the words on the blow do not name. By name: their order tells nothing. */
function hitOnOtherSide({ plan, partById }: Survey): readonly string[] {
  const said = sideOfWords(plan.damage?.impact);
  if (said === undefined) return [];
  const sided = (plan.damage?.direct ?? [])
    .flatMap((id) => partById.get(id) ?? [])
    .filter(({ part }) => part.side === 'left' || part.side === 'right');
  return sided.some(({ part }) => part.side === said) ? [] : sided.map(({ name }) => name).toSorted(inOrder);
}
