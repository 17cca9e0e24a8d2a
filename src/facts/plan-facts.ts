import type { FactNames } from '../generated/fact-names.ts';
import type { Near } from '../generated/plan-types.ts';
import { admitsNotLooked } from '../plan/not-looked.ts';
import { asReceivedFacts } from './as-received.ts';
import { aroundFacts } from './step/around-facts.ts';
import { batteryOffByNobody } from './step/battery-claims.ts';
import { cablesInZone, cablesLeft } from './step/cables-in-zone.ts';
import { bakesTogetherOver } from './heat/bake-exposure.ts';
import { bakeRange, cureIsOpen, isBaked, isBakedWarm } from './heat/bakes.ts';
import type { Fact } from './fact.ts';
import { beltBoltFacts } from './step/belt-bolts.ts';
import { beltDefect, saysBeltsChecked } from './step/belts-checked.ts';
import { beltKept, beltsUnlooked } from './step/belts-kept.ts';
import { factGroups } from './fact-groups.ts';
import type { FactGroups } from './fact-groups.ts';
import { firstJoinedUnsaid, noWord } from './goes-on-unsaid.ts';
import { fireFacts } from './step/fire-facts.ts';
import { jointMakerFacts } from './joint/joint-makers.ts';
import { liftedBesideTheWork } from './step/lifted-on.ts';
import { checksPlannedFacts } from './step/checks-planned.ts';
import { silenceFacts } from './step/silence-facts.ts';
import { isIsolatedForWelding } from './step/isolation-relied-on.ts';
import { computed, computedOr, known, stated, statedOr } from './make-fact.ts';
import { damageKinds } from './part/part-damage-facts.ts';
import { carriesCrashLoad, loadNotTold } from './part/part-kinds.ts';
import { indirectDamageTold } from './part/indirect-damage.ts';
import { noteFacts } from './notes/told-in-notes.ts';
import { citedElsewhere } from './papers/cited-elsewhere.ts';
import { coversVehicle } from './papers/maker-evidence.ts';
import { releasedByAuthorFacts } from './papers/released-by-author.ts';
import { listOf } from './quantity-of.ts';
import { saysNone } from './step/step-draft.ts';
import { preparedFacts } from './step/prepared-in-time.ts';
import { removedUnitFacts } from './step/removed-units.ts';
import { handledUnitFacts } from './step/units-handled.ts';
import { runningGearFacts } from './running-gear.ts';
import { deployedKept, isDeployed, unitsOpen } from './step/restraint-units.ts';
import { toldOtherwiseFacts } from './step/told-otherwise.ts';
import type { OperationSurvey, PartSurvey, Survey } from './survey.ts';
import { allYes, anyYes } from './tri-state.ts';
import type { TriState } from './tri-state.ts';

const noBakeTemperature = 'The temperature of a bake is not stated.';

type PlanFacts = Readonly<Record<FactNames['plan'], Fact>>;

/** The plan as a whole: what kind of work it holds and what it says of it. */
export const planFacts: FactGroups<[Survey], FactNames['plan']> = factGroups(
  ['plan.'],
  wholeFacts,
  fireFacts,
  aroundFacts,
  asReceivedFacts,
  removedUnitFacts,
  handledUnitFacts,
  jointMakerFacts,
  batteryOffByNobody,
  beltBoltFacts,
  runningGearFacts,
  silenceFacts,
  checksPlannedFacts,
  preparedFacts,
  toldOtherwiseFacts,
  noteFacts,
  releasedByAuthorFacts,
);

type OfOtherGroups =
  | keyof ReturnType<typeof fireFacts>
  | keyof ReturnType<typeof aroundFacts>
  | keyof ReturnType<typeof asReceivedFacts>
  | keyof ReturnType<typeof removedUnitFacts>
  | keyof ReturnType<typeof handledUnitFacts>
  | keyof ReturnType<typeof jointMakerFacts>
  | keyof ReturnType<typeof batteryOffByNobody>
  | keyof ReturnType<typeof beltBoltFacts>
  | keyof ReturnType<typeof runningGearFacts>
  | keyof ReturnType<typeof silenceFacts>
  | keyof ReturnType<typeof checksPlannedFacts>
  | keyof ReturnType<typeof preparedFacts>
  | keyof ReturnType<typeof toldOtherwiseFacts>
  | keyof ReturnType<typeof noteFacts>
  | keyof ReturnType<typeof releasedByAuthorFacts>;

