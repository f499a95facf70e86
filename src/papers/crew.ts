import type { Content, TDocumentDefinitions } from "pdfmake/interfaces";
import { unitLabel } from "../calc/quantity/measures";
import { readCutPlan } from "../drawing/readCutPlan";
import { DIGGING_CAUTION } from "../functions/earth/arguments";
import { LIFTING_CAUTION } from "../functions/stone/arguments";
import type { ProfileRoom } from "../drawing/profile";
import { clientsDrawing } from "../taskpane/clientsDrawing";
import { groundProfile } from "../taskpane/groundProfile";
import { jobName, numberIn, textIn, unbroken, type PaperCells } from "./cells";
import { linesUnder, stepsOf } from "./crewSheet";
import { jobDrawing } from "./jobDrawing";
import { caution, CREW_TEXT, drawn, heading, pairs, paper, quiet, table, title } from "./look";
import { startUpSteps } from "./startUp";
import { wordsFor, type Words } from "./words";

/** Narrower than other papers: two pages have to hold a job. */
const EDGE = 32;

const CAUTIONS = [
  DIGGING_CAUTION,
  LIFTING_CAUTION,
  "Line voltage near water kills: wiring is the electrician's work; switch off and unplug before reaching into the water.",
  "Cover or fence the open pit and the water whenever nobody watches: children drown in shallow water.",
];

/** Two pages that the crew takes along: what it looks like and how high; how to cut, set, build and test. */
export function crewPack(cells: PaperCells): TDocumentDefinitions {
  const words = wordsFor(cells.system, cells.text("Currency"));
  const levels = cells.rows("SetoutShort").filter((row) => textIn(row, 0) !== "");
  return paper(
    cells.system,
    { title: `Crew sheet: ${jobName(cells)}`, foot: jobName(cells), draft: false, size: CREW_TEXT },
    [
      head(cells),
      caution(CAUTIONS),
      picture(cells, levels.length),
      ...(levels.length === 0
        ? [heading("In this order")]
        : [
            heading(`Levels to ${cells.system === "US" ? "stake" : "set out"}, ${unitLabel("length", cells.system)}`),
            levelTable(cells, levels, words),
            { ...(heading("In this order") as object), pageBreak: "before" } as Content,
          ]),
      ticks(stepsOf(cells)),
      {
        columns: [
          { width: "*", stack: [heading("Cut plan: roll and place"), cutTable(cells, words)] },
          { width: 212, stack: [heading("Stones"), stoneTable(cells, words)] },
        ],
        columnGap: 12,
      },
      { text: HOW_TO_SET, margin: [0, 4, 0, 0] },
      {
        columns: ["Pump and pipe", "Basin and fabric"].map((part) => ({
          width: "*",
          stack: [heading(part), said(linesUnder(cells, part))],
        })),
        columnGap: 12,
      },
      heading("Start-up test"),
      ticks(startUpSteps(cells, words)),
      {
        text: "Levels read again and closed on the benchmark:  name ____________________  date ______________",
        margin: [0, 8, 0, 0],
      },
    ],
    EDGE,
  );
}

/** Common practice of masons; the weights are those of the heaviest such stone. */
const HOW_TO_SET =
  "Weights are the most a stone can weigh: rig for them, and keep everyone out from under and downhill of a moving stone. " +
  "Broadest face down, a third of its height in the ground, leaning into the bank, chinked so it cannot rock; " +
  "a double layer of fabric between stone and liner.";

function head(cells: PaperCells): Content {
  const contact = [cells.text("CompanyName"), unbroken(cells.text("CompanyPhone"))].filter(Boolean).join(", ");
  const access = cells.text("AccessNote");
  const estimator = cells.text("Estimator");
  return {
    stack: [
      title(jobName(cells), 17),
      {
        columns: [
          { width: "*", text: cells.text("SiteAddress") },
          { width: "*", text: contact, alignment: "right" },
        ],
      },
      {
        bold: true,
        text: [access && `Access: ${access}`, estimator && `Questions to ${estimator}.`].filter(Boolean).join(" "),
      },
    ],
  };
}

