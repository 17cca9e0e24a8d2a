import type { TroubleWords } from './trouble-words.ts';

/** Words of a heat that no key of the plan states. English alone is read. */
export const heatWords: Omit<TroubleWords, 'where'> = {
  gate: ['torch', 'heat', 'warm', 'hot air', 'red hot', 'glow', 'flame', 'induct', 'burner'],
  says: /\b(?:torch(?:ed)?|heated|heating|warm(?:ed|ing)?\b(?! up the (?:engine|scanner))|heat gun|hot air|red hot|glowing|flame(?!-free)|induct(?:ion|or)|burner|(?:with|under|by|using|apply|applied|some|little|gentle|mild|local) heat|heat (?:it|them|is applied|applied|to|until|till|up))\b/i,
  harmless:
    /\b(?:adhesive|glue|sealant|sealer|primer|foam|wax|paint|cartridge|engine|tape|sticker|emblem|undercoat|sound (?:pad|mat)|shop|workshop|bay|booth|hall|room|weather|air induction|induction (?:pipe|hose|manifold|system|hardened))\b|\bheated (?:\w+ )?(?:seat|windscreen|window|glass|mirror|washer|screen)/i,
  mended: false,
};
