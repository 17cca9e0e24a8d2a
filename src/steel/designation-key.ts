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
  return americanWords.reduce((said, { cue, form, word }) => {
    return said.includes(cue) ? said.replace(form, word) : said;
  }, key);
}

/** ASTM words as drawings shorten them: Gr 50 Cl 1. Few names hold the cue, and the form is asked for those alone. */
const americanWords = [
  { cue: 'GR', form: /(?<=^|[A-Z])GR\.?(?=\d{2,3}(?!\d))/, word: 'GRADE' },
  { cue: 'CL', form: /(?<=\d|\])CL\.?(?=[12](?!\d))/, word: 'CLASS' },
  { cue: 'TY', form: /(?<=\d|\])TY\.?(?=[12](?!\d))/, word: 'TYPE' },
] as const;

function isAscii(text: string): boolean {
  return !/[^\0-\x7f]/.test(text);
}
