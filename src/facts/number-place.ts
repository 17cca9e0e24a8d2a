import type { Plan } from '../generated/plan-types.ts';
import { wordsIn } from './words-in.ts';

/** Where a number stands that is not read off the vehicle. A number plate is registered, and is screwed on. */
const paperWords: ReadonlySet<string> = new Set(
  (
    'claim form forms paper papers paperwork registration document documents insurer insurers insured insurance policy policies ' +
    'logbook title invoice order email phone telephone call owner customer client database estimate quote website memory file receipt'
  ).split(' '),
);
const paperPhrases = [
  'log book',
  'e mail',
  'licence plate',
  'license plate',
  'number plate',
  'last job',
  'job card',
];

/** Where it is read off the vehicle. */
const onVehicle =
  /\b(?:stamp\w*|engrav\w*|(?<!number |licen[cs]e |registration )plate|windscreen|windshield|dash\w*|sill|pillar|door|label|sticker|chassis|frame|floor|tower|bulkhead|fire ?wall|scuttle|control unit|ecu|engine bay|boot|tunnel|cross ?member|rail|apron|strut)\b/i;

/** The papers that the number was taken from, where by the plan's own words nobody read it on the vehicle; else undefined. */
export function numberFromPaper({
  read_from: read,
  confirmed_at: confirmed,
}: Plan['vehicle']): string | undefined {
  const places = [read, confirmed].filter((text) => text !== undefined);
  return places.length > 0 && places.every(isPaper) ? places.join('; ') : undefined;
}

/** The papers that stand for the second reading, where the first was on the vehicle by the plan's own words; else undefined. */
export function confirmedOnPaper({
  read_from: read,
  confirmed_at: confirmed,
}: Plan['vehicle']): string | undefined {
  if (read === undefined || confirmed === undefined || isPaper(read)) return undefined;
  return isPaper(confirmed) ? confirmed : undefined;
}

function isPaper(text: string): boolean {
  const words = wordsIn(text);
  const plain = ` ${words.join(' ')} `;
  const isNamed =
    words.some((word) => paperWords.has(word)) ||
    paperPhrases.some((phrase) => plain.includes(` ${phrase} `));
  return isNamed && !onVehicle.test(text);
}
