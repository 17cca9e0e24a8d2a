import { sameName } from '../../vehicle/same-name.ts';
import { entriesForModel, isForModel, isForSide, isForVehicle, whereItSays } from './maker-applies.ts';
import { sharePage } from './same-page.ts';
import type { MakerStatement, NamedOperation } from '../context.ts';
import type { CitationSurvey, OperationSurvey, PartSurvey, Survey } from '../survey.ts';

/** A statement that is about this very part, with the pack that carries it. */
export interface ApplicableStatement {
  readonly pack: string;
  readonly statement: MakerStatement;
}

/** Whether any loaded pack is for this maker, model and year; undefined when the vehicle does not say enough. */
export function packForVehicle(survey: Survey): boolean | undefined {
  const { maker, model, model_year: year } = survey.plan.vehicle;
  if (survey.context.makers.length === 0) return false;
  if (maker === undefined || model === undefined || year === undefined) return undefined;
  return survey.context.makers.some(
    (makers) =>
      isForModel(makers, maker, model) &&
      makers.statements.some(({ years }) => year >= years.from && year <= years.to),
  );
}

/**
 * The statements about a part of this kind, side, body and year. Where the plan leaves out what would decide, `inDoubt`
 * decides: a prohibition counts in doubt, a permission does not.
 */
export function statementsFor(
  survey: Survey,
  { part }: PartSurvey,
  inDoubt: boolean,
): readonly ApplicableStatement[] {
  const { vehicle } = survey.plan;
  return entriesForModel(vehicle, survey.context.makers, ({ statements }) => statements)
    .filter(
      ({ entry }) =>
        entry.part === part.kind &&
        isForVehicle(entry, vehicle, inDoubt) &&
        isForSide(entry, part.side, inDoubt),
    )
    .map(({ pack, entry }) => ({ pack, statement: entry }));
}

/** What the maker says shall be done with the part, and whether an operation of the plan does it. */
export function makerShall(
  survey: Survey,
  one: PartSurvey,
): { readonly text: string; readonly done: boolean } | undefined {
  const shalls = statementsFor(survey, one, true).filter(({ statement }) => statement.shall.length > 0);
  if (shalls.length === 0) return undefined;
  return {
    text: shalls
      .map(
        ({ pack, statement }) =>
          `${statement.shall.map(nameOperation).join(' or ')} (${whereItSays(statement, pack)})`,
      )
      .join('; '),
    done: shalls.every(({ statement }) =>
      statement.shall.some((named) => one.operations.some((operation) => isNamed(named, operation) === true)),
    ),
  };
}

/**
 * Whether an operation is the named one; undefined when word and extent agree but the place does not, or the extent is not
 * stated.
 */
export function isNamed(named: NamedOperation, { operation }: OperationSurvey): boolean | undefined {
  if (named.do !== operation.do) return false;
  if (named.extent !== undefined && named.extent !== operation.extent) {
    return operation.extent === undefined ? undefined : false;
  }
  if (named.at !== undefined && (operation.at === undefined || !sameName(named.at, operation.at)))
    return undefined;
  return true;
}

/** Whether a prohibition meets an operation. "Do not section" meets every way of cutting and joining part-way. */
export function isForbidden(named: NamedOperation, survey: OperationSurvey): boolean {
  if (named.do === 'section' && named.at === undefined && survey.cutsPartWay === true) return true;
  if (named.do === 'heat' && survey.heats === true) return true;
  return isNamed(named, survey) !== false;
}

/** Whether the citation is of the statement's own document, revision and page, covers this vehicle and names the place. */
export function citesStatement(
  citation: CitationSurvey,
  statement: MakerStatement,
): 'yes' | 'other revision' | 'other page' | 'no' {
  const reference = citation.reference?.reference;
  if (citation.standing !== 'covers' || reference?.document === undefined) return 'no';
  if (!sameName(reference.document, statement.document)) return 'no';
  const placed = citation.place !== undefined || reference.single_sheet === true;
  const sameRevision =
    statement.revision === undefined
      ? statement.published !== undefined && reference.published === statement.published
      : reference.revision !== undefined && sameName(reference.revision, statement.revision);
  if (!sameRevision) return 'other revision';
  if (!placed) return 'no';
  const { page } = statement;
  const samePage = page === undefined || citation.place === undefined || sharePage(citation.place, page);
  return samePage ? 'yes' : 'other page';
}

export function nameOperation({ do: word, extent, at }: NamedOperation): string {
  return [word, ...(extent === undefined ? [] : [extent]), ...(at === undefined ? [] : [`at ${at}`])].join(
    ' ',
  );
}
