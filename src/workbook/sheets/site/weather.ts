import type { SheetLayout } from "../../layout";

/** The hot spell in which the basin runs low. */
export function weather(s: SheetLayout): void {
  s.section("Weather for water loss");
  s.input({
    name: "AirTemp",
    label: "Air temperature",
    kind: "temperature",
    min: { US: 20, SI: -5 },
    max: { US: 125, SI: 50 },
    message: "Air in a hot spell, mean of day and night.",
  });
  s.input({
    name: "Humidity",
    label: "Relative humidity",
    kind: "share",
    min: 0,
    max: 1,
    message: "Relative humidity in a hot spell, as a percentage.",
  });
  s.input({
    name: "Wind",
    label: "Wind",
    kind: "wind",
    min: 0,
    max: { US: 60, SI: 100 },
    message: "Wind in a hot spell as a weather report gives it, in the open.",
  });
  s.input({
    name: "Latitude",
    label: "Latitude",
    kind: "number",
    unit: "degrees",
    min: -65,
    max: 65,
    message: "Latitude of the site in degrees, south negative; it sets the strength of the sun.",
  });
}
