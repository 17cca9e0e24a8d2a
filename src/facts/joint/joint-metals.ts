import type { Fact } from '../fact.ts';
import { computed, known, unknown } from '../make-fact.ts';
import { trustedClass } from '../papers/maker-evidence.ts';
import { coldWorked } from '../part/part-strength-facts.ts';
import type { JointSurvey, PartSurvey, Survey } from '../survey.ts';
import { steelRank, strengthClasses } from '../../steel/strength-class.ts';
import { settleMaterial } from '../../steel/settling/settle-material.ts';

interface StackContext {
  readonly at: string;
  readonly own: PartSurvey;
  /** End to end a new piece can be joined to the rest of its own part. */
  readonly isToItself: boolean;
  readonly insert: JointSurvey['joint']['insert'];
}

/** The strength classes of the stack; of a sheet without one it is said which. */
export function classesOf(
  survey: Survey,
  stack: readonly (PartSurvey | undefined)[],
  { at, own, isToItself, insert }: StackContext,
): Fact {
  if (stack.length < 2 && !isToItself) return unknown(otherSheetOpen, at);
  // The part itself is asked for its evidence where it is worked on.
  const counted = stack.map((sheet) => ({
    name: sheet?.name ?? unlistedSheet,
    reason: notKnown(sheet),
    stated: sheet?.material.class,
    class: sheet === undefined || sheet === own ? sheet?.material.class : trustedClass(survey, sheet),
  }));
  if (insert?.grade !== undefined) {
    const ofInsert = settleMaterial({ grade: insert.grade }).class;
    const name = `the insert (${insert.grade})`;
    counted.push({ name, reason: classOpen(name), stated: ofInsert, class: ofInsert });
  }
  const classes = [...new Set(counted.map((sheet) => sheet.class).filter((one) => one !== undefined))];
  const open = counted.find((sheet) => sheet.class === undefined);
  if (open === undefined) return known(classes, 'computed', at);
  // What is known still counts: a hardened sheet in the stack is there whatever the others are.
  if (classes.includes('press-hardened') || classes.includes('ultra-high-strength')) {
    return known(classes, 'computed', at, 'Not every sheet of the stack is known.');
  }
  return open.stated === undefined
    ? unknown(open.reason, at)
    : {
        known: false,
        reason: `That ${open.name} is ${open.stated} steel is read in no document of the maker for this vehicle.`,
        at,
        // Which steel, nobody has read; that it is one, a magnet tells.
        among: [...steels, ...classes],
      };
}

const steels = strengthClasses.filter((one) => steelRank(one) !== undefined || one === 'stainless');

const otherSheetOpen = 'What it is joined to is not stated: neither `to` nor `sheets` names another part.';

/** One sheet is enough; what is open of the others does not matter then. */
export function coldWorkedSheet(stack: readonly (PartSurvey | undefined)[], at: string): Fact {
  const all = stack.map((sheet) => sheet?.material.coldWork);
  const counts = all.find((one) => one?.is === true) ?? all.find((one) => one?.is === 'unknown');
  if (counts !== undefined) return coldWorked(counts, at);
  return all.includes(undefined)
    ? unknown('A sheet of the stack is no listed part.', at)
    : computed(false, at);
}

/** A magnet tells aluminium from steel; that takes no document. */
export function hasAluminium(stack: readonly (PartSurvey | undefined)[], at: string): Fact {
  if (stack.some((sheet) => sheet?.material.class === 'aluminium')) return computed(true, at);
  const open = classNotKnown(stack);
  return open === undefined ? computed(false, at) : unknown(open, at);
}

/** Says which sheet it is, in the words of `classesOf`, so that one missing grade is asked for once. */
function classNotKnown(stack: readonly (PartSurvey | undefined)[]): string | undefined {
  const index = stack.findIndex((sheet) => sheet?.material.class === undefined);
  return index < 0 ? undefined : notKnown(stack[index]);
}

const unlistedSheet = 'a sheet that is no listed part';

/** A grade that is written and not known is no grade that is left out. */
function notKnown(sheet: PartSurvey | undefined): string {
  const open = classOpen(sheet?.name ?? unlistedSheet);
  const { part, material } = sheet ?? {};
  const isWritten = part?.grade !== undefined || part?.strength !== undefined;
  return isWritten && material?.reason !== undefined ? `${open} ${material.reason}` : open;
}

function classOpen(name: string): string {
  return `The strength class of ${name} is not known.`;
}

/** Metals are told apart by hand and magnet; that takes no document. Glass and plastic are none, nor a lamp, sensor or trim of which no metal is stated. */
export function unlikeMetals(
  stack: readonly (PartSurvey | undefined)[],
  isToItself: boolean,
  at: string,
): Fact {
  const metal = stack.filter((sheet) => !isNoMetal(sheet));
  if (metal.length < 2 && metal.length < stack.length) return computed(false, at);
  if (stack.length < 2 && !isToItself) return unknown(otherSheetOpen, at);
  const open = classNotKnown(metal);
  if (open !== undefined) return unknown(open, at);
  const families = new Set(metal.map((sheet) => metalFamily(sheet?.material.class ?? '')));
  return computed(families.size > 1, at);
}

function isNoMetal(sheet: PartSurvey | undefined): boolean {
  const kind = sheet?.part.kind;
  if (kind === 'glass' || sheet?.material.class === 'plastic') return true;
  return (
    (kind === 'lamp' || kind === 'trim' || kind === 'sensor') &&
    sheet?.material.class === undefined &&
    sheet?.structural !== true
  );
}

function metalFamily(strengthClass: string): string {
  return ['aluminium', 'magnesium', 'composite'].includes(strengthClass) ? strengthClass : 'steel';
}
