import type { Joint, Part } from '../../generated/plan-types.ts';
import { governingThickness, thicknessRatio } from '../../joint/governing-thickness.ts';
import type { Sized } from '../../joint/sized.ts';
import type { Fact } from '../fact.ts';
import { computed, computedOr, unknown } from '../make-fact.ts';
import { isLikePiece } from './joint-at-cut.ts';
import { trustedClass } from '../papers/maker-evidence.ts';
import { quantityOf } from '../quantity-of.ts';
import type { JointSurvey, OperationSurvey, PartSurvey, Survey } from '../survey.ts';

/** What lies on what in a joint. */
export interface JointStack {
  readonly at: string;
  /** In order from the outside, as listed; undefined for an id that no part bears. Empty where the list is left out. */
  readonly sheets: readonly (PartSurvey | undefined)[];
  /** Of every sheet, mm; undefined where one is not stated. */
  readonly thicknessesMm?: readonly number[];
  /** Of every sheet, least tensile strength in MPa; undefined where one is not known. */
  readonly tensilesMpa?: readonly number[];
  readonly governing: Sized;
}

type StackFact =
  | 'joint.governing_thickness'
  | 'joint.thinnest'
  | 'joint.thickest'
  | 'joint.thickness_ratio'
  | 'joint.stack_total'
  | 'joint.thin_outside'
  | 'joint.strongest';

export function jointStack(
  survey: Survey,
  operation: OperationSurvey,
  { joint, at }: JointSurvey,
): JointStack {
  const own = operation.part;
  const partOf = (id: string): PartSurvey | undefined => (id === own.part.id ? own : survey.partById.get(id));
  const sheets = listedIds(joint, own, partOf).map(partOf);
  const thicknesses = sheets.map((sheet) => sheetMm(sheet, operation));
  const tensiles = sheets.map((sheet) => tensileOf(survey, sheet, own));
  const thicknessesMm = sheets.length < 2 ? undefined : allOf(thicknesses);
  const tensilesMpa = sheets.length < 2 ? undefined : allOf(tensiles);
  return {
    at,
    sheets,
    ...(thicknessesMm === undefined ? {} : { thicknessesMm }),
    ...(tensilesMpa === undefined ? {} : { tensilesMpa }),
    governing:
      thicknessesMm === undefined
        ? { ok: false, reason: whyNoThickness(sheets) }
        : governingThickness(thicknessesMm),
  };
}

/**
 * The sheets as the joint lists them. The part itself and the other side are in it, listed or not, but where a new piece of the part
 * is listed in its stead: the foot of a ring, as supplied. Without a list a third sheet may hide.
 */
function listedIds(
  { sheets, to }: Joint,
  own: PartSurvey,
  partOf: (id: string) => PartSurvey | undefined,
): readonly string[] {
  if (sheets === undefined) return [];
  const { id } = own.part;
  const isThere = id === undefined || sheets.includes(id) || hasPieceOf(own, sheets, to, partOf);
  const withOwn = isThere ? sheets : [id, ...sheets];
  return to === undefined || (withOwn.length > 1 && withOwn.includes(to)) ? withOwn : [...withOwn, to];
}

/** Of two sheets, so that a third cannot be hidden by its kind. */
function hasPieceOf(
  own: PartSurvey,
  sheets: readonly string[],
  to: string | undefined,
  partOf: (id: string) => PartSurvey | undefined,
): boolean {
  const [piece, ...more] = sheets.filter((id) => id !== to);
  return sheets.length === 2 && piece !== undefined && more.length === 0 && isLikePiece(own, partOf(piece));
}

/** The parts that the joint itself says it joins and that its list of sheets leaves out, by name; undefined where it leaves out none. */
export function missingPartner(survey: Survey, own: PartSurvey, { sheets, to }: Joint): string | undefined {
  if (sheets === undefined || sheets.length < 2 || to === undefined || sheets.includes(to)) return undefined;
  const partner = survey.partById.get(to);
  return partner === undefined || partner === own ? undefined : partner.name;
}

/** Of a part of several thicknesses the zone that the operation names, else the thickest: it asks for the larger spot. */
function sheetMm(sheet: PartSurvey | undefined, { part, operation }: OperationSurvey): number | undefined {
  if (sheet === undefined) return undefined;
  const zones = sheet.part.zones ?? [];
  const named =
    sheet === part ? zones.find(({ name }) => name !== undefined && name === operation.zone) : undefined;
  const ofZone = quantityOf(named?.thickness, 'length');
  return ofZone ?? thickestOf(sheet.part);
}

function thickestOf({ thickness, zones }: Part): number | undefined {
  const all = [thickness, ...(zones ?? []).map((zone) => zone.thickness)]
    .map((text) => quantityOf(text, 'length'))
    .filter((mm) => mm !== undefined);
  return all.length === 0 ? undefined : Math.max(...all);
}

function tensileOf(survey: Survey, sheet: PartSurvey | undefined, own: PartSurvey): number | undefined {
  if (sheet === undefined) return undefined;
  // The part itself is asked for its evidence where it is worked on.
  const isKnown = sheet === own || trustedClass(survey, sheet) !== undefined;
  return isKnown ? sheet.material.tensileMinMpa : undefined;
}

function allOf(values: readonly (number | undefined)[]): readonly number[] | undefined {
  const known = values.filter((value) => value !== undefined);
  return known.length === values.length ? known : undefined;
}

function whyNoThickness(sheets: readonly (PartSurvey | undefined)[]): string {
  return sheets.length < 2
    ? 'The sheets of the stack are not stated.'
    : 'The thickness of a sheet of the stack is not stated.';
}

export function stackFacts(stack: JointStack): Readonly<Record<StackFact, Fact>> {
  const place = `${stack.at}/sheets`;
  const mm = stack.thicknessesMm;
  const reason = whyNoThickness(stack.sheets);
  const ratio = mm === undefined ? undefined : thicknessRatio(mm);
  const strongest = stack.tensilesMpa === undefined ? undefined : Math.max(...stack.tensilesMpa);
  return {
    'joint.governing_thickness': ofSized(stack.governing, place),
    'joint.thinnest': computedOr(mm === undefined ? undefined : Math.min(...mm), place, reason),
    'joint.thickest': computedOr(mm === undefined ? undefined : Math.max(...mm), place, reason),
    'joint.thickness_ratio': ratio === undefined ? unknown(reason, place) : ofSized(ratio, place),
    'joint.stack_total': computedOr(
      mm?.reduce((sum, one) => sum + one, 0),
      place,
      reason,
    ),
    'joint.thin_outside': computedOr(
      mm === undefined ? undefined : isThinOutside(mm),
      place,
      mm === undefined ? reason : 'The stack has not three sheets.',
    ),
    'joint.strongest': computedOr(
      strongest,
      place,
      'The tensile strength of a sheet of the stack is not known.',
    ),
  };
}

/** Undefined but for three sheets. */
function isThinOutside([first, middle, last, ...more]: readonly number[]): boolean | undefined {
  if (first === undefined || middle === undefined || last === undefined || more.length > 0) return undefined;
  return (first < middle && first < last) || (last < middle && last < first);
}

export function ofSized(answer: Sized, at: string, note?: string): Fact {
  return answer.ok ? computed(answer.value, at, note) : unknown(answer.reason, at);
}
