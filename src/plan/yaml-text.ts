/** A text as a YAML scalar that reads back as the same text: bare where nothing in it could mean something else. */
export function yamlText(text: string): string {
  return isBare.test(text) && !readsAsOther.test(text) ? text : JSON.stringify(text);
}

/** Nothing in it that ends, quotes or comments in block or flow form. */
const isBare =
  /^(?:\p{L}[\p{L}\p{M}\p{N}._+/-]*(?: [\p{L}\p{M}\p{N}._+/-]+)*|\d{4}-\d{2}-\d{2}|\d+\.\d+\.\d+|sha256:[0-9a-f]{64})$/u;

/** Words that YAML 1.2 reads as a truth or as nothing; those of YAML 1.1 too, for editors that still read it. */
const readsAsOther = /^(?:true|false|null|yes|no|on|off|y|n)$/iu;
