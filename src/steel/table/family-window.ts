/** Lowest and highest minimum that sheet of a family is made with, in MPa, and how far tensile strength may stand above yield. */
interface FamilyWindow {
  readonly yieldMpa: readonly [number, number];
  readonly tensileMpa: readonly [number, number];
  /** Least and greatest ratio of the minima, tensile strength over yield. */
  readonly ratio: readonly [number, number];
}

/**
 * Windows by the key of the family table: the rows of the grade table with some room on either side, and what sheet makers list
 * beyond them. Practice. A family without a window has none that could be wrong.
 */
const windows: Readonly<Record<string, FamilyWindow>> = {
  mild: { yieldMpa: [80, 290], tensileMpa: [240, 345], ratio: [1.05, 2.9] },
  high_strength_if: { yieldMpa: [140, 345], tensileMpa: [280, 490], ratio: [1.1, 2.2] },
  isotropic: { yieldMpa: [180, 345], tensileMpa: [280, 420], ratio: [1.05, 1.7] },
  rephosphorised: { yieldMpa: [140, 345], tensileMpa: [270, 490], ratio: [1.1, 2] },
  bake_hardening: { yieldMpa: [130, 385], tensileMpa: [260, 490], ratio: [1.05, 2] },
  dent_resistant_non_bh: { yieldMpa: [150, 320], tensileMpa: [280, 450], ratio: [1.05, 2] },
  solid_solution: { yieldMpa: [150, 420], tensileMpa: [280, 545], ratio: [1.05, 2.2] },
  structural: { yieldMpa: [160, 600], tensileMpa: [260, 700], ratio: [1, 2] },
  hsla: { yieldMpa: [200, 720], tensileMpa: [290, 850], ratio: [1.02, 1.7] },
  hsla_ultra_high: { yieldMpa: [600, 1150], tensileMpa: [650, 1300], ratio: [1.02, 1.4] },
  ferrite_bainite: { yieldMpa: [250, 720], tensileMpa: [400, 850], ratio: [1.05, 2] },
  dual_phase: { yieldMpa: [200, 1100], tensileMpa: [420, 1480], ratio: [1.25, 2.4] },
  dual_phase_high_ductility: { yieldMpa: [250, 1050], tensileMpa: [500, 1310], ratio: [1.1, 2.4] },
  trip: { yieldMpa: [300, 900], tensileMpa: [550, 1250], ratio: [1.1, 2.2] },
  twip: { yieldMpa: [300, 800], tensileMpa: [800, 1250], ratio: [1.1, 3] },
  quench_partition: { yieldMpa: [500, 1150], tensileMpa: [850, 1310], ratio: [1.05, 2] },
  complex_phase: { yieldMpa: [300, 1250], tensileMpa: [550, 1350], ratio: [1.05, 1.8] },
  martensitic: { yieldMpa: [450, 1600], tensileMpa: [700, 2000], ratio: [1.02, 1.7] },
};

export interface NamedStrengths {
  readonly familyKey: string;
  readonly yieldMinMpa?: number;
  readonly tensileMinMpa?: number;
}

/** Whether a name gives its family strengths that no sheet of the family has: one of the figures or the family is then wrong. */
export function outsideFamily({ familyKey, yieldMinMpa, tensileMinMpa }: NamedStrengths): boolean {
  const window = Object.hasOwn(windows, familyKey) ? windows[familyKey] : undefined;
  if (window === undefined) return false;
  const off = (value: number | undefined, [least, most]: readonly [number, number]): boolean =>
    value !== undefined && (value < least || value > most);
  const ratio =
    yieldMinMpa === undefined || tensileMinMpa === undefined ? undefined : tensileMinMpa / yieldMinMpa;
  return (
    off(yieldMinMpa, window.yieldMpa) || off(tensileMinMpa, window.tensileMpa) || off(ratio, window.ratio)
  );
}
