/** The steps of a JSON pointer (RFC 6901), unescaped. */
export function pointerSteps(pointer: string): readonly string[] {
  if (pointer === '') return [];
  return pointer
    .slice(1)
    .split('/')
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));
}

/** The pointer one step further. */
export function pointerTo(pointer: string, step: string | number): string {
  return `${pointer}/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`;
}
