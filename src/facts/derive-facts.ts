import type { Plan } from '../generated/plan-types.ts';
import type { EntryFault } from '../plan/entry-fault.ts';
import { deriveAfterwards } from './afterwards.ts';
import type { FoundSoFar, SheetsAfterwards } from './afterwards.ts';
import { bakeExposures } from './heat/bake-exposure.ts';
import { citationSheets } from './papers/citation-sheets.ts';
import type { DerivationContext } from './context.ts';
import { entrySheets } from './entry-sheets.ts';
import { exposureSheets } from './heat/exposure-sheets.ts';
import type { Fact } from './fact.ts';
import { jointFacts } from './joint/joint-facts.ts';
import { JointMatter } from './joint/joint-matter.ts';
import type { MeasuringShown } from './measuring/measuring-shown.ts';
import { unknown } from './make-fact.ts';
import { measurementSheets } from './measuring/measurement-sheets.ts';
import { operationFacts } from './operation-facts.ts';
import { partFacts } from './part/part-facts.ts';
import { partMaterialFacts } from './part/part-material-facts.ts';
import { zoneMaterial } from './part/part-material.ts';
import { planFacts } from './plan-facts.ts';
import { referenceFacts } from './papers/reference-facts.ts';
import type { FactSheet } from './sheet.ts';
import { lazySheet } from './lazy-sheet.ts';
import { daysAhead, withoutDaysAhead } from './step/days-ahead.ts';
import { orderSheets } from './step/order-sheets.ts';
import { stepSheets } from './step/step-sheets.ts';
import type { OperationSurvey, ReferenceSurvey, Survey } from './survey.ts';
import { surveyPapers } from './papers/survey-papers.ts';
import { surveyPlan } from './survey-plan.ts';
import { unreadAt } from './unread.ts';
import { vehicleFacts } from './vehicle-facts.ts';

export interface DerivedFacts {
  /** Every sheet of the plan but those that depend on what is found. */
  readonly sheets: readonly FactSheet[];
  /** What a report shows of the measured points; undefined when there are none. */
  readonly measuring: MeasuringShown | undefined;
  /**
   * The sheets of deviations and sign-off, once the others are judged. `ruleStanding` takes the place of the context's, for who
   * has one plan judged by two versions.
   */
  readonly afterwards: (
    found: readonly FoundSoFar[],
    ruleStanding?: DerivationContext['ruleStanding'],
  ) => SheetsAfterwards;
}

/** Writes the fact sheets of a checked plan. Depends on the plan and the context alone. */
export function deriveFacts(
  plan: Plan,
  faults: readonly EntryFault[],
  context: DerivationContext,
): DerivedFacts {
  const ahead = daysAhead(plan, context.asOfDay);
  const unread = new Map([
    ...faults.map(({ pointer }) => [pointer, 'What the plan writes there cannot be read.'] as const),
    ...ahead.map(({ pointer }) => [pointer, 'The day that the plan writes there has not come.'] as const),
  ]);
  const survey = surveyPlan(withoutDaysAhead(plan, ahead), context, new Set(unread.keys()));
  const planSheet = lazySheet(planFacts, [survey], { kind: 'plan', at: '', standsOn: [] });
  const vehicle: FactSheet = {
    kind: 'vehicle',
    at: '/vehicle',
    facts: vehicleFacts(plan),
    standsOn: [planSheet],
  };
  const papers = surveyPapers(survey);
  const references = new Map<ReferenceSurvey, FactSheet>(
    survey.references.map((one) => [
      one,
      {
        kind: 'reference',
        at: one.at,
        facts: referenceFacts(survey, one, papers.get(one) ?? []),
        standsOn: [vehicle],
      },
    ]),
  );
  const measuring = measurementSheets(survey, vehicle);
  const sheets = [
    planSheet,
    vehicle,
    ...references.values(),
    ...survey.parts.flatMap((one) => partSheets(survey, one, vehicle, references)),
    ...measuring.sheets,
    ...stepSheets(survey, vehicle),
    ...orderSheets(survey, vehicle),
    ...entrySheets(survey, [...faults, ...ahead], planSheet),
  ];
  sheets.push(...bakeExposures(survey, yesNo(vehicle.facts['vehicle.high_voltage']), vehicle));
  return {
    sheets: unread.size === 0 ? sheets : nameUnread(survey, sheets, unread),
    measuring: measuring.shown,
    afterwards: (found, ruleStanding = context.ruleStanding) => {
      const standing = ruleStanding === undefined ? {} : { ruleStanding };
      return deriveAfterwards({ ...survey, context: { ...context, ...standing } }, planSheet, found);
    },
  };
}

