/** One row of the table of `npm run bench`: what is compared, the ratio or figure, what is asked, and the times behind it. */
export function tell(what: string, value: number, asked: string, figures = ''): void {
  process.stdout.write(
    `${what.padEnd(58)} ${value.toFixed(2).padStart(7)}  ${asked.padEnd(9)} ${figures}`.trimEnd() + '\n',
  );
}
