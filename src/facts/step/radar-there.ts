import type { Fact } from '../fact.ts';
import { computedOr, unknown } from '../make-fact.ts';
import { sideOfWords } from '../part/side-named.ts';
import type { StepDraft } from './step-draft.ts';
import type { Survey } from '../survey.ts';
import { endNamed } from './vehicle-end.ts';

/** The part behind which the plan says that a radar sits, of a calibration that says there is none. */
export function radarThere(survey: Survey, { what, at }: StepDraft): Fact {
  const { plan, parts } = survey;
  if (what !== 'sensor calibration') return unknown('The step is another.', at);
  const index = Number(at.split('/').at(-1));
  const one = (plan.verify?.calibrations ?? [])[index];
  const sensor = (one?.sensor ?? '').trim();
  const isNone = /^(?:none|no sensors?)\b/i.test(sensor);
  const isDenied = one?.result === undefined && (isNone || one?.kind === 'not fitted');
  const isRadar = isNone || sensor === '' || /\bradar/i.test(sensor);
  const there =
    one !== undefined && isDenied && isRadar && !isOnOtherSide(survey, sensor)
      ? parts.find(({ part, name }) => part.radar_behind === true && !isOtherEnd(sensor, name))
      : undefined;
  return computedOr(
    there?.name,
    `${at}/${isNone ? 'sensor' : 'kind'}`,
    'No radar is denied that the plan names.',
  );
}

/** Where that of the one side is denied and that of the other was calibrated, the radar behind the part is that one. */
function isOnOtherSide({ plan }: Survey, denied: string): boolean {
  const side = sideOfWords(denied);
  if (side === undefined) return false;
  return (plan.verify?.calibrations ?? []).some(({ sensor = '', result }) => {
    const other = sideOfWords(sensor);
    const isSameEnd = endNamed(sensor) === endNamed(denied);
    return (
      result === 'passed' && /\bradar/i.test(sensor) && isSameEnd && other !== undefined && other !== side
    );
  });
}

/** Front and rear are two sensors; a name that says neither may be either. */
function isOtherEnd(sensor: string, part: string): boolean {
  const front = /\bfront\b/i;
  const rear = /\b(?:rear|back|corner)\b/i;
  return (front.test(sensor) && rear.test(part)) || (rear.test(sensor) && front.test(part));
}
