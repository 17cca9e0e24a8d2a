import type { NameContent, NameForm, NameParts } from './name-form.ts';

const temper = String.raw`(?:O|F\d{0,2}|W|H\d{2,3}|T\d{1,4}[A-Z]{0,2}|PX)?`;
const elements = String.raw`(?:SI|MG|CU|ZN|MN|FE|NI|TI|CR|ZR|LI|PB|BI|SN)`;
const symbol = String.raw`AL(?<symbol>(?:${elements}\d{0,2}(?:\.\d{1,2})?){1,5})(?:[A-D](?=$|[OFWHTP]))?`;

/** Aluminium by its chemical symbols (EN 573-2, EN 1780-2) and castings by EN 1706, JIS H 5202 and H 5302, and Aluminum Association number. */
export const aluminiumSymbols: readonly NameForm[] = [
  {
    standards: ['EN 1706'],
    form: new RegExp(
      String.raw`^(?:EN)?AC\d{5}(?:[SKDL](?=$|[FT]))?(?:${symbol.replace('<symbol>', '<of>')})?${temper}$`,
    ),
    read: () => ({ familyKey: 'aluminium_casting', sure: true }),
  },
  {
    standards: ['EN 1706'],
    form: new RegExp(`^(?:EN)?AC${symbol}${temper}$`),
    read: () => ({ familyKey: 'aluminium_casting', sure: true }),
  },
  {
    standards: ['EN 1706'],
    form: new RegExp(`^${symbol}${temper}$`),
    read: ({ symbol: of = '' }) => (isCast(of) ? { familyKey: 'aluminium_casting', sure: true } : undefined),
  },
  {
    standards: ['EN 573-3'],
    form: new RegExp(`^(?:(?:EN)?AW)?${symbol}${temper}$`),
    read: bySymbol,
  },
  {
    standards: ['JIS H 5302', 'JIS H 5202'],
    form: new RegExp(String.raw`^(?:ADC(?:1|3|5|6|10|12|14)Z?|AC[1-9][A-D]H?)${temper}$`),
    read: () => ({ familyKey: 'aluminium_casting', sure: true }),
  },
  {
    // Without decimal or temper such a number is a standard of ASTM as well, as A380.
    standards: ['ASTM B85', 'ASTM B108', 'ASTM B26'],
    form: /^A?(?:319|356|357|360|365|380|383|384|390|413)(?:\.[012](?:F|T\d{1,2})?|(?<=^A\d{3})T\d{1,2})$/,
    read: () => ({ familyKey: 'aluminium_casting', sure: true }),
  },
];

/**
 * By the elements of the symbol and their per cent. No wrought alloy of bodies has 5 % silicon, magnesium from 2 % with silicon from
 * 1 %, 7 % magnesium, or copper beside titanium: AlSi10MnMg, AlMg5Si2Mn, AlMg9, AlCu4MgTi are of EN 1706. From memory.
 */
function isCast(symbol: string): boolean {
  const percent = (element: string): number =>
    Number(new RegExp(`${element}(\\d{1,2}(?:\\.\\d{1,2})?)`).exec(symbol)?.[1] ?? 0);
  const [silicon, magnesium] = [percent('SI'), percent('MG')];
  return (
    /\d/.test(symbol) &&
    (silicon >= 5 || magnesium >= 7 || (magnesium >= 2 && silicon >= 1) || /^CU\d.*TI/.test(symbol))
  );
}

/** By the first element of the symbol: zinc is of the 7000 series, magnesium with silicon of the 6000, magnesium alone of the 5000. */
function bySymbol({ symbol = '' }: NameParts): NameContent | undefined {
  if (!/\d/.test(symbol)) return undefined;
  return { familyKey: familyOfSymbol(symbol), sure: true };
}

function familyOfSymbol(symbol: string): string {
  if (isCast(symbol)) return 'aluminium_casting';
  if (symbol.startsWith('ZN')) return 'aluminium_7xxx';
  if (/^(?:MG[01]?(?:\.\d+)?SI|SI\d?(?:\.\d+)?MG|MGSI)/.test(symbol)) return 'aluminium_6xxx';
  return /^MG\d(?:\.\d)?(?!SI)/.test(symbol) && !symbol.includes('SI') ? 'aluminium_5xxx' : 'aluminium';
}
