import { firstWord } from './first-word.ts';

/**
 * Where a product, a place or a person should be named: "not used", "omitted", "later", "nobody had time". By the word that it begins with,
 * so that a text meets few forms, and without the flag `u`: a long form takes milliseconds to compile.
 */
const refusals: readonly (readonly [begins: string, form: RegExp])[] = [
  [
    'no none nil nothing nowhere nobody never without',
    /^(?:no|none|nil|nothing|nowhere|nobody|no one|never|without)(?:$|\s*[,;.(]|\s+[–—-])/,
  ],
  [
    'none nothing nobody no',
    /^(?:none|nothing|nobody|no one) (?:was |is |has |had |did )?(?:been )?(?:applied|available|done|fitted|had|in stock|laid|looked|needed|necessary|there|time|used|yet|checked|made|required)(?![0-9a-zÀ-ɏ])/,
  ],
  [
    'no nobody',
    /^(?:no (?:need|time|primer|wax|sealer|product|access|reason)|(?:nobody|no one) (?:asked|bothered|cares|did|does|ever|knows))(?![0-9a-zÀ-ɏ])/,
  ],
  [
    'not was were is are',
    /^(?:was |were |is |are )?not (?:(?:yet |been )?(?:applied|available|carried out|checked|done|fitted|in stock|laid|looked|made|necessary|needed|possible|primed|required|sealed|there|unplugged|used|waxed|yet)|this|at all|now|today|bothered|worth)(?![0-9a-zÀ-ɏ])/,
  ],
  [
    'was were is are skipped omitted forgotten left dispensed unused unnecessary',
    /^(?:(?:was |were |is |are )?(?:skipped|omitted|forgotten|left out|left off|dispensed with|unused|unnecessary)|left (?:plugged in|connected|undone|as (?:it |they )?(?:is|was|are|were|found)))(?![0-9a-zÀ-ɏ])/,
  ],
  [
    'is are still yet to',
    /^(?:is |are |still |yet )*to (?:be (?:applied|carried out|decided|done|laid|made|named|put on|sprayed|used)|come|do|follow)(?![0-9a-zÀ-ɏ])/,
  ],
  [
    'we i forgot did didn could couldn declined refused waived nope customer owner insurer',
    /^(?:(?:we |i )?(?:forgot|did(?:n[’']t| not)|could(?:n[’']t| not)|declined|refused|waived|nope)|(?:customer|owner|insurer) (?:declined|refused|waived|does|did|will))(?![0-9a-zÀ-ɏ])/,
  ],
  [
    'will later afterwards pending outstanding next tomorrow',
    /^(?:will be|later|afterwards|pending|outstanding|next week|tomorrow)(?![0-9a-zÀ-ɏ])/,
  ],
];

let byFirstWord: ReadonlyMap<string, readonly RegExp[]> | undefined;

function formsFor(word: string): readonly RegExp[] {
  if (byFirstWord === undefined) {
    const forms = new Map<string, RegExp[]>();
    for (const [begins, form] of refusals) {
      for (const one of begins.split(' ')) forms.set(one, [...(forms.get(one) ?? []), form]);
    }
    byFirstWord = forms;
  }
  return byFirstWord.get(word) ?? [];
}

/** Whether a text that should name something refuses to. "None needed" refuses; "No. 3 bay" and "none but the drawn holes" name something. */
export function saysRefused(text: string | undefined): boolean {
  if (text === undefined) return false;
  const forms = formsFor(firstWord(text));
  if (forms.length === 0) return false;
  // In small letters, for a form that minds none and has a range beyond ASCII takes ten times as long to compile.
  const plain = text.trim().replace(/\s+/g, ' ').toLowerCase();
  return !/^no\. ?(?:[a-zÀ-ɏ]{1,4}[- ]?)?\d/.test(plain) && forms.some((form) => form.test(plain));
}
