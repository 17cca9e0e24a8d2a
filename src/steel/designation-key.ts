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
      // ISO 11469 sets its marks between angle brackets.
      .replace(/^>(.+)<$/, '$1')
      // ASTM names stand in parts: A653 CS Type B, G90. A symbol behind an alloy repeats it: EN AW-5754 [AlMg3].
      .replace(/^(?:ASTM)?A\d{3,4}.*$/, (name) => name.replaceAll(/[,;]/g, ''))
      .replace(
        /(?<=^(?:EN)?AW\d{4}[A-C]?)(?:\[AL[^\]]{1,24}\]|AL[A-Z][A-Z\d.]{0,12}?(?=$|O$|H\d{2,3}$|T\d))/,
        '',
      )
      .replace(/^EN(?=1\.\d{4})/, '')
      // ASTM words as drawings shorten them: Gr 50 Cl 1.
      .replace(/(?<=^|[A-Z])GR\.?(?=\d{2,3}(?!\d))/, 'GRADE')
      .replace(/(?<=\d|\])CL\.?(?=[12](?!\d))/, 'CLASS')
      .replace(/(?<=\d|\])TY\.?(?=[12](?!\d))/, 'TYPE')
  );
}
