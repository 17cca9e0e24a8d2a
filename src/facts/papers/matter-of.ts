import type { Cites, Matter } from '../../generated/plan-types.ts';
import { listOf } from '../quantity-of.ts';
import type { PartSurvey, ReferenceSurvey, Survey } from '../survey.ts';
import { isTitledForOtherPart } from './cited-for-other-part.ts';

/** Words of a title that name a matter. What names two is of both. */
const words: Readonly<Record<Matter, RegExp>> = {
  'body structure':
    /\bbod(?:y|ies)\b|structur|\brails?\b|sill|rocker|pillar|panel|roof|floor|\bring\b|weld|bond|join|section|frame|collision|tower|apron|wheel ?house|cross ?member|bulkhead|tunnel|reinforce|\bskin|\bbeam|sheet metal|straighten|repair manual/i,
  restraints: /restraint|air ?bag|pretension|seat ?belt|\bsrs\b/i,
  'high voltage': /high[- ]voltage|traction (?:battery|voltage|system)|electric drive/i,
  'running gear': /suspension|steering(?! angle)|alignment|\baxle|\bbrake/i,
  'driver assistance': /driver assist|\bradar|\bcamera|\bcalibrat|sensor/i,
  paint: /\bpaint|refinish|lacquer/i,
};
const matters: readonly Matter[] = [
  ...([
    'body structure',
    'restraints',
    'high voltage',
    'running gear',
    'driver assistance',
    'paint',
  ] as const),
];

/** What a document is about: what the plan says of it, else what its title names; empty where neither tells. */
function mattersOf({ reference }: ReferenceSurvey): readonly Matter[] {
  const stated = listOf(reference.about);
  if (stated.length > 0) return stated;
  const { title = '' } = reference;
  return matters.filter((matter) => words[matter].test(title));
}

/**
 * Documents that are cited for a matter and are all of another, in words; undefined where one of them may be of it, or none is listed.
 *
 * @param wanted matters of which one will do
 * @param part whose kind, where its title names it, a document is about
 */
export function citedForOther(
  { referenceById }: Survey,
  cites: Cites | undefined,
  wanted: readonly Matter[],
  part?: PartSurvey,
): string | undefined {
  const all = listOf(cites).flatMap(({ reference: id }) => {
    const found = id === undefined ? undefined : referenceById.get(id);
    return found === undefined ? [] : [found];
  });
  if (all.length === 0 || !all.every((one) => isOfOther(one, wanted, part))) return undefined;
  return all.map(inWords).join(', ');
}

/** Whether a document is of other matters than these, by what is stated or by its title; not where its title names the part. */
export function isOfOther(one: ReferenceSurvey, wanted: readonly Matter[], part?: PartSurvey): boolean {
  const own = mattersOf(one);
  return own.length > 0 && !own.some((matter) => wanted.includes(matter)) && !namesPart(one, part);
}

/** What a document is about, for a sentence: `running gear and driver assistance`. */
export function aboutOf(one: ReferenceSurvey): string {
  return mattersOf(one).join(' and ');
}

function namesPart(
  { reference: { about, title = '' } }: ReferenceSurvey,
  part: PartSurvey | undefined,
): boolean {
  const kind = part?.part.kind;
  return about === undefined && kind !== undefined && title.toLowerCase().includes(kind);
}

function inWords(one: ReferenceSurvey): string {
  const { title } = one.reference;
  const isTitled = title !== undefined && title !== one.name;
  return `${one.name}${isTitled ? ` “${title}”` : ''}, which is about ${aboutOf(one)}`;
}

/** Kinds that carry crash load and are no body structure: pages of another kind speak of them. */
const notBody: ReadonlySet<string> = new Set([
  ...[
    'subframe',
    'suspension part',
    'steering part',
    'wheel',
    'glass',
    'lamp',
    'trim',
    'seat',
    'restraint unit',
  ],
  ...['traction battery', 'battery tray', 'bumper cover', 'bracket', 'other'],
]);

export function isBody({ part: { kind } }: PartSurvey): boolean {
  return kind !== undefined && !notBody.has(kind);
}

/**
 * Pages that tell how a part is taken off, fitted and tightened; undefined where any page may. A wheel comes off in every chapter, a
 * steering wheel is in the chapter of the airbag, a drive unit on the subframe.
 */
export function mattersOfBolting({ part: { kind } }: PartSurvey): readonly Matter[] | undefined {
  switch (kind) {
    case 'suspension part':
      return ['running gear'];
    case 'steering part':
      return ['running gear', 'restraints'];
    case 'subframe':
      return ['running gear', 'high voltage'];
    case 'traction battery':
    case 'battery tray':
      return ['high voltage', 'body structure', 'running gear'];
    default:
      return undefined;
  }
}

/** Whether a document cannot be what work at the body rests on: it is about other matters, or by its title about another part. */
export function isNoBodyWorkOf(part: PartSurvey, reference: ReferenceSurvey | undefined): boolean {
  if (reference === undefined || !isBody(part)) return false;
  return isOfOther(reference, ['body structure'], part) || isTitledForOtherPart(reference, part);
}

export function isRunningGear({ part: { kind } }: PartSurvey): boolean {
  return kind === 'suspension part' || kind === 'steering part' || kind === 'subframe';
}
