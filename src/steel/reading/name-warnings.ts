import type { DesignationForm } from './designation-forms.ts';
import type { Material } from '../material.ts';

interface Trap {
  readonly when: (grade: string, first: Material) => boolean;
  readonly say: (grade: string, first: Material) => string;
}

/** How readers have gone wrong with such names. Sources are the standards named; the misreadings are practice. */
const traps: readonly Trap[] = [
  {
    when: (_grade, first) => /^HX\d{3}LAD/.test(first.designation),
    say: (_grade, first) =>
      `${first.designation} is measured across the rolling direction: its equal in VDA 239-100 has the next lower number, HX340LAD is CR300LA.`,
  },
  {
    when: (_grade, first) => /^(?:CR|HR)\d{3}LA/.test(first.designation) && first.standard.startsWith('VDA'),
    say: () =>
      'VDA 239-100 measures along the rolling direction: CR300LA equals HX340LAD. GB/T uses the same names with other limits.',
  },
  {
    when: (_grade, first) => first.standard.startsWith('EN 10268:1998'),
    say: () =>
      'A name of the superseded EN 10268:1998, measured along the rolling direction; the number is now 20 to 40 MPa higher: H320LA is HC340LA.',
  },
  {
    when: (grade) => /^CR\d$/.test(grade),
    say: () =>
      'The rank rises with formability in VDA 239-100, SAE J2329 and IS 513-1 and falls in BS 1449, where CR4 is the plainest grade.',
  },
  {
    when: (_grade, first) => /^HDT\d{3}[FX]/.test(first.designation),
    say: () =>
      'HDT580F (ferrite-bainite, yield 460 MPa) and HDT580X (dual-phase, yield 330 MPa) differ by one letter.',
  },
  {
    when: (_grade, first) =>
      first.family === 'press-hardening steel' && /1[5-9]00|2000/.test(first.designation),
    say: (_grade, first) =>
      `The number in ${first.designation} is a nominal class after hardening, not a minimum: for 1500 about 1300 MPa is the floor in use. In a martensitic name such as CR1220Y1500T-MS it is a true minimum.`,
  },
  {
    when: (_grade, first) => /T-?MS/.test(first.designation) && first.family === 'press-hardening steel',
    say: () =>
      'MS behind a tensile number alone is multi-step hot forming; behind yield and tensile it is martensitic.',
  },
  {
    when: (_grade, first) => /^SPF[CH]\d{3}$/.test(first.designation),
    say: (_grade, first) =>
      `${first.designation} without Y is not ${first.designation}Y: the one is precipitation or solution strengthened, the other dual-phase with a lower yield.`,
  },
  {
    when: (_grade, first) => /^(?:SPFC\d{3}|J[SA]C\d{3})H$/.test(first.designation),
    say: () => 'H behind the number of a Japanese name is bake-hardening, not hardened and not hot rolled.',
  },
  {
    when: (_grade, first) =>
      /Y(?:[LHN])?$/.test(first.designation) && /^(?:SPF|J[SA])/.test(first.designation),
    say: () =>
      'Y behind the number of a Japanese name is dual-phase; in EN names it is interstitial-free, in SAE J2340 low-alloy.',
  },
  {
    when: (_grade, first) => first.family.startsWith('steel whose family') && first.from === 'grammar',
    say: () =>
      'The letters that tell the family are missing: the name was cut short, or a coating hides them.',
  },
  {
    when: (_grade, first) => first.class === 'aluminium' && /T4P?$/.test(first.designation),
    say: () =>
      'Delivered T4; painted, the panel stands about 75 to 95 MPa higher in yield, and heat above the paint oven takes it down again.',
  },
  {
    when: (grade, first) => first.class === 'aluminium' && !/(?:O|F|H\d{2,3}|T\d\w*)$/.test(grade),
    say: () => 'Aluminium without a temper: the alloy tells the class, not the strength.',
  },
  {
    when: (_grade, first) => /^DX5\dD/.test(first.designation),
    say: () =>
      'The number of a DX grade is a rank of formability, neither ksi nor MPa, and DX is not dual-phase.',
  },
  {
    when: (_grade, first) => /^EN 101(?:30|52)/.test(first.standard),
    say: () =>
      'EN 10130 and EN 10152 limit the yield from above; the lower figure is a design value, not guaranteed.',
  },
  {
    when: (_grade, first) => first.tensileMinOnlyIf !== undefined,
    say: (_grade, first) =>
      `${first.designation} has a minimum tensile strength only if ${first.tensileMinOnlyIf ?? ''}.`,
  },
  {
    when: (_grade, first) => first.standard.startsWith('EN 10111'),
    say: () => 'EN 10111 limits the tensile strength from above only.',
  },
  {
    when: (_grade, first) => first.condition === 'cold hardened',
    say: (_grade, first) =>
      `Hardened by cold rolling${first.designation.includes('+C') ? ': C announces the tensile, CP the proof strength' : ''}; any softening heat takes it away.`,
  },
  {
    when: (_grade, first) => /:(?:19|200)\d/.test(first.standard),
    say: (_grade, first) => `Limits changed between editions; these are of ${first.standard}.`,
  },
  {
    when: (grade) => /^MJ[SA]/.test(grade),
    say: () => 'What the M before the name means is not known; it was passed over.',
  },
  {
    when: (_grade, first) => first.standard === 'national list',
    say: () => 'A name of a national list that mixes two systems: only number and phase were read.',
  },
  {
    when: (grade, first) =>
      first.from === 'trade word' &&
      /(?:DP|CP|TRIP|TR)(?:500|600|700|800|1000|1200)$|^(?:500|600|700|800|1000|1200)(?:DP|CP|TRIP|TR)$/.test(
        grade,
      ),
    say: () =>
      'The trade rounds the steps of the standards: 600 is 590, 700 is 690, 800 is 780, 1000 is 980, 1200 is 1180 MPa.',
  },
  {
    when: (grade, first) => first.from === 'strength' && /\dK(?!SI)/.test(grade),
    say: () =>
      'K or kilo is kgf/mm²: 60 is 588 MPa and is named 590. It is not ksi: 60 ksi would be 414 MPa.',
  },
  {
    when: (grade) => /\+(?:Z|ZF|ZA|ZM|AZ|AS)\d/.test(grade),
    say: () => 'EN counts the coating mass on both sides together, VDA on each side: Z100 is about GI50/50.',
  },
  {
    when: (grade) => /\+ZE\d/.test(grade),
    say: () => 'The figures behind ZE are tenths of a micrometre on each side: 75/75 is 7.5 µm.',
  },
];

/** Sentences on what such a name is easily mistaken for, in the order in which they stand above. */
export function nameWarnings(form: DesignationForm, readings: readonly Material[]): readonly string[] {
  const [first] = readings;
  if (first === undefined) return [];
  const { grade } = form;
  return traps.filter((trap) => trap.when(grade, first)).map((trap) => trap.say(grade, first));
}
