/** A scalar that YAML reads as this very text: plain where nothing in it could be anything else, in double quotes otherwise. */
export function yamlScalar(text: string): string {
  const isPlain = /^[A-Za-z][A-Za-z0-9 -]*[A-Za-z0-9]$/u.test(text);
  const isOther = /^(?:true|false|null|yes|no|on|off)$/iu.test(text);
  return isPlain && !isOther ? text : JSON.stringify(text);
}
