/**
 * Whether two names of a maker, model, body or plant are the same. Case, and blanks, hyphens and underscores among
 * themselves, make no difference; everything else does. Never by prefix or part: a Tarn Estate has another rear
 * structure than a Tarn, and a Tarn II shares only the name.
 */
export function sameName(one: string, other: string): boolean {
  return folded(one) === folded(other);
}

function folded(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .replace(/[\s_\u2010\u2011-]+/gu, ' ')
    .trim();
}
