const kinds: Readonly<Record<string, string>> = {
  string: 'a text',
  integer: 'a whole number',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'entries with keys',
};

/** The types that a schema asks for, in words: `a text or a list`. */
export function kindsOf(types: unknown): string {
  const named: readonly unknown[] = Array.isArray(types) ? types : [types];
  return named.map((type) => kinds[String(type)] ?? String(type)).join(' or ');
}

/** The words of an `enum`; none where it is no list. */
export function wordsOf(values: unknown): readonly string[] {
  return Array.isArray(values) ? values.map(String) : [];
}
