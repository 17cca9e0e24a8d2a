import { isNoQualification } from '../refusals.ts';

/** What body technicians, painters and glaziers are tested in. English alone is read. */
const otherSkill =
  /weld|\bspot|\bM[AI]G\b|\bTIG\b|braz|bond|rivet|adhesive|paint|refinish|body|panel|structur|measur|alignment|\bsteels?\b|alumin|glaz|air.?condition/iu;
const highVoltage =
  /volt|\bHV\b|electr(?!\w* (?:arc|resistance|spot|weld))|traction|batter|\bEVs?\b|e-mobil|hybrid|live work|energi[sz]/iu;

/** Whether a qualification is none for traction voltage: none at all, or one that names another trade only. "Level 2" alone names none. */
export function isNoHighVoltageSkill(qualification: string | undefined): boolean {
  if (isNoQualification(qualification)) return true;
  const text = qualification ?? '';
  return otherSkill.test(text) && !highVoltage.test(text);
}

/** Whether the words for how an isolation is held name something that holds nothing: a note, a sign. */
export function holdsNothing(lock: string | undefined): boolean {
  return (
    /\b(?:note|notice|sign|sticker|paper|word|said|told|cone)\b/iu.test(lock ?? '') &&
    !/lock|tag|seal|cap\b/iu.test(lock ?? '')
  );
}
