/**
 * Text as a SARIF message: braces are doubled, for one alone begins a placeholder (SARIF 2.1.0, 3.11.5), and what would read as
 * an embedded link loses that meaning by a backslash (3.11.6).
 */
export function sarifText(text: string): string {
  const plain = text.replace(/[{}]/gu, '$&$&');
  return plain.includes('](') ? plain.replace(/[[\]\\]/gu, '\\$&') : plain;
}
