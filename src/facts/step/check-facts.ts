import type { FactNames } from '../../generated/fact-names.ts';
import type { Cites } from '../../generated/plan-types.ts';
import { batteryKept } from './battery-kept.ts';
import type { Fact } from '../fact.ts';
import { proofDenied } from './isolation-relied-on.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import { citedElsewhere } from '../papers/cited-elsewhere.ts';
import { citedForOther } from '../papers/matter-of.ts';
import { listOf, notAfter, whenOf } from '../quantity-of.ts';
import { radarThere } from './radar-there.ts';
import { scanExcuse } from './scan-excuse.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';
import { weldingMoments } from './work-moments.ts';

type CheckFact = Extract<
  FactNames['step'],
  | `step.${'cited_elsewhere' | 'wait_cited_elsewhere' | 'proof_denied' | 'battery_kept'}`
  | `step.${'welded_before' | 'scan_excuse' | 'radar_there' | 'cited_for_other_matter'}`
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
      what === 'high-voltage isolation'
        ? citedForOther(survey, step?.cite, ['high voltage'])
        : what === 'restraints made safe'
          ? // The current is cut off in the same chapter.
            citedForOther(survey, restraints?.wait_cite, ['restraints', 'high voltage'])
          : undefined,
      `${at}/${what === 'restraints made safe' ? 'wait_cite' : 'cite'}`,
      'A page of the matter is cited, or none, or its matter is not told.',
    ),
    'step.proof_denied':
      what === 'absence of voltage proved'
        ? computedOr(proofDenied(survey), at, 'The proof denies nothing of itself.')
        : other,
    'step.battery_kept': what === 'battery damage dealt with' ? batteryKept(survey) : other,
    'step.welded_before': weldedBefore(survey, draft),
    'step.scan_excuse':
      what === 'scan before the repair'
        ? computedOr(excuse, `${at}/not_possible`, 'No reason is given, or one of the vehicle’s own.')
        : other,
    'step.radar_there': radarThere(survey, draft),
  };
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
