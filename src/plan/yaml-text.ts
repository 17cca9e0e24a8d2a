/** A text as a YAML scalar that reads back as the same text: bare where nothing in it could mean something else. */
export function yamlText(text: string): string {
  return isBare.test(text) && !readsAsOther.test(text) ? text : JSON.stringify(text);
}

/** Nothing in it that ends, quotes or comments in block or flow form. */
const isBare =
  /^(?:[\p{L}\p{N}][\p{L}\p{M}\p{N}._+/@-]*(?: [\p{L}\p{M}\p{N}._+/@-]+)*|sha256:[0-9a-f]{64})$/u;

/** Words that YAML 1.2 reads as a truth, as nothing or as a number; those of YAML 1.1 too, for editors that still read it. */
const readsAsOther =
  /^(?:true|false|null|yes|no|on|off|y|n|\d[\d_]*(?:\.[\d_]*)?(?:e[+-]?\d*)?|0[xob][\da-f_]*)$/i;
