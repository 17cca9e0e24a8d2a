import type { FactNames } from '../generated/fact-names.ts';
import type { Fact } from './fact.ts';
import { heatFacts } from './heat/heat-facts.ts';
import { heatSources } from './heat/heat-sources.ts';
import { factGroups } from './fact-groups.ts';
import type { FactGroups } from './fact-groups.ts';
import { howJoined, isJoinedUnsaid, noWord } from './goes-on-unsaid.ts';
import { computed, computedOr, statedOr, unknown } from './make-fact.ts';
import { packNotPlaced } from './step/battery-claims.ts';
import { batteryFittedFacts } from './step/battery-fitted.ts';
import { operationExtraFacts } from './operation-extra-facts.ts';
import { operationNouns } from './operation-noun.ts';
import { jointsInAll } from './joint/row-evidence.ts';
import { heatTold } from './notes/heat-told.ts';
import { closedOver } from './part/closed-over.ts';
import { goesOnWithoutWelding, loadNotTold } from './part/part-kinds.ts';
import { joinedAtOneEnd } from './part/joined-at-one-end.ts';
import { unjoinedTo } from './part/unjoined-to.ts';
import { damagePastCut } from './part/damage-past-cut.ts';
import { glassBondFacts } from './part/glass-bond.ts';
import { cutShifted } from './cut-shifted.ts';
import { citedForOtherPart } from './papers/cited-for-other-part.ts';
import { citedForOtherSide } from './papers/cited-for-other-side.ts';
import { provisionFacts } from './papers/provision-facts.ts';
import { quantityOf } from './quantity-of.ts';
import { orderOfSteps } from './step/order-of-steps.ts';
import { currentPathFacts } from './step/current-path.ts';
import { fittedUnitBeside } from './step/restraint-units.ts';
import { unitAbove } from './step/units-above.ts';
import type { OperationSurvey, Survey } from './survey.ts';
import { weldFacts } from './joint/weld-facts.ts';
import { anyYes } from './tri-state.ts';
import type { TriState } from './tri-state.ts';

/** Dated itself, or by each of its joints. */
function isDone({ operation, joints }: OperationSurvey): boolean {
  const byJoints = joints.length > 0 && joints.every(({ joint }) => joint.done !== undefined);
  return operation.done !== undefined || byJoints;
}

/** Of a part whose zones are listed, a zone of another name is none. */
function zoneFact({ operation, at, part }: OperationSurvey): Fact {
  const zones = part.part.zones ?? [];
  const { zone } = operation;
  const isListed = zones.length === 0 || zones.some(({ name }) => name === zone);
  return zone !== undefined && !isListed
    ? unknown(`No zone of the part bears the name "${zone}".`, `${at}/zone`)
    : statedOr(zone, `${at}/zone`, 'The strength zone of the cut is not stated.');
}

type OperationFacts = Readonly<Record<FactNames['operation'], Fact>>;

/** One operation: what it does to its part, on what it rests, how hot it gets. */
export const operationFacts: FactGroups<[Survey, OperationSurvey], FactNames['operation']> = factGroups(
  ['operation.', 'provision.'],
  workFacts,
  (_survey: Survey, one: OperationSurvey) => weldFacts(one),
  heatFacts,
  operationExtraFacts,
  batteryFittedFacts,
  packNotPlaced,
  unitAbove,
  (_survey: Survey, one: OperationSurvey) => citedForOtherSide(one),
  (_survey: Survey, one: OperationSurvey) => citedForOtherPart(one),
  (_survey: Survey, one: OperationSurvey) => cutShifted(one),
  (_survey: Survey, one: OperationSurvey) => damagePastCut(one),
  glassBondFacts,
  (_survey: Survey, one: OperationSurvey) => heatTold(one),
  orderOfSteps,
  jointsInAll,
  provisionFacts,
);

const wholeAndCut =
  'It is to be replaced whole, and yet the place of a cut (`at`), a stretch of it (`zone`) or an insert is stated: which of the two is meant?';
const coldOrHot = 'Whether it is straightened cold or with heat is not stated.';

type OfOtherGroups =
  | keyof ReturnType<typeof weldFacts>
  | keyof ReturnType<typeof heatFacts>
  | keyof ReturnType<typeof operationExtraFacts>
  | keyof ReturnType<typeof batteryFittedFacts>
  | keyof ReturnType<typeof packNotPlaced>
  | keyof ReturnType<typeof unitAbove>
  | keyof ReturnType<typeof citedForOtherSide>
  | keyof ReturnType<typeof citedForOtherPart>
  | keyof ReturnType<typeof cutShifted>
  | keyof ReturnType<typeof damagePastCut>
  | keyof ReturnType<typeof glassBondFacts>
  | keyof ReturnType<typeof heatTold>
  | keyof ReturnType<typeof orderOfSteps>
  | keyof ReturnType<typeof jointsInAll>
  | keyof ReturnType<typeof provisionFacts>;

