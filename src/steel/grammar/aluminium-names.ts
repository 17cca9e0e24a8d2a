import type { NameForm } from './name-form.ts';

function series(alloy: string | undefined): string {
  const first = alloy?.charAt(0) ?? '';
  return /[567]/.test(first) ? `aluminium_${first}xxx` : 'aluminium';
}

/**
 * Aluminium by EN 573 and the Aluminum Association: four figures, of which the first tells the alloying elements, and a
 * temper by EN 515. The letter P of JIS H 4000 (sheet and plate) is passed over.
 */
export const aluminiumNames: readonly NameForm[] = [
  {
    standards: ['EN 573-3', 'JIS H 4000'],
    form: /^(?:EN)?(?:AW|AA|A(?=\d))?(?<alloy>[1-8]\d{3}[A-Z]?)(?:O|F|W|H\d{2,3}|T\d{1,4}[A-Z]?)$/,
    read: ({ alloy }) => ({ familyKey: series(alloy) }),
    open: true,
  },
  {
    standards: ['EN 573-3', 'JIS H 4000'],
    form: /^(?:ENAW|AW|AA|A(?=[567]\d{3}))(?<alloy>[1-8]\d{3}[A-Z]?)$/,
    read: ({ alloy }) => ({ familyKey: series(alloy) }),
    open: true,
  },
  {
    standards: ['EN 1706'],
    form: /^ENAC\d{5}(?:F|T\d)?$/,
    read: () => ({ familyKey: 'aluminium_casting' }),
    open: true,
  },
  {
    // The table of VDA 239-200 was not seen, so the name gives its alloy group and no strength.
    standards: ['VDA 239-200'],
    form: /^AL(?<alloy>[56])(?:STD|IBR|RS|HS|CR|OUT|BH|ST|STP|HDI|HDIP)?(?:[A-Z0-9/]{0,8})$/,
    read: ({ alloy }) => ({ familyKey: series(alloy) }),
    open: true,
  },
];
