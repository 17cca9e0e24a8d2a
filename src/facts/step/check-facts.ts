import type { FactNames } from '../../generated/fact-names.ts';
import type { Cites, Matter } from '../../generated/plan-types.ts';
import { batteryDented } from './battery-dented.ts';
import { batteryKept } from './battery-kept.ts';
import type { Fact } from '../fact.ts';
import { proofDenied } from './isolation-relied-on.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import { citedElsewhere } from '../papers/cited-elsewhere.ts';
import { citedForOther } from '../papers/matter-of.ts';
import { listOf, notAfter, whenOf } from '../quantity-of.ts';
import { narrowTool } from './narrow-tool.ts';
import { radarThere } from './radar-there.ts';
import { sensorThere } from './sensor-there.ts';
import { scanExcuse } from './scan-excuse.ts';
import { saysNone } from './step-draft.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';
import { weldingMoments } from './work-moments.ts';

type CheckFact = Extract<
  FactNames['step'],
  | `step.${'cited_elsewhere' | 'wait_cited_elsewhere' | 'proof_denied' | 'battery_kept' | 'battery_dented'}`
  | `step.${'welded_before' | 'scan_excuse' | 'radar_there' | 'sensor_there' | 'cited_for_other_matter' | 'waived_after'}`
  | `step.${'tool_stated' | 'tool_narrow'}`
>;

/** Wheel settings may be read from the data of the bench, where they are listed for this very vehicle. */
function isBenchData({ referenceById }: Survey, cites: Cites | undefined): boolean {
  return listOf(cites).some(
    ({ reference }) => reference !== undefined && referenceById.get(reference)?.coverage.covers === 'yes',
  );
}

/** What a step says against itself or against the rest of the plan. */
export function checkFacts(survey: Survey, draft: StepDraft): Readonly<Record<CheckFact, Fact>> {
  const { what, step, at } = draft;
  const other = unknown('The step is another.', at);
  const elsewhere =
    what === 'wheel alignment' && isBenchData(survey, step?.cite)
      ? undefined
      : citedElsewhere(survey, step?.cite, `${at}/cite`);
  const restraints = survey.plan.make_safe?.restraints;
  const wait = citedElsewhere(survey, restraints?.wait_cite, '/make_safe/restraints/wait_cite');
  const matter = matterOfStep(survey, draft);
  const excuse = scanExcuse(survey.plan.verify?.scan_before?.not_possible);
  return {
    'step.cited_elsewhere': computedOr(
      elsewhere?.text,
      elsewhere?.at ?? `${at}/cite`,
      'A page of this vehicle is cited, or none at all.',
    ),
    'step.wait_cited_elsewhere': computedOr(
      wait?.text,
      wait?.at ?? '/make_safe/restraints/wait_cite',
      'A page of this vehicle is cited for the wait, or none at all.',
    ),
    'step.cited_for_other_matter': computedOr(
      matter?.text,
      matter?.at ?? `${at}/cite`,
      'A page of the matter is cited, or none, or its matter is not told.',
    ),
    'step.proof_denied':
      what === 'absence of voltage proved'
        ? computedOr(proofDenied(survey), at, 'The proof denies nothing of itself.')
        : other,
    'step.battery_dented': what === 'battery damage dealt with' ? batteryDented(survey) : other,
    'step.battery_kept': what === 'battery damage dealt with' ? batteryKept(survey) : other,
    'step.welded_before': weldedBefore(survey, draft),
    'step.scan_excuse':
      what === 'scan before the repair'
        ? computedOr(excuse, `${at}/not_possible`, 'No reason is given, or one of the vehicle’s own.')
        : other,
    'step.radar_there': radarThere(survey, draft),
    'step.sensor_there': sensorThere(survey, draft),
    'step.tool_stated': computed(isToolTold(survey, draft), `${at}/tool`),
    'step.tool_narrow': computedOr(
      narrowTool(scanOf(survey, draft)?.tool),
      `${at}/tool`,
      'The tool is not told, or its words do not say that it reads the engine alone.',
    ),
    'step.waived_after': computedOr(
      what === 'wheel alignment' && draft.result === 'not required' ? wheelsMoved(survey) : undefined,
      `${at}/result`,
      'An alignment was made or is planned, or nothing that sets the wheels was apart.',
    ),
  };
}

