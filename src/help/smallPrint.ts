import { html } from "./html";
import type { Page } from "./layout";

/** Support: how to load the add-in, and what to do when something looks wrong. */
export function supportPage(version: string): Page {
  return {
    path: "help/support.html",
    title: "Support",
    about: "How to load Rillwright in Excel, and what to do when a cell shows an error.",
    body: html`
      <p>This is version ${version}.</p>
      <h2 id="install">Loading the add-in</h2>
      <h3>Excel for Windows</h3>
      <ol>
        <li>
          Save <a href="../manifest.xml">manifest.xml</a> in a folder and share that folder (its Properties, Sharing).
        </li>
        <li>
          In Excel choose File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs. Add the share's
          address, tick "Show in Menu", and restart Excel.
        </li>
        <li>Choose Home, Add-ins, More Add-ins, Shared Folder, Rillwright.</li>
      </ol>
      <h3>Excel for Mac</h3>
      <ol>
        <li>
          Copy <a href="../manifest.xml">manifest.xml</a> to
          <code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code> (make the folder if it is not there)
          and restart Excel.
        </li>
        <li>Choose Home, Add-ins, and Rillwright under Developer Add-ins.</li>
      </ol>
      <h3>Excel on the web</h3>
      <ol>
        <li>
          Choose Home, Add-ins, More Settings, Upload My Add-in, and pick <a href="../manifest.xml">manifest.xml</a>.
        </li>
      </ol>
      <h3>For a whole company</h3>
      <p>
        An administrator uploads <a href="../manifest.xml">manifest.xml</a>, or the
        <a href="../rillwright-unified.zip">package with the unified manifest</a> for Microsoft 365, under Integrated
        apps in the Microsoft 365 admin center. Install only one of the two for a user.
      </p>
      <h2>When a cell shows an error</h2>
      <dl>
        <dt><code>#VALUE!</code> or <code>#N/A</code></dt>
        <dd>
          Point at the cell and open the warning sign beside it: the sentence names the argument and says what would be
          right. In the bench it stands below the sheet.
        </dd>
        <dt><code>#NAME?</code>, or a formula with <code>_xldudf_RILL_</code></dt>
        <dd>
          The workbook was opened before the add-in was there. Choose Home, Add-ins, Rillwright, then Repair formulas in
          the pane.
        </dd>
        <dt><code>#BUSY!</code> that stays</dt>
        <dd>Close and open the workbook; then press Ctrl+Alt+F9 (Windows) or Cmd+Alt+F9 (Mac).</dd>
        <dt><code>#SPILL!</code></dt>
        <dd>Something stands where the table wants to go. Clear the cells below and to the right.</dd>
        <dt><code>#REF!</code> in every formula</dt>
        <dd>Rillwright is installed twice. Remove one of the two.</dd>
      </dl>
      <h2>Asking and reporting</h2>
      <p>
        Ask the person or company that gave you this copy, or write to the project's issue list. Say which function or
        sheet, what you typed, what you got and what you expected. Never send a client's data; the demo job shows most
        faults as well.
      </p>
    `,
  };
}

/** What becomes of a user's data: nothing. */
export function privacyPage(): Page {
  return {
    path: "help/privacy.html",
    title: "Privacy",
    about: "Rillwright computes on your own machine and sends nothing anywhere.",
    body: html`
      <p class="summary">
        Rillwright computes on your own machine. It collects nothing, sends nothing and has no account.
      </p>
      <ul>
        <li>
          <strong>Your workbooks</strong> stay where you keep them. The functions see the cells you give them, in your
          own Excel or browser, and nothing leaves it.
        </li>
        <li>
          <strong>Kept in your browser:</strong> the bench stores the workbook you are working on and a few settings in
          your browser's own storage, so that a crash loses nothing. Clearing the site's data in the browser removes
          them.
        </li>
        <li>
          <strong>Network:</strong> the pages fetch their own files from the server that hosts them. That server may
          keep ordinary access logs; ask whoever runs it. Inside Excel the pane also loads Microsoft's Office script
          library from Microsoft's server, as every add-in must; Microsoft's own privacy statement covers that request.
        </li>
        <li><strong>No analytics, no cookies, no advertising,</strong> no third party.</li>
      </ul>
    `,
  };
}

/** The terms of use: the licence, and what an estimate is. */
export function termsPage(): Page {
  return {
    path: "help/terms.html",
    title: "Terms of use",
    about: "Rillwright is free software under the MIT license, for estimating; it replaces no professional's judgment.",
    body: html`
      <p>
        Rillwright is free software under the MIT license. You may use, copy, change and pass it on. The software it is
        built with has licenses of its own, <a href="../licences.txt">listed here</a>.
      </p>
      <p>
        It is provided as it is, without warranty of any kind. The authors are not liable for any claim or damage that
        arises from using it.
      </p>
      <p>
        Its results are estimates. They replace neither a measurement on site, nor the judgment of a licensed
        electrician, engineer or surveyor, nor the law of the place. Check what matters before you dig, order, lift or
        sign.
      </p>
      <p>The clients, companies, products, prices and pump curves in the demo jobs are invented.</p>
    `,
  };
}
