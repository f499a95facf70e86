import { USUAL_WATER_TEMPERATURE, WATER_TEMPERATURE_RANGE } from "../../calc/pipe/waterProperties";
import { PRESSURE_RANGE, pressureHead } from "../../calc/pump/pressureHead";
import { declare } from "../contract/declaration";
import { optional } from "../contract/optional";
import { quantityResult } from "../contract/result";
import { quantity } from "../contract/scalars";

export const PRESSUREHEAD = declare({
  name: "PRESSUREHEAD",
  topic: "pipe",
  summary: "Gives the head of water that a pressure stands for, as a gauge on a pump or a pump's label states it.",
  formula: "h = p / (ρ g)",
  source: "Hydrostatics, any hydraulics text; density of water: G. S. Kell (1975)",
  limits:
    "Of a gauge, which reads the pressure above the air's. The head is that at the gauge: add its height above the water, " +
    "and the velocity head, for the head of a pump.",
  args: {
    pressure: quantity("pressure", "Pressure, as the gauge reads it; below zero is suction", PRESSURE_RANGE),
    water_temperature: optional(
      quantity("temperature", "Water temperature", WATER_TEMPERATURE_RANGE),
      "59 °F (15 °C)",
      { US: 59, SI: USUAL_WATER_TEMPERATURE },
    ),
  },
  result: quantityResult("head", "the head of water"),
  examples: [
    {
      args: [10],
      gives: 23.087,
      within: 0.0002,
      from: "1 psi = 2.309 ft of water at 60 °F: 62.37 lb/ft³ (MWH, Table C-2), 144 / 62.37 × 10 = 23.09 ft",
    },
    {
      args: [98.0665, 4, "SI"],
      gives: 10.0003,
      within: 0.00001,
      from: "by hand: a technical atmosphere is 10 m of water at 1000 kg/m³; at 4 °C 999.97 kg/m³",
    },
  ],
  compute: ({ pressure, water_temperature }) => pressureHead(pressure, water_temperature),
});
