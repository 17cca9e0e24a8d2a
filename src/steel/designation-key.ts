/**
 * The form in which designations are compared: full-width and superscript characters become plain, letters upper case,
 * a decimal comma a point; blanks, dashes, underscores and round brackets fall away, since drawings and plans write
 * them differently for one grade. Letters and figures are never exchanged: a look-alike is a question, not a repair.
 */
export function designationKey(text: string): string {
  return (
    text
      .normalize('NFKC')
      .toUpperCase()
      .replaceAll(/(\d),(?=\d)/g, '$1.')
      .replaceAll(/[\s_()\p{Pd}\u2212]/gu, '')
      // ASTM words as drawings shorten them: Gr 50 Cl 1.
      .replace(/(?<=^|[A-Z])GR\.?(?=\d{2,3}(?!\d))/, 'GRADE')
      .replace(/(?<=\d|\])CL\.?(?=[12](?!\d))/, 'CLASS')
      .replace(/(?<=\d|\])TY\.?(?=[12](?!\d))/, 'TYPE')
  );
}
