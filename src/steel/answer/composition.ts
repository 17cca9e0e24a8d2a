/** Shares of the mass in per cent. What is left out counts as none. */
export interface Composition {
  readonly c: number;
  readonly si?: number;
  readonly mn?: number;
  readonly cr?: number;
  readonly mo?: number;
  readonly v?: number;
  readonly ni?: number;
  readonly cu?: number;
  readonly b?: number;
}

export interface KnownComposition {
  readonly composition: Composition;
  /** `typical` of what is delivered, or the `limit` that the standard sets: then the true figures lie below. */
  readonly kind: 'typical' | 'limit';
  readonly source: string;
}

function limits(source: string, composition: Composition): KnownComposition {
  return { composition, kind: 'limit', source };
}

const coldRolled = 'EN 10130:2006, limits of the ladle analysis';
const lowAlloy = 'EN 10268, limits of the ladle analysis';
const hotRolled = 'EN 10149-2:2013, limits of the ladle analysis';

/** By the designation of the grade table. Read in public copies of the tables that are named. */
const known: Readonly<Record<string, KnownComposition>> = {
  '22MnB5': {
    composition: { c: 0.23, si: 0.22, mn: 1.18, cr: 0.16, b: 0.002 },
    kind: 'typical',
    source: 'typical figures, from memory',
  },
  DC01: limits(coldRolled, { c: 0.12, mn: 0.6 }),
  DC03: limits(coldRolled, { c: 0.1, mn: 0.45 }),
  DC04: limits(coldRolled, { c: 0.08, mn: 0.4 }),
  DC05: limits(coldRolled, { c: 0.06, mn: 0.35 }),
  DC06: limits(coldRolled, { c: 0.02, mn: 0.25 }),
  HC260LA: limits(lowAlloy, { c: 0.1, si: 0.5, mn: 0.6 }),
  HC420LA: limits(lowAlloy, { c: 0.1, si: 0.5, mn: 1.6 }),
  S315MC: limits(hotRolled, { c: 0.12, si: 0.5, mn: 1.3, v: 0.2 }),
  S355MC: limits(hotRolled, { c: 0.12, si: 0.5, mn: 1.5, v: 0.2 }),
  S420MC: limits(hotRolled, { c: 0.12, si: 0.5, mn: 1.6, v: 0.2 }),
  S460MC: limits(hotRolled, { c: 0.12, si: 0.5, mn: 1.6, v: 0.2 }),
  S500MC: limits(hotRolled, { c: 0.12, si: 0.5, mn: 1.7, v: 0.2 }),
  S550MC: limits(hotRolled, { c: 0.12, si: 0.5, mn: 1.8, v: 0.2 }),
  S600MC: limits(hotRolled, { c: 0.12, si: 0.5, mn: 1.9, v: 0.2, mo: 0.5, b: 0.005 }),
  S650MC: limits(hotRolled, { c: 0.12, si: 0.6, mn: 2, v: 0.2, mo: 0.5, b: 0.005 }),
  S700MC: limits(hotRolled, { c: 0.12, si: 0.6, mn: 2.1, v: 0.2, mo: 0.5, b: 0.005 }),
};

/** Composition of a grade by its designation without coating; undefined where none is on record. */
export function compositionOf(designation: string): KnownComposition | undefined {
  return Object.hasOwn(known, designation) ? known[designation] : undefined;
}
