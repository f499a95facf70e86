import type { Job, SheetLayout } from "../../layout";
import { oneModule } from "../basin/contents";
import { columnLetters } from "../../layout/address";
import { said } from "../../layout/said";
import { SCOPE_ROWS } from "./quoteTerms";

/** Columns of the quote's page. */
export const QUOTE_COLUMNS = 6;

/** What a client must know before signing. */
export const quoteCautions = (job: Job): readonly string[] => [
  "Water attracts children. There is no open pond, but wet stone is slippery, and pools must not be left deeper than agreed without a fence where the law requires one.",
  `Line voltage: a licensed electrician installs ${job.pick({ US: "GFCI", SI: "RCD" })} protection. Switch the pump off before reaching into the water.`,
  "Water evaporates and splashes out: keep the basin topped up, most of all in heat and wind. A dry pump is ruined.",
  "Natural stone varies in shade, size and shape; drawings and samples show the kind of stone, not each piece.",
  "In freezing weather, follow the winter notes we hand over with the stream.",
];

/** A sentence across the page, a text or the formula of one; `longest` is a text as long as it gets, where that is more than a line. */
export function sentence(s: SheetLayout, formula: string, longest = ""): void {
  s.fitHeight(s.row, longest, s.charactersAcross(1, QUOTE_COLUMNS));
  const said = formula.startsWith("=") ? { formula } : { value: formula };
  s.put(s.row, 1, { ...said, style: "plain", look: { wrap: true, vertical: "top" }, across: QUOTE_COLUMNS });
  s.row++;
}

/** Which row of a list on this page a row is, by the blank column beside it: the client's page reads other sheets by name alone. */
export function rowFrom(top: number, row: number): string {
  const column = columnLetters(QUOTE_COLUMNS + 1);
  return `ROWS($${column}$${top}:$${column}${row})`;
}

/** The user's sentences, one to a row; rows that are not used stay low. */
export function list(s: SheetLayout, name: string, rows: number): void {
  const top = s.row;
  for (let row = 1; row <= rows; row++) {
    const line = `INDEX(${name},${rowFrom(top, s.row)},1)`;
    sentence(s, `=IF(${line}="","","•  "&${line})`);
  }
}

/** The feature in plain words, from its measures, then the user's own sentences. */
export function scope(s: SheetLayout, job: Job): void {
  const length = job.pick({ US: "ft", SI: "m" });
  const water = job.pick({ US: "gallons", SI: "litres" });
  const load = job.pick({ US: "tons", SI: "tonnes" });
  const shown = (needs: string, count: number, text: string): string =>
    `=IF(COUNT(${needs})<${count},"","•  "&${text})`;
  const about = (name: string, step: number): string => said(`ROUND(${name}/${step},0)*${step}`, 0);
  const sentences: (readonly [formula: string, longest?: string])[] = [
    [
      shown(
        "Run,Fall,DropCount,BedWidth",
        4,
        `IF(FeatureName="","A",FeatureName&": a")&" stream "&${said("Run", 1)}&" ${length} long that falls "&${said("Fall", 2)}&" ${length} over "&DropCount&IF(DropCount=1," drop"," drops")&", with a bed about "&${said("BedWidth", 1)}&" ${length} wide between stone banks."`,
      ),
      "•  Hollow Bank stream in the backyard: a stream 100.0 ft long that falls 22.75 ft over 12 drops, with a bed about 13.3 ft wide between stone banks.",
    ],
    [
      shown(
        // What it holds follows from its length, width and depth.
        "BasinHold",
        1,
        // As wide as it is at the top: sloped walls lean out.
        `"A basin under gravel at its foot, "&${said("BasinLength+2*N(BasinSideSlope)*BasinWaterDepth", 1)}&" by "&${said("BasinWidth+2*N(BasinSideSlope)*BasinWaterDepth", 1)}&" ${length}, that holds about "&${about("BasinHold", 10)}&" ${water}: no open pond."`,
      ),
    ],
    [
      `=IF(N(ModuleCount)>0,"•  In the basin "&ModuleCount&IF(ModuleCount=1," void module of "," void modules, each ")&${oneModule({ job })}&".","")`,
    ],
    [
      shown(
        "Fall",
        1,
        '"A watertight liner with protective fabric under the whole stream and basin, hidden by stone and gravel."',
      ),
    ],
    [
      shown(
        "BoulderTons,LipStoneCount,GravelTons",
        3,
        `"About "&${said("BoulderTons", 1)}&" ${load} of boulders ("&RockKind&"), "&LipStoneCount&IF(LipStoneCount=1," lip stone"," lip stones")&" set level, and "&GravelKind&" for bed and basin."`,
      ),
    ],
    [
      shown(
        "DesignFlow",
        1,
        `"A pump and buried pipe that bring about "&${about("DesignFlow", job.pick({ US: 50, SI: 100 }))}&" ${water} an hour to the top; the water recirculates."`,
      ),
    ],
  ];
  sentences.forEach(([formula, longest]) => sentence(s, formula, longest));
  ownWords(s, "OwnWordsFirst");
  list(s, "ScopeLines", SCOPE_ROWS);
  ownWords(s, "OwnWordsRest");
}

/** What the owner added by hand is in the price, so it is named: half of the lines in a paragraph. */
function ownWords(s: SheetLayout, words: "OwnWordsFirst" | "OwnWordsRest"): void {
  s.roomFor(s.row, 4);
  sentence(s, `=IF(COUNTIF(${words},"?*")=0,"","•  "&TEXTJOIN("; ",TRUE,${words})&".")`);
}
