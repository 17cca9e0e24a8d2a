/** JIS G 3113 named its grades in kgf/mm² before it named them in MPa; from memory. */
const kilogramNames: Readonly<Record<string, string>> = {
  SAPH32: 'SAPH310',
  SAPH38: 'SAPH370',
  SAPH41: 'SAPH400',
  SAPH45: 'SAPH440',
};

/** UNS numbers of the stainless types in the table (ASTM A240); from memory. */
const unifiedTypes: Readonly<Record<string, string>> = {
  ...{ S20100: '201', S20153: '201LN', S30100: '301', S30103: '301L', S30153: '301LN', S30400: '304' },
  ...{ S30403: '304L', S31600: '316', S31603: '316L', S40900: '409', S43000: '430', S43035: '439' },
  ...{ S43940: '441', S44400: '444' },
};

/** Asked for every name that is not in the table, and most are none of these: a look at the key comes before each form. */
export function otherSpellings(key: string, standardNamed: boolean): readonly string[] {
  if (key.includes('/')) return [...pairSpellings(key), ...stainlessSpellings(key, standardNamed)];
  if (key.startsWith('DC0')) {
    const strip = /^(DC0[1-7])(LC|C\d{3})$/.exec(key);
    return strip === null ? [] : [`${strip[1] ?? ''}+${strip[2] ?? ''}`];
  }
  if (key.includes('TYPE')) {
    const commercial = /^(CS|DS|DDS|EDDS|FS)TYPE[A-C]$/.exec(key)?.[1];
    return commercial === undefined ? [] : [commercial];
  }
  const short = /^(HSLASF?|UHSS|SS)(\d{2}(?:(?:CLASS|TYPE)\d)?)$/.exec(key);
  if (short !== null) return standardNamed ? [`${short[1] ?? ''}GRADE${short[2] ?? ''}`] : [];
  const boron = /^(\d{2}MN(?:CR)?B\d)\.(\d)$/.exec(key);
  if (boron !== null) return [`${boron[1] ?? ''}${boron[2] ?? ''}`];
  if (key.startsWith('SAPH')) return Object.hasOwn(kilogramNames, key) ? [kilogramNames[key] ?? ''] : [];
  const aluminium = /^(?:EN)?(?:AW|AA|ALUMINI?UM|A)(\d{4}[A-Z]?)([OHT]\w*)?$/.exec(key);
  if (aluminium === null) return stainlessSpellings(key, standardNamed);
  const [, alloy = '', temper] = aluminium;
  return [temper === undefined ? `ENAW${alloy}` : `${alloy}${temper}`];
}

function pairSpellings(key: string): readonly string[] {
  const chinese = /^(HC|HD|CR|HR)(\d{3,4}\/\d{3,4}[A-Z]{2})D?$/.exec(key);
  if (chinese !== null) {
    const [, roll = '', rest = ''] = chinese;
    return [`${roll}${rest}`, `${roll === 'HC' || roll === 'CR' ? 'CR' : 'HR'}${rest}`];
  }
  const american = /^(?:CR|HR)?(DP|TRIP|MS)?(\d{3,4}T\/\d{3,4}Y)(DP|TRIP|MS)?$/.exec(key);
  return american === null ? [] : [`${american[1] ?? american[3] ?? ''}${american[2] ?? ''}`];
}

const temper = String.raw`(?:(1\/4|1\/2|3\/4|FULL|F)H(?:ARD)?)?`;
const type = new RegExp(
  String.raw`^(STAINLESS(?:STEEL)?)?(AISI|TYPE|SS|INOX)?([234]\d{2}(?:LN|L)?)${temper}(STAINLESS|SS)?$`,
);

/**
 * AISI 301, A240 304, S30400, 304 stainless, 301 1/2 hard; SUS301-H for SUS301-CSP-H. Three figures alone are no name: what stands
 * beside them must say what they are.
 */
function stainlessSpellings(key: string, standardNamed: boolean): readonly string[] {
  if (/^(?:UNS)?S\d{5}$/.test(key)) {
    const number = key.replace('UNS', '');
    return Object.hasOwn(unifiedTypes, number) ? [`TYPE${unifiedTypes[number] ?? ''}`] : [];
  }
  const japanese = /^S[UT]S(30[14])(?:CSP)?(1\/2H|3\/4H|E?H)?$/.exec(key);
  if (japanese?.[2] !== undefined) return [`SUS${japanese[1] ?? ''}CSP${japanese[2]}`];
  if (key.startsWith('STS')) return [key.replace('STS', 'SUS')];
  const match = type.exec(key);
  if (match === null) return [];
  const [, before, prefix, number = '', hard, after] = match;
  const said = standardNamed || (before ?? prefix ?? hard ?? after) !== undefined || number.endsWith('L');
  return said || number.endsWith('LN')
    ? [`TYPE${number}${hard === undefined ? '' : `${hard.replace(/^F$/, 'FULL')}HARD`}`]
    : [];
}
