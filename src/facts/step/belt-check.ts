/** What is wrong with a belt, a buckle or a seat, in the words of a workshop. */
const fault =
  /\b(?:jam(?:s|med|ming)?|stick(?:s|ing)?|stuck|torn|tear|frayed|cut|damaged|defects?|defective|faulty|broken|cracked|bent|burnt|melted|stretched|slack|fail(?:s|ed)?|locked up)\b|(?:\b(?:not|never|no longer)|n[’']t) (?:\w+ )?(?:lock|latch|retract|return|reel|hold|click|engage|release|work|in order|ok|okay|right|fine)\w*/iu;

const denial = /\b(?:no|not|none|nothing|without|never|neither|nor)\b/iu;

/** After these what was wrong is gone, whatever it was. */
const seenTo = /\b(?:replaced|renewed|exchanged|new)\b/iu;

/** The clause that names a fault, where neither it nor the next one says that something was replaced; undefined where none does. */
export function beltFault(text: string | undefined): string | undefined {
  const clauses = (text ?? '').split(/[;:,.]+/u).map((clause) => clause.trim());
  return clauses.find((clause, index) => {
    const found = fault.exec(clause);
    if (found === null || seenTo.test(clause) || seenTo.test(clauses[index + 1] ?? '')) return false;
    // "Not in order" is a fault by its own denial; "no tear" is none.
    return denial.test(found[0]) || /n[’']t /iu.test(found[0]) || !denial.test(clause);
  });
}
