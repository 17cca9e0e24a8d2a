/** Words of a heat that no key of the plan states. English alone is read. */
export const heatWords = {
  gate: ['torch', 'heat', 'warm', 'hot air', 'red hot', 'glow', 'flame', 'induct', 'burner'],
  says: /\b(?:torch(?:ed)?|heated|heating (?:it|them|up|with|the)\b|warmed|warming|warm (?:it|them|up|the|with|by)\b|heat gun|hot air|red hot|glowing|flame(?!-free)|induct(?:ion|or)|burner|(?:with|under|by|using|apply|applied|some|little|gentle|mild|local) heat|heat (?:it|them|is applied|applied|to|until|till|up))\b/i,
  harmless:
    /\b(?:adhesive|glue|sealant|sealer|primer|foam|wax|paint|cartridge|engine|tape|sticker|emblem|undercoat|shrink|shrunk|sleeve|harness|sound (?:pad|mat)|shop|workshop|bay|booth|hall|room|weather|air induction|induction (?:pipe|hose|manifold|system|hardened))\b|\bheated (?:\w+ )?(?:seat|windscreen|window|glass|mirror|washer|screen)/i,
  mended: false,
};
