import { LIP_SHAPES } from "../../../calc/tables/lips";
import type { Job, SheetLayout } from "../../layout";
import { inCode } from "../takeoff/asks";
import { numbered } from "./parts";

const LIPS = 3;

/** The wanted sheet over up to three lips, the flow it needs, and how that flow splits. */
export function lipsAndFlow(s: SheetLayout, job: Job): void {
  s.section("Lips of the top pool and their flow");
  s.input({
    name: "SheetWanted",
    label: "Wanted sheet over lowest lip",
    kind: "size",
    demo: { US: 0.75, SI: 18 },
    min: { US: 0.1, SI: 3 },
    max: { US: 12, SI: 300 },
    message:
      "Depth of the still water upstream above the lowest lip while the pump runs; where it falls the sheet is thinner.",
    note: job.pick({
      US: "½ in trickles, 1 in falls, 2 in roars (common practice).",
      SI: "12 mm trickles, 25 falls, 50 roars (common practice).",
    }),
  });
  s.input({
    name: "LipShape",
    label: "Shape of the lips",
    kind: "text",
    choices: LIP_SHAPES.map(({ name }) => name),
    message: "Broad: a flat stone or box lip. Sharp: a thin edge. Choose from the list.",
  });
  const lips = s.table({
    rows: LIPS,
    required: true,
    columns: [
      { key: "lip", title: "Lip", kind: "text", fixed: numbered("Lip", LIPS) },
      {
        key: "width",
        title: "Width",
        kind: "size",
        input: {
          min: { US: 1, SI: 25 },
          max: { US: 480, SI: 12_000 },
          message: "Width of the lip along its edge; leave blank where there is no such lip.",
        },
      },
      {
        key: "level",
        title: "Higher",
        kind: "size",
        input: {
          min: 0,
          max: { US: 24, SI: 600 },
          message: "How much higher this lip lies than the lowest one; 0 or blank for the lowest.",
        },
      },
      {
        key: "flow",
        title: "Its flow",
        kind: "flow",
        formula:
          '=IF(MIN(COUNT([width]),COUNT(SheetWanted))=0,"",IF(SheetWanted>[level],RILL.LIPFLOW([width],SheetWanted-[level],LipShape,,,Units),0))',
      },
    ],
    demo: {
      US: [
        [26, 0],
        [14, 0.25],
      ],
      SI: [
        [650, 0],
        [380, 6],
      ],
    },
  });
  const [widths, levels, flows] = [lips.column("width"), lips.column("level"), lips.column("flow")];
  s.define("LipTable", widths.top, widths.left, levels.bottom, levels.right);
  s.note(
    `Trust these flows to 10 to 20% (rule of thumb): no weir standard covers sheets of ${job.pick({ US: "½ to 2 in", SI: "12 to 50 mm" })}, and a stone lip is never quite level. Plan a valve. ` +
      "At the brink the sheet is thinner than the still water upstream: 0.715 of critical depth (Rouse 1936), in the table below.",
  );
  s.result({
    name: "LipFlow",
    label: "Flow for the wanted sheet",
    kind: "flow",
    formula: `=SUM(${flows})`,
    needs: [String(flows)],
  });
  s.input({
    name: "FlowTyped",
    label: "Or a flow of your own",
    kind: "flow",
    min: { US: 10, SI: 40 },
    max: { US: 900_000, SI: 3_600_000 },
    message: "Flow to design for instead of the one above; leave blank to take the lips' flow.",
    optional: true,
    note: job.pick({
      US: "In gallons an hour: for 50 gpm type 3000.",
      SI: "In litres an hour: for 190 L/min type 11400.",
    }),
  });
  s.result({
    name: "DesignFlow",
    label: "Design flow",
    kind: "flow",
    strong: true,
    formula: '=IF(COUNT(FlowTyped)>0,FlowTyped,IF(COUNT(LipFlow)>0,LipFlow,""))',
    note: "The pump must deliver this; pipe, basin and drain-back are worked out for it.",
  });
  s.spill({
    name: "LipSplit",
    header: "function",
    rows: LIPS,
    needs: ["DesignFlow", String(widths)],
    formula: "=RILL.SPLITFLOW(DesignFlow,LipTable,LipShape,Units)",
    columns: [
      { kind: "text" },
      { kind: "flow" },
      { kind: "size" },
      { kind: "share" },
      { kind: "size" },
      { kind: "flow" },
      { kind: "text", wrap: false },
    ],
  });
  s.input({
    name: "SpillBoxes",
    label: "Spillway boxes at the top",
    kind: "count",
    min: 0,
    max: 12,
    message: "Boxes that spread the water behind the top lip; 0 where the pipe ends in a pool.",
    note: "The box sits inside the liner, on a berm compacted in layers.",
  });
  s.input({
    name: "SpillBoxWidth",
    label: "Width of one box, at its lip",
    kind: "size",
    usual: { US: 28, SI: 700 },
    min: { US: 4, SI: 100 },
    max: { US: 120, SI: 3000 },
    message: "Width of the spillway box as sold; its price follows it.",
    note: "As wide as the lip it feeds, or a little wider.",
  });
  s.takeoff({
    code: "SPILLBOX",
    description: "Spillway box",
    unit: "each",
    quantity: "=SpillBoxes",
    category: "Basin",
    needs: ["SpillBoxes", "DesignFlow"],
    asks: [{ count: 1, codes: [`IF(SpillBoxWidth="","","SPILLBOX "&${inCode("SpillBoxWidth")})`] }],
  });
  s.rate({
    code: "SPILLBOX",
    description: "Spillway box",
    unit: "each",
    category: "Basin",
    supplier: "Pond yard (demo)",
    pack: 1,
  });
}
