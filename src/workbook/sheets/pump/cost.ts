import type { SheetLayout } from "../../layout";

/** How long the pump runs and what electricity costs. */
export function cost(s: SheetLayout): void {
  s.section("Running");
  s.input({
    name: "RunHours",
    label: "Hours a day",
    kind: "hours",
    demo: { US: 16, SI: 14 },
    min: 0,
    max: 24,
    message: "Hours a day the pump runs.",
    note: "Streams with plants or fish run day and night.",
  });
  s.input({
    name: "RunDays",
    label: "Days a year",
    kind: "count",
    unit: "days",
    demo: { US: 235, SI: 190 },
    min: 0,
    max: 366,
    message: "Days a year it runs.",
  });
  s.input({
    name: "Tariff",
    label: "Price of electricity",
    kind: "money",
    unit: '=Currency&"/kWh"',
    format: "0.000",
    demo: { US: 0.174, SI: 0.342 },
    min: 0,
    max: 100,
    message: "Price of one kilowatt-hour, taxes included.",
  });
  s.input({
    name: "OwnYears",
    label: "Years to count",
    kind: "count",
    unit: "years",
    min: 0,
    max: 50,
    message: "Years over which price and electricity are added up.",
  });
}
