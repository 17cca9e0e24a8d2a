import { saidInClause } from '../../plan/said-in-clause.ts';

/** What is laid on metal and is no ground for sealer and paint by itself. Common practice. */
const unfit =
  /\bzinc (?:spray|paint)\b|\bcold[- ]galvani[sz]\w*|\brust (?:converter|killer|remover|stopper)\b|\bunder ?-?(?:seal|body|coat)\w*\b|\bcavity wax\b/i;
const primes = /\bepoxy\b|\betch\w*|\bwash primer\b|\b(?:2|two)[- ]?(?:k|part|component|pack)\b|\bprimer\b/i;

/** The words of a primer that name zinc from a can, rust converter or underseal and no primer beside it. */
export function primerUnfit(product: string | undefined): string | undefined {
  return product === undefined || primes.test(product) ? undefined : saidInClause(product, unfit);
}

const noWax =
  /(?<!\b(?:after|before) (?:the )?)(?:\bunder ?-?(?:seal\w*|body\w*|coat\w*)\b|\bstone ?-?chip\b|\bbitumen\w*\b|\bgrease\b|\bengine oil\b)/i;

/** The words for a wax inside that name what is made for the outside, or no wax at all. */
export function waxUnfit(wax: string | undefined): string | undefined {
  return wax === undefined || /\bwax\w*\b|\bcavity\b/i.test(wax.replace(/\bno(?:t)? (?:cavity )?wax\b/gi, ''))
    ? undefined
    : saidInClause(wax, noWax);
}