function wholeFacts(survey: Survey): Omit<PlanFacts, OfOtherGroups> {
  const { plan, operations, context } = survey;
  const restraints = plan.make_safe?.restraints;
  const list = citedElsewhere(survey, restraints?.replacement_list, '/make_safe/restraints/replacement_list');
  const kept = deployedKept(survey);
  const worked = structuralWork(survey);
  const weldUnsaid = firstJoinedUnsaid(operations, ({ electricWelding }) => electricWelding);
  const hotUnsaid = firstJoinedUnsaid(operations, ({ hot }) => hot);
  const noMethod =
    weldUnsaid?.reason ??
    'Whether anything is welded electrically on the vehicle cannot be told: a joint method is not stated.';
  return {
    'plan.stage':
      plan.stage === context.stage
        ? stated(context.stage, '/stage')
        : known(
            context.stage,
            'assumed',
            '/stage',
            'The stage was given with the command, or is the strictest for want of one.',
          ),
    'plan.author': statedOr(
      plan.job?.written_by?.name,
      '/job/written_by',
      'Who wrote the plan is not stated.',
    ),
    'plan.job_opened': statedOr(
      plan.job?.opened,
      '/job/opened',
      'The day on which the job was opened is not written.',
    ),
    'plan.structural_work': computedOr(
      worked.value,
      worked.open?.at ?? '/parts',
      worked.open?.reason ?? 'Whether a part that carries crash load is worked on cannot be told.',
    ),
    'plan.cutting_or_hot_work': computedOr(
      anyYes(operations.map(({ hot }) => hot)),
      hotUnsaid?.at ?? '/parts',
      hotUnsaid?.reason ?? 'Whether anything is cut or heated on the vehicle cannot be told.',
    ),
    'plan.electric_welding': computedOr(
      anyYes(operations.map(({ electricWelding }) => electricWelding)),
      weldUnsaid?.at ?? '/parts',
      noMethod,
    ),
    'plan.isolated_for_welding': computedOr(
      isIsolatedForWelding(survey),
      weldUnsaid?.at ?? '/make_safe/high_voltage/isolation',
      noMethod,
    ),
    'plan.bake': computed(isBaked(survey), '/finish/bake'),
    'plan.bake_hottest': computedOr(bakeRange(survey)?.hottest, '/finish/bake', noBakeTemperature),
    'plan.bake_coldest': computedOr(bakeRange(survey)?.coldest, '/finish/bake', noBakeTemperature),
    'plan.paint_cure_open': computed(cureIsOpen(survey), '/finish/bake'),
    'plan.bakes_together_over': computedOr(
      bakesTogetherOver(survey),
      '/finish/bake',
      'No part is baked several times with the traction battery in the vehicle, or a time is not stated.',
    ),
    'plan.lifting_or_battery_work': computed(liftsOrHandlesBattery(survey), '/make_safe'),
    'plan.work_near_high_voltage': computedOr(
      anyYes([isBakedWarm(survey), liftsOrHandlesBattery(survey), ...operations.map(({ hot }) => hot)]),
      hotUnsaid?.at ?? '/parts',
      hotUnsaid?.reason ?? 'Whether anything is cut or heated on the vehicle cannot be told.',
    ),
    'plan.load_path_hit': computedOr(
      anyYes(survey.parts.map(loadPathHit)),
      '/parts',
      'Whether a part that carries crash load is damaged cannot be told.',
    ),
    'plan.cables_in_zone': cablesInZone(survey),
    'plan.cables_left': cablesLeft(survey),
    'plan.lifted_beside_work': computedOr(
      liftedBesideTheWork(survey).join(', ') || undefined,
      '/make_safe/lifting',
      'The vehicle does not stand on an edge that is cut apart and joined anew.',
    ),
    'plan.proposes_work': computed(operations.length > 0, '/parts'),
    'plan.indirect_damage_open': computed(indirectDamageTold(survey) !== undefined, '/damage/indirect/found'),
    'plan.indirect_damage_told': computedOr(
      indirectDamageTold(survey),
      '/damage/indirect/found',
      'No damage is told of away from the blow, or a part away from it is listed with damage.',
    ),
    'plan.indirect_damage_stated': computed(
      isLookedFor(plan.damage?.indirect?.looked_at) && plan.damage?.indirect?.found !== undefined,
      '/damage/indirect',
    ),
    'plan.indirect_damage_unseen': computedOr(
      unseenOf(survey),
      '/damage/indirect/found',
      'Nothing that was found away from the impact is said to be not looked at.',
    ),
    'plan.measured_before': computed(
      plan.measurements?.before !== undefined ||
        (plan.measurements?.planned !== undefined && plan.measurements.planned !== false) ||
        (plan.measurements?.points ?? []).some((point) => point.before !== undefined),
      '/measurements',
    ),
    'plan.restraint_deployed': computed(
      restraints?.deployed === true ||
        (restraints?.units ?? []).some((unit) => unit.state === 'deployed') ||
        survey.parts.some(isDeployed),
      '/make_safe/restraints',
    ),
    'plan.deployed_kept': computedOr(
      kept.map(({ name }) => name).join(', ') || undefined,
      kept[0]?.at ?? '/make_safe/restraints/units',
      'No deployed unit stays in the vehicle.',
    ),
    'plan.units_open': computedOr(
      unitsOpen(survey).join(', ') || undefined,
      '/make_safe/restraints/units',
      'Of every unit it is stated whether it deployed and what is done with it.',
    ),
    'plan.restraint_replacement_list': computed(
      listOf(restraints?.replacement_list).some((cite) => coversVehicle(survey, cite.reference)),
      '/make_safe/restraints/replacement_list',
    ),
    'plan.replacement_list_elsewhere': computedOr(
      list?.text,
      list?.at ?? '/make_safe/restraints/replacement_list',
      'A page of this vehicle is cited for what is replaced, or none at all.',
    ),
    'plan.belts_checked': computed(
      saysBeltsChecked(restraints?.belts_checked),
      '/make_safe/restraints/belts_checked',
    ),
    'plan.belt_defect': computedOr(
      beltDefect(restraints?.belts_checked),
      '/make_safe/restraints/belts_checked',
      'The check tells of no belt that is bad and stays so, or is not stated.',
    ),
    'plan.belt_kept': computedOr(
      beltKept(restraints),
      '/make_safe/restraints/belts_checked',
      'The check tells of no belt that was kept though its pretensioner fired or is renewed.',
    ),
    'plan.belts_unlooked': computedOr(
      beltsUnlooked(restraints?.belts_checked),
      '/make_safe/restraints/belts_checked',
      'The check tells of no belt that was not looked at, or is not stated.',
    ),
  };
}