/** Height of a row of levels, and of all that stands on the first page beside drawing and levels, in points. */
const ROW = 16.4;
const REST = 340;

/** The lettering of the drawings is 10 of their units high, and the crew's is to be 11 points, a little more since they are rounded to fit. */
const SCALE = 1.12;
/** What the profile takes of the page's width, in points: in its own units, as much as its lettering needs. */
const PROFILE = 238;
const GAP = 12;
/** A line of text, in points. */
const LINE = 16;

/** Section and plan in what the levels leave of the page, and beside them what is dug and filled along the line. */
function picture(cells: PaperCells, levels: number): Content {
  const [width, page] = cells.system === "US" ? [612, 792] : [595, 842];
  const room = { width: width - 2 * EDGE, height: Math.max(200, page - 2 * EDGE - REST - ROW * levels) };
  const height = room.height - LINE;
  const profile = jobDrawing(groundProfile, cells, { width: PROFILE / SCALE, height: height / SCALE });
  if ("reason" in profile) return sectionAndPlan(cells, room);
  return {
    columns: [
      { width: "*", stack: [sectionAndPlan(cells, { ...room, width: room.width - PROFILE - GAP })] },
      { width: PROFILE, stack: [quiet("Profile: what is dug and filled"), drawn(profile.svg, [PROFILE, height])] },
    ],
    columnGap: GAP,
  };
}

function sectionAndPlan(cells: PaperCells, { width, height }: ProfileRoom): Content {
  const made = jobDrawing(clientsDrawing, cells, { width: width / SCALE, height: height / SCALE, bare: true });
  if ("reason" in made) return quiet(`No drawing yet: ${made.reason}.`);
  return drawn(made.svg, [width, height]);
}

/** Columns of the tables that say what the rod shows and what a string measures. */
const SET = { name: 0, level: 1, rod: 2, tape: 3, string: 4 } as const;

/** The points, and beside each lip its station and the bed dug below it, by rod or by string, as the crew sets out. */
function levelTable(cells: PaperCells, rows: ReturnType<PaperCells["rows"]>, words: Words): Content {
  const unit = unitLabel("length", words.system);
  const byString = cells.text("ShotTool") === "string";
  const [beds, places] = [cells.rows("StakeTable"), cells.rows("StakeStations")];
  const measure = byString ? SET.string : SET.tape;
  const measured = byString ? "from the string" : "on the tape";
  const offsets = new Set(places.flatMap((place) => numberIn(place, 1) ?? []).map((one) => words.figure(one)));
  const [offset] = offsets;
  const known = (value: number | undefined): string => (value === undefined ? "" : words.figure(value));
  return {
    stack: [
      table(
        [
          { title: "Point", width: "*" },
          { title: "Station", right: true },
          { title: "Level", right: true },
          ...(byString ? [] : [{ title: "Rod", right: true }]),
          { title: byString ? "From the string" : "On the tape", right: true },
          { title: "Dug bed", right: true },
          { title: byString ? "Bed, string" : "Bed, tape", right: true },
          { title: "Read", width: 44 },
        ],
        rows.map((row) => {
          const lip = /^Lip (\d+)/.exec(textIn(row, SET.name))?.[1];
          const [bed, place] = [beds[Number(lip) - 1] ?? [], places[Number(lip) - 1] ?? []];
          return [
            textIn(row, SET.name),
            known(numberIn(place, 0)),
            words.figure(numberIn(row, SET.level)),
            ...(byString ? [] : [words.figure(numberIn(row, SET.rod))]),
            textIn(row, measure),
            known(numberIn(bed, SET.level)),
            textIn(bed, measure),
            "",
          ];
        }),
        { padding: 1 },
      ),
      {
        text:
          "Stations run downstream from the top lip. The bed is dug level from one to the next" +
          (offsets.size === 1 && offset ? `, ${offset} ${unit} out to either side; ` : "; ") +
          `the last columns give its level and what to read on it ${measured}.`,
        margin: [0, 2, 0, 0],
      },
    ],
  };
}

