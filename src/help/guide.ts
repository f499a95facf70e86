import { plain } from "../calc/problem";
import { findDeclaration } from "../functions/catalogue";
import { exampleCall } from "../functions/contract/exampleCall";
import { functionPath } from "./functionPage";
import { html, type Html } from "./html";
import type { Page } from "./layout";
import { sectionPicture } from "./sectionPicture";

/** One job from the site visit to the squared invoice, in the order of the workbook's sheets. */
export function guidePage(): Page {
  return {
    path: "help/guide.html",
    title: "A job, start to end",
    about: "One job from the site visit to the squared invoice, sheet by sheet.",
    body: html`
      <p class="summary">
        This walks one invented job, Hollow Bank stream, through the workbook: a fall of 2.75 ft over a run of 9.5 ft,
        in four drops. Open the <a href="../bench.html">bench</a>, which starts with this job, and look at each sheet as
        you read. Every number below is worked out by the same functions as the workbook's.
      </p>
      ${sectionPicture()}
      <p>
        Tinted cells are yours to fill in; the others follow. Point at a tinted cell to see its unit and range. Wherever
        a length is asked for, <code>2' 6 1/2"</code>, <code>45 cm</code> or <code>12 ft + 8 ft 6 in</code> will do.
      </p>
      <h2>1. Site: what you measured</h2>
      <p>
        Put in fall, run, bed width and bank height, the finished grade at the basin, the bench mark, and the kinds of
        soil and stone. Choose US or metric units here, once; every other sheet follows.
      </p>
      <p>A fall of about 2 ft over 6 ft of run takes 3 to 4 drops (common practice, no source).</p>
      <h2>2. Water: how much has to flow</h2>
      <p>
        A lip 26 in wide that shall carry a sheet of 0.75 in needs a flow of ${call("LIPFLOW", [26, 0.75])} gph. Two
        lips at different levels share the flow; the sheet solves for their common water level. Below two inches of
        water no standard weir formula holds, so allow 10 to 20 % either way.
      </p>
      <h2>3. Basin: what comes back when the pump stops</h2>
      <p>
        When the pump stops, the water above rest level in pools and bed runs down, and the pipe empties too unless a
        check valve holds it. The basin has to take that without overflowing, and still cover the pump while running.
        The sheet's checks say which of the two fails, and by how much.
      </p>
      <h2>4. Pump: lift, friction and the curve</h2>
      <p>
        Enter the route: size, length and type of each pipe, and its fittings. 3,500 gph through 24 ft of 2 in pipe with
        a lift of 4.5 ft and a K of 3 in fittings need a total dynamic head of ${call("TDH", [3500, 4.5, 2, 24, [[3, 1]]])} ft.
        The speed in that pipe is ${call("PIPESPEED", [3500, 2])} ft/s. The pump that meets it and costs least to own is
        suggested; the choice stays yours.
      </p>
      <p class="caution">
        <strong>Caution.</strong> Pumps in water are electrical work: the circuit, its protection and the cable are for
        a licensed electrician.
      </p>
      <h2>5. Liner: pieces, and how they fit on rolls</h2>
      <p>
        Basin and falls each get their cut, with overlap and slack for every drop. The cut plan places all pieces on the
        rolls your supplier has, and says how much to buy. Fabric goes in before the liner.
      </p>
      <h2>6. Stone and ground</h2>
      <p>
        Gravel and boulders come out in tons with the waste you set: 120 square feet of gravel 2 in deep are
        ${call("GRAVELTONS", [120, 2])} tons. The berm under the spillway box is made of the basin's own spoil,
        compacted in layers; the sheet keeps bank, loose and compacted volume apart and says what has to leave by truck.
      </p>
      <h2>7. Levels: what to read on the rod</h2>
      <p>
        Bench mark plus backsight is the height of the instrument. The sheet gives the rod reading for every lip and the
        rim, as decimals and as feet, inches and eighths, and says cut or fill where you enter a reading.
      </p>
      <h2>8. Rates and takeoff: what to buy</h2>
      <p>
        Rates is your price list; the pane reads it from a CSV file and shows what would change before it does. Takeoff
        gathers every quantity, rounded up to whole packs: a need of 41 bags' worth with 5 % waste in packs of 10 is an
        order of ${call("ORDERQTY", [41, 0.05, 10])}.
      </p>
      <h2>9. Labour and price</h2>
      <p>
        A markup of 40 % is a gross margin of ${call("MARGINOF", [0.4])}, not 0.4; to reach a margin of 40 % mark up by
        ${call("MARKUPFOR", [0.4])}. Type the margin you want and the price follows, or type the price and watch the
        margin.
      </p>
      <h2>10. Quote: what the client signs</h2>
      <p>One or two printed pages, with exclusions and payment stages whose cents add up exactly.</p>
      <h2>11. Crew: what the crew takes along</h2>
      <p>One printed page: cut list, rod readings, stone counts, order of work and the cautions.</p>
      <h2>12. Orders, receipts, reconcile</h2>
      <p>
        Orders lists what goes to which supplier; the pane saves each as CSV. As tickets and invoices come, enter them
        on Receipts. Reconcile sets them side by side: ordered, delivered, invoiced, what is short or over, what the
        price difference is worth, and a verdict in plain words. It turns pounds, tons and cubic yards into each other,
        flags a line billed twice or without an order, and shows the money at stake. When every line says so, the job is
        squared.
      </p>
      <h2>Your own job</h2>
      <p>
        In the pane choose Start a job, pick units and a blank workbook, and begin on Site. Check the Start sheet before
        you send the quote: it lists every check, its value, its limit and where to mend it.
      </p>
    `,
  };
}

/** A call with its answer, worked out when the page is made. */
function call(name: string, args: readonly unknown[]): Html {
  const declaration = findDeclaration(name);
  if (!declaration) throw new Error(`the guide calls ${name}, which is not a function`);
  const value = declaration.evaluate(args);
  const shown = typeof value === "number" ? plain(Number(value.toPrecision(4))) : String(value);
  const page = functionPath(name).replace("help/", "");
  return html`<a href="${page}"><code>=RILL.${exampleCall(name, args)}</code></a> = <output>${shown}</output>`;
}