function workFacts(survey: Survey, one: OperationSurvey): Omit<OperationFacts, OfOtherGroups> {
  const { operation, at } = one;
  const place = `${at}/do`;
  const orNoWord = (reason: string): string => (operation.do === undefined ? noWord : reason);
  const straightens = operation.do === 'straighten';
  const noMethod = orNoWord(straightens ? coldOrHot : howJoined(one));
  const methodAt = straightens ? `${at}/method` : place;
  return {
    'operation.do': statedOr(operation.do, place, noWord),
    'operation.work': computedOr(
      operation.do === undefined ? undefined : operationNouns[operation.do],
      place,
      noWord,
    ),
    'operation.extent': statedOr(
      operation.extent,
      `${at}/extent`,
      'Whether the whole part is meant is not stated.',
    ),
    'operation.at': statedOr(operation.at, `${at}/at`, 'Where the cut lies is not stated.'),
    'operation.zone': zoneFact(one),
    'operation.cuts_part_way': computedOr(
      one.cutsPartWay,
      operation.do === undefined ? place : `${at}/extent`,
      orNoWord(
        operation.extent === 'whole' ? wholeAndCut : 'Whether it is replaced whole or in part is not stated.',
      ),
    ),
    'operation.heats': computedOr(one.heats, methodAt, noMethod),
    'operation.straightens': computedOr(one.straightens, place, noWord),
    'operation.alters_structure': altersStructure(one),
    'operation.hot': computedOr(one.hot, methodAt, noMethod),
    'operation.flame_or_arc': computedOr(flameOrArc(one), methodAt, noMethod),
    'operation.sparks': computedOr(sparks(one), methodAt, noMethod),
    'operation.joints_stated': computed(jointsStated(one), `${at}/joints`),
    'operation.unit_beside': computedOr(
      fittedUnitBeside(survey, one),
      `${at}/joints`,
      'Whether the restraint unit at a part beside the work is off by then is not stated.',
    ),
    'operation.planned': computed(
      operation.planned !== false || operation.done !== undefined,
      `${at}/planned`,
    ),
    'operation.done': computed(isDone(one), `${at}/done`),
    'operation.works': computedOr(one.works, place, noMethod),
    'operation.hot_or_impact': computedOr(
      one.offVehicle ? false : anyYes([one.hot, one.straightens]),
      place,
      noMethod,
    ),
    'operation.citation': computed(one.restsOn?.standing ?? 'none', one.restsOn?.at ?? at),
    'operation.citation_text': computedOr(citationText(one), one.restsOn?.at ?? at, 'Nothing is cited.'),
    'operation.reason_stated': computed(operation.reason !== undefined, `${at}/reason`),
    'operation.looked_within': computed(
      quantityOf(operation.clear_within, 'length') ?? 0,
      `${at}/clear_within`,
    ),
    ...currentPathFacts(one),
    'operation.fire_watch_stated': computed(
      operation.fire_watch !== undefined || survey.plan.make_safe?.fire?.watch !== undefined,
      `${at}/fire_watch`,
    ),
    'operation.clear_within': statedOr(
      quantityOf(operation.clear_within, 'length'),
      `${at}/clear_within`,
      'How far around the work it was looked is not stated.',
    ),
    'operation.unjoined_to': unjoinedTo(survey, one),
    'operation.joined_at_one_end': joinedAtOneEnd(survey, one),
    'operation.closed_over': closedOver(survey, one),
    'operation.fire_watch': statedOr(
      quantityOf(operation.fire_watch, 'time'),
      `${at}/fire_watch`,
      'No length of a fire watch is stated for the operation.',
    ),
  };
}

const joining: ReadonlySet<string> = new Set([
  'replace',
  'section',
  'butt weld',
  'weld',
  'braze',
  'bond',
  'rivet',
]);

function jointsStated({ operation, joints, part }: OperationSurvey): boolean {
  if (joints.length > 0 || operation.do === undefined || !joining.has(operation.do)) return true;
  return operation.do === 'replace' && goesOnWithoutWelding(part.part.kind);
}

/** What may as well be bolted is not said to be cut out. */
function sparks(one: OperationSurvey): TriState {
  const isCut = heatSources(one).some(({ kind }) => kind === 'cutting or grinding');
  return isCut && one.hot === undefined && isJoinedUnsaid(one) ? undefined : isCut;
}

function flameOrArc(one: OperationSurvey): TriState {
  if (one.offVehicle || one.hot === false) return false;
  const sources = heatSources(one);
  if (sources.some(({ kind }) => kind === 'heat' || kind === 'arc' || kind === 'brazing')) return true;
  return one.hot === undefined || one.joints.some(({ joint }) => joint.method === undefined)
    ? undefined
    : false;
}

function altersStructure({ works, part, at }: OperationSurvey): Fact {
  const value: TriState =
    works === false || part.structural === false
      ? false
      : works === true && part.structural === true
        ? true
        : undefined;
  if (value !== undefined) return computed(value, `${at}/do`);
  return works === undefined
    ? unknown(noWord, `${at}/do`)
    : unknown(loadNotTold(part), `${part.at}/structural`);
}

function citationText({ restsOn }: OperationSurvey): string | undefined {
  if (restsOn === undefined) return undefined;
  const { reference, id, place } = restsOn;
  if (reference === undefined)
    return `${id ?? 'a citation without a reference'}, which the plan does not list`;
  const name = place === undefined ? reference.name : `${reference.name}, ${place}`;
  if (reference.mayPermit === false) return `${name} (${reference.reference.kind ?? 'kind not stated'})`;
  return reference.coverage.covers === 'yes' ? name : `${name}. ${reference.coverage.reason}`;
}
