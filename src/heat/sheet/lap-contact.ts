import { firstOutside } from './sheet-range.ts';

/** What joins two sheets that lie on each other. */
export type LapContact =
  | { readonly kind: 'full' }
  /** Dry flanges pressed together have some 1,000 to 10,000 W/(m²·K) (from memory). */
  | { readonly kind: 'stated'; readonly wattPerM2K: number }
  | {
      readonly kind: 'spots';
      readonly diameterMm: number;
      readonly pitchMm: number;
      /** Of the flange between the spots, W/(m²·K); 10,000 when absent: well pressed and clean. */
      readonly betweenWattPerM2K?: number;
    };

export interface LapSheets {
  readonly lapMm: number;
  readonly thicknessesMm: readonly [number, number];
  /** W/(m·K), the better conductor of the two at its best. */
  readonly conductivity: number;
}

/** Ten times more changes nothing: the sheets differ by less than a kelvin a few millimetres into the lap. */
export const fullContact = 1e6;

export function lapContactFault(contact: LapContact): string | undefined {
  const bound = (
    what: string,
    value: number,
    least: number,
    most: number,
    unit: string,
  ): string | undefined => firstOutside('a lap', [{ what, value, least, most, unit }]);
  switch (contact.kind) {
    case 'full':
      return undefined;
    case 'stated':
      return bound('contact', contact.wattPerM2K, 0, fullContact, 'W/m²K');
    case 'spots':
      return (
        bound('spot diameter', contact.diameterMm, 2, 12, 'mm') ??
        bound('spot pitch', contact.pitchMm, contact.diameterMm, 300, 'mm') ??
        bound('contact between the spots', contact.betweenWattPerM2K ?? 0, 0, fullContact, 'W/m²K')
      );
  }
}

/**
 * Conductance between the sheets, W/(m²·K).
 *
 * A row of spots is smeared over the lap: each passes k·(πD²/4)/d from the middle of one sheet to the middle of the
 * other. What the heat meets on its way towards a spot within the sheets, several times more, is left out, and the
 * smeared contact begins at the very edge of the lap. Both let too much through: hotter on the other sheet.
 */
export function lapConductance(
  contact: LapContact,
  { lapMm, thicknessesMm, conductivity }: LapSheets,
): number {
  switch (contact.kind) {
    case 'full':
      return fullContact;
    case 'stated':
      return contact.wattPerM2K;
    case 'spots': {
      const areaM2 = (Math.PI / 4) * (contact.diameterMm / 1000) ** 2;
      const wayM = (thicknessesMm[0] + thicknessesMm[1]) / 2000;
      const flangeM2 = (contact.pitchMm / 1000) * (lapMm / 1000);
      const spots = (conductivity * areaM2) / wayM / flangeM2;
      return Math.min(fullContact, spots + (contact.betweenWattPerM2K ?? 1e4));
    }
  }
}
