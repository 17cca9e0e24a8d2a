import type { Operation, Plan, PlanReferencesItem } from '../generated/plan-types.ts';
import type { KeyCitation } from '../generated/key-types.ts';
import { listOf } from '../facts/quantity-of.ts';
import { sharePage } from '../facts/papers/same-page.ts';
import { sameName } from '../vehicle/same-name.ts';
import type { KeyPart } from './key.ts';
import type { Mark } from './mark.ts';
import { nameOf } from './mark-decision.ts';
import type { PartMatch } from './match-parts.ts';

/** The document that the operations on a part rest on, against the key's. The best citation counts. */
export function markCitation(key: KeyPart, match: PartMatch | undefined, plan: Plan): readonly Mark[] {
  const { citation } = key;
  if (citation === undefined) return [];
  const called = match === undefined ? key.name : nameOf(match);
  const cited = match === undefined ? [] : (match.part.operations ?? []).flatMap((one) => citedBy(one, plan));
  const best = worth(citation, cited);
  const base = { category: 'citation', part: called, points: best.points, of: citation.points } as const;
  if (best.lacks === undefined) return [base];
  return [
    {
      ...base,
      mistake: `${key.name}: ${best.lacks}`,
      said: said(best.lacks, called),
      ...(citation.look_at === undefined ? {} : { lookAt: citation.look_at }),
      answer: `The document is ${citation.documents.join(' or ')}${citation.revision === undefined ? '' : `, revision ${citation.revision}`}${citation.at === undefined ? '' : `, ${citation.at}`}.`,
    },
  ];
}

type Lack = 'no document' | 'another document' | 'another revision' | 'no place' | 'no revision and no place';

interface Cited {
  readonly reference: PlanReferencesItem;
  readonly at?: string;
}

function citedBy(operation: Operation, plan: Plan): readonly Cited[] {
  return listOf(operation.cite).flatMap(({ reference: id, at }) => {
    const reference = plan.references?.find((one) => one.id === id);
    if (reference === undefined) return [];
    return [{ reference, ...(at === undefined ? {} : { at }) }];
  });
}

function worth(
  citation: KeyCitation,
  cited: readonly Cited[],
): { readonly points: number; readonly lacks?: Lack } {
  if (cited.length === 0) return { points: 0, lacks: 'no document' };
  const right = cited.filter(({ reference: { document } }) =>
    citation.documents.some((one) => document !== undefined && sameName(one, document)),
  );
  if (right.length === 0) return { points: 0, lacks: 'another document' };
  const worths = right.map((one) => worthOf(citation, one));
  return worths.reduce((best, one) => (one.points > best.points ? one : best));
}

function worthOf(
  { revision, at, points, without_revision: less = 0, without_place: bare = 0 }: KeyCitation,
  cited: Cited,
): { readonly points: number; readonly lacks?: Lack } {
  const ofRevision =
    revision === undefined ||
    (cited.reference.revision !== undefined && sameName(revision, cited.reference.revision));
  const atPlace = cited.at !== undefined && (at === undefined || sharePage(cited.at, at));
  if (ofRevision && atPlace) return { points };
  if (ofRevision) return { points: bare, lacks: 'no place' };
  if (atPlace) return { points: less, lacks: 'another revision' };
  return { points: Math.min(less, bare), lacks: 'no revision and no place' };
}

function said(lacks: Lack, part: string): string {
  switch (lacks) {
    case 'no document':
      return `What is decided for ${part} rests on no document. Every vehicle is looked up, every time.`;
    case 'another document':
      return `The document cited for ${part} is not the one for this vehicle and this work.`;
    case 'another revision':
      return `The document for ${part} is the right one; its revision is another, or is not stated.`;
    case 'no place':
      return `The document for ${part} is the right one; the place in it is missing, or is another.`;
    case 'no revision and no place':
      return `The document for ${part} is the right one; neither its revision nor the place in it is right.`;
  }
}
