import { visibleText } from '../visible-text.ts';

/** Text inside a Markdown line or table cell (CommonMark with GitHub's tables): nothing in it is markup, a link or HTML. */
export function markdownText(text: string): string {
  return (
    visibleText(text.replace(/\s*\n\s*/gu, ' '))
      .replace(/\p{Surrogate}/gu, '\ufffd')
      .replace(/[\\`*_[\]|~#!$]/gu, '\\$&')
      .replaceAll('&', '&amp;')
      .replaceAll('<', '&lt;')
      .replaceAll('>', '&gt;')
      // What would become a link by itself.
      .replace(/:(?=\/\/)/gu, '\\:')
      .replace(/(?<=www)\./giu, '\\.')
      .replaceAll('@', '\\@')
  );
}
