import { findDeclaration } from "../functions/catalogue";
import { exampleCall } from "../functions/contract/exampleCall";
import { functionPath } from "./functionPage";
import { Html, html } from "./html";
import type { Page } from "./layout";
import { sectionPicture } from "./sectionPicture";

/** The demo job whose numbers the guide quotes, by the workbook's defined names. */
export interface DemoJob {
  value(name: string): number | string | boolean;
  /** The client's drawing, as SVG. */
  readonly drawing: string;
}

/** One job from the site visit to the squared invoice, in the order of the workbook's sheets. */
export function guidePage(job: DemoJob): Page {
  const n = (name: string, decimals = 2): Html => html`<output>${shown(job.value(name), decimals)}</output>`;
  return {
    path: "help/guide.html",
    title: "A job, start to end",
    about: "One job from the site visit to the reconciled invoice, sheet by sheet.",
    body: html`
      <p class="summary">This walks one invented job, ${job.value("FeatureName")}, through the workbook: a fall of ${n("Fall")} ft over a run of ${n("Run")} ft, in ${n("DropCount", 0)} drops. Open the <a href="../bench.html">bench</a>, which starts with this job, and look at each sheet as you read; the numbers here are the ones you will find there.</p>
      ${sectionPicture()}
      <p>Shaded cells are yours to fill in; the others follow. Point at a shaded cell to see its unit and range. Inside a function, and in a cell that asks for one length, a length may be a number in the sheet's unit or a text with its own: <code>2' 6 1/2"</code>, <code>45 cm</code>, <code>12 ft + 8 ft 6 in</code>. A table in Excel wants numbers, and ${call("QTY", ["2' 6 1/2\"", "ft"])} turns such a text into one; the bench reads both.</p>
      <p>Beside a cell to fill in stands the value that is used: yours, or in italics what your company uses or what is assumed, with the reason. The sheet Facts says of each fact whether it is yours, your company's, assumed, invented, unknown or wrong, and the pane leads to the next one to fill in or fix.</p>

      <h2>1. Site: what you measured</h2>
      <p>Put in fall, run, bed width and bank height, the finished grade at the basin, the benchmark, and the kinds of soil and stone. US and metric jobs are separate workbooks, so that sizes and packs are those you can buy.</p>
      ${picture("site", "The Site sheet of the demo job: company, client and the measured fall, run, drops, bed and bank.")}
      ${picture("ground", "The Ground sheet of the demo job: rod readings along the run, and cut, fill and liner length that follow.")}
      <p>Drops of 6 to 8 in suit most streams (rule of thumb).</p>

      <h2>2. Water: how much has to flow</h2>
      <p>A lip 26 in wide that has to carry a sheet of 0.75 in needs ${call("LIPFLOW", [26, 0.75])} gph. The demo has a second, narrower lip a little higher; the two share the flow at one water level, and the design flow comes to ${n("DesignFlow", 0)} gph. Below two inches of water no standard weir formula holds, so allow 10 to 20% either way.</p>

      <h2>3. Basin: what comes back when the pump stops</h2>
      <p>When the pump stops, the water above rest level in pools and bed runs down, and the pipe empties too unless a check valve holds it: ${n("DrainBack", 0)} gal here. The basin holds ${n("BasinHold", 0)} gal between its floor and its overflow, of which the lowest ${n("LowWater", 0)} gal stay under the pump. It has to take what comes back without overflowing, and still cover the pump while running; the checks of the sheet say which of the two fails, and by how much.</p>

      <h2>4. Pump: lift, friction and the curve</h2>
      <p>Enter the route: size, length and type of each pipe, and the K of its fittings. From a lift of ${n("StaticLift")} ft the sheet gets to a total dynamic head of ${n("DesignHead")} ft, part by part. Type in the pumps you could buy from their makers' curves; those that will do are ranked by what they cost to own, and the choice stays yours. The demo's "${job.value("PumpName")}" really delivers ${n("DeliveredFlow", 0)} gph: where its curve meets the pipe's.</p>
      ${picture("pump", "The Pump sheet of the demo job: the route of pipes, and the table of head by parts that adds up to the total dynamic head.")}
      <p class="caution"><strong>Caution.</strong> Pumps in water are electrical work: the circuit, its protection and the cable are for a licensed electrician.</p>

      <h2>5. Liner: pieces, and how they fit on rolls</h2>
      <p>Basin and falls each get their cut, with overlap and slack for every drop. The cut plan places all pieces on the rolls your supplier has at least cost: ${n("LinerBuyArea", 0)} ft² to buy here. Fabric goes in before the liner.</p>

      <h2>6. Stone and ground</h2>
      <p>Gravel comes to ${n("GravelTons")} tons and boulders to ${n("BoulderTons")} tons, with the waste you set. The berm under the spillway box is made of the basin's own spoil, compacted in layers; the sheet keeps bank, loose and compacted volume apart and says what has to leave by truck.</p>

      <h2>7. Levels: what to read on the rod</h2>
      <p>Benchmark plus backsight is the height of the instrument. The sheet gives the rod reading for every lip and the rim, as decimals and as feet, inches and eighths, and says cut or fill where you enter a reading.</p>

      <h2>8. Rates and takeoff: what to buy</h2>
      <p>Rates is your price list; the pane reads it from a CSV file, shows which column and decimal mark it took for what, and what would change before it does. Takeoff gathers every quantity, adds the waste and rounds up to whole packs: a need of 41 with 5% waste in packs of 10 is an order of ${call("ORDERQTY", [41, 0.05, 10])}.</p>

      <h2>9. Hours and price</h2>
      <p>A markup of 40% is a gross margin of ${call("MARGINOF", [0.4])}, not of 0.4; to reach a margin of 40% mark up by ${call("MARKUPFOR", [0.4])}. Set the markups, type the margin you want, and watch the price follow: the demo costs ${n("TotalCost")} and sells for ${n("PriceTotal")} with tax. While something that the design needs has no quantity or no price, or a cell is in error, there is no price: in its place stands what is missing, or the cell to fix.</p>
      ${picture("price", "The Price sheet of the demo job: wanted margin, overhead, contingency, tax and the options side by side.")}

      <h2>10. Quote: what the client signs</h2>
      <p>The sheets' results become sentences a client can read: what they get, what is not part of it, until when the price holds, and payment stages whose cents add up exactly. No cost and no markup stands on it. Until no needed line is unknown or wrong, the prices and rates that came with the workbook are changed or confirmed, and the checks that can hurt are in order, it prints as a draft, with a range, what is assumed, and no line to sign. The pane draws the feature for the client, to scale, of the boulders that Stone counts:</p>
      <figure class="drawn">${new Html(job.drawing.replace(/ style="[^"]*"/, ""))}</figure>

      <h2>11. Crew: what the crew takes along</h2>
      <p>Cut list, rod readings, stone counts, order of work and the cautions, to print and tick off.</p>

      <h2>12. Orders: what goes to whom</h2>
      <p>Takeoff says of every line what is still to order. On Orders give each supplier's order a number, pick one to print it, and enter what was really ordered, at the price agreed, in the book at the end of the sheet: ${n("OrderedAmount")} in the demo. The pane saves each order as CSV.</p>

      <h2>13. Receipts: tickets and invoices as they come</h2>
      <p>Each delivery ticket is a line on the left, each invoice line one on the right, in whatever unit the paper says: tons, pounds or cubic yards of stone. Freight and tax are lines of their own; what goes back, and a credit, is below zero.</p>

      <h2>14. Reconcile: the reconciled invoices</h2>
      <p>Order by order the sheet shows what was ordered, delivered and billed, what is short or over, what a changed price is worth, and a verdict in plain words. It flags a line billed twice or without an order, and adds up the money at stake by supplier. Before you pay, settle the lines marked Query; a credit goes on Receipts like any other invoice. When no line asks a question any more, the job is squared.</p>
      ${picture("reconcile", "The Reconcile sheet of the demo job: what was ordered, delivered and billed, order by order, with the money at stake.")}

      <h2>Your company book</h2>
      <p>Prices, pumps, wages, machines and markups that you use again and again stand in a workbook of their own, the company book: start from <a href="../templates/rillwright-us-company-blank.xlsx">a blank one in US units</a> or <a href="../templates/rillwright-si-company-blank.xlsx">in metric units</a>, or look at one that is filled with invented prices, <a href="../templates/rillwright-us-company.xlsx">US</a> or <a href="../templates/rillwright-si-company.xlsx">metric</a>. Choose it in the pane under Start or Book, or drop its file on the bench or the pane; it is remembered in this browser and sent nowhere.</p>
      <p>A new job takes its own copy of the book's prices, with their dates, so that an old job keeps what it was quoted at. Bring the job's prices up to date shows every difference first, and takes only what you leave marked. From the finished job into the book does the same the other way: prices you were charged, products and pumps you added; older prices and invented ones stay out. Then save the book: what is remembered here is a copy, and the file is yours to keep.</p>
      <p>Makers' pump curves come in as CSV, a row for each pump or for each point. The pane says what it took every column for, in which unit and with which decimal mark; change what is wrong and it reads the file again.</p>

      <h2>Your own job</h2>
      <p>In the pane start from your company book, or pick units and a blank workbook, and answer on Start what you know for a first price; then go on to Site. Before you send the quote, look at Start: it lists every check with its value, its limit and where to fix it. The demo leaves some on purpose, to show what they say.</p>
    `,
  };
}

function shown(value: number | string | boolean, decimals: number): string {
  if (typeof value !== "number") return String(value);
  return value.toLocaleString("en-US", { maximumFractionDigits: decimals });
}

function picture(file: string, about: string): Html {
  return html`<figure><img src="pictures/${file}.png" alt="${about}" width="920" height="687" loading="lazy"></figure>`;
}

/** A call with its answer, worked out when the page is made. */
function call(name: string, args: readonly unknown[]): Html {
  const declaration = findDeclaration(name);
  if (!declaration) throw new Error(`the guide calls ${name}, which is not a function`);
  const value = declaration.evaluate(args);
  const answer = typeof value === "number" ? shown(Number(value.toPrecision(4)), 4) : String(value);
  const page = functionPath(name).replace("help/", "");
  return html`<a href="${page}"><code>=RILL.${exampleCall(name, args)}</code></a> = <output>${answer}</output>`;
}
