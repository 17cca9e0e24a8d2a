import type { DesignationAnswer, StrengthRange } from '../../steel/answer/designation-answer.ts';

export type SteelLine = readonly [label: string, text: string];

/** The facts of a designation in the order in which a sheet shows them. The line without a label goes on with the one above. */
const facts: readonly (readonly [label: string, text: (answer: DesignationAnswer) => string | undefined])[] =
  [
    ['Class', classText],
    ['Family', familyText],
    ['Tensile', tensileText],
    ['', equivalentsText],
    ['Yield', (answer) => strengthText(answer.yield)],
    ['Typical', typicalText],
    ['Hardness', hardnessText],
    ['Coating', coatingText],
    ['Figures', (answer) => answer.number_means ?? undefined],
    [
      'Sheet',
      ({ thickness }) => (thickness === null ? undefined : `${thickness.min} to ${thickness.max} mm`),
    ],
    ['Carbon', carbonText],
    ['Standard', (answer) => answer.standard ?? undefined],
    ['Sure', sureText],
  ];

export const steelLabels: readonly string[] = facts.map(([label]) => label);

/** The facts of one designation; what is not known has no line. */
export function steelLines(answer: DesignationAnswer): readonly SteelLine[] {
  return facts.flatMap(([label, textOf]) => {
    const text = textOf(answer);
    return text === undefined ? [] : [[label, text] as const];
  });
}

function classText({ class: counts, weakest_class: weakest }: DesignationAnswer): string | undefined {
  if (counts === null) return undefined;
  return weakest === null || weakest === counts ? counts : `${counts} counts (may be ${weakest})`;
}

function familyText({ family, condition, laminated }: DesignationAnswer): string | undefined {
  if (family === null) return undefined;
  const state = condition === null || condition === 'unknown' ? '' : `, ${condition}`;
  return `${laminated ? 'laminated sheet of ' : ''}${family}${state}`;
}

function strengthText(range: StrengthRange | null): string | undefined {
  if (range === null) return undefined;
  const { min, max, unit } = range;
  if (min === null) return `at most ${String(max)} ${unit}`;
  return max === null ? `at least ${min} ${unit}` : `${min} to ${max} ${unit}`;
}

function tensileText({ tensile, tensile_only_if: onlyIf }: DesignationAnswer): string | undefined {
  const text = strengthText(tensile);
  return text === undefined || onlyIf === null ? text : `${text}, only if ${onlyIf}`;
}

function typicalText({ typical }: DesignationAnswer): string | undefined {
  if (typical === null) return undefined;
  const parts = [
    typical.yield === null ? undefined : `yield ${typical.yield} ${typical.unit}`,
    typical.tensile === null ? undefined : `tensile ${typical.tensile} ${typical.unit}`,
  ].filter((one) => one !== undefined);
  return `${parts.join(', ')}; not promised`;
}

function equivalentsText({ equivalents }: DesignationAnswer): string | undefined {
  if (equivalents === null) return undefined;
  const { mpa, ksi, psi, kgf_per_mm2: kgf } = equivalents;
  return `${mpa} N/mm², ${ksi} ksi, ${psi} psi, ${kgf} kgf/mm²`;
}

function hardnessText({ hardness }: DesignationAnswer): string | undefined {
  if (hardness === null) return undefined;
  const { vickers, brinell, rockwell_c: rockwell } = hardness;
  const scales = [
    `${vickers} HV`,
    brinell === undefined ? undefined : `${brinell} HBW`,
    rockwell === undefined ? undefined : `${rockwell} HRC`,
  ].filter((one) => one !== undefined);
  return `about ${scales.join(', ')} at the minimum (ISO 18265, approximate)`;
}

function coatingText({ coating, coating_mass: mass }: DesignationAnswer): string | undefined {
  if (coating === null) return undefined;
  return mass === null ? coating : `${coating}, ${mass.grams} g/m² ${mass.counted}`;
}

function carbonText({ carbon_equivalents: found }: DesignationAnswer): string | undefined {
  if (found === null) return undefined;
  const [ce, cet, pcm] = [found.ce, found.cet, found.pcm].map((value) => value.toFixed(2));
  const kind = found.kind === 'typical' ? 'typical composition' : 'at the limits of the analysis';
  return `CE ${ce ?? ''}, CET ${cet ?? ''}, Pcm ${pcm ?? ''}; ${kind}`;
}

function sureText({ mark, readings }: DesignationAnswer): string | undefined {
  if (mark === null) return undefined;
  const from = readings[0]?.from;
  if (from === 'grammar') return 'read by the way the standard forms names; no row in the table';
  if (mark === 'practice') return 'wording of the trade';
  return mark === 'seen' ? 'row read in a public copy' : 'row from memory of the standard';
}
