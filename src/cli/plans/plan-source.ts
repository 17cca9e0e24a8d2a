/** One plan to be judged, or what became of a path that was named. */
export type PlanSource =
  | { readonly kind: 'file'; readonly path: string; readonly shown: string; readonly named: boolean }
  | { readonly kind: 'standard input'; readonly shown: string }
  | { readonly kind: 'nothing found'; readonly shown: string; readonly sentence: string }
  /** What an ignore file keeps from being judged; never silent. */
  | { readonly kind: 'passed over'; readonly shown: string; readonly sentence: string };

/** The files among them. */
export function filesAmong(sources: readonly PlanSource[]): readonly string[] {
  return sources.flatMap((source) => (source.kind === 'file' ? [source.path] : []));
}