/** What sets the wheels or carries what does: loosened, joined in or pulled, it has moved them. */
const wheelBearing: ReadonlySet<string> = new Set([
  ...['suspension part', 'steering part', 'subframe', 'front rail', 'rear rail', 'strut tower'],
]);
const moving: ReadonlySet<string> = new Set([
  ...['replace', 'section', 'butt weld', 'straighten', 'heat', 'remove and refit'],
]);

function wheelsMoved({ operations }: Survey): string | undefined {
  const moved = operations.filter(
    ({ operation, part: { part } }) => wheelBearing.has(part.kind ?? '') && moving.has(operation.do ?? ''),
  );
  return moved.map(({ operation, part }) => `${part.name} (${operation.do ?? ''})`).join(', ') || undefined;
}

/** A scan that bears a day was made with a tool of some state; no other step is asked for one. */
function isToolTold(survey: Survey, draft: StepDraft): boolean {
  const scan = scanOf(survey, draft);
  return scan?.done === undefined || !saysNone(scan.tool);
}

function scanOf(
  { plan }: Survey,
  { what }: StepDraft,
): { readonly done?: string; readonly tool?: string } | undefined {
  const { scan_before: before, scan_after: after } = plan.verify ?? {};
  return what === 'scan before the repair' ? before : what === 'scan after the repair' ? after : undefined;
}

/** The page of a step that is all of another matter. The current is cut off in the chapter of the restraints or of the voltage. */
function matterOfStep(survey: Survey, { what, step, at }: StepDraft): OtherMatter | undefined {
  const wheels = ['running gear', 'driver assistance', 'body structure'] as const;
  const own = (wanted: readonly Matter[]): OtherMatter | undefined => {
    const text = citedForOther(survey, step?.cite, wanted);
    return text === undefined ? undefined : { text, at: `${at}/cite` };
  };
  switch (what) {
    case 'high-voltage isolation':
    case 'high-voltage re-commissioning':
      return own(['high voltage']);
    case 'restraints made safe':
      return matterOfRestraints(survey, at);
    case 'restraint completion':
      return own(['restraints']);
    case 'wheel alignment':
    case 'sensor calibration':
      return own(wheels);
    default:
      return undefined;
  }
}

interface OtherMatter {
  readonly text: string;
  readonly at: string;
}

/** The first of the pages on the restraints that is of another matter, with what it is cited for. */
function matterOfRestraints(survey: Survey, at: string): OtherMatter | undefined {
  const restraints = survey.plan.make_safe?.restraints;
  const pages = [
    // A body procedure says how long to wait before its first cut.
    { key: 'wait_cite', what: 'the wait', wanted: ['restraints', 'high voltage', 'body structure'] },
    { key: 'replacement_list', what: 'what is replaced', wanted: ['restraints'] },
    { key: 'wiring_cite', what: 'the repair of the wiring', wanted: ['restraints'] },
    { key: 'control_unit_cite', what: 'what becomes of the control unit', wanted: ['restraints'] },
  ] as const;
  for (const { key, what, wanted } of pages) {
    const text = citedForOther(survey, restraints?.[key], wanted);
    if (text !== undefined) return { text: `${text}, for ${what}`, at: `${at}/${key}` };
  }
  return undefined;
}

function weldedBefore(survey: Survey, { what, step, at }: StepDraft): Fact {
  const own = whenOf(step?.done);
  if (what !== 'batteries disconnected') return unknown('The step is another.', at);
  if (own === undefined) return unknown('When it was done is not written.', `${at}/done`);
  return computed(
    weldingMoments(survey).some((when) => notAfter(own, when) === false),
    `${at}/done`,
  );
}
