/**
 * The sheets of a tailored blank as drawings write them: `SPFC980Y 1.6T + SPFC590Y 1.4T`, `22MnB5 with patch HC340LA`. A plus
 * without blanks also begins a coating, so it parts a text only as a further way; every way is one to try, not an answer.
 */
export function blankParts(text: string): readonly (readonly string[])[] {
  const ways: (readonly string[])[] = [];
  const sheets = text.replace(/^(?:TWB|TRB|tailored(?:[- ](?:welded|rolled))?[- ]blank)s?\s*[:,]?\s+/i, '');
  const spaced = sheets
    .split(/\s+\+\s*|\s*\+\s+|\s+(?:with\s+)?(?:a\s+)?patch\s+(?:of\s+)?/i)
    .map((part) => part.trim());
  if (spaced.length > 1) ways.push(spaced);
  for (let at = text.indexOf('+'); at >= 0; at = text.indexOf('+', at + 1)) {
    ways.push([text.slice(0, at).trim(), text.slice(at + 1).trim()]);
  }
  return ways.filter((parts) => parts.length <= mostSheets && parts.every((part) => part.length >= 3));
}

const mostSheets = 4;
