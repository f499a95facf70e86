import type { SheetLayout } from "../../layout";

/** What is lost in a day, and for how many days the basin must make up for it. */
export function losses(s: SheetLayout): void {
  s.section("Losses and reserve");
  s.result({
    name: "EvaporationPerDay",
    label: "Evaporation per day",
    source: "the hottest month is July, south of the equator January: common practice, no source",
    kind: "water",
    format: "#,##0.0",
    formula: "=RILL.EVAPLOSS(WaterArea,AirTemp,Humidity,Wind,Latitude,IF(Latitude<0,1,7),,,,,Units)",
    needs: ["WaterArea", "AirTemp", "Humidity", "Wind", "Latitude"],
    note: "From the open water on Water in the hot spell on Site. Shaded water loses less, falling water more.",
  });
  s.input({
    name: "SplashShare",
    label: "Splash, drift and wet stones on top",
    kind: "share",
    min: 0,
    max: 10,
    message: "What splash, wind drift and wicking add, as a share of the evaporation.",
    note: "Rule of thumb: often more than evaporation itself. Watch the level of finished jobs.",
  });
  s.result({
    name: "LossPerDay",
    label: "Loss per day",
    source: "by definition: evaporation and its share on top",
    kind: "water",
    format: "#,##0.0",
    formula: "=EvaporationPerDay*(1+SplashShare)",
    needs: ["EvaporationPerDay", "SplashShare"],
  });
  s.input({
    name: "ReserveDays",
    label: "Days without topping up",
    kind: "count",
    min: 0,
    max: 60,
    message: "Days the feature must run in a hot spell before anyone adds water.",
  });
  s.caution(
    "A hose or autofill that hangs in the basin can draw its water back into the drinking water. Leave an air gap of twice the outlet's width, at " +
      "least 1 in (25 mm), or fit the backflow preventer that the water supplier asks for (plumbing codes, from memory).",
  );
}
