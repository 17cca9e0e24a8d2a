/** One number, in the unit that the function names, or why there is none. */
export type Sized =
  { readonly ok: true; readonly value: number } | { readonly ok: false; readonly reason: string };

export function sized(value: number): Sized {
  return { ok: true, value };
}

export function unsized(reason: string): Sized {
  return { ok: false, reason };
}
