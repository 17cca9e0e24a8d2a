/** Half-open stretch of the plan's text, in UTF-16 code units from its start. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

/** A single value. `source` is the text as the author wrote it, quotes included. */
export interface ScalarNode {
  readonly kind: 'scalar';
  readonly value: string | number | boolean | null;
  readonly source: string;
  readonly range: Range;
}

export interface MapEntry {
  readonly key: string;
  readonly keyRange: Range;
  readonly value: LocatedNode;
}

export interface MapNode {
  readonly kind: 'map';
  readonly entries: ReadonlyMap<string, MapEntry>;
  readonly range: Range;
}

export interface ListNode {
  readonly kind: 'list';
  readonly items: readonly LocatedNode[];
  readonly range: Range;
}

/**
 * What the rest of planish knows of a YAML document: plain nodes that carry their place.
 * It names no parser, so that another one can be put behind `readYaml`.
 */
export type LocatedNode = ScalarNode | MapNode | ListNode;
