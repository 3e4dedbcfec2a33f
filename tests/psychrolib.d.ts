/** The part of the package that is used here; it brings no types of its own. */
declare module 'psychrolib' {
  interface Psychrometrics {
    readonly SI: number;
    /** Sets the units of all that follows; SI is Celsius, pascals, shares of 1. */
    SetUnitSystem(system: number): void;
    GetSatVapPres(dryBulb: number): number;
    GetTDewPointFromVapPres(dryBulb: number, vapourPressure: number): number;
    GetHumRatioFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
    GetVapPresFromHumRatio(humidityRatio: number, pressure: number): number;
  }
  const psychrolib: Psychrometrics;
  export default psychrolib;
}
