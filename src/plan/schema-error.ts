/** What a compiled schema validator reports, as far as planish reads it. */
export interface SchemaError {
  /** JSON pointer of the value that does not fit. */
  readonly instancePath: string;
  readonly keyword: string;
  readonly params: Readonly<Record<string, unknown>>;
}
