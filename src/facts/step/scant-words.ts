/** One of these stands in each text that tells of too little. To look for them costs next to nothing. */
const gate = [
  'none',
  'little',
  'bit ',
  'left',
  'leftover',
  'rust',
  'corrode',
  'need',
  'necessary',
  'as far as',
].concat(['half', 'sparing']);
const scant =
  /(?:[,;:] ?|^)(?:so )?(?:none|nothing)\b(?! (?:else|but|other|left))|\b(?:a (?:little|bit)(?! (?:over|more|beyond))|(?:what(?:ever)?|the bit|the rest) (?:was|is|that was|of the can) left|what(?:ever)? was there|left-?overs?|sparingly|as far as (?:it|the can) (?:went|reached|lasted)|half (?:a|the) (?:can|tube|cartridge))\b|\b(?:does not|doesn['’]t|will not|won['’]t|cannot|never|no) (?:rusts?|corrodes?|corrosion)\b|\b(?:needs?|wants?) (?:none|no (?:wax|primer|sealer|protection))\b|\bnot (?:needed|necessary)\b/i;

/**
 * Whether words for a coat or a sealer tell that there is too little of it, or none: "a little, what was left", "does not rust, none". English
 * alone is read.
 */
export function saysScant(text: string | undefined): boolean {
  if (text === undefined) return false;
  const small = text.toLowerCase();
  return gate.some((piece) => small.includes(piece)) && scant.test(text);
}
