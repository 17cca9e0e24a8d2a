import { steelFamily } from './steel-family.ts';
import type { Material } from './material.ts';
import { classOfTensile } from './strength-class.ts';

/** MPa in one unit: NIST SP 811; one kilogram-force is 9.80665 N exactly. */
const mpaPer: Readonly<Record<string, number>> = {
  MPA: 1,
  'N/MM2': 1,
  'N/MM^2': 1,
  GPA: 1000,
  KSI: 6.894757,
  PSI: 0.006894757,
  'KGF/MM2': 9.80665,
  'KG/MM2': 9.80665,
  KGF: 9.80665,
  KILO: 9.80665,
  K: 9.80665,
};

/** Steps of the Japanese series in MPa by the kgf/mm² from which they were rounded: 60 kgf/mm² is 588 MPa and named 590. */
const japaneseSteps: ReadonlyMap<number, number> = new Map([
  ...([
    [35, 340],
    [40, 390],
    [45, 440],
    [50, 490],
    [55, 540],
    [60, 590],
    [80, 780],
  ] as const),
  ...([
    [100, 980],
    [120, 1180],
    [150, 1470],
  ] as const),
]);

const form =
  /^(\d{1,6}(?:\.\d{1,3})?)(MPA|N\/MM\^?2|GPA|KSI|PSI|KGF\/MM2|KG\/MM2|KGF|KILO|K)(?:CLASS|GRADE|STEEL|TENSILE){0,3}$/;

/** From here press-hardened steel is as likely as martensitic, in MPa. Common practice. */
const pressHardenedFromMpa = 1200;

/** No sheet for bodies is weaker or stronger than this, in MPa. */
const sheet = { least: 200, most: 2500 };

/** The strength that a text states in place of a grade, in MPa; NaN for a strength that no sheet has; undefined for other texts. */
export function strengthOfName(key: string): number | undefined {
  const match = form.exec(key);
  if (match === null) return undefined;
  const [, figures = '', unit = ''] = match;
  // The key has a point for every comma: 217,000 psi. Nobody states thousandths of a psi.
  const value = unit === 'PSI' && /^\d{2,3}\.\d{3}$/.test(figures) ? Number(figures) * 1000 : Number(figures);
  const step = mpaPer[unit] === mpaPer['K'] ? japaneseSteps.get(value) : undefined;
  const mpa = step ?? Math.round(value * (mpaPer[unit] ?? Number.NaN));
  return mpa >= sheet.least && mpa <= sheet.most ? mpa : Number.NaN;
}

/** What a tensile strength without a grade can be, the strongest first. */
export function materialsOfStrength(shown: string, tensileMpa: number): readonly Material[] {
  const steel: Material = {
    designation: shown,
    standard: 'stated strength',
    family: steelFamily('unnamed').word,
    class: classOfTensile(tensileMpa),
    tensileMinMpa: tensileMpa,
    condition: 'unknown',
    mark: 'practice',
    from: 'strength',
  };
  if (tensileMpa < pressHardenedFromMpa) return [steel];
  return [
    { ...steel, family: steelFamily('press_hardening').word, class: 'press-hardened', condition: 'hardened' },
    { ...steel, family: steelFamily('martensitic').word },
  ];
}
