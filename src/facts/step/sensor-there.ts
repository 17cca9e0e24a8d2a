import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import { listOf } from '../quantity-of.ts';
import type { Survey } from '../survey.ts';
import type { StepDraft } from './step-draft.ts';
import { endNamed } from './vehicle-end.ts';

/** Sensors that a part or a document is called after. */
const kinds: readonly RegExp[] = [/\bcameras?\b/i, /\bradars?\b/i, /\blidars?\b/i];
const without = /\b(?:without|no|less|deleted?|dummy|blank(?:ing)?)\b/i;

/** What names a sensor that the calibration says is not fitted: a part that is called after it, or a document listed for it alone. */
export function sensorThere(survey: Survey, { calibration: one, at }: StepDraft): Fact {
  const sensor = (one?.sensor ?? '').trim();
  const isNone = /^(?:none|no sensors?)\b/i.test(sensor);
  const isDenied = one !== undefined && one.result === undefined && (isNone || one.kind === 'not fitted');
  const meant = isDenied ? kinds.filter((kind) => isNone || kind.test(sensor)) : [];
  return computedOr(
    meant.length === 0 ? undefined : (partNamed(survey, meant, sensor) ?? listedFor(survey, meant, sensor)),
    `${at}/${isNone ? 'sensor' : 'kind'}`,
    'No sensor is denied that the plan names elsewhere.',
  );
}

function partNamed({ parts }: Survey, meant: readonly RegExp[], sensor: string): string | undefined {
  return parts.find(
    ({ name }) => meant.some((kind) => kind.test(name)) && !without.test(name) && mayBeSameEnd(sensor, name),
  )?.name;
}

/** Of a document for several sensors nobody can tell for which it is listed; one that a calibration cites is accounted for. */
function listedFor(
  { plan, references }: Survey,
  meant: readonly RegExp[],
  sensor: string,
): string | undefined {
  const cited = new Set(
    (plan.verify?.calibrations ?? []).flatMap(({ cite }) => listOf(cite).map(({ reference }) => reference)),
  );
  return references.find(({ reference: { id, title = '' }, coverage }) => {
    const said = kinds.filter((kind) => kind.test(title));
    const isSame =
      said.length === 1 && said.every((kind) => meant.includes(kind)) && mayBeSameEnd(sensor, title);
    return isSame && coverage.covers === 'yes' && !without.test(title) && !cited.has(id);
  })?.reference.title;
}

/** A corner radar sits at the rear; a name that tells neither end may be either. */
function mayBeSameEnd(sensor: string, other: string): boolean {
  const [own, said] = [sensor, other].map((text) => (/\bcorner\b/i.test(text) ? 'rear' : endNamed(text)));
  return own === undefined || said === undefined || own === said;
}
