import { sameName } from '../../vehicle/same-name.ts';
import type { SupersededDocument } from '../context.ts';
import type { Survey } from '../survey.ts';

interface Document {
  readonly document?: string | undefined;
  readonly revision?: string | undefined;
}

/** The document that the packs say took the place of this one, at the end of the line; nothing when none did. */
export function successorOf(survey: Survey, document: Document): SupersededDocument['by'] | undefined {
  const known = survey.context.makers.flatMap(({ documents }) => documents ?? []);
  const seen = new Set<SupersededDocument>();
  let now: Document = document;
  let found: SupersededDocument['by'] | undefined;
  for (;;) {
    const entry = known.find((one) => !seen.has(one) && isAbout(one, now));
    if (entry === undefined) return found;
    seen.add(entry);
    found = entry.by;
    now = entry.by;
  }
}

/** An entry that names a revision is about that one alone; one that names none is about all, but for its own successor. */
function isAbout({ document, revision, by }: SupersededDocument, now: Document): boolean {
  if (now.document === undefined || !sameName(document, now.document)) return false;
  if (revision !== undefined) return now.revision !== undefined && sameName(revision, now.revision);
  const isSuccessor =
    sameName(by.document, now.document) &&
    by.revision !== undefined &&
    now.revision !== undefined &&
    sameName(by.revision, now.revision);
  return !isSuccessor;
}

export function nameDocument({ document, revision, published }: SupersededDocument['by']): string {
  return [
    document,
    ...(revision === undefined ? [] : [`revision ${revision}`]),
    ...(published === undefined ? [] : [`published ${published}`]),
  ].join(', ');
}
