import { EVAPORATION_RANGE, evaporationPerDay } from "../../calc/water/evaporation";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { aboveZero } from "../contract/range";
import { quantityResult } from "../contract/result";
import { number, quantity, share } from "../contract/scalars";

export const EVAPLOSS = declare({
  name: "EVAPLOSS",
  topic: "water",
  summary: "Gives the water that evaporates outdoors from an open surface in a day.",
  formula:
    "E = (Δ Rn + γ 6.43 (1 + 0.536 u₂)(es - ea)) / (2.45 (Δ + γ)) mm, Penman; Rn from latitude, month and sunshine; " +
    "u₂ = shelter × u 4.87 / ln(67.8 z - 5.42); × area",
  source:
    "H. L. Penman (1948, 1956), open water, as in Shuttleworth (1993); sun, vapor pressure and wind at 2 m: FAO-56 (1998), " +
    "Eq. 7, 8, 11, 13, 21 to 25, 35 to 40 and 47",
  limits:
    "Give means of day and night, and the wind as a weather report does, 33 ft (10 m) up in the open. Over a year of desert " +
    "weather it came 14% above what Lake Mead lost. Shade loses less, falling water and warm stone more. Splash, drift and " +
    "wicking are not in it and are often larger: add a share of your own.",
  args: {
    area: quantity("area", "Open water surface", aboveZero(EVAPORATION_RANGE.area)),
    air_temp: quantity("temperature", "Air temperature, mean of day and night", EVAPORATION_RANGE.airTemperature),
    humidity: share("Relative humidity, mean of day and night"),
    wind: quantity("wind", "Wind as reported, mean of day and night", EVAPORATION_RANGE.wind),
    latitude: number("Latitude in degrees, south negative", EVAPORATION_RANGE.latitude),
    month: number("Month, 1 to 12", { above: 0, ...EVAPORATION_RANGE.month }, { whole: true }),
    sunshine: optional(share("Sunny share of the daylight"), "0.8", 0.8),
    wind_height: optional(
      quantity("length", "Height the wind is measured at", EVAPORATION_RANGE.windHeight),
      "33 ft | 10 m",
      { US: "10 m", SI: 10 },
    ),
    shelter: optional(share("Share of the open wind that reaches the water"), "1, open", 1),
    elevation: optional(quantity("length", "Elevation above sea level", EVAPORATION_RANGE.elevation), "0", 0),
  },
  result: quantityResult("water", "the loss per day"),
  examples: [
    {
      args: [10, 30, 0.45, 0, 40, 7, 0.8, null, null, null, "SI"],
      gives: 74.97,
      within: 0.01,
      from:
        "by hand: es 4.243, ea 1.909 kPa, Δ 0.2434, γ 0.06737 kPa/°C; Ra 40.6, Rs 0.65 Ra = 26.4, Rso 30.45, Rn 0.92 × 26.4 - 41.4 × 0.1466 × " +
        "0.820 = 19.3 MJ; (0.2434 × 19.3 + 0.06737 × 6.43 × 2.334) / (2.45 × 0.3108) = 7.5 mm",
    },
  ],
  compute: ({ area, air_temp, wind_height, ...rest }) =>
    evaporationPerDay(area, { ...rest, airTemperature: air_temp, windHeight: wind_height }),
});
