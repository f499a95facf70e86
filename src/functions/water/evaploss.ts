import { aboveZero } from "../contract/range";
import { EVAPORATION_RANGE, evaporationPerDay } from "../../calc/water/evaporation";
import { declare } from "../contract/declaration";
import { quantityResult } from "../contract/result";
import { quantity, share } from "../contract/scalars";

export const EVAPLOSS = declare({
  name: "EVAPLOSS",
  topic: "water",
  summary: "Gives the water that evaporates from an open surface in a day.",
  formula:
    "w = A (pw - pa)(0.089 + 0.0782 V) / Y, p = 0.6108 exp(17.27 T / (T + 237.3)) kPa (pa × humidity), V in m/s, Y = 2501 - 2.361 T kJ/kg",
  source:
    "ASHRAE Handbook, HVAC Applications, natatoriums (SI constants); vapour pressure: FAO-56 (1998), Eq. 11; " +
    "latent heat: FAO-56, annex 3, Eq. 3-1",
  limits:
    "Still pools were measured at 74 % of it, pools in use at 40 to 70 % more. Splash, wind drift and wicking at the edges " +
    "are not in it and are often larger: add a share of your own. 0 where the air is so moist that nothing evaporates.",
  args: {
    area: quantity("area", "Open water surface", aboveZero(EVAPORATION_RANGE.area)),
    water_temp: quantity("temperature", "Water temperature", EVAPORATION_RANGE.waterTemperature),
    air_temp: quantity("temperature", "Air temperature", EVAPORATION_RANGE.airTemperature),
    humidity: share("Relative humidity of the air"),
    wind: quantity("wind", "Wind over the water", EVAPORATION_RANGE.wind),
  },
  result: quantityResult("water", "the loss per day"),
  examples: [
    {
      args: [10, 25, 30, 0.4, 3.6, "SI"],
      gives: 87.06,
      within: 0.002,
      from:
        "by hand: pw 3.1678 kPa, pa 0.4 × 4.2431 = 1.6972 kPa; 10 × 1.4706 × (0.089 + 0.0782) / 2440 = 0.0010077 kg/s " +
        "= 87.06 L a day (2440 kJ/kg taken for 25 °C)",
    },
  ],
  compute: ({ area, water_temp, air_temp, humidity, wind }) =>
    evaporationPerDay({ area, waterTemperature: water_temp, airTemperature: air_temp, humidity, wind }),
});
