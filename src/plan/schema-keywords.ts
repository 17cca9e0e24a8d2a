/** The keywords of the plan's schema that a sentence about a fault is made from. */
export interface SchemaPart {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, SchemaPart>>;
  readonly description?: string;
  readonly type?: string | readonly string[];
  readonly enum?: readonly string[];
  readonly synonyms?: Readonly<Record<string, string>>;
  readonly format?: string;
  readonly dimension?: string;
  /** The text names a thing, a place or a person: words that refuse to say nothing here. */
  readonly namesSomething?: boolean;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly properties?: Readonly<Record<string, SchemaPart>>;
  readonly items?: SchemaPart;
  readonly if?: SchemaPart;
  readonly then?: SchemaPart;
  readonly else?: SchemaPart;
  readonly [keyword: string]: unknown;
}
