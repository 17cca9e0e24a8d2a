/** What a shielding gas does in the arc: nothing; oxidise; or it belongs into no arc of a body shop. */
export type GasKind = 'inert' | 'active' | 'unfit';

/** Groups and names of ISO 14175, from memory: I inert, M mixed with carbon dioxide or oxygen, C carbon dioxide, R and N and O others. */
const active = /\b(?:m[123][1-7]?|c[12])\b|co ?2|co₂|carbon dioxide|\bo ?2\b|o₂|oxygen|\bmix/iu;
const inert = /\bi[123]\b|argon|\bar\b|helium|\bhe\b/iu;
const unfit = /\b(?:nitrogen|compressed air|air|hydrogen|acetylene|forming gas)\b|\b[nr][12]\b|\bn₂/iu;

/** Undefined where the text names none that is known. Argon with carbon dioxide in it is active. */
export function gasKind(text: string): GasKind | undefined {
  if (active.test(text)) return 'active';
  if (unfit.test(text)) return 'unfit';
  return inert.test(text) ? 'inert' : undefined;
}
