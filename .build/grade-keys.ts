import { designationKey } from '../src/steel/designation-key.ts';

/** The comparison keys under which a grade of the table is found: its own, and those of its other spellings. */
export function gradeKeys(designation: string): readonly string[] {
  const key = designationKey(designation);
  return [...new Set([key, ...aliases(key)])];
}

/**
 * Other spellings of one name: ASTM without the MPa in brackets or by them alone, and without class or type (then several grades answer);
 * aluminium without `EN AW`, `extrusion` or temper.
 */
function aliases(key: string): readonly string[] {
  const aluminium = /^(?:ENAW)?(\d{4}A?)([OHT]\w*?)(?:EXTRUSION)?$/.exec(key);
  if (aluminium !== null) {
    const [, alloy = '', temper = ''] = aluminium;
    // Bare figures are no designation, so the alloy alone stays behind its prefix.
    return [`${alloy}${temper}`, `ENAW${alloy}`];
  }
  const american = /^(.+GRADE)(\d{2,3})\[(\d+)\]((?:CLASS|TYPE)\d)?$/.exec(key);
  if (american === null) return [];
  const [, word = '', ksi = '', mpa = '', kind = ''] = american;
  return [ksi, `${ksi}[${mpa}]`, mpa].flatMap((figures) => [`${word}${figures}${kind}`, `${word}${figures}`]);
}
