/**
 * Whether to colour. A non-empty NO_COLOR beats everything in the environment, then a non-empty FORCE_COLOR (`0` and `false` mean
 * no), then whether the output is a terminal that can.
 */
export function wantsColour(
  environment: Readonly<Record<string, string | undefined>>,
  isTerminal: boolean,
): boolean {
  const { NO_COLOR: never, FORCE_COLOR: always, TERM: terminal } = environment;
  if (never !== undefined && never !== '') return false;
  if (always !== undefined && always !== '') return always !== '0' && always !== 'false';
  return isTerminal && terminal !== 'dumb';
}
