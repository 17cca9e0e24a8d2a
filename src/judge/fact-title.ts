import { factEntry } from '../packs/fact-dictionary.ts';
import type { FactDictionary } from '../packs/fact-dictionary.ts';

/** What the trade calls a fact: its title, else the first clause of its description. */
export function factTitle(dictionary: FactDictionary, name: string): string {
  const entry = factEntry(dictionary, name);
  if (entry === undefined) return name;
  if (entry.title !== undefined) return entry.title;
  const end = /[.;:](?:\s|$)| \(/u.exec(entry.description);
  return end === null ? entry.description : entry.description.slice(0, end.index);
}

/** As a sentence of its own. */
export function asSentence(text: string): string {
  const capital = text.slice(0, 1).toUpperCase() + text.slice(1);
  return /[.!?]$/u.test(capital) ? capital : `${capital}.`;
}
