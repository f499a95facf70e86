import { FACTS } from "../../../job/facts";
import { inSystem } from "../../../job/facts/units";
import { SETTING_WORDS } from "../../../job/setting";
import type { Job, SheetLayout } from "../../layout";
import type { ColumnSpec } from "../../layout/tableColumns";

const { width, lift, reach } = FACTS.machines.columns;

/** The place of the machine that is chosen in the columns of the machine table. */
const CHOSEN = "MATCH(MIN(MachineRanks),MachineRanks,0)";

/** What of a machine its load chart and the way in decide, and whether it can set the heaviest stone. */
export function liftColumns({ system }: Job): ColumnSpec[] {
  const input = (range: typeof width.range, message: string): ColumnSpec["input"] => {
    const [min, max] = inSystem(range, system);
    return { min, max, message };
  };
  return [
    {
      key: "width",
      title: "Narrowest way in",
      kind: "length",
      input: input(width.range, "Width it needs to pass, room at its sides included."),
    },
    {
      key: "lift",
      title: "Lift",
      kind: "weight",
      name: "MachineLifts",
      input: input(
        lift.range,
        "What it lifts at that reach by its load chart, slings and bucket taken off; blank if it lifts nothing.",
      ),
    },
    {
      key: "reach",
      title: "at reach",
      kind: "length",
      input: input(reach.range, "From the middle it turns on, as the load chart counts it."),
    },
    {
      key: "fits",
      title: "Heaviest stone",
      kind: "text",
      formula:
        '=IF(OR([machine]="",COUNT(HeaviestStone)=0),"",IF(N([lift])<HeaviestStone,IF(N([lift])=0,"no lift","too weak"),' +
        'IF(N(SetReach)>N([reach]),"too short",IF(COUNT([width],AccessWidth)<2,"way in?",' +
        'IF([width]>AccessWidth,"too wide",IF(COUNT([own]:[wear])<3,"no rate","fits"))))))',
    },
    {
      key: "rank",
      title: "Smallest goes first",
      source: "by definition: 10,000 and 20,000 only set one kind of machine behind another",
      kind: "number",
      format: "0.00",
      name: "MachineRanks",
      // What works the usual hours goes before what is fetched, an engine before a hoist, then the cheapest hour.
      whole: true,
      formula: '=IF([fits]="fits",[rate]+IF(ISNUMBER([share])*([share]>0),0,20000)+IF([fuel]>0,0,10000),"")',
    },
  ];
}

/** The machine that the heaviest stone and the way in leave. */
export function stoneMachine(s: SheetLayout): void {
  const { hand, none, unknown } = SETTING_WORDS;
  s.result({
    name: "StoneMachine",
    label: "Sets the heaviest stone",
    kind: "text",
    formula:
      `=IF(HeaviestStone<=HandLimit,"${hand}",IF(COUNT(MachineRanks)>0,INDEX(MachineNames,${CHOSEN}),` +
      `IF(OR(COUNT(MachineLifts)=0,AND(COUNT(AccessWidth)=0,MAX(MachineLifts)>=HeaviestStone)),"${unknown}","${none}")))`,
    needs: ["HeaviestStone", "HandLimit"],
    strong: true,
    note: "Gets in, and lifts it at its reach: a usual machine first, then one with an engine, then the cheapest hour.",
  });
  s.caution(
    "The load chart on the machine has the last word: less reach, level firm ground, slings counted as load, clear of power lines, " +
      "and nobody under or beside a suspended stone.",
  );
}

/** Formula of what an hour of work with stones costs: of the machine that is needed, else of the usual mix. */
export const STONE_MACHINE_RATE =
  '=IF(COUNT(MachineRateTyped)>0,MachineRateTyped,IF(OR(HeaviestStone="",HandLimit=""),MachineRate,' +
  `IF(OR(HeaviestStone<=HandLimit,COUNT(MachineRanks)=0),MachineRate,INDEX(MachineHourRates,${CHOSEN}))))`;

/** The check that says so where none fits; it stands where the stone is chosen. */
export const STONE_MACHINE_CHECK = {
  value: "=HeaviestStone",
  limit:
    `=IF(COUNT(MachineRanks)>0,INDEX(MachineLifts,${CHOSEN}),IF(AND(COUNT(MachineLift,MachineLifts)=0,HeaviestStone>HandLimit),` +
    `"not known",MAX(HandLimit,N(MachineLift))))`,
  stopOnceKnown: true,
} as const;
