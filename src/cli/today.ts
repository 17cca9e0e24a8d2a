const millisecondsADay = 86_400_000;

/** In UTC, days since 1970-01-01. */
export function today(): number {
  return Math.floor(Date.now() / millisecondsADay);
}
