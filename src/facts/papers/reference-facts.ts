import type { FactNames } from '../../generated/fact-names.ts';
import type { Cites } from '../../generated/plan-types.ts';
import { readYears } from '../../quantity/year-range.ts';
import { sameName } from '../../vehicle/same-name.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, statedOr, unknown } from '../make-fact.ts';
import { dayOf, listOf, whenOf } from '../quantity-of.ts';
import type { OperationSurvey, ReferenceSurvey, Survey } from '../survey.ts';
import { toldOutdated } from '../notes/outdated-words.ts';
import { nameDocument, successorOf } from './superseded.ts';
import { titledForOther } from './titled-for-other.ts';
import { aboutOf } from './matter-of.ts';
import { laterPage } from './later-page.ts';
import type { Paper } from './survey-papers.ts';

type ReferenceFacts = Readonly<Record<FactNames['reference'], Fact>>;

/** One document: what it is, whether it is this car's, when it was looked up. */
export function referenceFacts(
  survey: Survey,
  one: ReferenceSurvey,
  /** What rests on it beside operations. */
  papers: readonly Paper[],
): ReferenceFacts {
  const { reference, at } = one;
  const resting = restingOn(survey, one);
  const undated = resting.filter(isUndated);
  const unplaced = papers.filter(({ placeStated }) => !placeStated);
  return {
    'reference.id': statedOr(reference.id, at, 'The reference has no id.'),
    'reference.name': computed(one.name, at),
    'reference.kind': statedOr(reference.kind, `${at}/kind`, 'The kind of source is not stated.'),
    'reference.rested_on': computed(resting.length > 0 || papers.length > 0, at),
    'reference.unplaced': computedOr(
      shortList(unplaced.map(({ what }) => what)),
      unplaced[0]?.at ?? at,
      'Wherever it is leant on beside operations, the place in it is stated.',
    ),
    'reference.other_matter': otherMatter(one, papers),
    'reference.titled_for_other': computedOr(
      titledForOther(reference, survey.plan.vehicle),
      `${at}/title`,
      'Its title names no years, body or market, or those of this vehicle.',
    ),
    'reference.told_outdated': computedOr(
      resting.length > 0 || papers.length > 0 ? toldOutdated(reference.note) : undefined,
      `${at}/note`,
      'No note tells that it is out of force, or nothing rests on it.',
    ),
    'reference.newer_listed': computedOr(
      resting.length > 0 || papers.length > 0 ? newerListed(survey, one) : undefined,
      `${at}/revision`,
      'No newer revision of it stands in the list, or nothing rests on it.',
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
    'reference.undated_work': computedOr(
      shortList(undated.map(({ part }) => part.name)),
      undated[0] === undefined ? at : `${undated[0].at}/done`,
      'All structural work that rests on it bears its day.',
    ),
    'reference.published_after_look_up': publishedAfterLookUp(one),
    'reference.look_up': lookUpOrder(survey, one, resting, papers),
    'reference.sheet_with_pages': computedOr(
      reference.single_sheet === true && reference.id !== undefined
        ? laterPage(survey.plan, reference.id)
        : undefined,
      `${at}/single_sheet`,
      'It is not called a single sheet, or no page after the second is cited from it.',
    ),
    'reference.look_up_age': lookUpAge(survey, one),
    'reference.called_missing': computed(
      (reference.calls ?? []).some((id) => !survey.referenceById.has(id)),
      `${at}/calls`,
    ),
    'reference.revision_in_pack': revisionInPack(survey, one),
    'reference.superseded_by': supersededBy(survey, one),
  };
}

/** What rests on it although it is about something else; and what it is about. */
function otherMatter(one: ReferenceSurvey, papers: readonly Paper[]): Fact {
  const borrowed = papers.filter(({ ofOtherMatter }) => ofOtherMatter === true);
  const uses = shortList(borrowed.map(({ what }) => what));
  return computedOr(
    uses === undefined ? undefined : `${uses}; it is about ${aboutOf(one)}`,
    borrowed[0]?.at ?? one.at,
    'What rests on it is of its matter, or its matter is not told.',
  );
}

/** Another entry of the same document that was published later and covers this vehicle as well. */
function newerListed(survey: Survey, { reference }: ReferenceSurvey): string | undefined {
  const { document, revision, published } = reference;
  const day = dayOf(published);
  if (document === undefined || day === undefined) return undefined;
  const newer = survey.references.find(({ reference: other, coverage }) => {
    const otherDay = dayOf(other.published);
    return (
      other !== reference &&
      other.document !== undefined &&
      sameName(other.document, document) &&
      (other.revision ?? '') !== (revision ?? '') &&
      otherDay !== undefined &&
      otherDay > day &&
      coverage.covers === 'yes'
    );
  });
  return newer === undefined ? undefined : nameDocument({ ...newer.reference, document });
}

/** Operations on what may carry load that rest on the document. */
function restingOn(survey: Survey, one: ReferenceSurvey): readonly OperationSurvey[] {
  return survey.operations.filter(
    ({ works, part, restsOn }) => works !== false && part.structural !== false && restsOn?.reference === one,
  );
}

/** A few things as one phrase; each once. */
function shortList(things: readonly string[]): string | undefined {
  const once = [...new Set(things)];
  if (once.length === 0) return undefined;
  const shown = once.slice(0, 3).join('; ');
  return once.length <= 3 ? shown : `${shown}; and ${String(once.length - 3)} more`;
}

function publishedAfterLookUp({ reference, at }: ReferenceSurvey): Fact {
  const published = dayOf(reference.published);
  const lookedUp = dayOf(reference.looked_up);
  return published === undefined || lookedUp === undefined
    ? unknown('Day of publication or look-up day is not written.', `${at}/published`)
    : computed(published > lookedUp, `${at}/published`);
}

/** The look-up must lie between the first that the shop had to do with the job and the work that rests on it. */
function lookUpOrder(
  survey: Survey,
  { reference, at }: ReferenceSurvey,
  resting: readonly OperationSurvey[],
  papers: readonly Paper[],
): Fact {
  const { job, sign_off: signOff } = survey.plan;
  if (
    reference.for_job !== undefined &&
    job?.number !== undefined &&
    reference.for_job.trim() !== job.number.trim()
  ) {
    return computed('for another job', `${at}/for_job`);
  }
  if (reference.for_job !== undefined && job?.number === undefined) {
    return unknown('The job number is not written, against which that of the look-up counts.', '/job/number');
  }
  const day = dayOf(reference.looked_up);
  const place = `${at}/looked_up`;
  if (day === undefined) return unknown('No look-up day is written.', place);
  if (day > survey.context.asOfDay) return computed('after the as-of date', place);
  const begun = [dayOf(job?.opened), dayOf(job?.first_estimate)].filter((one) => one !== undefined);
  const work = firstWork(survey, reference.id, resting, papers);
  if (work !== undefined && day > work) return computed('after the work', place);
  const signed = dayOf(signOff?.date);
  if (signed !== undefined && day > signed) return computed('after the signature', place);
  if (begun.length === 0)
    return unknown('The day on which the job was opened is not written.', '/job/opened');
  if (day < Math.min(...begun)) return computed('before the job', place);
  return computed('in time', place);
}

/** Where every joint of it is dated, the operation is. */
function isUndated({ operation, joints }: OperationSurvey): boolean {
  if (operation.planned === false || whenOf(operation.done) !== undefined) return false;
  return joints.length === 0 || joints.some(({ joint }) => whenOf(joint.done) === undefined);
}

/** The first day by which something that rests on the document is known to be done. */
function firstWork(
  survey: Survey,
  id: string | undefined,
  resting: readonly OperationSurvey[],
  papers: readonly Paper[],
): number | undefined {
  const cites = (cite: Cites | undefined): boolean => listOf(cite).some(({ reference }) => reference === id);
  const done = [
    ...survey.operations.flatMap(({ operation, joints }) => {
      const rests = cites(operation.cite);
      return [
        ...(rests ? [operation.done] : []),
        ...joints.filter(({ joint }) => rests || cites(joint.cite)).map(({ joint }) => joint.done),
      ];
    }),
    ...papers.map((paper) => paper.done),
    // Structural work lies before the measurement that is taken after it.
    ...(resting.length > 0 ? [survey.plan.measurements?.after] : []),
  ];
  const days = done.map((text) => whenOf(text)?.day).filter((day) => day !== undefined);
  return days.length === 0 ? undefined : days.reduce((first, day) => Math.min(first, day));
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
  const { asOfDay } = survey.context;
  // A signature that bears a day to come is told for itself.
  const until = Math.min(dayOf(survey.plan.sign_off?.date) ?? asOfDay, asOfDay);
  return computed(Math.max(0, until - day), `${at}/looked_up`);
}

function supersededBy(survey: Survey, { reference, at }: ReferenceSurvey): Fact {
  const successor = successorOf(survey, reference);
  return computedOr(
    successor === undefined ? undefined : nameDocument(successor),
    `${at}/document`,
    'No vehicle pack says that another document took its place.',
  );
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
