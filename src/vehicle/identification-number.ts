export type VinFault = 'length' | 'letters I, O, Q' | 'character';

export type VinReading =
  | {
      readonly ok: true;
      /** Seventeen characters of A-Z without I, O, Q, and 0-9. */
      readonly vin: string;
      /** True when blanks, hyphens or small letters were put right; the report says so. */
      readonly tidied: boolean;
    }
  | {
      readonly ok: false;
      readonly fault: VinFault;
      readonly reason: string;
      /** What was probably meant, in form; a suggestion to be compared with the car, never used instead. */
      readonly near?: string;
    };

const vinLength = 17;
const longestShown = 40;

/**
 * Reads a vehicle identification number in the form of ISO 3779: seventeen characters out of thirty-three. Blanks,
 * hyphens and case carry no meaning and are tidied. A letter O is never taken for a zero: the sign on the car has to
 * be looked at again, since what looks like an O may as well be a D or a Q.
 */
export function readVin(text: string): VinReading {
  // Only a-z, by hand: toUpperCase would turn ſ into S and ı into I, letters that no car carries.
  const vin = text
    .trim()
    .replace(/[\s\u2010\u2011-]/gu, '')
    .replace(/[a-z]/gu, (letter) => letter.toUpperCase());
  const characters = [...vin];
  const shown = characters.length > longestShown ? 'This' : `"${text.trim()}"`;
  if (characters.length !== vinLength) {
    const reason = `${shown} has ${characters.length} characters; a vehicle identification number has ${vinLength}.`;
    return { ok: false, fault: 'length', reason };
  }
  if (/^[A-HJ-NPR-Z0-9]+$/u.test(vin)) return { ok: true, vin, tidied: vin !== text };

  const near = characters.map(likelyMeant).join('');
  const suggestion = /^[A-HJ-NPR-Z0-9]+$/u.test(near) ? { near } : {};
  if (/^[A-Z0-9]+$/u.test(vin)) {
    const reason = `${shown} has ${places(characters, /[IOQ]/u)}; I, O and Q are never used: look at the car again, ${near} may be meant.`;
    return { ok: false, fault: 'letters I, O, Q', reason, ...suggestion };
  }
  const hint =
    suggestion.near === undefined ? 'look at the car again' : `look at the car again, ${near} may be meant`;
  const reason = `${shown} has ${places(characters, /[^A-HJ-NPR-Z0-9]/u)}, and only A-Z without I, O, Q and 0-9 are used: ${hint}.`;
  return { ok: false, fault: 'character', reason, ...suggestion };
}

/** "the letter O in place 1", each character that the pattern finds, with its code point when it is not plain ASCII. */
function places(characters: readonly string[], wrong: RegExp): string {
  const found = characters.flatMap((character, index) => {
    if (!wrong.test(character)) return [];
    const code = character.codePointAt(0) ?? 0;
    const name =
      code > 0x7e ? `${character} (U+${code.toString(16).toUpperCase().padStart(4, '0')})` : character;
    return [`${name} in place ${index + 1}`];
  });
  return found.join(', ');
}

// Cyrillic and Greek capitals that are drawn like Latin ones; they come in by copying from a document.
const drawnAlike: ReadonlyMap<string, string> = new Map([
  ...pairs('АВЕКМНРСТХУЅЈ', 'ABEKMHPCTXYSJ'),
  ...pairs('ΑΒΕΖΗΚΜΝΡΤΥΧ', 'ABEZHKMNPTYX'),
  ...pairs('IOQ', '100'),
  ...pairs('ОΟІΙ', '0011'),
]);

function pairs(from: string, to: string): readonly (readonly [string, string])[] {
  return [...from].map((character, index) => [character, to.charAt(index)]);
}

function likelyMeant(character: string): string {
  const code = character.codePointAt(0) ?? 0;
  // Full-width forms stand 0xFEE0 above their ASCII originals.
  const narrow =
    code >= 0xff10 && code <= 0xff5a ? String.fromCodePoint(code - 0xfee0).toUpperCase() : character;
  return drawnAlike.get(narrow) ?? narrow;
}
