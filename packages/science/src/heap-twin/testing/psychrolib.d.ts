/** What the tests use of PsychroLib (ASHRAE Handbook Fundamentals 2017, chapter 1), in SI units. */
declare module 'psychrolib' {
  interface PsychroLib {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** Over ice below the triple point, over water above; °C to Pa. */
    GetSatVapPres(temp_degC: number): number;
    /** kg/kg. */
    GetHumRatioFromVapPres(vapour_Pa: number, pressure_Pa: number): number;
    /** kg/m³. */
    GetMoistAirDensity(temp_degC: number, humidity_kgPerKg: number, pressure_Pa: number): number;
    /** J per kg of dry air. */
    GetMoistAirEnthalpy(temp_degC: number, humidity_kgPerKg: number): number;
    /** Where so much vapour is all that the air can hold, °C. */
    GetTDewPointFromVapPres(temp_degC: number, vapour_Pa: number): number;
  }
  const psychrolib: PsychroLib;
  export default psychrolib;
}