function cutTable(cells: PaperCells, words: Words): Content {
  const { cuts, bought } = readCutPlan(cells.rows("CutPlan"));
  const unit = unitLabel("length", words.system);
  if (cuts.length === 0) return quiet("No cut plan yet.");
  const rolls = bought.map(
    ({ roll, length, width }) => `roll ${roll}: ${words.figure(length, 1)} × ${words.figure(width, 1)}`,
  );
  return {
    stack: [
      table(
        [
          { title: `Piece (${unit})`, width: "*" },
          { title: "Roll", right: true },
          { title: "Along", right: true },
          { title: "Across", right: true },
          { title: "Size", right: true },
        ],
        cuts.map(({ name, roll, along, across, length, width, turned }) => [
          `${name}${turned ? ", turned" : ""}`,
          `${roll}`,
          words.figure(along, 1),
          words.figure(across, 1),
          `${words.figure(length, 1)} × ${words.figure(width, 1)}`,
        ]),
        { padding: 1 },
      ),
      {
        text: `Roll lengths needed: ${rolls.join("; ")} ${unit}. Along and across are from the roll's corner.`,
        margin: [0, 2, 0, 0],
      },
    ],
  };
}

/** Columns of the boulders' table. */
const STONE = { size: 0, heavy: 5, count: 6, lift: 7 } as const;

function stoneTable(cells: PaperCells, words: Words): Content {
  const [size, weight] = [unitLabel("size", words.system), unitLabel("weight", words.system)];
  const limit = cells.number("HandLimit");
  const lip = cells.number("LipStoneHeavy");
  const count = cells.number("LipStoneCount");
  const lips = count === undefined || count === 0 ? [] : [["Lip stones", whole(lip), whole(count), lift(lip, limit)]];
  const boulders = cells
    .rows("StoneSizes")
    .filter((row) => numberIn(row, STONE.size) !== undefined)
    .map((row) => [
      `${numberIn(row, STONE.size)} ${size}`,
      whole(numberIn(row, STONE.heavy)),
      whole(numberIn(row, STONE.count)),
      textIn(row, STONE.lift).startsWith("By hand") ? "by hand" : "machine",
    ]);
  const rows = [...lips, ...boulders];
  if (rows.length === 0) return quiet("No stones counted yet.");
  return table(
    [
      { title: "Stone", width: "*" },
      { title: `Up to (${weight})`, right: true },
      { title: "Count", right: true },
      { title: "Lift" },
    ],
    rows,
    { padding: 1 },
  );
}

function whole(value: number | undefined): string {
  return value === undefined ? "____" : `${Math.ceil(value - 1e-9)}`;
}

function lift(heavy: number | undefined, limit: number | undefined): string {
  return heavy === undefined || limit === undefined ? "machine" : heavy <= limit ? "by hand" : "machine";
}

function said(lines: readonly [string, string][]): Content {
  return lines.length === 0 ? quiet("Not known yet.") : pairs(lines);
}

/** Numbered steps, each with a box to tick. */
function ticks(steps: readonly string[]): Content {
  return {
    table: {
      widths: [18, "*", 12],
      body: steps.map((step, index) => [
        { text: `${index + 1}.`, alignment: "right" as const },
        { text: step },
        { canvas: [{ type: "rect" as const, x: 1, y: 2, w: 9, h: 9, lineWidth: 0.8 }] },
      ]),
    },
    layout: {
      hLineWidth: () => 0,
      vLineWidth: () => 0,
      paddingTop: () => 0.6,
      paddingBottom: () => 0.6,
      paddingLeft: () => 0,
      paddingRight: () => 4,
    },
  };
}
