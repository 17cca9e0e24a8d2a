import type { PartKind } from '../../generated/plan-types.ts';
import type { FactNames } from '../../generated/fact-names.ts';
import type { Fact } from '../fact.ts';
import { isWeldedIn } from '../part/part-kinds.ts';
import type { OperationSurvey, PartSurvey, ReferenceSurvey } from '../survey.ts';
import { titleThatIsOff } from './title-that-is-off.ts';
import { wordsIn } from '../words-in.ts';

/** Where in the body something lies; `hung` is what comes off whole, and whose pages tell of no welding of the body. */
type Region = 'front' | 'side' | 'rear' | 'top' | 'hung';

/** Words of a title that name a part, and the regions whose pages speak of it. What borders on two is of both. Common practice. */
const named: readonly (readonly [RegExp, readonly Region[]])[] = [
  [/\bdoor (?:ring|opening|frame|aperture|surround)|body ?side|\brings?\b/i, ['side', 'top']],
  [/\ba[- ]?(?:pillar|post)s?\b/i, ['front', 'side', 'top']],
  [/\bb[- ]?(?:pillar|post)s?\b/i, ['side', 'top']],
  [/\b[cd][- ]?(?:pillar|post)s?\b/i, ['side', 'rear', 'top']],
  [/\b(?:sill|rocker)s?\b/i, ['front', 'side', 'rear']],
  [/\bside panels?\b|\bquarter(?: panel)?s?\b/i, ['side', 'rear', 'top']],
  [/\broof\b|\bcant rail/i, ['side', 'rear', 'front', 'top']],
  [/\b(?:floor|tunnel|wheel ?(?:house|housing|arch))/i, ['front', 'side', 'rear']],
  [
    /\bfront (?:\w+ )?(?:rail|carrier|member|longitudinal|end|panel)|\b(?:apron|(?:strut|shock|spring) tower|bulkhead|firewall|lock carrier|slam panel)/i,
    ['front'],
  ],
  [
    /\brear (?:\w+ )?(?:rail|carrier|member|longitudinal|end|panel)|\b(?:back|tail) panel|\blamp panel/i,
    ['rear'],
  ],
  [
    /\b(?:tailgate|liftgate|boot ?lid|trunk ?lid|decklid|bonnet|hood)s?\b(?! (?:opening|frame|aperture))/i,
    ['hung'],
  ],
  [/\bdoors?\b(?! (?:ring|opening|frame|aperture|surround|pillar|post|sill))/i, ['hung']],
  [/\b(?:windscreen|windshield)s?\b(?! (?:frame|opening|aperture|surround|pillar|panel))/i, ['hung']],
];

/** A title that speaks of the body at large, or of parts that no row knows, may hold any page. */
const general = [
  ...[
    'body structure',
    'body repair',
    'body shell',
    'bodyshell',
    'body work',
    'bodywork',
    'structur',
    'general',
    'collision',
  ],
  ...[
    'joining',
    'welding',
    'bonding',
    'riveting',
    'frame',
    'panels',
    'manual',
    'guide',
    'handbook',
    'sheet metal',
  ],
  ...['straighten', 'reinforce', 'cross member', 'crossmember', 'rails', 'underbody', 'bumper', 'radiator'],
];

function isGeneral(title: string): boolean {
  const small = title.toLowerCase();
  return general.some((word) => small.includes(word));
}

const front: readonly Region[] = ['front'];
const rear: readonly Region[] = ['rear'];
const flank: readonly Region[] = ['front', 'side', 'rear'];

/** Kinds whose place in the body is always the same. */
const regionsOf: Readonly<Partial<Record<PartKind, readonly Region[]>>> = {
  'door ring': ['side', 'top'],
  'a-pillar': ['front', 'side', 'top'],
  'b-pillar': ['side', 'top'],
  'c-pillar': ['side', 'rear', 'top'],
  'd-pillar': ['side', 'rear', 'top'],
  sill: flank,
  'sill reinforcement': flank,
  'sill skin': flank,
  'roof rail': ['side', 'front', 'rear', 'top'],
  'roof skin': ['side', 'front', 'rear', 'top'],
  'front rail': front,
  apron: front,
  'strut tower': front,
  'rear rail': rear,
  'back panel': rear,
  floor: flank,
  wheelhouse: flank,
  'side panel': ['side', 'rear', 'top'],
  'quarter panel': ['side', 'rear', 'top'],
};

/** The document on which work at the body rests, where its title names another part and not this one, nor one beside it. */
export function citedForOtherPart(
  one: OperationSurvey,
): Readonly<Record<Extract<FactNames['operation'], 'operation.cited_for_other_part'>, Fact>> {
  const isAsked = one.works === true && one.operation.do !== 'remove and refit';
  return {
    'operation.cited_for_other_part': titleThatIsOff(
      one,
      (reference) => isAsked && isTitledForOtherPart(reference, one.part),
    ),
  };
}

/** Whether the title of a document names another part than this one, which is welded into the body, and none that borders on it. */
export function isTitledForOtherPart(
  { reference: { title } }: ReferenceSurvey,
  { part: { kind, name } }: PartSurvey,
): boolean {
  const own = kind === undefined || !isWeldedIn(kind) ? undefined : regionsOf[kind];
  if (own === undefined || title === undefined) return false;
  if (kind !== undefined && title.toLowerCase().includes(kind)) return false;
  if (sharesWord(title, `${kind ?? ''} ${name ?? ''}`) || isGeneral(title)) return false;
  const said = regionsNamed(title);
  return said.length > 0 && !said.some((region) => own.includes(region));
}

/** Whether the title of a document names parts, and none of these. */
export function isTitledForNone(
  { reference: { title } }: ReferenceSurvey,
  parts: readonly PartSurvey[],
): boolean {
  if (title === undefined || isGeneral(title)) return false;
  const isOne = parts.some(({ part: { kind, name } }) => sharesWord(title, `${kind ?? ''} ${name ?? ''}`));
  return !isOne && regionsNamed(title).length > 0;
}

function regionsNamed(title: string): readonly Region[] {
  return named.filter(([words]) => words.test(title)).flatMap(([, regions]) => regions);
}

/** Words that tell where, not what. */
const placeWords =
  /^(?:left|right|front|rear|upper|lower|inner|outer|with|part|complete|panel|side|section|rail|door|body)$/;

/** Whether title and part have a word in common that names a thing: a part may bear a name that no list knows. */
function sharesWord(title: string, part: string): boolean {
  const wordsOf = (text: string): readonly string[] =>
    wordsIn(text)
      .filter((word) => word.length >= 4)
      .map((word) => word.replace(/s$/, ''));
  const own = new Set(wordsOf(part).filter((word) => !placeWords.test(word)));
  return wordsOf(title).some((word) => own.has(word));
}
