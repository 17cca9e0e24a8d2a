import { wordsIn } from '../words-in.ts';

/** Points, commas, capitals and the order of the names make no other person, nor does an initial for a name. */
export function samePerson(one: string, other: string): boolean {
  const [mine, theirs] = [wordsIn(one), wordsIn(other)];
  if (mine.length !== theirs.length || mine.length === 0) return false;
  const left = [...theirs];
  // Full names first, so that an initial is left for what no full name takes.
  return [...mine]
    .sort((a, b) => b.length - a.length)
    .every((name) => {
      const exact = left.indexOf(name);
      const index = exact >= 0 ? exact : left.findIndex((candidate) => isInitialOf(name, candidate));
      if (index < 0) return false;
      left.splice(index, 1);
      return true;
    });
}

function isInitialOf(one: string, other: string): boolean {
  return (one.length === 1 && other.startsWith(one)) || (other.length === 1 && one.startsWith(other));
}
