import type { DemoJob } from "./guide";
import { html, type Html } from "./html";
import type { Page } from "./layout";

/** A first job of one's own in ten steps, from the notes of a visit to the signed quote; its figures are the demo's. */
export function firstJobPage(job: DemoJob): Page {
  const figure = (name: string, decimals = 0): Html =>
    html`<output data-name="${name}">${said(job.value(name), decimals)}</output>`;
  const money = (name: string): Html => {
    const value = Number(job.value(name)).toLocaleString("en-US", {
      minimumFractionDigits: 2,
      maximumFractionDigits: 2,
    });
    return html`<output data-name="${name}">${`$${value}`}</output>`;
  };
  return {
    path: "help/first-job.html",
    title: "Your first job in ten steps",
    about: "From the notes of a visit to a signed quote, on the bench or in Excel.",
    body: html`
      <p class="summary">A first price takes as long as it takes to type your notes. The quote takes an evening the first time, because your own prices have to go in once. The figures on this page are those of the demo job that the <a href="../bench.html">bench</a> opens with.</p>
      <h2>Before you start</h2>
      <p>Open the <a href="../bench.html">bench</a>, or the pane in Excel, and begin a blank job in your units on the tab Start. If you have a <a href="guide.html">company book</a> already, begin from it: your prices, wages and terms come along.</p>

      <h2>1. Type your notes</h2>
      <p>On the pane's tab Start, open Notes of a visit and write what you wrote down on site, as you wrote it: <code>falls 3'2, 14 ft long, 30 in lip, clear sheet, clay, gate 34 in</code>. Press Read the notes. Every fact is shown with what it was taken for; what was not understood is listed and not used.</p>

      <h2>2. Look at the first price</h2>
      <p>Press Write these facts. The sheet Start now shows a draft of the whole job with a price from low to high. Nothing on it can be signed: it is there to tell you whether the job is worth a second visit.</p>

      <h2>3. Measure what moves the price</h2>
      <p>Below the draft stands what to measure next, the fact that moves the price most first. Measure those, and type them where the line says. The range gets narrower each time.</p>

      <h2>4. Fill in Site and Ground</h2>
      <p>Type what you measured: the demo falls ${figure("Fall", 2)} ft over ${figure("Run", 1)} ft. Have the buried lines marked before anybody digs. What you leave blank is assumed, and the sheet Facts says so beside it.</p>

      <h2>5. Read down the design</h2>
      <p>Go from Water to Levels, sheet by sheet, and change what you would build differently. In the demo ${figure("DesignFlow")} gallons an hour run over the lips, the basin holds ${figure("BasinHold")} gallons, and the pump is the ${figure("PumpName")}.</p>

      <h2>6. Put in your prices</h2>
      <p>Read your supplier's list into Rates on the pane's tab Lists, or type the prices. Prices and rates that came with the workbook are marked as invented, and no quote can be signed while one of them is in it.</p>

      <h2>7. Set hours and markups</h2>
      <p>On Hours, type how long your crew takes; the demo takes ${figure("WorkingDays", 1)} working days. On Price, set markups, overhead and the payment stages, and type the largest deposit your law allows.</p>

      <h2>8. Clear the checks</h2>
      <p>Start and the pane's tab Job list every check, with the cell to change. FIX has to go. LOOK is a rule of thumb: decide, and know why.</p>

      <h2>9. Issue and print the quote</h2>
      <p>On the tab Job, press Issue this quote: the job keeps what the client holds, and says later what changed since. Then press Client: you get the quote with the drawing as one PDF. The demo's price is ${money("PriceTotal")} with tax, and holds for ${figure("ValidDays")} days.</p>

      <h2>10. Have it signed, and hand over</h2>
      <p>The client ticks the option, signs and dates. Give the notice of cancellation with it where your law asks for one. Then print Crew for the site, and an order for each supplier; what the client changes afterwards shows on the quote as a change until you issue it again.</p>
      <p class="caution"><strong>Caution.</strong> Sizes and weights are estimates. Follow your local codes, have electrical work done by a licensed electrician, and lift stones only as the load chart allows.</p>
    `,
  };
}

function said(value: number | string | boolean, decimals: number): string {
  return typeof value === "number" ? value.toLocaleString("en-US", { maximumFractionDigits: decimals }) : String(value);
}
