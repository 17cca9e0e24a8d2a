import { visibleText } from '../visible-text.ts';

/**
 * Text for XML 1.0, content and attribute values in double quotes alike. Characters that XML has no room for, and those that act
 * on a terminal or turn the line round, are shown by their number; line ends, which an attribute would lose, as references.
 */
export function xmlText(text: string): string {
  return text
    .split('\n')
    .map((line) =>
      visibleText(line)
        .replace(/[\p{Surrogate}\ufffe\uffff]/gu, '\ufffd')
        .replaceAll('&', '&amp;')
        .replaceAll('<', '&lt;')
        .replaceAll('>', '&gt;')
        .replaceAll('"', '&quot;'),
    )
    .join('&#10;');
}
