import type { MakerPart, MakerStatement, MakerStatements } from '../facts/context.ts';
import type { Part } from '../generated/plan-types.ts';
import { knownKinds, knownOfPart, knownOfWork } from './pack-knowledge.ts';
import type { Known, PartInShort } from './pack-knowledge.ts';
import type { DraftAnswers } from './read-answers.ts';

/** A part of the draft: what the author said of it, and what the packs say. */
export interface DraftPart {
  readonly id: string;
  readonly part: SaidOfPart;
  /** The one thing that the packs state of its material; undefined where they state nothing, several things, or are in doubt. */
  readonly material?: Known<MakerPart>;
  /** All that they state of its material where they do not state one thing. */
  readonly inDoubt: readonly Known<MakerPart>[];
  readonly work: readonly Known<MakerStatement>[];
  /** Ids of the layers that hide it, as a pack says. */
  readonly under: readonly string[];
  /** Ids of what it hides, as a pack says. */
  readonly over: readonly string[];
}

export interface SaidOfPart extends PartInShort {
  readonly name?: string | undefined;
  readonly damage?: Part['damage'] | undefined;
}

interface Growing {
  readonly id: string;
  readonly part: SaidOfPart;
  readonly under: string[];
  readonly over: string[];
}

/** A pack whose layers lead on and on is no description of a vehicle. */
const mostParts = 200;

/**
 * The parts that the author names, or without any those that the packs describe for this vehicle; and the layers that hide them, as
 * the packs say. What a pack states of a part counts only where it states one thing for sure.
 */
export function draftParts(
  { vehicle, parts }: DraftAnswers,
  makers: readonly MakerStatements[],
): readonly DraftPart[] {
  const named: readonly (SaidOfPart & { readonly id?: string })[] =
    parts.length > 0 ? parts : knownKinds(makers, vehicle).map((kind) => ({ kind }));
  const ids = new Set(named.flatMap(({ id }) => (id === undefined ? [] : [id])));
  const growing: Growing[] = named.map((part) => ({
    id: part.id ?? freshId(part, ids),
    part,
    under: [],
    over: [],
  }));
  // It grows while it is gone through: a layer may lie under another one.
  for (const one of growing) {
    if (growing.length >= mostParts) break;
    const { material } = materialOf(makers, vehicle, one.part);
    for (const kind of material?.entry.under ?? []) addLayer(growing, ids, one, kind);
  }
  return growing.map((one) => ({
    ...one,
    ...materialOf(makers, vehicle, one.part),
    work: knownOfWork(makers, vehicle, one.part),
  }));
}

function addLayer(growing: Growing[], ids: Set<string>, hidden: Growing, kind: string): void {
  const { side } = hidden.part;
  if (kind === hidden.part.kind) return;
  let layer = growing.find(({ part }) => part.kind === kind && part.side === side);
  if (layer === undefined) {
    layer = { id: freshId({ kind, side }, ids), part: { kind, side }, under: [], over: [] };
    growing.push(layer);
  }
  hidden.under.push(layer.id);
  layer.over.push(hidden.id);
}

function materialOf(
  makers: readonly MakerStatements[],
  vehicle: DraftAnswers['vehicle'],
  part: SaidOfPart,
): { readonly material?: Known<MakerPart>; readonly inDoubt: readonly Known<MakerPart>[] } {
  const [only, ...others] = knownOfPart(makers, vehicle, part);
  if (only === undefined) return { inDoubt: [] };
  return only.isSure && others.length === 0
    ? { material: only, inDoubt: [] }
    : { inDoubt: [only, ...others] };
}

/** `door-ring-left`, or with a number where that is taken. */
function freshId({ kind = 'part', side }: PartInShort, taken: Set<string>): string {
  const stem = [kind, ...(side === undefined ? [] : [side])].join('-').replaceAll(' ', '-');
  let id = stem;
  for (let number = 2; taken.has(id); number += 1) id = `${stem}-${String(number)}`;
  taken.add(id);
  return id;
}
