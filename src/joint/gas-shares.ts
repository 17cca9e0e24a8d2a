/** Shares of a gas mixture by volume, in per cent; undefined for what is not written. */
export interface GasShares {
  readonly carbonDioxide?: number;
  readonly oxygen?: number;
  readonly argon?: number;
}

type Range = readonly [least: number, most: number];

/** Carbon dioxide and oxygen of each group of ISO 14175:2008, per cent by volume, the rest inert or, of C, carbon dioxide. From memory. */
const groups: Readonly<Record<string, { readonly carbonDioxide: Range; readonly oxygen: Range }>> = {
  I1: { carbonDioxide: [0, 0], oxygen: [0, 0] },
  I2: { carbonDioxide: [0, 0], oxygen: [0, 0] },
  I3: { carbonDioxide: [0, 0], oxygen: [0, 0] },
  M11: { carbonDioxide: [0.5, 5], oxygen: [0, 0] },
  M12: { carbonDioxide: [0.5, 5], oxygen: [0, 0] },
  M13: { carbonDioxide: [0, 0], oxygen: [0.5, 3] },
  M14: { carbonDioxide: [0.5, 5], oxygen: [0.5, 3] },
  M20: { carbonDioxide: [5, 15], oxygen: [0, 0] },
  M21: { carbonDioxide: [15, 25], oxygen: [0, 0] },
  M22: { carbonDioxide: [0, 0], oxygen: [3, 10] },
  M23: { carbonDioxide: [0.5, 5], oxygen: [3, 10] },
  M24: { carbonDioxide: [5, 15], oxygen: [0.5, 3] },
  M25: { carbonDioxide: [5, 15], oxygen: [3, 10] },
  M26: { carbonDioxide: [15, 25], oxygen: [0.5, 3] },
  M27: { carbonDioxide: [15, 25], oxygen: [3, 10] },
  M31: { carbonDioxide: [25, 50], oxygen: [0, 0] },
  M32: { carbonDioxide: [0, 0], oxygen: [10, 15] },
  M33: { carbonDioxide: [25, 50], oxygen: [2, 10] },
  M34: { carbonDioxide: [5, 25], oxygen: [10, 15] },
  M35: { carbonDioxide: [25, 50], oxygen: [10, 15] },
  C1: { carbonDioxide: [100, 100], oxygen: [0, 0] },
  C2: { carbonDioxide: [70, 99.5], oxygen: [0.5, 30] },
};

const names = [
  ['carbonDioxide', 'carbon dioxide|co ?2|co₂'],
  ['oxygen', 'oxygen|o ?2|o₂'],
  ['argon', 'argon|ar(?![a-z])'],
] as const;
const anyName = '(carbon dioxide|co ?2|co₂|argon|ar(?![a-z])|oxygen|o ?2|o₂)';
const number = '(\\d{1,3}(?:[.,]\\d+)?)';

/** What a text tells of the shares: "82 % argon and 18 % carbon dioxide", "CO2 18 %", "82/18 argon and carbon dioxide". */
export function gasShares(text: string): GasShares {
  if (!/\d/.test(text)) return {};
  const words = text.toLowerCase();
  const inRatio = ofRatio(words);
  if (inRatio !== undefined) return inRatio;
  const before = [...words.matchAll(new RegExp(`${number} ?(?:%|per ?cent) ?(?:of )?${anyName}`, 'g'))];
  const after = [...words.matchAll(new RegExp(`(?<![a-z])${anyName}[ :=]*${number} ?(?:%|per ?cent)`, 'g'))];
  // "argon 82 % CO2 18 %" fits both ways once; the way that fits more, or that begins the text, is meant.
  const isAfter =
    after.length > before.length ||
    (after.length === before.length && (after[0]?.index ?? 0) < (before[0]?.index ?? 0));
  return isAfter
    ? sharesOf(after.map(([, name, share]) => ({ share, name })))
    : sharesOf(before.map(([, share, name]) => ({ share, name })));
}

/** The group of ISO 14175 that a text names. */
export function gasGroup(text: string): string | undefined {
  const named = /\b(i[123]|m1[1-4]|m2[0-7]|m3[1-5]|c[12])(?!\d)\b/i.exec(text)?.[1];
  return named?.toUpperCase();
}

/** Least share of carbon dioxide that a gas can hold by its shares, else by its group, per cent; undefined where neither is told. */
export function leastCarbonDioxide(text: string): number | undefined {
  const { carbonDioxide, argon, oxygen } = gasShares(text);
  if (carbonDioxide !== undefined) return carbonDioxide;
  const group = gasGroup(text);
  if (group !== undefined) return groups[group]?.carbonDioxide[0];
  if (argon !== undefined || oxygen !== undefined) return undefined;
  return /^\W*(?:pure |only )?(?:carbon dioxide|co ?2|co₂)\W*$/i.test(text) ? 100 : undefined;
}

/** In which the shares of a text lie outside the group that it names, or outside every mixture of the standard; undefined where they fit. */
export function sharesOff(text: string): string | undefined {
  const shares = gasShares(text);
  const group = gasGroup(text);
  const limits = group === undefined ? undefined : groups[group];
  if (group === undefined || limits === undefined) {
    const { carbonDioxide, argon } = shares;
    const isNoMixture = carbonDioxide !== undefined && argon !== undefined && carbonDioxide > 50;
    return isNoMixture
      ? `${String(carbonDioxide)} % of carbon dioxide in argon, and no mixture of ISO 14175 with argon holds more than 50 %`
      : undefined;
  }
  if (group.startsWith('C') && (shares.argon ?? 0) > 0) {
    return `${String(shares.argon)} % of argon, and ${group} holds none`;
  }
  for (const [key, name] of [
    ['carbonDioxide', 'carbon dioxide'],
    ['oxygen', 'oxygen'],
  ] as const) {
    const [share, [least, most]] = [shares[key], limits[key]];
    if (share !== undefined && (share < least || share > most)) {
      const holds =
        most === 0 ? 'none' : least === most ? 'nothing else' : `${String(least)} to ${String(most)} %`;
      return `${String(share)} % of ${name}, and ${group} holds ${holds}`;
    }
  }
  return undefined;
}

function ofRatio(words: string): GasShares | undefined {
  const numbers = `${number} ?[/:] ?${number}`;
  const gases = `${anyName}(?: and | with | ?[/+-] ?|, ?| )${anyName}`;
  const first = new RegExp(`${numbers} ?%? ?(?:of )?${gases}`).exec(words);
  if (first !== null) {
    const [, one, other, name, otherName] = first;
    return sharesOf([
      { share: one, name },
      { share: other, name: otherName },
    ]);
  }
  const second = new RegExp(`(?<![a-z])${gases},? ?${numbers}`).exec(words);
  if (second === null) return undefined;
  const [, name, otherName, one, other] = second;
  return sharesOf([
    { share: one, name },
    { share: other, name: otherName },
  ]);
}

function sharesOf(
  told: readonly { readonly share: string | undefined; readonly name: string | undefined }[],
): GasShares {
  const shares: { carbonDioxide?: number; oxygen?: number; argon?: number } = {};
  for (const { share, name } of told) {
    const key = names.find(([, form]) => name !== undefined && new RegExp(`^(?:${form})$`).test(name))?.[0];
    const value = Number((share ?? '').replace(',', '.'));
    if (key !== undefined && share !== undefined && value <= 100) shares[key] = value;
  }
  return shares;
}
