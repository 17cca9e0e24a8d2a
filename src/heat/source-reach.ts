/** What heats a sheet, as far as its worst is concerned. */
export type HeldSource = 'torch' | 'induction' | 'hot air' | 'infra-red panel' | 'oven' | 'other';

/**
 * What a source reaches on sheet when nobody says or measures how hot it gets, °C: the worst that is plausible. No standard
 * states it; common practice and makers' data, all from memory. A torch turns sheet bright orange within seconds, and an
 * inductor goes as far; hot air guns are sold up to 650 °C of air; a short-wave panel left close to dark sheet passes
 * 300 °C; ovens for paint end at 250 °C.
 */
export const worstSourceCelsius: Readonly<Record<HeldSource, number>> = {
  torch: 900,
  other: 900,
  induction: 900,
  'hot air': 650,
  'infra-red panel': 300,
  oven: 250,
};
