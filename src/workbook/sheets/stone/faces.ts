import type { SheetLayout } from "../../layout";

/** Rows of drops. */
const MOST_DROPS = 12;

/** The stone faces of the drops, each with its share of the tons. */
export function drops(s: SheetLayout): void {
  s.section("Boulders of the drops");
  s.input({
    name: "DropReach",
    label: "How far the stones reach back",
    kind: "size",
    min: { US: 1, SI: 25 },
    max: { US: 72, SI: 1800 },
    message: "Thickness of the stone face of a drop.",
  });
  s.input({
    name: "SolidShare",
    label: "Stone in the face, gaps taken off",
    kind: "share",
    min: 0.3,
    max: 1,
    message: "Share of the face that is stone.",
    note: "Loosely laid 60 to 65%, tightly fitted up to 80%.",
  });
  const table = s.table({
    name: "DropStone",
    rows: MOST_DROPS,
    columns: [
      {
        key: "name",
        title: "Drop",
        kind: "text",
        whole: true,
        formula: `=IF(ISNUMBER([height]),"Drop "&SEQUENCE(${MOST_DROPS}),"")`,
      },
      {
        key: "height",
        title: "Height",
        kind: "length",
        whole: true,
        formula: '=IF(ISNUMBER(Drops),Drops,"")',
      },
      {
        key: "width",
        title: "Width",
        kind: "length",
        formula: `=IF(COUNT([height],BedWidth)=2,BedWidth,"")`,
        input: {
          min: 0,
          max: { US: 100, SI: 30 },
          message: "Width of the face; type over it where a drop is wider than the bed.",
        },
      },
      {
        key: "area",
        title: "Face",
        source: "by definition: length × height",
        kind: "area",
        format: "#,##0.00",
        whole: true,
        formula: '=IF(ISNUMBER([height])*ISNUMBER([width]),[height]*[width],"")',
      },
      {
        key: "tons",
        title: "Boulders",
        source: "by definition: shared by the area of the face",
        kind: "load",
        whole: true,
        formula: '=IF(ISNUMBER([area])*COUNT(DropTons),IF([area]>0,DropTons*[area]/SUM([area]),0),"")',
      },
    ],
  });
  const [heights, areas] = [table.column("height"), table.column("area")];
  s.result({
    name: "DropTons",
    label: "Boulders of drops, with waste",
    source: "by definition: area over height is the mean width",
    // A drop without a width would leave its stones out of the sum.
    formula: `=IF(COUNT(${heights})<>COUNT(${areas}),"",RILL.BOULDERTONS(SUM(${areas})/SUM(${heights}),SUM(${heights}),DropReach,RockUsed,SolidShare,StoneWaste,Units))`,
    kind: "load",
    needs: [`${areas}`, "DropReach", "SolidShare"],
  });
}

/** The stone edges of both banks, and all boulders together. */
export function banks(s: SheetLayout): void {
  s.section("Boulders of the banks");
  s.input({
    name: "BankReach",
    label: "How far the stones reach back",
    kind: "size",
    min: { US: 1, SI: 25 },
    max: { US: 72, SI: 1800 },
    message: "Thickness of the stone edge of a bank.",
  });
  const table = s.table({
    name: "BankStone",
    rows: 2,
    columns: [
      { key: "name", title: "Bank", kind: "text", fixed: ["Left, looking downstream", "Right"] },
      {
        key: "length",
        title: "Length",
        kind: "length",
        formula: `=IF(COUNT(Run,Fall)=2,Run+Fall,"")`,
        input: {
          min: 0,
          max: { US: 1000, SI: 300 },
          message: "Length of the bank along its steps; run and fall together unless you type over it.",
        },
      },
      {
        key: "height",
        title: "Height",
        kind: "length",
        formula: `=IF(COUNT(BankHeight)=1,BankHeight,"")`,
        input: { min: 0, max: { US: 10, SI: 3 }, message: "Height of the stones of this bank; 0 where it has none." },
      },
      {
        key: "area",
        title: "Face",
        source: "by definition: length × height",
        kind: "area",
        format: "#,##0.00",
        whole: true,
        formula: '=IF(ISNUMBER([length])*ISNUMBER([height]),[length]*[height],"")',
      },
      {
        key: "tons",
        title: "Boulders",
        source: "by definition: shared by the area of the face",
        kind: "load",
        whole: true,
        formula: '=IF(ISNUMBER([area])*COUNT(BankTons),IF([area]>0,BankTons*[area]/SUM([area]),0),"")',
      },
    ],
  });
  const [lengths, heights, areas] = [table.column("length"), table.column("height"), table.column("area")];
  s.result({
    name: "BankTons",
    label: "Boulders of banks, with waste",
    source: "by definition: area over length is the mean height",
    // So would a bank of which only one measure is told.
    formula: `=IF(COUNT(${lengths},${heights})<>2*COUNT(${areas}),"",RILL.BOULDERTONS(SUM(${lengths}),SUM(${areas})/SUM(${lengths}),BankReach,RockUsed,SolidShare,StoneWaste,Units))`,
    kind: "load",
    needs: [`${areas}`, "BankReach", "SolidShare"],
  });
  s.result({
    name: "BoulderTons",
    label: "All boulders, with waste",
    formula: "=DropTons+BankTons",
    kind: "load",
    needs: ["DropTons", "BankTons"],
    strong: true,
  });
}
