import { schemaPartAt } from '../plan/schema-part.ts';

/** One thing that a draft asks of its author. */
export interface DraftQuestion {
  /** Where the answer stands in a plan. */
  readonly path: readonly string[];
  /** Option of the command line, without its dashes. */
  readonly option: string;
  /** As it is asked. */
  readonly question: string;
  readonly hint?: string;
}

export const draftQuestions: readonly DraftQuestion[] = [
  { path: ['job', 'number'], option: 'job', question: 'Job number' },
  { path: ['job', 'opened'], option: 'opened', question: 'Job opened on', hint: 'a day, such as 2026-10-05' },
  { path: ['job', 'written_by', 'name'], option: 'by', question: 'Who writes the plan' },
  {
    path: ['job', 'written_by', 'role'],
    option: 'role',
    question: 'In which role',
    hint: 'such as estimator',
  },
  { path: ['vehicle', 'maker'], option: 'maker', question: 'Maker of the vehicle' },
  { path: ['vehicle', 'model'], option: 'model', question: 'Model' },
  { path: ['vehicle', 'body'], option: 'body', question: 'Body', hint: 'saloon, wagon, hatchback …' },
  { path: ['vehicle', 'model_year'], option: 'year', question: 'Model year', hint: 'such as 2021' },
  { path: ['vehicle', 'model_year_from'], option: 'year-from', question: 'How the model year is known' },
  {
    path: ['vehicle', 'vin'],
    option: 'vin',
    question: 'Identification number',
    hint: '17 characters, as read',
  },
  {
    path: ['vehicle', 'confirmed_at'],
    option: 'confirmed-at',
    question: 'Second place where the number was read and agreed',
  },
  { path: ['vehicle', 'market'], option: 'market', question: 'Market that it was built for' },
  { path: ['vehicle', 'drive'], option: 'drive', question: 'Drive' },
];

const longestHint = 66;

/** The way into a list follows a plan that has one. */
const onePart = { parts: [{}] };

/** The words that a place of a plan takes, as many as fit on a line; undefined where it takes any. */
export function wordsAt(path: readonly string[]): string | undefined {
  const words = schemaPartAt(onePart, path)?.enum;
  if (words === undefined) return undefined;
  let text = '';
  for (const word of words) {
    const longer = text === '' ? word : `${text}, ${word}`;
    if (longer.length > longestHint) return `${text} …`;
    text = longer;
  }
  return text;
}
