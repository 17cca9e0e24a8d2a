import type { NameContent, NameForm, NameParts } from './name-form.ts';

/** Basic polymers by ISO 1043-1: those that harden once, and those that melt. */
const thermosets = 'EP|UP|VE|PF|MF|PUR';
const thermoplastics = String.raw`PP|PE|PA(?:\d{1,3}(?:\.\d{1,2})?(?:[TI]\d?)?(?:\/\d{1,2}[TI]?){0,2})?|PBT|PET|PC|ABS|ASA|POM|PPS|PPA|PPE|PEEK|PEI|PES|PSU|PVC|SAN|TPU|PARA|PEKK`;
const blend = String.raw`(?:[+\/](?:${thermoplastics}|EPDM))?`;

/** Reinforcement by ISO 1043-2 (glass, carbon, aramid, natural; as fibre, mat or cloth; L for long) with its per cent. */
const fibre = String.raw`(?:(?:L|S|E|C)?(?<fibre>[GCAN])F|(?<mat>[GC])(?:M|X))`;
/** Powders that go with it, as glass beads, minerals and talc. */
const filler = String.raw`(?:\+?(?:GF|CF|GB|MD|MF|TD|T|M|GD)\d{1,2})?`;

/**
 * Fibre composites by ISO 1043 and by the marks of ISO 11469 on the part: PP-GF30, PA66-GF35, EP-CF60, >PP-(GF30+TD10)<; and by
 * the words of the trade. Dashes, brackets and the angle brackets of the mark are gone from the key.
 */
export const compositeNames: readonly NameForm[] = [
  {
    standards: ['ISO 1043', 'ISO 11469'],
    form: new RegExp(
      `^(?:(?<set>${thermosets})|(?:${thermoplastics})${blend})(?:I|HI|UV|FR)?(?:S)?${fibre}(?:[1-7]\\d)?${filler}(?:I|HI|FR|LFT|SMC|BMC)?$`,
    ),
    read: ofFibre,
  },
  {
    standards: ['ISO 1043'],
    form: /^(?:UP|VE|EP|(?<fibre>C)F)?(?:SMC|BMC)(?:[GC]F\d{0,2})?$/,
    read: ({ fibre }) => ({
      familyKey: fibre === 'C' ? 'composite_cfrp' : 'composite_gfrp',
      state: 'unknown',
      sure: true,
    }),
  },
  {
    standards: ['ISO 1043'],
    form: /^(?:PP|PA6?)?(?:GMT|LWRT|LFT|LFTD|DLFT|LGF|LCF|SGF)(?:[1-7]\d)?$/,
    read: () => ({ familyKey: 'composite_thermoplastic', state: 'unknown', sure: true }),
  },
  {
    // German and short names of the trade: K for Kunststoff, T for thermoplastic.
    standards: ['ISO 1043'],
    form: /^(?<fibre>[CGN])F(?:K|RTP|RP|R)$/,
    read: ({ fibre }) =>
      fibre === 'N'
        ? { familyKey: 'composite', state: 'unknown', sure: true }
        : { familyKey: fibre === 'C' ? 'composite_cfrp' : 'composite_gfrp', state: 'unknown', sure: true },
  },
  {
    standards: ['ISO 1043'],
    form: /^(?:FRP|GRP|AFK|AFRP)$/,
    read: () => ({ familyKey: 'composite', state: 'unknown', sure: true }),
  },
];

function ofFibre({ set, fibre, mat }: NameParts): NameContent {
  const of = fibre ?? mat;
  if (set === undefined) return { familyKey: 'composite_thermoplastic', state: 'unknown', sure: true };
  if (of === 'C') return { familyKey: 'composite_cfrp', state: 'unknown', sure: true };
  return { familyKey: of === 'G' ? 'composite_gfrp' : 'composite', state: 'unknown', sure: true };
}

/** Plastics by ISO 1043 that hold no fibres, as covers and trim are made of: PP+EPDM-TD20. */
export const plasticNames: readonly NameForm[] = [
  {
    standards: ['ISO 1043', 'ISO 11469'],
    form: new RegExp(
      `^(?:${thermosets}|${thermoplastics})(?:[+\\/](?:${thermoplastics}|EPDM))?(?:I|HI)?(?:(?:TD|TV|T|MD|MF|M|GB|GD)\\d{1,2})?$`,
    ),
    read: () => ({ familyKey: 'plastic', state: 'unknown', sure: true }),
  },
];
