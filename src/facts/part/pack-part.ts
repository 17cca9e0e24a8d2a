import type { Part, Plan } from '../../generated/plan-types.ts';
import { settleMaterial } from '../../steel/settling/settle-material.ts';
import type { SettledMaterial } from '../../steel/settling/settle-material.ts';
import { steelRank, strengthClasses } from '../../steel/strength-class.ts';
import type { MakerPart, MakerStatements } from '../context.ts';
import { entriesForModel, isForSide, isForVehicle, whereItSays } from '../papers/maker-applies.ts';
import type { PackEntry } from '../papers/maker-applies.ts';

/** What the maker's document, as typed into the vehicle packs, says that a part is. */
export interface PackPart {
  readonly entry: MakerPart;
  /** Document, revision, page and pack. */
  readonly saidBy: string;
  /** Left out where the entry says nothing of the material. */
  readonly material?: SettledMaterial;
}

/** How the material that a plan states stands to that of the pack. */
export type PackMaterial =
  'not in the packs' | 'agrees' | 'plan is weaker' | 'plan is stronger' | 'differs' | 'only in the pack';

/**
 * The entry about a part; of several (two packs, two documents) the one that names the strongest steel. Only entries that are for
 * this vehicle and side beyond doubt count: what completes a plan must not be of another body.
 */
export function packPartOf(
  vehicle: Plan['vehicle'],
  makers: readonly MakerStatements[],
  part: Part,
): PackPart | undefined {
  const possible = entriesForModel(vehicle, makers, ({ parts }) => parts ?? []).filter(
    ({ entry }) =>
      entry.part === part.kind && isForVehicle(entry, vehicle, true) && isForSide(entry, part.side, true),
  );
  const isSure = ({ entry }: PackEntry<MakerPart>): boolean =>
    isForVehicle(entry, vehicle, false) && isForSide(entry, part.side, false);
  const best = possible.filter(isSure).map(answerOf).toSorted(byStrength)[0];
  const doubtful = possible.filter((one) => !isSure(one)).map(answerOf);
  // The number is missing that would tell whether this vehicle has the stronger sheet: then nobody knows which it has.
  const isOpen = best !== undefined && doubtful.some((one) => rankOf(one.material) > rankOf(best.material));
  return isOpen ? withoutMaterial(best) : best;
}

function answerOf({ pack, entry }: PackEntry<MakerPart>): PackPart {
  const material = materialOf(entry);
  return { entry, saidBy: whereItSays(entry, pack), ...(material === undefined ? {} : { material }) };
}

function byStrength(a: PackPart, b: PackPart): number {
  return rankOf(b.material) - rankOf(a.material);
}

function withoutMaterial({ entry, saidBy }: PackPart): PackPart {
  const { grade: _, tensileMpa: _tensile, class: _class, ...rest } = entry;
  return { entry: rest, saidBy };
}

function materialOf({ grade, tensileMpa, class: word }: MakerPart): SettledMaterial | undefined {
  const strengthClass = strengthClasses.find((one) => one === word);
  if (grade === undefined && tensileMpa === undefined && strengthClass === undefined) return undefined;
  return settleMaterial({
    ...(grade === undefined ? {} : { grade }),
    ...(tensileMpa === undefined ? {} : { tensileMpa }),
    ...(strengthClass === undefined ? {} : { class: strengthClass }),
  });
}

function rankOf(material: SettledMaterial | undefined): number {
  return (material?.class === undefined ? undefined : steelRank(material.class)) ?? -1;
}

/** What of a part was not stated and was taken from the pack. */
export type Completed = 'material' | 'thickness' | 'one_piece';

/** The part with what the pack adds, and which of it that is. What the plan states stays as it is. */
export function completePart(
  part: Part,
  { entry }: PackPart,
): { readonly part: Part; readonly completed: ReadonlySet<Completed> } {
  const completed = new Set<Completed>();
  let now = part;
  const hasMaterial = [part.grade, part.strength, part.class, part.zones].some((one) => one !== undefined);
  const { grade, tensileMpa, thicknessMm, onePiece } = entry;
  const strengthClass = strengthClasses.find((one) => one === entry.class);
  if (!hasMaterial && [grade, tensileMpa, strengthClass].some((one) => one !== undefined)) {
    now = {
      ...now,
      ...(grade === undefined ? {} : { grade }),
      ...(tensileMpa === undefined ? {} : { strength: `${String(tensileMpa)} MPa` }),
      ...(strengthClass === undefined ? {} : { class: strengthClass }),
    };
    completed.add('material');
  }
  if (part.thickness === undefined && thicknessMm !== undefined) {
    now = { ...now, thickness: `${String(thicknessMm)} mm` };
    completed.add('thickness');
  }
  if (part.one_piece === undefined && onePiece !== undefined) {
    now = { ...now, one_piece: onePiece };
    completed.add('one_piece');
  }
  return { part: now, completed };
}

/** How what the plan states stands to what the pack says. */
export function compareMaterials(
  part: Part,
  stated: SettledMaterial,
  pack: SettledMaterial | undefined,
  completed: ReadonlySet<Completed>,
): PackMaterial {
  if (pack?.class === undefined || part.zones !== undefined) return 'not in the packs';
  if (completed.has('material')) return 'only in the pack';
  if (stated.class === undefined) return 'differs';
  if (stated.class === pack.class) {
    const bothNamed = stated.family !== undefined && pack.family !== undefined;
    return bothNamed && stated.family !== pack.family ? 'differs' : 'agrees';
  }
  const [mine, theirs] = [steelRank(stated.class), steelRank(pack.class)];
  if (mine === undefined || theirs === undefined) return 'differs';
  return mine < theirs ? 'plan is weaker' : 'plan is stronger';
}

/** The material that counts: the stronger of the two; of two metals neither stands for the part. */
export function strongerMaterial(
  stated: SettledMaterial,
  { material, saidBy }: PackPart,
  how: PackMaterial,
): SettledMaterial {
  if (material === undefined || how === 'not in the packs' || how === 'agrees' || how === 'plan is stronger')
    return stated;
  if (how === 'only in the pack') {
    return {
      ...stated,
      provenance: 'table',
      notes: [...stated.notes, `The plan does not state it: ${saidBy}.`],
    };
  }
  const { contradictions } = stated;
  if (how === 'plan is weaker') {
    return {
      ...material,
      contradictions,
      notes: [...material.notes, `The plan states weaker steel; this is ${saidBy}.`],
    };
  }
  if (stated.class === material.class || stated.class === undefined) return stated;
  return {
    readings: stated.readings,
    coldWork: stated.coldWork,
    provenance: 'stated',
    reason: `The plan says ${stated.class} and the maker’s document ${material.class ?? 'another material'} (${saidBy}); settle which of the two it is.`,
    notes: stated.notes,
    contradictions,
  };
}
