/** What a shielding gas does in the arc: nothing; oxidise; or it belongs into no arc of a body shop. */
export type GasKind = 'inert' | 'active' | 'unfit';

/** Groups and names of ISO 14175, from memory: I inert, M mixed with carbon dioxide or oxygen, C carbon dioxide, R and N and O others. */
const active = /\b(?:m[123][1-7]?|c[12])\b|co ?2|co₂|carbon dioxide|\bo ?2\b|o₂|oxygen|\bmix/i;
const inert = /\bi[123]\b|argon|\bar\b|helium|\bhe\b/i;
const unfit = /\b(?:nitrogen|compressed air|air|hydrogen|acetylene|forming gas)\b|\b[nr][12]\b|\bn₂/i;
/** "Pure argon, no CO2 or oxygen": what is not in it. */
const denied =
  /\b(?:no|not|without|free of|never)(?: any)?(?: (?:co ?2|co₂|carbon dioxide|o ?2|o₂|oxygen|nitrogen|hydrogen|air|or|and|nor))+|\b(?:co ?2|oxygen|o ?2|nitrogen|hydrogen)[ -]free\b/gi;

/** Undefined where the text names none that is known. Argon with carbon dioxide in it is active. */
export function gasKind(text: string): GasKind | undefined {
  const held = text.replace(denied, ' ');
  if (active.test(held)) return 'active';
  if (unfit.test(held)) return 'unfit';
  return inert.test(held) ? 'inert' : undefined;
}
