/** A path as it is shown (with `/`) as a URI reference, RFC 3986; a whole path becomes a `file:` URI. */
export function fileUri(shown: string): string {
  // A lone surrogate has no UTF-8 form.
  const path = shown.replace(/\p{Surrogate}/gu, '\ufffd');
  const steps = path.split('/').map(encodeURIComponent).join('/');
  if (/^[A-Za-z]:\//u.test(path)) return `file:///${steps.replace('%3A', ':')}`;
  return path.startsWith('/') ? `file://${steps}` : steps;
}
