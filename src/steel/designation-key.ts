/**
 * The form in which designations are compared: full-width and superscript characters become plain, letters upper case,
 * a decimal comma a point; blanks, dashes, underscores and round brackets fall away, since drawings and plans write
 * them differently for one grade. Letters and figures are never exchanged: a look-alike is a question, not a repair.
 */
export function designationKey(text: string): string {
  const plain = isAscii(text) ? text : text.normalize('NFKC');
  const key = plain
    .toUpperCase()
    .replaceAll(/(\d),(?=\d)/g, '$1.')
    .replaceAll(isAscii(plain) ? /[\s_()-]/g : /[\s_()\p{Pd}\u2212]/gu, '');
  return inOnePiece(americanInFull(key));
}

/** ASTM words as drawings shorten them: Gr 50 Cl 1. Few names hold the cue, and the form is asked for those alone. */
const americanWords = [
  { cue: 'GR', form: /(?<=^|[A-Z]|^A\d{3,4})GR\.?(?=\d{2,3}(?!\d))/, word: 'GRADE' },
  { cue: 'CL', form: /(?<=\d|\])CL\.?(?=[1-4](?!\d))/, word: 'CLASS' },
  { cue: 'TY', form: /(?<=\d|\])TY\.?(?=[12](?!\d))/, word: 'TYPE' },
] as const;

function americanInFull(key: string): string {
  return americanWords.reduce(
    (said, { cue, form, word }) => (said.includes(cue) ? said.replace(form, word) : said),
    key,
  );
}

function isAscii(text: string): boolean {
  return !/[^\0-\x7f]/.test(text);
}

/** Names that their standard writes in parts; the first sign tells which may be one, so that most names are looked at once. */
function inOnePiece(key: string): string {
  switch (key.charAt(0)) {
    case '>':
      // ISO 11469 sets its marks between angle brackets.
      return key.replace(/^>(.+)<$/, '$1');
    case 'A':
      // A653 CS Type B, G90
      return /^(?:ASTM)?A\d{3,4}/.test(key) ? key.replaceAll(/[,;]/g, '') : withoutSymbol(key);
    case 'E':
      return withoutSymbol(key.replace(/^EN(?=1\.\d{4})/, ''));
    default:
      return key;
  }
}

/** A chemical symbol behind the number of an aluminium alloy repeats it: EN AW-5754 [AlMg3]-H111. */
function withoutSymbol(key: string): string {
  return key.replace(
    /^((?:EN)?AW\d{4}[A-C]?)(?:\[AL[^\]]{1,24}\]|AL[A-Z][A-Z\d.]{0,12}?(?=$|O$|H\d{2,3}$|T\d))/,
    '$1',
  );
}
