import { ADVISED_DROP, CABLE_RANGE, cableDrop, findWire } from "../../calc/pump/cable";
import { WIRES, type Wire } from "../../calc/tables/wires";
import type { Argument } from "../contract/argument";
import { declare } from "../contract/declaration";
import { tableResult } from "../contract/result";
import { number, quantity, text } from "../contract/scalars";

const gaugeText = text('Cable size, such as "12 AWG" or "2.5 mm2"', { longest: 20 });

/** A cable size; a bare number is AWG in US units and mm² in SI. */
const gauge: Argument<Wire> = {
  ...gaugeText,
  choices: WIRES.map((wire) => wire.name),
  rule: (system) => (system === "US" ? "AWG" : "mm²"),
  read(raw, label, system) {
    const written = gaugeText.read(raw, label, system);
    const bare = /^\d+(\.\d+)?$/.test(written);
    return findWire(bare && system === "SI" ? `${written} mm2` : written, label);
  },
};

export const CABLEDROP = declare({
  name: "CABLEDROP",
  topic: "pump",
  summary: "Estimates the voltage lost in the cable to a pump, for planning only.",
  formula: "VD = 2 L R I, L one way, R of one warm copper conductor; single phase, power factor 1",
  source:
    "Ohm's law; R: NEC chapter 9, Table 8 (stranded, 75 °C) or IEC 60228, class 2 (from memory), brought to 75 °C",
  limits:
    "Planning only: cable sizes follow the electrical code, ampacity and installation, which this does not look at. " +
    "3% is the code's advice for a branch circuit (NEC 210.19, informational note), not a rule. Starting currents are higher.",
  caution:
    "For planning only; never size a cable by it. Line voltage near water kills: ground-fault protection (GFCI, RCD) " +
    "and a licensed electrician decide.",
  args: {
    amps: number("Current of the pump", CABLE_RANGE.amps, { unit: "A" }),
    length: quantity("length", "Length of the cable, one way", CABLE_RANGE.length),
    gauge,
    volts: number("Supply voltage", CABLE_RANGE.volts, { unit: "V" }),
  },
  result: tableResult("the voltage drop", [{ title: "Cable" }, { title: "Value" }, { title: "Unit" }]),
  examples: [
    {
      args: [8, 150, "12 AWG", 115],
      gives: [
        { at: [1, 1], is: 4.752 },
        { at: [2, 1], is: 0.041322 },
        { at: [3, 1], is: 110.248 },
        { at: [4, 1], is: "Over the advised 3%: ask the electrician about a thicker cable." },
      ],
      within: 0.0001,
      from: "by hand: 2 × 150 ft × 1.98 Ω / 1000 ft × 8 A = 4.752 V; 4.752 / 115 = 4.13%",
    },
  ],
  compute({ amps, length, gauge: wire, volts }) {
    const lost = cableDrop(amps, length, wire);
    const share = lost / volts;
    return [
      ["Volts lost", lost, "V"],
      ["Share of the supply", share, ""],
      ["Volts at the pump", volts - lost, "V"],
      [
        "Verdict",
        share > ADVISED_DROP
          ? "Over the advised 3%: ask the electrician about a thicker cable."
          : "Within the advised 3%.",
        "",
      ],
    ];
  },
});
