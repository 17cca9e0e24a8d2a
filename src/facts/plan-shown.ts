import type { Person, Plan } from '../generated/plan-types.ts';
import type { DerivationContext } from './context.ts';
import type { Fact } from './fact.ts';
import type { FactSheet, SheetKind } from './sheet.ts';
import { stepDrafts } from './step/step-sheets.ts';
import type { Survey } from './survey.ts';
import { hazardsShown } from './hazards-shown.ts';
import type { HazardShown } from './hazards-shown.ts';
import { layerOrder } from './part/layer-order.ts';
import { partShown } from './part/part-shown.ts';
import type { PartShown } from './part/part-shown.ts';
import { signatureShown } from './papers/signature-shown.ts';
import type { SignatureShown } from './papers/signature-shown.ts';
import { surveyPlan } from './survey-plan.ts';

/** The facts of one sheet, by their names. */
export type Facts = Readonly<Record<string, Fact>>;

/** What a report that is read beside the car shows of the plan itself. Words are the plan's own; facts are those that were judged. */
export interface PlanShown {
  readonly job: {
    readonly number?: string;
    readonly opened?: string;
    readonly revision?: string;
    readonly writtenBy?: string;
  };
  /** Maker, model, body, trim and year, as far as they are stated. */
  readonly vehicle: string;
  readonly vehicleFacts: Facts;
  /** With the state of the traction battery, `step.battery_condition`. */
  readonly batteryFacts: Facts;
  readonly impact?: string;
  readonly references: readonly ReferenceShown[];
  /** From the outside in. */
  readonly parts: readonly PartShown[];
  /** The steps around the work that are stated, or needed. */
  readonly steps: readonly StepShown[];
  /** Restraint units, fluids and gases that the plan lists. */
  readonly hazards: readonly HazardShown[];
  readonly openings: readonly Facts[];
  readonly deviations: readonly DeviationShown[];
  /** What the plan's sign-off says; absent where it has none. */
  readonly signOff?: readonly string[];
  /** What the signature covers; absent where there is none. */
  readonly signature?: SignatureShown;
}

export interface ReferenceShown {
  readonly at: string;
  readonly name: string;
  readonly title?: string;
  readonly published?: string;
  readonly lookedUpBy?: string;
  readonly facts: Facts;
}

/** A step around the work; words are the plan's own. */
export interface StepShown {
  readonly how?: string;
  readonly done?: string;
  readonly by?: string;
  readonly facts: Facts;
}

export interface DeviationShown {
  readonly rule?: string;
  readonly part?: string;
  readonly operation?: string;
  readonly by?: string;
  readonly reason?: string;
  readonly date?: string;
  readonly expires?: string;
}

/** `sheets` are those that were derived from this very plan. */
export function planShown(plan: Plan, context: DerivationContext, sheets: readonly FactSheet[]): PlanShown {
  const survey = surveyPlan(plan, context);
  const factsAt = factsByPlace(sheets);
  const of = (kind: SheetKind): readonly Facts[] =>
    sheets.filter((sheet) => sheet.kind === kind).map(({ facts }) => facts);
  const { maker, model, body, trim, model_year: year } = plan.vehicle;
  const signOff = signOffWords(plan);
  const signature = signatureShown(survey);
  return {
    job: { ...jobOf(plan) },
    vehicle: [maker, model, body, trim, year].filter((word) => word !== undefined).join(' '),
    vehicleFacts: of('vehicle')[0] ?? {},
    batteryFacts: of('step')[0] ?? {},
    ...(plan.damage?.impact === undefined ? {} : { impact: plan.damage.impact }),
    references: survey.references.map(({ reference, at, name }) => ({
      at,
      name,
      ...(reference.title === undefined ? {} : { title: reference.title }),
      ...(reference.published === undefined ? {} : { published: reference.published }),
      ...(reference.looked_up_by === undefined ? {} : { lookedUpBy: personWords(reference.looked_up_by) }),
      facts: factsAt('reference', at),
    })),
    parts: layerOrder(survey.parts, survey.partById).map((layered) => partShown(survey, layered, factsAt)),
    steps: stepsShown(survey, of('step')),
    hazards: hazardsShown(survey),
    openings: of('opening'),
    deviations: (plan.deviations ?? []).map(({ by, rule, part, operation, reason, date, expires }) => ({
      ...(rule === undefined ? {} : { rule }),
      ...(part === undefined ? {} : { part }),
      ...(operation === undefined ? {} : { operation }),
      ...(by === undefined ? {} : { by: personWords(by) }),
      ...(reason === undefined ? {} : { reason }),
      ...(date === undefined ? {} : { date }),
      ...(expires === undefined ? {} : { expires }),
    })),
    ...(signOff.length === 0 ? {} : { signOff }),
    ...(signature === undefined ? {} : { signature }),
  };
}

/** The facts of the sheet of that kind at that place; none where there is no such sheet. */
export type FactsAt = (kind: SheetKind, at: string) => Facts;

function factsByPlace(sheets: readonly FactSheet[]): FactsAt {
  // The sheets and not their facts, which are derived when somebody asks for them.
  const byPlace = new Map(sheets.map((sheet) => [`${sheet.kind} ${sheet.at}`, sheet]));
  return (kind, at) => byPlace.get(`${kind} ${at}`)?.facts ?? {};
}

function jobOf({ job }: Plan): PlanShown['job'] {
  const { number, opened, revision, written_by: by } = job ?? {};
  return {
    ...(number === undefined ? {} : { number }),
    ...(opened === undefined ? {} : { opened }),
    ...(revision === undefined ? {} : { revision }),
    ...(by === undefined ? {} : { writtenBy: personWords(by) }),
  };
}

/** Each step has one sheet, in the order of the drafts that the sheets are written from. */
function stepsShown(survey: Survey, facts: readonly Facts[]): readonly StepShown[] {
  const drafts = stepDrafts(survey);
  return facts.flatMap((one, index): readonly StepShown[] => {
    if (!isToBeShown(one)) return [];
    const { step, person } = drafts[index] ?? {};
    const by = person ?? step?.by;
    return [
      {
        facts: one,
        ...(typeof step?.planned === 'string' ? { how: step.planned } : {}),
        ...(step?.done === undefined ? {} : { done: step.done }),
        ...(by === undefined ? {} : { by: personWords(by) }),
      },
    ];
  });
}

function isToBeShown(facts: Facts): boolean {
  if (
    isWord(facts, 'step.what', 'battery damage dealt with') &&
    isWord(facts, 'step.battery_condition', 'sound')
  )
    return false;
  return ['step.stated', 'step.needed'].some((name) => {
    const fact = facts[name];
    // A step of which nobody can tell whether it is stated is a question, and questions are shown.
    return fact !== undefined && (!fact.known || fact.value === true);
  });
}

function isWord(facts: Facts, name: string, word: string): boolean {
  const fact = facts[name];
  return fact?.known === true && fact.value === word;
}

function signOffWords({ sign_off: signOff }: Plan): readonly string[] {
  if (signOff === undefined) return [];
  const { by, date, plan_revision: revision, open_holds: holds, note } = signOff;
  return [
    by === undefined ? undefined : `by ${personWords(by)}`,
    date === undefined ? undefined : `on ${date}`,
    revision === undefined ? undefined : `revision ${revision} of the plan`,
    holds === undefined ? undefined : `open holds: ${holds}`,
    note,
  ].filter((word) => word !== undefined);
}

/** `R. Amsel, estimator`. */
export function personWords({ name, role, qualification }: Person): string {
  const words = [name ?? 'no name', role, qualification].filter((word) => word !== undefined);
  return words.join(', ');
}
