import { heatWords } from './heat-words.ts';

/** Words of a free note that tell of trouble, each with what makes it none. English alone is read. */
export interface TroubleWords {
  /** One of these stands in each note that tells of it, in small letters. To look for them costs next to nothing. */
  readonly gate: readonly string[];
  readonly says: RegExp;
  /** What is meant where the clause holds this as well is harmless. */
  readonly harmless?: RegExp;
  /** Whether it is no trouble any more where the note says that the thing was renewed, or found sound. */
  readonly mended: boolean;
  readonly where: TroublePlace;
}

/**
 * Where such words are trouble: anywhere; `as it goes`: not where the vehicle is told of as it came or was hit; `not on scrap`: nor of a
 * part that is replaced; `cold work`: in the note of a part or operation that plans no heat; `spots`: of spot welds alone;
 * `checks`: of the checks after the repair; `restraints`: of their completion alone; `road test`: of that alone; `new parts`: where no part is said to be second-hand.
 */
export type TroublePlace =
  | 'anywhere'
  | 'road test'
  | 'restraints'
  | 'as it goes'
  | 'not on scrap'
  | 'cold work'
  | 'spots'
  | 'checks'
  | 'new parts';

export const troubleWords: readonly TroubleWords[] = [
  {
    gate: ['crack', 'dent'],
    says: /\b(?:crack(?:s|ed)?|dent(?:s|ed)?)\b/i,
    harmless: /\bsealer\b.*\b(?:renewed|new)\b/i,
    mended: true,
    where: 'not on scrap',
  },
  { ...heatWords, where: 'cold work' },
  {
    gate: ['pull', 'crooked', 'wander', 'drift', 'veer', 'off cent'],
    says: /\b(?:pull(?:s|ed|ing) (?:\w+ ){0,2}?(?:to (?:the )?(?:left|right|one side|side)|left|right|under|when)|still pulls|(?:slight )?pull to (?:the )?(?:left|right)|(?:wander|drift|veer)(?:s|ed|ing)|steering wheel (?:\S+ ){0,4}(?:crooked|off[- ]cent(?:re|er))|steering wheel (?:is |sits |stands )?off|wheel (?:is |sits |stands )crooked)\b/i,
    mended: true,
    where: 'checks',
  },
  {
    gate: ['not answer', 'not respond', 'not communicate', 'no communication', 'no answer', 'not driven'],
    says: /\b(?:(?:did|does|do|would) not (?:answer|respond|communicate)|no (?:answer|communication) (?:from|of|with)|not driven)\b/i,
    harmless: /\bat first\b/i,
    mended: true,
    where: 'checks',
  },
  {
    gate: ['wobbl', 'vibrat', 'shudder', 'judder', 'shimm', 'drift', 'wander'],
    says: /\b(?:wobbl(?:es?|ed|ing|y)|vibrat(?:es?|ed|ing|ions?)|shudder(?:s|ed|ing)?|judder(?:s|ed|ing)?|shimm(?:y|ies)|(?:drifts|drifted|wanders|wandered)\b)/i,
    harmless: /\b(?:balanced|phone|engine at idle)\b/i,
    mended: true,
    where: 'checks',
  },
  {
    gate: ['nois', 'rattl', 'knock', 'clunk', 'squeal', 'grinding', 'hum'],
    says: /\b(?:nois(?:e|es|y)|rattl(?:es?|ed|ing)|knock(?:s|ed|ing)|clunk(?:s|ed|ing)?|squeal(?:s|ed|ing)?|grinding|hum(?:s|med|ming)?)\b/i,
    harmless: /\b(?:usual|normal|wind noise as|same as before|listened|quiet)\b/i,
    mended: true,
    where: 'road test',
  },
  {
    gate: ['warning'],
    says: /\bwarning (?:light|lamp)s?\b|\b(?:light|lamp)s? (?:is |are |was |were )?on\b/i,
    harmless:
      /\b(?:goes? (?:out|off)|went (?:out|off)|(?:all|are|is|lights?|lamps?) (?:out|off)|with (?:the )?ignition|at start)\b/i,
    mended: true,
    where: 'road test',
  },
  {
    gate: ['lamp', 'light', 'warning', 'telltale'],
    says: /\b(?:lamp|light|warning|telltale)s?\b.*\b(?:comes? on|came on|lights? up|stays? (?:on|lit)|is lit|flickers?|flashes)\b/i,
    harmless: /\b(?:goes? (?:out|off)|went (?:out|off)|with (?:the )?ignition|at start)\b/i,
    mended: true,
    where: 'checks',
  },
  {
    gate: ['tape', 'click', 'loose', 'cable tie', 'glue', 'latch'],
    says: /\b(?:connectors?|plugs?|clips?|locks?|latch(?:es)?|buckles?|sockets?)\b.*\b(?:loose|taped|with (?:\w+ )?tape|cable[- ]ti(?:e|ed)|glued|(?:did|does|do|would|will) not (?:click|latch|lock|engage))\b|\bloose (?:connector|plug|clip)s?\b/i,
    harmless: /\bwrapped\b|\b(?:pushed|pressed) home\b|\b(?:seated|plugged in|clicked in) (?:again|anew)\b/i,
    mended: true,
    where: 'restraints',
  },
  {
    gate: ['expulsion', 'ground '],
    says: /\b(?:expulsion|ground (?:flush|down|flat|off))\b/i,
    mended: true,
    where: 'spots',
  },
  {
    gate: ['bolt', 'screw', 'rivet'],
    says: /\b(?:bolts?|screws?|(?:blind|pop) rivets?)\b.*\b(?:(?:instead of|in place of) (?:the |a |two |some )?(?:\w+ )?(?:rivets?|welds?|spots?|plugs?)|in (?:its|their) place)\b/i,
    harmless: /\b(?:old|same|worn) (?:bolt|screw)s?\b|\bby (?:the )?(?:page|maker|procedure|p)\b/i,
    mended: false,
    where: 'anywhere',
  },
  {
    gate: ['out of date', 'expired', 'run out', 'lapsed', 'overdue'],
    says: /\b(?:meter|gauge|tool|tester|target|bench|rig|calibration|certificate|adhesive|cartridge|primer|lot|batch|shelf life)\b.*\b(?:out of date|expired|run out|lapsed|overdue)\b/i,
    mended: true,
    where: 'anywhere',
  },
  {
    gate: ['to fit', 'until it fit', 'till it fit', 'to get it'],
    says: /\b(?:moved|set|shifted|bent|filed|slotted|elongated|enlarged|drilled out|pulled|hammered|pried)\b.*\b(?:to fit|to make (?:it|them) fit|(?:un)?till? it fit(?:s|ted)?|to get it (?:through|in|on|past))\b/i,
    harmless: /\b(?:harness|wiring|trim|carpet|seat|gun|arm|clamp|mat|hose|pipe)s?\b/i,
    mended: false,
    where: 'anywhere',
  },
  {
    gate: ['salvage', 'scrap', 'breaker', 'second-hand', 'used part'],
    says: /\b(?:salvage|scrap ?yard|breaker(?:['’]?s)?(?: yard)?|second-hand|used parts?(?! of))\b/i,
    mended: true,
    where: 'new parts',
  },
  {
    gate: ['patch'],
    says: /\b(?:patched|patch (?:was )?(?:welded|riveted|bonded|set|put))\b/i,
    harmless: /\b(?:software|firmware)\b/i,
    mended: true,
    where: 'not on scrap',
  },
  {
    gate: ['plate'],
    says: /\b(?:closed|covered|repaired|bridged|filled) (?:up )?(?:with|by) (?:a |an |two )?(?:\w+ )?plates?\b/i,
    mended: true,
    where: 'as it goes',
  },
];
