import { html, type Html } from "./html";

/** A drawn section through a feature, with the words that the sheets and functions use. */
export function sectionPicture(): Html {
  return html`<figure>
    <svg class="drawing" viewBox="0 0 640 300" role="img" aria-labelledby="section-title section-desc">
      <title id="section-title">A feature in section</title>
      <desc id="section-desc">
        From left to right: the spillway box in its berm, three drops with their lips and pools, the bed, and the buried
        basin with the pump in its well. The pipe leads from the pump back to the box. The fall is measured downwards
        from the top lip, the run along the ground.
      </desc>
      <path class="earth" d="M0 92h58v26h104v34h92v34h88v34h52v-8h246v96H0z" />
      <path class="stone" d="M58 92h24v26h-24zM150 118h24v34h-24zM242 152h24v34h-24zM330 186h24v34h-24z" />
      <rect class="box" x="18" y="66" width="46" height="40" />
      <path class="water" d="M24 74h66v36h76v34h92v34h88v34h52v50" />
      <rect class="basin" x="398" y="222" width="186" height="66" />
      <path class="level" d="M400 240h182M400 258h182" />
      <path class="pipe" d="M560 276v-38h52v38h16v18H8V84h12" />
      <circle class="pump" cx="560" cy="278" r="7" />
      <path class="measure" d="M118 74v148M113 74h10M113 222h10M90 44h308M90 39v10M398 39v10" />
      <text x="124" y="210">fall</text>
      <text x="228" y="36">run</text>
      <text x="4" y="58">spillway box</text>
      <text x="176" y="112">lip</text>
      <text x="264" y="166">drop</text>
      <text x="186" y="172">pool</text>
      <text x="404" y="206">basin, filled with gravel or modules</text>
      <text x="404" y="237">overflow level</text>
      <text x="404" y="271">low level</text>
      <text x="512" y="283">pump</text>
      <text x="270" y="290">pipe</text>
    </svg>
    <figcaption>
      A feature in section, with the words used on every sheet. Static lift is measured from the running water level in
      the basin to the top lip.
    </figcaption>
  </figure>`;
}
