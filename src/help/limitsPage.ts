import { WEIGHT_ERROR } from "../calc/stone/boulder";
import type { Declaration } from "../functions/contract/declaration";
import { functionPath } from "./functionPage";
import { html } from "./html";
import type { Page } from "./layout";

/** Where the answers end, and where they differ from what a reader may expect. */
export function limitsPage(catalogue: readonly Declaration[]): Page {
  return {
    path: "help/limits.html",
    title: "Differences and limits",
    about: "Where the answers of Rillwright end, how far to trust them, and how it differs from what you may expect.",
    body: html`
      <h2>What it does not decide for you</h2>
      <ul>
        <li>
          <strong>Electricity near water</strong> is for a licensed electrician and the local code. Watts, cable drop
          and running cost here are for planning.
        </li>
        <li>
          <strong>Lifting stone:</strong> a weight over the hand-lift limit needs a machine. A boulder's true weight is
          known only on a scale; the estimate is good to ${WEIGHT_ERROR}. Plan lifts for the most it can weigh.
        </li>
        <li>
          <strong>Digging:</strong> side slopes are a question of soil, depth and law. Have buried lines located before
          the first cut.
        </li>
        <li><strong>Open water and children:</strong> fencing and depth rules are local; none is checked here.</li>
        <li><strong>Prices, taxes and the demo job</strong> are invented. Put in your own before you quote.</li>
      </ul>
      <h2>Where the formulas end</h2>
      <ul>
        <li>
          Water over a lip is half an inch to two inches (12 to 50 mm) deep; standard weirs are measured deeper than
          that. Expect the flow for a wanted sheet to be off by 10 to 20% (rule of thumb).
        </li>
        <li>
          Roughness tables assume water much deeper than the stones. In a shallow steep bed the depth can be off by a
          third; the speed too.
        </li>
        <li>
          Nominal pipe sizes stand for the bore of the standard's least wall. Real bores differ by up to 2%, which
          moves friction by up to 10%.
        </li>
        <li>Pump curves are joined between your points and never drawn on past the last one.</li>
        <li>
          The ranking of pumps judges each alone, as one pump at full speed. Pumps in parallel or slowed down are a
          question for DUTY.
        </li>
        <li>
          The workbook works drain-back out at the design flow, because the flow that a pump delivers depends on the level
          in the basin, which depends on the drain-back. A pump that delivers more than was designed sends more back: leave
          the margin that the Basin sheet asks for.
        </li>
        <li>
          A berm counts with square ends. One that slopes at its ends too is a pit upside down: PITVOLUME.
        </li>
        <li>
          Evaporation excludes splash, drift and wicking, which are usually larger. Watch the level in the first week.
        </li>
        <li>
          Densities, swell and void fractions are typical values. Your quarry's ticket and a bucket test are better.
        </li>
      </ul>
      <h2>Where it differs from what you may expect</h2>
      <ul>
        <li>
          "2 ft 6 in" is a sum, and a bare number behind feet is inches: 9'4 and 9 ft 4 are 9'-4". A hyphen without
          spaces joins, a minus has spaces around it. What can mean two things, such as 9-4, is refused with both.
        </li>
        <li>
          A comma before three digits groups thousands (1,250 gph); before any other number of digits, or behind a
          leading zero (0,750 m3), it is a decimal comma. Beside metric units 1,250 can be either and is refused.
        </li>
        <li>
          Excel makes dates of 3/4 and 9-4 before any function sees them. Type 0 3/4, 3/4" or 9'-4".
        </li>
        <li>
          A blank cell and a zero cannot always be told apart, because Excel passes both as 0. Where zero has no
          meaning, zero counts as blank.
        </li>
        <li>Rows that hold nothing but blanks and zeros are skipped.</li>
        <li>Tons are short tons of 2,000 lb; under "SI", tonnes of 1,000 kg. Gallons are US gallons.</li>
        <li>
          A void fraction (pore space as a share of the whole) is not a void ratio (pore space over solids): 0.40 of one
          is 0.67 of the other.
        </li>
        <li>Outlet velocity head is counted once, in TDH; do not add an exit fitting for the same outlet.</li>
      </ul>
      <h2>Where the host ends</h2>
      <ul>
        <li>
          Custom functions run in Excel for Windows and Mac (Microsoft 365, and Excel 2021 or later at the least) and
          Excel on the web. Elsewhere, use the bench. The workbook's own formulas keep to what Excel 2021 has.
        </li>
        <li>
          Excel without the add-in, Excel for iPad among it, shows the stored results until something is calculated.
          LibreOffice at its defaults works the tables out again and shows <code>#NAME?</code> in over a thousand cells.
          For others, save a copy of the values (in the pane under Job, or <code>npm run copy -- FILE.xlsx</code>): every
          program shows it alike, it carries the time it was made, and nothing in it follows a change.
        </li>
        <li>
          Excel's own script library comes from Microsoft's server. Without a network a new Excel window may not load
          the functions; values stay, and the bench works offline once it has been opened.
        </li>
        <li>
          The bench changes what cells hold, and leaves the sheets as they are: pasting puts in no looks, formulas that
          you may change go in as formulas and protected results as their values, and charts are drawn in the pane.
        </li>
      </ul>
      <h2>Function by function</h2>
      <dl>
        ${catalogue.map(
          ({ name, limits }) =>
            html` <dt><a href="${functionPath(name).replace("help/", "")}">${name}</a></dt>
              <dd>${limits}</dd>`,
        )}
      </dl>
    `,
  };
}
