import type { Plan, PlanReferencesItem } from '../../generated/plan-types.ts';
import { maySameMarket } from '../../vehicle/same-market.ts';

type Vehicle = Plan['vehicle'];

/**
 * What the title of a document names that this vehicle is not: other model years, another body, another market. Undefined where it names
 * none of them, or this vehicle among them. `covers` is what somebody typed; the title is what they copied.
 */
export function titledForOther({ title }: PlanReferencesItem, vehicle: Vehicle): string | undefined {
  if (title === undefined || !mayName.test(title) || excepts.test(title)) return undefined;
  const other = [otherYears(title, vehicle), otherBody(title, vehicle), otherMarket(title, vehicle)].filter(
    (one) => one !== undefined,
  );
  return other.length === 0 ? undefined : other.join('; ');
}

/** One look that spares most titles the others. */
const mayName =
  /\d{4}|saloon|sedan|limous|notchb|wagon|estate|tourer|shooting|hatchb|liftb|fastb|coup|convert|cabrio|roadster|crossover|suv|off-road|van|mpv|carrier|pick|america|states|US|canada|europe|EU|kingdom|britain|UK|japan|china|korea|australia|india|mexico/i;

/** A title that names what it is not for, or that it is for all, is left to `covers`. */
const excepts =
  /\b(?:except|excluding|not|without|other than|all (?:bodies|body|years|markets|models)|worldwide)\b/i;

const year = '((?:19|20)\\d\\d)(?![\\d-]\\d)';
const toYear = '\\s*(?:-|–|—|/|to|until|through)\\s*';
/** Ranges and open ends first; a year by itself only where a word says that it is a model year. An edition bears a year as well. */
const yearForms: readonly (readonly [RegExp, (one: number, other: number) => readonly [number, number]])[] = [
  [new RegExp(`\\b((?:19|20)\\d\\d)${toYear}${year}`, 'gi'), (from, to) => [from, to]],
  [new RegExp(`\\b(?:model years?|my)\\s*(?:from|since)\\s*${year}`, 'gi'), (from) => [from, Infinity]],
  [new RegExp(`\\b(?:from|since)\\s+(?:model year|my)\\s*${year}`, 'gi'), (from) => [from, Infinity]],
  [new RegExp(`\\b${year}\\s*(?:on|onwards?|and (?:later|newer))\\b`, 'gi'), (from) => [from, Infinity]],
  [
    new RegExp(
      `\\b(?:up to|until|till|before)\\s+(?:and including\\s+)?(?:model year\\s+|my\\s*)?${year}`,
      'gi',
    ),
    (to) => [-Infinity, to],
  ],
  [new RegExp(`\\b(?:model years?|my)\\s*:?\\s*${year}`, 'gi'), (only) => [only, only]],
];

function otherYears(title: string, { model_year: own }: Vehicle): string | undefined {
  if (own === undefined || !/\d{4}/.test(title)) return undefined;
  let rest = title;
  const said: string[] = [];
  for (const [form, rangeOf] of yearForms) {
    for (const match of rest.matchAll(form)) {
      const [from, to] = rangeOf(Number(match[1]), Number(match[2]));
      if (own >= from && own <= to) return undefined;
      said.push(match[0].trim());
    }
    rest = rest.replaceAll(form, ' ');
  }
  return said.length === 0 ? undefined : `${said.join(', ')}, and the vehicle is of ${String(own)}`;
}

/** Trade words for bodies; what stands in one row is called either. */
const bodies: readonly RegExp[] = [
  /\b(?:saloon|sedan|limousine|notchback)s?\b/i,
  /\b(?:wagon|estate|tourer|shooting brake)s?\b/i,
  /\b(?:hatchback|liftback|fastback)s?\b/i,
  /\bcoup[eé]s?\b/i,
  /\b(?:convertible|cabriolet|roadster)s?\b/i,
  /\b(?:crossover|suv|off-roader)s?\b/i,
  /\b(?:minivan|mpv|people carrier|panel van|van)s?\b/i,
  /\bpick-?up(?:s| trucks?)?\b/i,
];

function otherBody(title: string, { body }: Vehicle): string | undefined {
  const own = bodies.filter((words) => words.test(body ?? ''));
  if (own.length === 0) return undefined;
  const said = bodies.filter((words) => words.test(title));
  if (said.length === 0 || said.some((words) => own.includes(words))) return undefined;
  return `${said.map((words) => words.exec(title)?.[0] ?? '').join(', ')}, and the vehicle is a ${body ?? ''}`;
}

/** As titles name them; short ones in capitals alone. Europe is read as all of it. */
const marketWords: readonly (readonly [RegExp, readonly string[]])[] = [
  [/\bnorth america\b/i, ['north-america', 'mexico']],
  [/\b[Uu]nited [Ss]tates\b|\bUSA?\b/, ['united-states']],
  [/\bcanada\b/i, ['canada']],
  [/\beurope(?:an union)?\b|\bEU\b/i, ['european-union', 'united-kingdom']],
  [/\b(?:united kingdom|great britain)\b|\bUK\b/i, ['united-kingdom']],
  [/\bjapan\b/i, ['japan']],
  [/\bchina\b/i, ['china']],
  [/\bkorea\b/i, ['korea']],
  [/\baustralia\b/i, ['australia']],
  [/\bindia\b/i, ['india']],
  [/\bmexico\b/i, ['mexico']],
];

function otherMarket(title: string, { market }: Vehicle): string | undefined {
  if (market === undefined || market === 'other') return undefined;
  const said = marketWords.filter(([words]) => words.test(title));
  if (said.length === 0 || said.some(([, all]) => all.some((one) => maySameMarket(one, market))))
    return undefined;
  return `${said.map(([words]) => words.exec(title)?.[0] ?? '').join(', ')}, and the vehicle was built for ${market}`;
}
