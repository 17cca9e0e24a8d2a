import type { Joint, Operation, Part, PartKind, Plan, PlanReferencesItem } from '../generated/plan-types.ts';
import type { SettledMaterial } from '../steel/settling/settle-material.ts';
import type { Coverage } from '../vehicle/coverage.ts';
import type { DerivationContext } from './context.ts';
import type { Completed, PackMaterial, PackPart } from './part/pack-part.ts';
import type { TriState } from './tri-state.ts';

export interface ReferenceSurvey {
  readonly reference: PlanReferencesItem;
  readonly at: string;
  /** What the report calls it: document and revision, or title, or id. */
  readonly name: string;
  readonly coverage: Coverage;
  /** Only a maker's procedure or bulletin can permit; undefined when the kind is not stated. */
  readonly mayPermit: TriState;
}

/** How far a citation carries an operation, from best to worst. */
export const citationStandings = [
  'covers',
  'cannot tell',
  'vin range',
  'other year',
  'other body',
  'other model',
  'other maker',
  'maker text without permission',
  'other kind',
  'not listed',
  'none',
] as const;

export type CitationStanding = (typeof citationStandings)[number];

export interface CitationSurvey {
  readonly at: string;
  readonly place?: string;
  /** The id that it names, as written. */
  readonly id?: string;
  readonly reference?: ReferenceSurvey;
  readonly standing: CitationStanding;
}

export interface OperationSurvey {
  readonly operation: Operation;
  readonly at: string;
  readonly part: PartSurvey;
  readonly citations: readonly CitationSurvey[];
  /** The citation that the operation rests on: the best of those it gives. */
  readonly restsOn?: CitationSurvey;
  readonly joints: readonly JointSurvey[];
  readonly cutsPartWay: TriState;
  readonly heats: TriState;
  /** The heat in which it is straightened, where that stands as an entry of its own; it has then none of its own. */
  readonly heatOf?: OperationSurvey;
  readonly straightens: TriState;
  /** Touches what carries the load: cuts, joins, heats, straightens or replaces. */
  readonly works: TriState;
  /** Welds, brazes, heats, grinds or cuts on the vehicle. */
  readonly hot: TriState;
  readonly electricWelding: TriState;
  /** Done with the part off the vehicle: stated, and possible for such a part. */
  readonly offVehicle: boolean;
}

export interface JointSurvey {
  readonly joint: Joint;
  readonly at: string;
  /** Of the sheets that it joins, mm; undefined where one of them, or its thickness, is not known. */
  readonly thinnestMm?: number;
}

export interface PartSurvey {
  readonly part: Part;
  readonly at: string;
  readonly name: string;
  readonly material: SettledMaterial;
  /** The kind that its name says and its `kind` plays down; `part.kind` is then that one. */
  readonly called?: PartKind;
  /** As stated, and always for a kind, and a strength, that carries crash load. */
  readonly structural: TriState;
  /** What the vehicle packs say that it is; what the plan leaves out is then taken from there. */
  readonly pack?: {
    readonly answer: PackPart;
    readonly completed: ReadonlySet<Completed>;
    readonly how: PackMaterial;
    /** As the plan states it. */
    readonly onePieceStated?: boolean;
  };
  readonly operations: readonly OperationSurvey[];
  /** Ids of the parts that it says it is joined to or layered with. */
  readonly names: ReadonlySet<string>;
}

/** A part and the same part of the other side. */
export interface TwoSides {
  readonly own: PartSurvey;
  readonly other: PartSurvey;
}

/** A plan with everything looked up once: what the fact sheets are written from. */
export interface Survey {
  readonly plan: Plan;
  readonly context: DerivationContext;
  /** Places of what is written and cannot be reckoned with. */
  readonly unread?: ReadonlySet<string>;
  readonly references: readonly ReferenceSurvey[];
  readonly referenceById: ReadonlyMap<string, ReferenceSurvey>;
  readonly parts: readonly PartSurvey[];
  readonly partById: ReadonlyMap<string, PartSurvey>;
  /** Parts of which the material was taken from a vehicle pack. */
  readonly gradesFromPacks?: ReadonlySet<Part>;
  /** The same part of the other side, where one stands before it in the plan. */
  readonly twins: ReadonlyMap<PartSurvey, PartSurvey>;
  /** Parts of which the plan has both sides, by the place of each. */
  readonly otherSide: ReadonlyMap<string, TwoSides>;
  /** The parts that name an id, in the order of the plan. */
  readonly namedBy: ReadonlyMap<string, readonly PartSurvey[]>;
  readonly operations: readonly OperationSurvey[];
}