function partSheets(
  survey: Survey,
  one: Survey['parts'][number],
  vehicle: FactSheet,
  references: ReadonlyMap<ReferenceSurvey, FactSheet>,
): readonly FactSheet[] {
  const belongs = one.part.id === undefined ? {} : { part: one.part.id };
  const part = lazySheet(partFacts, [survey, one], {
    kind: 'part',
    at: one.at,
    standsOn: [vehicle],
    ...belongs,
  });
  const operations = one.operations.flatMap((whole): readonly FactSheet[] => {
    const operation = inItsZone(whole);
    const sheet = lazySheet(operationFacts, [survey, operation], {
      kind: 'operation',
      at: operation.at,
      standsOn: [operation === whole ? part : zoneSheet(survey, operation, part)],
      ...belongs,
      operation: operation.at,
    });
    const joints = operation.joints.map((joint) =>
      lazySheet(jointFacts, [new JointMatter(survey, operation, joint)], {
        kind: 'joint',
        at: joint.at,
        standsOn: [sheet],
        ...belongs,
        operation: operation.at,
      }),
    );
    return [
      sheet,
      ...citationSheets(operation, sheet, references),
      ...exposureSheets(survey, whole, sheet),
      ...joints,
    ];
  });
  return [part, ...operations];
}

/** The part with the material of the zone that is cut in place of its own. */
function zoneSheet(survey: Survey, operation: OperationSurvey, part: FactSheet): FactSheet {
  const { kind, at } = part;
  const belongs = part.part === undefined ? {} : { part: part.part };
  return { kind, at, facts: partMaterialFacts(survey, operation.part), standsOn: [part], ...belongs };
}

/**
 * Of a part with zones, a cut is judged by the zone that it lies in; heat and pull run on into the next. Where the rest of the part is not
 * known, nobody can say how far the zone reaches.
 */
function inItsZone(operation: OperationSurvey): OperationSurvey {
  const { part, cutsPartWay, heats, straightens } = operation;
  const material = zoneMaterial(part.part, operation.operation.zone);
  const whole = part.material.class;
  const onlyCuts = cutsPartWay === true && heats === false && straightens === false;
  if (material === undefined || whole === undefined || !onlyCuts) return operation;
  return { ...operation, part: { ...part, material } };
}

function yesNo(fact: Fact | undefined): boolean | undefined {
  return fact?.known === true && typeof fact.value === 'boolean' ? fact.value : undefined;
}

/** An unknown whose entry is there but says nothing tells why, and where, instead of claiming that nothing is written. */
function nameUnread(
  survey: Survey,
  sheets: readonly FactSheet[],
  reasons: ReadonlyMap<string, string>,
): readonly FactSheet[] {
  // In place of rebuilt sheets the facts are changed on the way out: sheets point at each other.
  for (const sheet of sheets) {
    const facts: Record<string, Fact> = sheet.facts;
    for (const [name, fact] of Object.entries(facts)) {
      const at = fact.known || fact.at === undefined ? undefined : unreadAt(survey, fact.at);
      const reason = at === undefined ? undefined : reasons.get(at);
      if (at !== undefined && reason !== undefined) facts[name] = unknown(reason, at);
    }
  }
  return sheets;
}
