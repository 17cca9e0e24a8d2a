/**
 * What heat conduction needs to know of a metal. Each metal is its own file; the solver takes any set, so that
 * published cases with constant values can be run in their own shape.
 */
export interface SheetProperties {
  /** kg/m³, taken as constant. */
  readonly density: number;
  /** W/(m·K) at a temperature in °C. */
  readonly conductivity: (celsius: number) => number;
  /** J/(kg·K) at a temperature in °C. */
  readonly heatCapacity: (celsius: number) => number;
  /**
   * J/kg, the exact integral of `heatCapacity` from an arbitrary zero. The solver uses its differences: a step of
   * 20 K would otherwise jump over the peak at 735 °C and lose a tenth of the heat.
   */
  readonly enthalpy: (celsius: number) => number;
}
