import { saysRefused } from '../../plan/names-nothing.ts';
import { saysNone } from './step-draft.ts';

/** "No extinguisher at the bay", but not "No. 3 of 6 kg" and not "none but the two at the bay". */
const none = /^(?:none|nothing|no (?:fire )?extinguishers?)\b(?! (?:but|other|empty|missing))/i;

const unfit =
  /\b(?:empty|emptied|discharged|used up|spent|out of date|expired|overdue|lapsed|broken|defective|without pressure|no pressure|missing|stolen|on order|ordered|to be (?:refilled|filled|bought|fetched|tested)|being (?:refilled|tested)|(?:away|gone|out|sent) (?:for|to be)|at the (?:service|refiller))\b/i;

/** A denial takes it back ("none is empty"), and so does an exchange that was made. */
const mended =
  /\b(?:not|never|none|neither|nor|isn['’]t|aren['’]t)\b[^,;.]{0,20}\b(?:empty|emptied|discharged|spent|expired|overdue|lapsed|broken|missing)|\b(?:exchanged|replaced|swapped|was refilled|were refilled)\b/i;

const elsewhere =
  /\b(?:office|reception|store ?room|stores?|yard|outside|upstairs|cellar|basement|van|next door|neighbour\w*|another (?:room|hall|bay|building)|other (?:room|hall|building|end)|(?:spray|paint) (?:booth|shop)|canteen|corridor|entrance|minutes? (?:away|walk)|fetch\w*)\b/i;

const besideTheWork =
  /\b(?:beside|next to|within reach|at hand|at the (?:bay|work|welder|stand|lift|vehicle|car)|in the bay|by the (?:bay|work|welder|stand|lift|vehicle|car)|on the (?:bench|welder|trolley|stand|lift))\b/i;

const length =
  /(?:\b(?:within|about|at) )?\b(\d{1,4}(?:[.,]\d+)?) ?(m|metres?|meters?|ft|feet|yards?)\b(?= ?(?:away|off\b|from|further|down|up|distant|walk))|\bwithin (\d{1,4}(?:[.,]\d+)?) ?(m|metres?|meters?|ft|feet|yards?)\b/gi;

const water = /\b(?:water|hose|bucket|pail|wet (?:rag|cloth|blanket)s?)\b/i;
/** Another means beside it, or one of which the text does not say that it holds water. */
const otherMeans =
  /\b(?:powder|foam|CO2|CO₂|carbon dioxide|dry|sand|gel|mist|additive|clean agent|class [a-f]|ABC|\d+(?:[.,]\d+)? ?kg)\b|(?<!\bwater )(?<!\bwater[- ]jet )\bextinguishers?\b/i;

/**
 * What is stated as the extinguisher, where it is none, one that puts out nothing, water alone (on fuel and on what is live), or one that
 * stands in another room.
 */
export function extinguisherAmiss(text: string | undefined): string | undefined {
  if (text === undefined) return undefined;
  const plain = text.trim();
  if (saysNone(plain) || saysRefused(plain) || none.test(plain)) return plain;
  if (unfit.test(plain) && !mended.test(plain)) return plain;
  if (water.test(plain) && !otherMeans.test(plain)) return plain;
  const isNear = besideTheWork.test(plain) || extinguisherMm(plain) !== undefined;
  return !isNear && elsewhere.test(plain) ? plain : undefined;
}

/** How far the nearest one stands from the work, mm; undefined where no distance is written. */
export function extinguisherMm(text: string | undefined): number | undefined {
  if (text === undefined || !/\d/.test(text)) return undefined;
  const found = [...text.matchAll(length)].map(([, one, unit, other, otherUnit]) => {
    const number = Number((one ?? other ?? '').replace(',', '.'));
    const mm = mmOf((unit ?? otherUnit ?? 'm').toLowerCase());
    return number * mm;
  });
  return found.length === 0 ? undefined : Math.min(...found);
}

function mmOf(unit: string): number {
  if (unit.startsWith('f')) return 304.8;
  return unit.startsWith('y') ? 914.4 : 1000;
}
