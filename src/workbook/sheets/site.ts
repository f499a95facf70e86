import { SOIL_NAMES } from "../../calc/ground/soil";
import { densityNames } from "../../calc/stone/density";
import { defineSheet } from "../layout";

/** Whose job it is, what was measured on site, and the units the workbook works in. */
export const site = defineSheet({
  name: "Site",
  order: 2,
  build(s, job) {
    s.title(
      "Site",
      "Fill in the marked cells from your notes of the visit. Everything else in the workbook follows from them.",
    );
    s.print({ pagesHigh: 1 });

    s.section("Job");
    s.result({
      name: "Units",
      label: "Unit system of this workbook",
      formula: `="${job.system}"`,
      kind: "text",
      note: "US and metric jobs are separate workbooks; start from the other file rather than retyping units.",
    });
    s.input({
      name: "Currency",
      label: "Currency",
      kind: "text",
      choices: { US: ["$", "C$"], SI: ["€", "£", "A$", "kr", "CHF"] },
      usual: { US: "$", SI: "€" },
      message: "Sign that stands beside every amount.",
    });
    const text = (
      name: string,
      label: string,
      demo: { US: string; SI: string },
      message: string,
      optional = false,
    ): void => {
      s.input({ name, label, kind: "text", demo, message, optional });
    };
    text(
      "CompanyName",
      "Your company",
      { US: "Brindle & Moss Streamworks (invented demo)", SI: "Schachtelhalm Wasserbau (invented demo)" },
      "Your company, as it stands on the quote.",
    );
    text(
      "CompanyPhone",
      "Your telephone",
      { US: "555-0142 (demo)", SI: "+00 000 0142 (demo)" },
      "Telephone for the quote and the crew's page.",
      true,
    );
    text(
      "Estimator",
      "Estimator",
      { US: "M. Fennimore (invented)", SI: "J. Torfgren (invented)" },
      "Who made this estimate.",
      true,
    );
    text(
      "JobName",
      "Job",
      { US: "Hollow Bank stream, rear garden", SI: "Hofbach, Innenhof" },
      "Name of the job, as it stands on every page.",
    );
    text(
      "ClientName",
      "Client",
      { US: "A. Quillfeather (invented)", SI: "K. Lindqvist-Amsel (invented)" },
      "Client's name, for the quote.",
    );
    text(
      "SiteAddress",
      "Site address",
      { US: "14 Sample Lane, Demo Township", SI: "Musterweg 14, 00000 Demostadt" },
      "Where the work is done.",
      true,
    );
    s.input({
      name: "VisitDate",
      label: "Date of the visit",
      kind: "date",
      demo: { US: 46154, SI: 46160 },
      message: "Day the site was measured.",
      optional: true,
    });

    s.section("Measured");
    text(
      "FeatureName",
      "Feature",
      { US: "Hollow Bank stream", SI: "Hofbach" },
      "What the feature is called on drawings and pages.",
    );
    s.input({
      name: "Fall",
      label: "Fall, top lip to basin grade",
      kind: "length",
      demo: { US: 2.75, SI: 0.95 },
      min: 0.1,
      max: { US: 60, SI: 18 },
      message: "Height from the basin's finished grade up to the highest lip.",
      note: "Measure with a level, not by eye: every drop and the pump's lift hang on it.",
    });
    s.input({
      name: "Run",
      label: "Run",
      kind: "length",
      demo: { US: 9.5, SI: 3.4 },
      min: 0.5,
      max: { US: 1000, SI: 300 },
      message: "Horizontal length of the feature from the highest lip to the basin.",
    });
    s.input({
      name: "DropCount",
      label: "Number of drops",
      kind: "count",
      demo: { US: 4, SI: 5 },
      min: 1,
      max: 12,
      message: "Steps the fall is divided into.",
      note: "Common practice: 3 to 4 drops for about 2 ft over 6 ft (0.6 m over 1.8 m).",
    });
    s.input({
      name: "BedWidth",
      label: "Bed width",
      kind: "length",
      demo: { US: 3.25, SI: 1.1 },
      min: { US: 0.5, SI: 0.15 },
      max: { US: 40, SI: 12 },
      message: "Width of the stream bed between the banks.",
    });
    s.input({
      name: "BankHeight",
      label: "Bank height above the bed",
      kind: "length",
      demo: { US: 0.9, SI: 0.3 },
      min: { US: 0.1, SI: 0.03 },
      max: { US: 6, SI: 2 },
      message: "Height of the banks above the stream bed.",
    });

    s.section("Levels");
    s.input({
      name: "BenchmarkLevel",
      label: "Bench mark level",
      kind: "length",
      demo: { US: 100, SI: 50 },
      usual: { US: 100, SI: 50 },
      min: -2000,
      max: 30000,
      message: "Level given to the fixed point all others are measured from.",
      note: "Any round number will do; keep it for the whole job.",
    });
    s.input({
      name: "GradeLevel",
      label: "Finished grade at the basin",
      kind: "length",
      demo: { US: 99.4, SI: 49.82 },
      min: -2000,
      max: 30000,
      message: "Level of the finished patio or lawn at the basin.",
    });

    s.section("Ground, stone and access");
    s.input({
      name: "SoilKind",
      label: "Ground",
      kind: "text",
      choices: SOIL_NAMES,
      usual: "loam",
      message: "The ground that will be dug; choose from the list.",
    });
    s.input({
      name: "RockKind",
      label: "Rock for boulders",
      kind: "text",
      choices: densityNames("rock"),
      usual: { US: "granite", SI: "basalt" },
      message: "The rock of boulders and lip stones; choose from the list.",
    });
    s.input({
      name: "GravelKind",
      label: "Gravel",
      kind: "text",
      choices: densityNames("stone"),
      usual: "washed gravel",
      message: "The gravel that covers bed and basin; choose from the list.",
    });
    text(
      "AccessNote",
      "Access",
      {
        US: "Side gate 42 in clear; no machine over the septic field.",
        SI: "Hofdurchfahrt 2,2 m breit; Kran nur bis 18 Uhr.",
      },
      "Gates, slopes, wires overhead, hours of work.",
      true,
    );
    s.caution("Have buried lines marked by the utility owners before anyone digs.");

    s.section("Weather for water loss");
    s.input({
      name: "WaterTemp",
      label: "Water temperature",
      kind: "temperature",
      usual: { US: 72, SI: 21 },
      min: { US: 33, SI: 1 },
      max: { US: 100, SI: 38 },
      message: "Water in a hot spell, which is when the basin runs low.",
    });
    s.input({
      name: "AirTemp",
      label: "Air temperature",
      kind: "temperature",
      usual: { US: 86, SI: 29 },
      min: { US: 20, SI: -5 },
      max: { US: 125, SI: 50 },
      message: "Air in a hot spell.",
    });
    s.input({
      name: "Humidity",
      label: "Relative humidity",
      kind: "share",
      usual: { US: 0.45, SI: 0.5 },
      min: 0,
      max: 1,
      message: "Relative humidity in a hot spell, as a percentage.",
    });
    s.input({
      name: "Wind",
      label: "Wind",
      kind: "wind",
      usual: { US: 6, SI: 9 },
      min: 0,
      max: { US: 60, SI: 100 },
      message: "Wind over the water in a hot spell.",
    });

    s.check({
      label: "Slope of the feature",
      value: "=Fall/Run",
      limit: "at most 100 %",
      ok: "Fall<=Run",
      cure: "Steeper than 1 in 1 is a wall, not a stream: check fall and run, or design the face as a waterfall with its own structure.",
      fix: "Fall",
      kind: "share",
      weight: "look",
      needs: ["Fall", "Run"],
    });
    s.check({
      label: "Fall of one drop",
      value: "=Fall/DropCount",
      limit: job.system === "US" ? "at most 2 ft" : "at most 0.6 m",
      ok: `Fall/DropCount<=${job.pick({ US: 2, SI: 0.6 })}`,
      cure: "Add drops: tall drops splash water out of the feature (common practice, no source).",
      fix: "DropCount",
      kind: "length",
      weight: "look",
      needs: ["Fall", "DropCount"],
    });
  },
});
