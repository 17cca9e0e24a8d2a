/** What a change does to who is judged: `added` and `tightened` ask for more, `withdrawn` and `loosened` for less. */
export type ChangeKind = 'added' | 'withdrawn' | 'raised' | 'lowered' | 'tightened' | 'loosened' | 'changed';

/** One thing that differs between two versions of a pack, or between two packs. */
export interface PackChange {
  readonly kind: ChangeKind;
  /** What kind of thing it is. */
  readonly what: 'rule' | 'limit' | 'provision' | 'table';
  /** Id of a rule, what a limit is for, part and document of a statement. */
  readonly name: string;
  /** In a few words; absent where the name says it all. */
  readonly detail?: string;
}
