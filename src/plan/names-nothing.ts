import { firstWord } from './first-word.ts';

/** Where a product, a place or a person should be named: "not used", "omitted", "later", "nobody had time". */
const refusal = [
  '(?:no|none|nil|nothing|nowhere|nobody|no one|never|without)(?=$|\\s*[,;.(]|\\s+[–—-])',
  '(?:none|nothing|nobody|no one) (?:was |is |has |had |did )?(?:been )?(?:applied|available|done|fitted|had|in stock|laid|looked|needed|necessary|there|time|used|yet|checked|made|required)',
  '(?:was |were |is |are )?not (?:yet |been )?(?:applied|available|carried out|checked|done|fitted|in stock|laid|looked|made|necessary|needed|possible|primed|required|sealed|there|unplugged|used|waxed|yet)',
  '(?:was |were |is |are )?(?:skipped|omitted|forgotten|left out|left off|dispensed with|unused|unnecessary)',
  'no (?:need|time|primer|wax|sealer|product|access|reason)',
  '(?:is |are |still |yet )*to (?:be (?:applied|carried out|decided|done|laid|made|named|put on|sprayed|used)|come|do|follow)',
  'not (?:this|at all|now|today|bothered|worth)',
  "(?:we |i )?(?:forgot|did(?:n[’']t| not)|could(?:n[’']t| not)|declined|refused|waived|nope)",
  '(?:customer|owner|insurer) (?:declined|refused|waived)',
  '(?:nobody|no one) (?:asked|bothered|cares|did|does|ever|knows)',
  'left (?:plugged in|connected|undone|as (?:it |they )?(?:is|was|are|were|found))',
  '(?:will be|later|afterwards|pending|outstanding|next week|tomorrow|customer (?:does|did|will))\\b',
].join('|');

/** With which words such a text begins. */
const refusing: ReadonlySet<string> = new Set(
  (
    'no none nil nothing nowhere nobody never without was were is are not skipped omitted forgotten left dispensed unused unnecessary ' +
    'still yet to will later afterwards pending outstanding next tomorrow customer ' +
    'owner insurer forgot we i did didn could couldn declined refused waived nope'
  ).split(' '),
);

const beginsWithRefusal = new RegExp(`^(?:${refusal})(?![\\p{L}\\p{N}])`, 'iu');

/** Whether a text that should name something refuses to. "None needed" refuses; "No. 3 bay" and "none but the drawn holes" name something. */
export function saysRefused(text: string | undefined): boolean {
  if (text === undefined || !refusing.has(firstWord(text))) return false;
  const plain = text.trim().replace(/\s+/gu, ' ');
  return !/^no\. ?(?:\p{L}{1,4}[- ]?)?\d/iu.test(plain) && beginsWithRefusal.test(plain);
}
