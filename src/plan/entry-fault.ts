/** In what way an entry cannot be read as it stands. */
export type EntryFaultWord =
  | 'unknown key'
  | 'unknown word'
  | 'wrong kind'
  | 'unreadable quantity'
  | 'no such date'
  | 'outside the range'
  | 'too long'
  | 'repeated id'
  | 'points nowhere'
  | 'dated ahead'
  | 'names itself'
  | 'listed twice';

/** An entry that cannot be read as it stands: its value is unknown, the rest of the plan is judged. */
export interface EntryFault {
  readonly fault: EntryFaultWord;
  /** JSON pointer of the entry. */
  readonly pointer: string;
  /** What was expected, and the nearest known word. */
  readonly sentence: string;
}
