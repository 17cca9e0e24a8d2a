/** A part's name in the form in which names are compared: plain letters and figures, sides in one spelling, in any order. */
export function bareName(name: string): string {
  return nameWords(name).toSorted().join(' ');
}

/** The words of a part's name, small, with the sides and the usual short forms spelled out. */
export function nameWords(name: string): readonly string[] {
  return name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^a-z0-9]+/u)
    .filter((word) => word !== '' && !fillers.has(word))
    .map((word) => spelled.get(word) ?? word);
}

const fillers: ReadonlySet<string> = new Set(['the', 'of', 'assembly', 'assy', 'hand']);

const spelled: ReadonlyMap<string, string> = new Map([
  ['l', 'left'],
  ['lh', 'left'],
  ['r', 'right'],
  ['rh', 'right'],
  ['rocker', 'sill'],
  ['fr', 'front'],
  ['rr', 'rear'],
  ['otr', 'outer'],
  ['outside', 'outer'],
  ['inr', 'inner'],
  ['inside', 'inner'],
]);
