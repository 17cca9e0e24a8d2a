/** The calendar date, `2026-10-05`, of a day counted from 1970-01-01; the inverse of `readDate`. */
export function formatDay(day: number): string {
  // Counting from 1 March of year 0 puts the leap day last in its year, so that it shifts no other month.
  const fromMarch = day + daysFromMarchYear0;
  const fourCenturies = Math.floor(fromMarch / 146_097);
  const dayOfCycle = fromMarch - fourCenturies * 146_097;
  const yearOfCycle = Math.floor(
    (dayOfCycle -
      Math.floor(dayOfCycle / 1460) +
      Math.floor(dayOfCycle / 36_524) -
      Math.floor(dayOfCycle / 146_096)) /
      365,
  );
  const dayOfYear =
    dayOfCycle - (365 * yearOfCycle + Math.floor(yearOfCycle / 4) - Math.floor(yearOfCycle / 100));
  // Months from March on repeat the pattern 31 30 31 30 31, five of them 153 days.
  const monthFromMarch = Math.floor((5 * dayOfYear + 2) / 153);
  const dayOfMonth = dayOfYear - Math.floor((153 * monthFromMarch + 2) / 5) + 1;
  const month = monthFromMarch < 10 ? monthFromMarch + 3 : monthFromMarch - 9;
  const year = fourCenturies * 400 + yearOfCycle + (month <= 2 ? 1 : 0);
  return `${String(year).padStart(4, '0')}-${String(month).padStart(2, '0')}-${String(dayOfMonth).padStart(2, '0')}`;
}

const daysFromMarchYear0 = 719_468;
