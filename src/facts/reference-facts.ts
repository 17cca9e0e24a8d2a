import type { FactNames } from '../generated/fact-names.ts';
import type { Cites } from '../generated/plan-types.ts';
import { readYears } from '../quantity/year-range.ts';
import { sameName } from '../vehicle/same-name.ts';
import type { Fact } from './fact.ts';
import { computed, statedOr, unknown } from './make-fact.ts';
import { dayOf, listOf, whenOf } from './quantity-of.ts';
import type { ReferenceSurvey, Survey } from './survey.ts';

type ReferenceFacts = Readonly<Record<FactNames['reference'], Fact>>;

/** One document: what it is, whether it is this car's, when it was looked up. */
export function referenceFacts(survey: Survey, one: ReferenceSurvey): ReferenceFacts {
  const { reference, at } = one;
  return {
    'reference.id': statedOr(reference.id, at, 'The reference has no id.'),
    'reference.name': computed(one.name, at),
    'reference.kind': statedOr(reference.kind, `${at}/kind`, 'The kind of source is not stated.'),
    'reference.rested_on': computed(
      survey.operations.some(
        ({ works, part, restsOn }) =>
          works !== false && part.structural !== false && restsOn?.reference === one,
      ),
      at,
    ),
    'reference.cited': computed(
      survey.operations.some(({ citations }) => citations.some((cite) => cite.reference === one)),
      at,
    ),
    'reference.document_stated': computed(reference.document !== undefined, `${at}/document`),
    'reference.revision_stated': computed(reference.revision !== undefined, `${at}/revision`),
    'reference.published_stated': computed(reference.published !== undefined, `${at}/published`),
    'reference.years_covered': yearsCovered(one),
    'reference.covers_vehicle':
      one.coverage.covers === 'cannot tell'
        ? unknown(one.coverage.reason, `${at}/covers`)
        : computed(
            one.coverage.covers === 'yes',
            `${at}/covers`,
            one.coverage.covers === 'no' ? one.coverage.reason : undefined,
          ),
    'reference.looked_up': statedOr(reference.looked_up, `${at}/looked_up`, 'No look-up day is written.'),
    'reference.look_up': lookUpOrder(survey, one),
    'reference.look_up_age': lookUpAge(survey, one),
    'reference.called_missing': computed(
      (reference.calls ?? []).some((id) => !survey.referenceById.has(id)),
      `${at}/calls`,
    ),
    'reference.revision_in_pack': revisionInPack(survey, one),
    'reference.id_repeated': computed(
      reference.id !== undefined && survey.referenceById.get(reference.id) !== one,
      at,
    ),
  };
}

/** The look-up must lie between the first that the shop had to do with the job and the work that rests on it. */
function lookUpOrder(survey: Survey, { reference, at }: ReferenceSurvey): Fact {
  const { job } = survey.plan;
  if (
    reference.for_job !== undefined &&
    job?.number !== undefined &&
    reference.for_job.trim() !== job.number.trim()
  ) {
    return computed('for another job', `${at}/for_job`);
  }
  const day = dayOf(reference.looked_up);
  const place = `${at}/looked_up`;
  if (day === undefined) return unknown('No look-up day is written.', place);
  if (day > survey.context.asOfDay) return computed('after the as-of date', place);
  const begun = [dayOf(job?.opened), dayOf(job?.first_estimate)].filter((one) => one !== undefined);
  const work = firstWork(survey, reference.id);
  if (work !== undefined && day > work) return computed('after the work', place);
  if (begun.length === 0)
    return unknown('The day on which the job was opened is not written.', '/job/opened');
  return computed(day < Math.min(...begun) ? 'before the job' : 'in time', place);
}

function firstWork(survey: Survey, id: string | undefined): number | undefined {
  let first: number | undefined;
  const cites = (cite: Cites | undefined): boolean => listOf(cite).some(({ reference }) => reference === id);
  for (const { operation, joints } of survey.operations) {
    const rests = cites(operation.cite);
    const done = [
      ...(rests ? [operation.done] : []),
      ...joints.filter(({ joint }) => rests || cites(joint.cite)).map(({ joint }) => joint.done),
    ];
    for (const text of done) {
      const day = whenOf(text)?.day;
      if (day !== undefined && (first === undefined || day < first)) first = day;
    }
  }
  return first;
}

function yearsCovered({ reference, at }: ReferenceSurvey): Fact {
  const years = reference.covers?.years === undefined ? undefined : readYears(reference.covers.years);
  const place = `${at}/covers/years`;
  return years?.ok === true
    ? computed(years.to - years.from + 1, place)
    : unknown('It names no model years.', place);
}

function lookUpAge(survey: Survey, { reference, at }: ReferenceSurvey): Fact {
  const day = dayOf(reference.looked_up);
  if (day === undefined) return unknown('No look-up day is written.', `${at}/looked_up`);
  const until = dayOf(survey.plan.sign_off?.date) ?? survey.context.asOfDay;
  return computed(Math.max(0, until - day), `${at}/looked_up`);
}

function revisionInPack(survey: Survey, { reference, at }: ReferenceSurvey): Fact {
  const place = `${at}/revision`;
  const { document } = reference;
  const known = survey.context.makers
    .flatMap((maker) => maker.statements)
    .filter((statement) => document !== undefined && sameName(statement.document, document));
  if (known.length === 0) return computed('not in the packs', place);
  if (reference.revision === undefined) return unknown('The revision is not stated.', place);
  const newest = known.reduce((best, statement) =>
    (statement.published ?? '') > (best.published ?? '') ? statement : best,
  );
  if (newest.revision === undefined || sameName(newest.revision, reference.revision)) {
    return computed('same', place);
  }
  // Revision marks have no order of their own; the days of publication do.
  const own = dayOf(reference.published);
  const inPack = dayOf(newest.published);
  if (own === undefined || inPack === undefined) {
    return unknown(
      `The pack knows revision ${newest.revision}; which of the two is newer, the days of publication would tell.`,
      place,
    );
  }
  return computed(own < inPack ? 'pack is newer' : 'pack is older', place);
}
