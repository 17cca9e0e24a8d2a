import { createHash } from 'node:crypto';

/** The policy of a page that may do nothing but be read: no script, nothing fetched, and no style but this one. */
export function pagePolicy(style: string): string {
  const digest = createHash('sha256').update(style).digest('base64');
  return `default-src 'none'; style-src 'sha256-${digest}'; base-uri 'none'; form-action 'none'`;
}
