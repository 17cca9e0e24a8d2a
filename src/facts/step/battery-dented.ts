import type { Fact } from '../fact.ts';
import { contradicted, unknown } from '../make-fact.ts';
import { saidInClause } from '../../plan/said-in-clause.ts';
import { coversVehicle } from '../papers/maker-evidence.ts';
import { damageKinds } from '../part/part-damage-facts.ts';
import { listOf } from '../quantity-of.ts';
import type { PartSurvey, Survey } from '../survey.ts';

/**
 * The damage of a traction battery that stays and that the plan calls sound all the same. Nothing where a page judges that very battery fit; or where a
 * page lets such damage be, and case and insulation are examined.
 */
export function batteryDented(survey: Survey): Fact {
  const at = '/make_safe/high_voltage/battery_condition';
  const high = survey.plan.make_safe?.high_voltage;
  const open = unknown('The traction battery has no damage, is not called sound, or was found fit.', at);
  if (high?.battery_condition !== 'sound') return open;
  const part = survey.parts.find((one) => one.part.kind === 'traction battery' && isHurt(one) && stays(one));
  const isCited = (cites: Parameters<typeof listOf<{ readonly reference?: string }>>[0]): boolean =>
    listOf(cites).some(({ reference }) => coversVehicle(survey, reference));
  const isFit =
    isCited(high.battery_fit_cite) || (isCited(part?.part.damage?.tolerable_by) && isExamined(survey));
  if (isFit) return open;
  if (part === undefined) {
    const told = toldOfCase(survey);
    return told === undefined
      ? open
      : contradicted(`this was found away from the impact: “${told}”`, at, ['/damage/indirect/found']);
  }
  return contradicted(`${part.name} has damage (${hurts(part).join(', ')})`, at, [`${part.at}/damage`]);
}

function hurts({ part }: PartSurvey): readonly string[] {
  return damageKinds(part).filter((kind) => kind !== 'none' && kind !== 'not yet seen' && kind !== 'scratch');
}

function isHurt(one: PartSurvey): boolean {
  return hurts(one).length > 0;
}

function stays({ operations }: PartSurvey): boolean {
  return !operations.some(
    ({ operation }) =>
      operation.do === 'replace' && (operation.planned !== false || operation.done !== undefined),
  );
}

/** Planned is enough as long as the work is still to be done. */
function isExamined({ plan, context }: Survey): boolean {
  const check = plan.verify?.high_voltage;
  if (check === undefined) return false;
  if (check.done === undefined) return context.stage !== 'release' && check.planned !== false;
  return check.insulation !== undefined && (check.checked ?? []).includes('enclosure');
}

const ofTheCase =
  /\b(?:traction|high[- ]voltage) battery\b|\bbattery (?:case|casing|pack|tray|housing|box|cover|frame)\b|\bpack (?:case|casing|tray|housing)\b/i;
const hurt =
  /\b(?:dent(?:s|ed)?|crack(?:s|ed)?|bent|crushed|pressed in|pushed in|buckled|torn|split|gouged|leak(?:s|ing)?|holed|deformed)\b/i;

/** What was found away from the impact, in its own words, where it tells of a traction battery that is hurt and is not renewed. */
function toldOfCase({ plan, parts }: Survey): string | undefined {
  const found = plan.damage?.indirect?.found;
  if (found === undefined || !ofTheCase.test(found)) return undefined;
  if (parts.some((one) => one.part.kind === 'traction battery' && !stays(one))) return undefined;
  return found
    .split(/[,;.]|\bbut\b/i)
    .map((clause) => clause.trim())
    .find((clause) => ofTheCase.test(clause) && saidInClause(clause, hurt) !== undefined);
}
