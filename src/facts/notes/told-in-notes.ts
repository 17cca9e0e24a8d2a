import type { FactNames } from '../../generated/fact-names.ts';
import { pathText } from '../entry-sheets.ts';
import type { Fact } from '../fact.ts';
import { computedOr } from '../make-fact.ts';
import type { OperationSurvey, Survey } from '../survey.ts';
import { troubleWords } from './trouble-words.ts';
import type { TroublePlace, TroubleWords } from './trouble-words.ts';

type NoteFact = Extract<FactNames['plan'], 'plan.trouble_in_notes'>;

interface Note {
  readonly at: string;
  readonly text: string;
}

/** What free notes tell of trouble, in plain words. Nothing else reads a note. */
export function noteFacts(survey: Survey): Readonly<Record<NoteFact, Fact>> {
  const found: Note[] = [];
  collectNotes(survey.plan, '', found);
  const told = found.filter((note) => tellsOfTrouble(survey, note));
  return {
    'plan.trouble_in_notes': computedOr(
      told.map(({ at, text }) => `${pathText(survey.plan, at)}: “${text.trim()}”`).join('; ') || undefined,
      told[0]?.at ?? '',
      'No note tells of trouble in words that are known.',
    ),
  };
}

function collectNotes(value: unknown, at: string, into: Note[]): void {
  if (Array.isArray(value)) {
    value.forEach((one: unknown, index) => {
      if (typeof one === 'object') collectNotes(one, `${at}/${String(index)}`, into);
    });
  } else if (typeof value === 'object' && value !== null) {
    for (const [key, one] of Object.entries(value)) {
      if (key === 'note' && typeof one === 'string') into.push({ at: `${at}/note`, text: one });
      else if (typeof one === 'object') collectNotes(one, `${at}/${key}`, into);
    }
  }
}

const mended =
  /(?<!\bnot )(?<!\bnever )\b(?:renewed|replaced|exchanged|gone|put right|repeated|done again|scrapped|sent back|cut out|found sound|made good)\b/i;

function tellsOfTrouble(survey: Survey, { at, text }: Note): boolean {
  return troubleWords.some(
    (words) => tells(text, words) && !(words.mended && mended.test(text)) && isPlace(survey, words.where, at),
  );
}

/** Denied is what stands behind the word that denies; "cracks: none" denies it after. What is only looked for is not told of. */
const deniedBefore =
  /\b(?:no|not|none|nothing|never|neither|nor|without|free of|if|whether|should|(?:check(?:ed)?|look(?:ed)?|tested) for|against)\b/i;
const deniedAfter =
  /(?::\s*(?:none|no|nil)\b|\bnone\b|\bnowhere\b|\bno longer\b|\bany ?more\b|\bnot (?:used|needed)\b)/i;

/** Whether a text tells of the trouble in one of its clauses, without denying it there. */
export function tells(text: string, words: Omit<TroubleWords, 'where'>): boolean {
  const small = text.toLowerCase();
  if (!words.gate.some((piece) => small.includes(piece))) return false;
  return clausesOf(text).some((clause) => saysSo(clause, words));
}

function saysSo(clause: string, { says, harmless }: Pick<TroubleWords, 'says' | 'harmless'>): boolean {
  const match = says.exec(clause);
  if (match === null || harmless?.test(clause) === true) return false;
  const before = clause.slice(0, match.index);
  return !deniedBefore.test(before) && !deniedAfter.test(clause.slice(match.index));
}

function clausesOf(text: string): readonly string[] {
  return text.split(/[,;!?()]|\.(?=\s|$)|\bbut\b/i);
}

function isPlace(survey: Survey, where: TroublePlace, at: string): boolean {
  switch (where) {
    case 'anywhere':
      return true;
    case 'as it goes':
      return isAsItGoes(at);
    case 'not on scrap':
      return isAsItGoes(at) && !isOfScrap(survey, at);
    case 'cold work':
      return isColdWork(survey, at);
    case 'spots':
      return survey.operations.some(({ joints }) =>
        joints.some((one) => at.startsWith(`${one.at}/`) && /spot/.test(one.joint.method ?? '')),
      );
    case 'checks':
      return at.startsWith('/verify/') && !at.startsWith('/verify/scan_before/');
    case 'restraints':
      return at.startsWith('/verify/restraints/');
    case 'road test':
      return at.startsWith('/verify/road_test/');
    case 'new parts':
      return survey.parts.every(({ part }) => part.condition !== 'recycled' && part.donor === undefined);
  }
}

/** Notes on the job, the blow and earlier repairs tell how the vehicle came. */
function isAsItGoes(at: string): boolean {
  return !['/job/', '/damage/', '/vehicle/', '/verify/scan_before/', '/references/'].some((start) =>
    at.startsWith(start),
  );
}

/** A note of the part itself, or of its damage, where the part is replaced: what is bad there goes with it. */
function isOfScrap(survey: Survey, at: string): boolean {
  const part = survey.parts.find((one) => at.startsWith(`${one.at}/`));
  if (part === undefined || at.startsWith(`${part.at}/operations/`)) return false;
  return (
    at.startsWith(`${part.at}/damage/`) || part.operations.some(({ operation }) => operation.do === 'replace')
  );
}

function isColdWork(survey: Survey, at: string): boolean {
  const part = survey.parts.find((one) => at.startsWith(`${one.at}/`));
  if (part === undefined) return false;
  const own = part.operations.find((one) => at.startsWith(`${one.at}/`));
  // What is straightened cold and told of with heat is asked about before work begins (heatTold).
  if (own?.straightens === true) return false;
  if (own === undefined) return !part.operations.some(plansHeat);
  return !plansHeat(own) && !own.joints.some((one) => at.startsWith(`${one.at}/`));
}

function plansHeat({ heats }: OperationSurvey): boolean {
  return heats !== false;
}
