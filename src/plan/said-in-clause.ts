/** Words that, before a thing in its clause, say that it is not so. */
const deniedBefore =
  /\b(?:no|not|none|never|nothing|neither|nor|without|free of|instead of|rather than|other than|away from|apart from|separate(?:d|ly)? from|avoid(?:s|ed|ing)?)\b/i;
const deniedAfter = /^(?:\s+(?!and\b)\S+){0,2}\s+(?:not|never|forbidden|kept (?:out|away|apart|off))\b/i;
/** "never the discs" of "never the discs, brushes or files of the steel bay"; "never primed" has a verb of its own. */
const opensList = /^(?:and |but )?(?:no|not|none|never|neither|without)(?: (?!\w+ed\b)\w+){0,3}$/i;

/** The clause of a text in which a form is said and not denied. For words of a person in English; a form bears neither `g` nor `u`. */
export function saidInClause(text: string | undefined, form: RegExp): string | undefined {
  if (text === undefined || !form.test(text)) return undefined;
  const clauses = text.split(/[,;.:()](?!\d)|\bbut\b|\bthen\b/i).map((clause) => clause.trim());
  return clauses.find((clause, index) => {
    const found = form.exec(clause);
    if (found === null) return false;
    const isInList = opensList.test(clauses[index - 1] ?? '') && !/^\w+ed\b/i.test(clause);
    return (
      !isInList &&
      !deniedBefore.test(clause.slice(0, found.index)) &&
      !deniedAfter.test(clause.slice(found.index + found[0].length))
    );
  });
}
