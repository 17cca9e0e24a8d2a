// 49 CFR 565.15, table of model year codes (from memory): thirty codes from 1980 on, then the same again from 2010.
const codes = 'ABCDEFGHJKLMNPRSTVWXY123456789';
const firstYear = 1980;
const period = 30;

/**
 * The model years that the tenth place of a vehicle identification number in form may mean, the earlier first; none
 * when the character is no year code (U, Z, 0). By 49 CFR 565.15 the seventh place decides between the two for cars, and
 * for multipurpose vehicles and trucks up to 4536 kg gross rating: a digit there means 1980-2009, a letter 2010-2039.
 * Pass `seventhDecides` false for heavier vehicles, for an unknown weight class and outside that rule: both stay open.
 */
export function modelYears(vin: string, seventhDecides: boolean): readonly number[] {
  const place = codes.indexOf(vin.charAt(9));
  if (place < 0 || vin.length !== 17) return [];
  const early = firstYear + place;
  const late = early + period;
  if (!seventhDecides) return [early, late];
  return [/\d/u.test(vin.charAt(6)) ? early : late];
}
