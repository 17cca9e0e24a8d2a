/** What a wire or rod is made of, as far as joining asks. */
export type FillerMetal = 'steel' | 'stainless' | 'copper' | 'aluminium';

/**
 * How wires are called, by their metal. Common designations of ISO 14341 (G3Si1 …) and the 70 ksi wires for steel, ISO 14343 for
 * stainless, ISO 24373 (CuSi3Mn1, Cu 6560) for brazing and ISO 18273 (AlSi5, Al 4043) for aluminium; from memory.
 * Copper comes first: CuAl8 is no aluminium and CuSi3 no steel.
 */
const designations: readonly (readonly [FillerMetal, RegExp])[] = [
  [
    'copper',
    /\bcu[ -]?(?:si|al|sn|mn|\d{4})|\bersi?cu|\ber ?cu|\bsg[ -]?cu|silicon[ -]?bronze|alumini?um[ -]?bronze|\bbronze\b/iu,
  ],
  [
    'aluminium',
    /\bal[ -]?(?:si|mg|\d{4})|\b(?:er|r)? ?(?:4043|4047|5087|5183|5356|5554|5556)a?\b|\bs[ -]?al\b/iu,
  ],
  [
    'stainless',
    /\b(?:er|g)? ?(?:307|308|309|310|312|316|347)(?:l|lsi|mo|si)*\b|\b19 ?9 ?l|\b23 ?12 ?l|\b18 ?8 ?mn/iu,
  ],
  [
    'steel',
    /\bg ?[2-4] ?si ?[12]\b|\bg ?4 ?mo\b|\ber ?(?:70|80|90|100|110|120)s|\bsg ?[23]\b|\bg ?\d{2} \d/iu,
  ],
];

/** The metal of a filler by its designation; undefined where no known one stands in the text, or several. */
export function fillerMetal(designation: string): FillerMetal | undefined {
  const copper = designations[0]?.[1];
  // The aluminium in an aluminium bronze is named after the copper.
  if (copper?.test(designation) === true) {
    const rest = designation.replaceAll(new RegExp(copper.source, 'giu'), ' ').replaceAll(/\w*\d\w*/gu, ' ');
    return designations.slice(1).some(([, form]) => form.test(rest)) ? undefined : 'copper';
  }
  const found = designations.filter(([, form]) => form.test(designation));
  return found.length === 1 ? found[0]?.[0] : undefined;
}
