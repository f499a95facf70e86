import { html } from "./html";
import type { Page } from "./layout";

/** The front door of the site. */
export function landingPage(): Page {
  return {
    path: "index.html",
    title: "Rillwright",
    about:
      "Worksheet functions, a job workbook and a bench for estimating recirculating streams and waterfalls with a buried basin.",
    body: html`
      <p class="summary">
        Estimate a recirculating stream or waterfall with a buried basin, from the tape and the rod to the price and the
        invoices, in a worksheet.
      </p>
      <ul class="ways">
        <li><a class="button" href="bench.html">Open the bench with a demo job</a></li>
        <li><a class="button" href="help/first-job.html">Your first job in ten steps</a></li>
        <li><a class="button" href="help/guide.html">Follow one job, start to end</a></li>
        <li><a class="button" href="help/index.html">Look up a function</a></li>
      </ul>
      <h2>In Excel</h2>
      <p>
        Load <a href="manifest.xml">manifest.xml</a> as
        <a href="help/support.html#install">the support page explains</a>, open the pane from the Home tab and start a
        job.
      </p>
      <h2>Without Excel</h2>
      <p>
        The bench is the same workbook and the same functions in this browser. It needs nothing installed, and opens and
        saves .xlsx files.
      </p>
      <h2>The job workbooks</h2>
      <ul>
        <li>
          US units: <a href="templates/rillwright-us-blank.xlsx">blank</a>,
          <a href="templates/rillwright-us-demo.xlsx">with an invented demo job</a>
        </li>
        <li>
          Metric units: <a href="templates/rillwright-si-blank.xlsx">blank</a>,
          <a href="templates/rillwright-si-demo.xlsx">with an invented demo job</a>
        </li>
      </ul>
      <p>Everything is computed on your own machine; nothing is sent anywhere.</p>
    `,
  };
}
