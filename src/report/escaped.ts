import { visibleText } from './visible-text.ts';

/**
 * Text for HTML and SVG, as content and as attribute value in double quotes alike. Characters that act or hide are shown by their
 * number; those that stand for no character at all become `?`.
 */
export function escaped(words: string): string {
  return visibleText(words)
    .replaceAll(/[\p{Surrogate}\p{Noncharacter_Code_Point}]/gu, '?')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
