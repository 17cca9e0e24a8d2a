import type { Source } from './pack.ts';

/** A source as a report prints it: `49 CFR 565.15, clause (c) (from memory)`. */
export function sourceSentence(source: Source): string {
  const parts: string[] = [];
  if (source.standard !== undefined) parts.push(source.standard);
  if (source.clause !== undefined) parts.push(source.clause);
  if (source.document !== undefined) parts.push(source.document);
  if (source.revision !== undefined) parts.push(`revision ${source.revision}`);
  if (source.page !== undefined) parts.push(source.page);
  if (source.practice !== undefined) {
    parts.push(source.practice === 'common' ? 'common practice, no published source' : source.practice);
  }
  const sentence = parts.join(', ');
  return source.mark === 'memory' ? `${sentence} (from memory)` : sentence;
}
