import type { Coating } from '../coating/coating.ts';

export interface CoatingMeaning {
  readonly welding: string;
  readonly heat: string;
}

const zincWelding =
  'Zinc boils at 907 °C, below the melting of steel: fumes and pores in arc welds, and more current for spots. Take it off at the joint where the procedure says so; fresh air at the workplace.';
const zincHeat =
  'Above about 420 °C zinc melts and runs, and liquid zinc can crack strong steel under tension. Its protection is lost there and has to be replaced.';
const zinc: CoatingMeaning = { welding: zincWelding, heat: zincHeat };

/** What a coating means at the workplace. Boiling and melting points of zinc (907 and 420 °C) from handbooks of physics; the rest is practice. */
const meanings: Readonly<Record<Coating, CoatingMeaning>> = {
  zinc,
  'zinc-iron': {
    welding: zincWelding,
    heat: 'The zinc-iron layer powders when the sheet is bent; above its melting it is lost and has to be replaced.',
  },
  'zinc-magnesium': zinc,
  'zinc-aluminium': zinc,
  'aluminium-zinc': {
    welding: `${zincWelding} The aluminium in it makes spots stick and gets into the weld.`,
    heat: zincHeat,
  },
  'aluminium-silicon': {
    welding:
      'After hardening the layer is iron-aluminide, not zinc: it conducts poorly and gets into arc welds, where it weakens the seam. Joining only as the procedure describes.',
    heat: 'The layer stands heat; the hardened steel under it does not.',
  },
  'zinc-nickel': zinc,
  none: {
    welding: 'Bare sheet: no metal fumes from a coating.',
    heat: 'Nothing protects it against rust but paint and primer.',
  },
};

export function coatingMeaning(coating: Coating): CoatingMeaning {
  return meanings[coating];
}
