/** What a wire or rod is made of, as far as joining asks. */
export type FillerMetal = 'steel' | 'stainless' | 'copper' | 'aluminium';

/**
 * How wires are called, by their metal. Designations of ISO 14341 (G3Si1 …) and the 70 ksi wires for steel, ISO 14343 for
 * stainless, ISO 24373 (CuSi3Mn1, Cu 6560) for brazing and ISO 18273 (AlSi5, Al 4043) for aluminium; from memory.
 */
const copper = /\b(?:er|s)?[ -]?cu[ -]?(?:si|al|sn|mn|\d{4})[\w-]*|\b(?:silicon|alumini?um)?[ -]?bronze\b/giu;

const others: readonly (readonly [FillerMetal, RegExp])[] = [
  ['aluminium', /\bs?[ -]?al[ -]?(?:si|mg|\d{4})|\b(?:er|r)? ?(?:4043|4047|5087|5183|5356|5554|5556)a?\b/iu],
  [
    'stainless',
    /\b(?:er|g)? ?(?:307|308|309|310|312|316|347)(?:l|lsi|mo|si)*\b|\b19 ?9 ?l|\b23 ?12 ?l|\b18 ?8 ?mn/iu,
  ],
  [
    'steel',
    /\bg ?[2-4] ?si ?[12]\b|\bg ?4 ?mo\b|\ber ?(?:70|80|90|100|110|120)s|\bsg ?[23]\b|\bg ?[3-9]\d \d/iu,
  ],
];

/** The metal of a filler by its designation; undefined where no known one stands in the text, or several. */
export function fillerMetal(designation: string): FillerMetal | undefined {
  // Copper is taken out first: CuAl8 is no aluminium, and CuSi3 no steel.
  const rest = designation.replaceAll(copper, ' ');
  const found = others.filter(([, form]) => form.test(rest)).map(([metal]) => metal);
  if (rest !== designation) found.push('copper');
  return found.length === 1 ? found[0] : undefined;
}
