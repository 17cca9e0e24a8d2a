/** To a tenth, as workshops read it. */
export function signedMillimetres(mm: number): string {
  const text = mm.toFixed(1);
  return Number(text) === 0 ? '0.0' : mm > 0 ? `+${text}` : text;
}
