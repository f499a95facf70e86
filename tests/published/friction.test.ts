import { describe, expect, it } from "vitest";
import { findPipe } from "../../src/calc/pipe/bore";
import { darcyWeisbachLoss, frictionFactor, pipeSpeed } from "../../src/calc/pipe/friction";
import { waterDensity, waterViscosity } from "../../src/calc/pipe/waterProperties";
import { expectNear, expectPublished, given, publishedCase, publishedCases } from "./cases";
import { FOOT, INCH, inSI } from "./si";
import { hazenWilliams } from "./worked";

const FRICTION = "1 friction";

describe("friction against published values", () => {
  // Illinois Administrative Code 77, part 906, appendix A, exhibit I: printed to 0.01 ft.
  it.each(publishedCases(FRICTION, "FR-HW-").map((c) => [c.id, c] as const))("%s Hazen-Williams table", (_, c) => {
    const { bore } = findPipe({ size: inSI(c, "nominal"), isBore: false }, "Sch 40 PVC");
    const loss = hazenWilliams(inSI(c, "flow"), bore, inSI(c, "length"), given(c.inputs, "C"));
    expectPublished(c, "headLoss", loss / FOOT);
    expectPublished(c, "velocity", pipeSpeed(inSI(c, "flow"), bore) / FOOT);
  });

  it("FR-HWX-01 textbook example read off a chart", () => {
    const c = publishedCase("FR-HWX-01");
    const loss = hazenWilliams(inSI(c, "flow"), inSI(c, "insideDiameter"), inSI(c, "length"), given(c.inputs, "C"));
    expectPublished(c, "headLoss", loss / FOOT);
  });

  it("FR-DW-01 Lindeburg, example 17.2", () => {
    const c = publishedCase("FR-DW-01");
    expectPublished(c, "f_colebrook", frictionFactor(inSI(c, "Re"), given(c.inputs, "relativeRoughness")));
  });

  it("FR-DW-02 Kudela, example 1 (oil)", () => {
    const c = publishedCase("FR-DW-02");
    const loss = darcyWeisbachLoss(inSI(c, "flow"), inSI(c, "D"), inSI(c, "L"), inSI(c, "eps"), inSI(c, "nu"));
    expectPublished(c, "headLoss", loss);
  });

  it("FR-DW-03 Subramanian, example 1 (oil)", () => {
    const c = publishedCase("FR-DW-03");
    const loss = darcyWeisbachLoss(inSI(c, "flow"), inSI(c, "D"), inSI(c, "L"), inSI(c, "eps"), inSI(c, "nu"));
    expectPublished(c, "headLoss", loss / FOOT);
  });

  it("FR-DW-04 Maurer, section 3.0", () => {
    const c = publishedCase("FR-DW-04");
    const [flow, bore, roughness, viscosity] = [inSI(c, "flow"), inSI(c, "D"), inSI(c, "ks"), inSI(c, "nu")];
    const reynolds = (pipeSpeed(flow, bore) * bore) / viscosity;
    expectPublished(c, "Re", reynolds);
    expectPublished(c, "f", frictionFactor(reynolds, roughness / bore));
    expectPublished(c, "headLoss", darcyWeisbachLoss(flow, bore, inSI(c, "L"), roughness, viscosity) / FOOT);
  });

  it("FR-DW-05 Maurer: the roughness read back from a laboratory loss gives that loss", () => {
    const c = publishedCase("FR-DW-05");
    const [flow, bore, viscosity] = [inSI(c, "flow"), inSI(c, "D"), inSI(c, "nu")];
    const roughness = given(c.expected, "ks");
    expectPublished(c, "f", frictionFactor((pipeSpeed(flow, bore) * bore) / viscosity, roughness / bore));
    const loss = darcyWeisbachLoss(flow, bore, inSI(c, "L"), roughness, viscosity);
    expectNear(loss, inSI(c, "headLoss"), 0.01);
  });

  it("FR-DW-06 Crane, example 7.1 (smooth plastic)", () => {
    const c = publishedCase("FR-DW-06");
    const [flow, bore, viscosity] = [inSI(c, "flow"), inSI(c, "D"), inSI(c, "nu")];
    const reynolds = (pipeSpeed(flow, bore) * bore) / viscosity;
    expectPublished(c, "Re", reynolds);
    expectPublished(c, "f", frictionFactor(reynolds, 0));
  });

  it("FR-RE-01 Lindeburg, practice problem 17.2", () => {
    const c = publishedCase("FR-RE-01");
    expectPublished(c, "Re", (inSI(c, "velocity") * inSI(c, "D")) / inSI(c, "nu"));
    // 750 gpm in 6 in Schedule 40 is the speed the problem starts from.
    const { bore } = findPipe({ size: 6 * INCH, isBore: false }, "Sch 40 PVC");
    expect(pipeSpeed((750 * 3.785411784e-3) / 60, bore) / inSI(c, "velocity")).toBeCloseTo(1, 2);
  });
});

describe("water properties against MWH appendix C", () => {
  it.each(publishedCases("1b water properties", "WP-SI").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const t = given(c.inputs, "temperature");
    expectPublished(c, "density", waterDensity(t));
    expectPublished(c, "kinematicViscosity", waterViscosity(t) * 1e6);
  });

  it.each(publishedCases("1b water properties", "WP-US").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const t = (given(c.inputs, "temperature") - 32) / 1.8;
    expectPublished(c, "specificWeight", waterDensity(t) / 16.018463);
    expectPublished(c, "kinematicViscosity", (waterViscosity(t) / FOOT ** 2) * 1e5);
  });
});
