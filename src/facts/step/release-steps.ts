import { saysNoLampLit } from './no-lamp-lit.ts';
import { saysNone } from './step-draft.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';

/** What the plan says of the vehicle as it goes, or is asked to: its warning lamps, and the release of the structure by itself. */
export function releaseSteps(survey: Survey, releaseBecause: string | undefined): readonly StepDraft[] {
  const { warning_lamps: lamps, structural_release: release } = survey.plan.verify ?? {};
  const litBefore = lampsAsReceived(survey);
  const drafts: readonly StepDraft[] = [
    {
      what: 'warning lamps',
      name: 'look at the warning lamps',
      at: '/verify/warning_lamps',
      step: lamps,
      missing: [
        ...(lamps?.lit === undefined ? ['which are lit now'] : []),
        ...(lamps?.done === undefined ? ['the day'] : []),
      ],
      neededBecause: litBefore,
    },
    {
      what: 'structural release',
      name: 'release of the structure',
      at: '/verify/structural_release',
      step: release,
      missing: [
        ...(saysNone(release?.by?.name) ? ['who releases it'] : []),
        ...(release?.done === undefined ? ['the day'] : []),
      ],
      neededBecause: releaseBecause,
    },
  ];
  return drafts.filter(({ step, neededBecause }) => step !== undefined || neededBecause !== undefined);
}

/** The lamps that were lit when the vehicle came, as the plan tells them; undefined where none was, or nothing is said. */
export function lampsAsReceived({ plan }: Survey): string | undefined {
  const lamps = plan.job?.as_received?.warning_lamps?.trim();
  return lamps === undefined || saysNoLampLit(lamps) ? undefined : lamps;
}