/** Whether structure is worked on, and the parts of which that cannot be told. */
function structuralWork({ operations }: Survey): {
  readonly value: TriState;
  /** The first of which it hangs, asked in the words in which its part, or its operation, asks. */
  readonly open: { readonly at: string; readonly reason: string } | undefined;
} {
  const answers = operations.map((one) => ({
    one,
    answer: isBoltedDoor(one) ? false : allYes([one.works, one.part.structural]),
  }));
  const asked = answers.find(({ answer }) => answer === undefined)?.one;
  return { value: anyYes(answers.map(({ answer }) => answer)), open: asked && whatIsOpen(asked) };
}

function whatIsOpen({ at, operation, part }: OperationSurvey): {
  readonly at: string;
  readonly reason: string;
} {
  return operation.do === undefined
    ? { at: `${at}/do`, reason: noWord }
    : { at: `${part.at}/structural`, reason: loadNotTold(part) };
}

/** A door carries load, yet whoever bolts on a whole one alters nothing of it and nothing of the body. */
function isBoltedDoor({ part, operation, joints }: OperationSurvey): boolean {
  const isHung = operation.do === 'replace' || operation.do === 'remove and refit';
  return (
    part.part.kind === 'door' &&
    isHung &&
    operation.extent !== 'part' &&
    operation.at === undefined &&
    joints.every(({ joint }) => joint.method === 'bolt')
  );
}

/** Whoever says that the battery or an orange cable is out of the way says that somebody took it out. */
function liftsOrHandlesBattery({ plan, operations, partById }: Survey): boolean {
  return (
    plan.make_safe?.high_voltage?.battery_removed === true ||
    plan.finish?.bake?.traction_battery === 'removed' ||
    operations.some(({ operation }) => (operation.near ?? []).some(isHighVoltageTakenOff)) ||
    (plan.make_safe?.lifting?.points ?? []).some((id) => isBattery(partById.get(id))) ||
    operations.some(({ part, operation }) => isBattery(part) && operation.do !== 'leave')
  );
}

function isHighVoltageTakenOff({ item, treatment }: Near): boolean {
  return (item === 'traction battery' || item === 'high-voltage cable') && treatment === 'removed';
}

function isBattery(part: PartSurvey | undefined): boolean {
  return part?.part.kind === 'traction battery' || part?.part.kind === 'battery tray';
}

function loadPathHit({ part, structural }: PartSurvey): TriState {
  if (!carriesCrashLoad(part.kind) && structural !== true) return false;
  return damageKinds(part).some(
    (kind) => kind !== 'none' && kind !== 'not yet seen' && kind !== 'scratch' && kind !== 'surface rust',
  );
}

function isLookedFor(places: readonly string[] | undefined): boolean {
  return (places ?? []).some((place) => !saysNone(place) && !admitsNotLooked(place));
}

/** What was found, where it admits that it was not all looked at. */
function unseenOf({ plan }: Survey): string | undefined {
  const found = plan.damage?.indirect?.found;
  if (found === undefined) return undefined;
  const isPutOff = admitsNotLooked(found) || /^no (?:access|need|reason|time|tool)\b/i.test(found.trim());
  return isPutOff ? found : undefined;
}
