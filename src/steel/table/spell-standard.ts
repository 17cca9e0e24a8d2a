/** A standard's key as its publisher writes it: EN101492 is EN 10149-2, A653 ASTM A653, GBT205642 GB/T 20564.2. */
export function spelledStandard(key: string): string {
  for (const [form, spelled] of spellings) {
    if (form.test(key)) return key.replace(form, spelled).replace(/[-.](?=$|:)/, '');
  }
  return key;
}

/** The first that fits counts. Numbers of EN for steel sheet have five figures and a part behind it, those of aluminium four or three. */
const spellings: readonly (readonly [form: RegExp, spelled: string])[] = [
  [/^EN(10\d{3})([1-9]?)(?=$|:)/, 'EN $1-$2'],
  [/^EN(485|515|573|755)([1-9]?)(?=$|:)/, 'EN $1-$2'],
  [/^EN(\d+)/, 'EN $1'],
  [/^VDA(239)([125]00)?/, 'VDA $1-$2'],
  [/^(JIS|JFS)([A-Z])(\d{4})/, '$1 $2 $3'],
  [/^GBT(20564|20887)(\d{0,2})$/, 'GB/T $1.$2'],
  [/^GBT(\d{4,5})/, 'GB/T $1'],
  [/^J(\d{4})/, 'SAE J$1'],
  [/^([AB]\d{2,4}M?)/, 'ASTM $1'],
  [/^(IS)(513)([12]?)/, '$1 $2-$3'],
  [/^(DIN)(1623)([12]?)/, '$1 $2-$3'],
  [/^(ISO|SEW|BS|DIN)(\d+)/, '$1 $2'],
];
