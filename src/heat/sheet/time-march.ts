/** When heat is held, how long the cool-down is followed, and the steps in time. */
export interface MarchTimes {
  readonly ambientCelsius: number;
  readonly holdSeconds: number;
  /** Cool-down ends when no place is warmer than ambient by more than this, or after `coolSeconds`. */
  readonly endRiseKelvin: number;
  readonly coolSeconds: number;
  readonly steps: TimeSteps;
}

export interface TimeSteps {
  readonly firstSeconds: number;
  readonly growth: number;
}

export interface Marching {
  /**
   * Goes one step on. `ahead` is by how much of the last step's change the present row can be expected to change
   * again; 0 right after the step-on and the release.
   */
  advance(seconds: number, held: boolean, ahead: number): void;
  warmest(): number;
  /** Called after each step, with the time since the start. */
  keep(clock: number): void;
}

/**
 * Holds the heat and then lets go, until all is cold. Steps start small at the step-on and again at the release, and
 * grow with the time since, as the changes slow.
 */
export function marchTime(times: MarchTimes, marching: Marching): void {
  let clock = 0;
  const march = (until: number, held: boolean): void => {
    let step = times.steps.firstSeconds;
    let trend = 0;
    while (clock < until && (held || marching.warmest() - times.ambientCelsius > times.endRiseKelvin)) {
      // The last two steps share what is left, so that none is too tiny to be worth its cost.
      const left = until - clock;
      const dt = left <= step ? left : Math.min(step, left / 2);
      marching.advance(dt, held, trend * dt);
      trend = 1 / dt;
      clock = dt === left ? until : clock + dt;
      marching.keep(clock);
      step *= times.steps.growth;
    }
  };
  march(times.holdSeconds, true);
  march(times.holdSeconds + times.coolSeconds, false);
}

export function warmestOf(row: Float64Array): number {
  let most = -Infinity;
  for (const one of row) if (one > most) most = one;
  return most;
}
