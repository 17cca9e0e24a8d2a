import { systemInWords } from './code-system.ts';
import { saysNone } from './step-draft.ts';

const noneAlone =
  /^(?:none|nothing|no(?: warning)? (?:lamps?|lights?)|all(?: lamps?| lights?)?(?: were)? (?:off|out))(?: (?:was|were|is|are))?(?: (?:lit|on|seen|shown))?\p{P}?$/iu;

/** What follows `none` and takes it back: an exception, or a lamp that came on after all. */
const takesBack =
  /\b(?:but|except\w*|other than|apart|save|besides|aside|lit|on|glow\w*|flash\w*|flicker\w*|came|comes|stay\w*|now|later|then)\b/i;

/** `none, has only oil, charge and brake` tells which lamps the vehicle has. */
const tellsOfFitting = /^(?:it |the (?:car|vehicle) )?(?:has|had) only\b/i;

const namesALamp =
  /\b(?:only|lamps?|lights?|warning|engine|oil|charge|battery|tyres?|tires?|pressure|coolant|park\w*|belt|fault|message|symbol)\b/i;

/** Whether what is told of the warning lamps as the vehicle came says that none was lit. Common practice. */
export function saysNoLampLit(text: string): boolean {
  const lamps = text.trim();
  if (saysNone(lamps) || noneAlone.test(lamps)) return true;
  const tail = /^none\s*[,;:.(]\s*(.+)$/i.exec(lamps)?.[1];
  if (tail === undefined || takesBack.test(tail)) return false;
  return tellsOfFitting.test(tail) || !(namesALamp.test(tail) || systemInWords(tail) !== undefined);
}
