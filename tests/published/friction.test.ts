import { describe, expect, it } from "vitest";
import { findPipe } from "../../src/calc/pipe/bore";
import {
  darcyWeisbachLoss,
  frictionFactor,
  hazenWilliamsResistance,
  HAZEN_WILLIAMS_EXPONENT,
  pipeSpeed,
} from "../../src/calc/pipe/friction";
import { waterDensity, waterViscosity } from "../../src/calc/pipe/waterProperties";
import { agrees, given, publishedCase, publishedCases } from "./cases";
import { FOOT, INCH, inSI } from "./si";

const FRICTION = "1 friction";
const hazenWilliams = (flow: number, bore: number, length: number, c: number): number =>
  hazenWilliamsResistance(length, bore, c) * flow ** HAZEN_WILLIAMS_EXPONENT;

describe("friction against published values", () => {
  // Illinois Administrative Code 77, part 906, appendix A, exhibit I: printed to 0.01 ft.
  it.each(publishedCases(FRICTION, "FR-HW-").map((c) => [c.id, c] as const))("%s Hazen-Williams table", (_, c) => {
    const { bore } = findPipe({ size: inSI(c, "nominal"), isBore: false }, "Sch 40 PVC");
    const loss = hazenWilliams(inSI(c, "flow"), bore, inSI(c, "length"), given(c.inputs, "C"));
    expect(agrees(c, "headLoss", loss / FOOT)).toBe(true);
    expect(agrees(c, "velocity", pipeSpeed(inSI(c, "flow"), bore) / FOOT)).toBe(true);
  });

  // Shammas & Wang Eq. 5.37 in SI: our one exponent set.
  it.each(publishedCases(FRICTION, "FR-HWSI").map((c) => [c.id, c] as const))("%s Hazen-Williams in SI", (_, c) => {
    const bore = inSI(c, "insideDiameter");
    const loss = hazenWilliams(inSI(c, "flow"), bore, inSI(c, "length"), given(c.inputs, "C"));
    expect(agrees(c, "headLoss", loss)).toBe(true);
    expect(agrees(c, "velocity", pipeSpeed(inSI(c, "flow"), bore))).toBe(true);
  });

  // The American forms round their constants differently: 0.2083 / 4.8655 runs 0.7 to 2 % above the others (the
  // case's own note). Ours must lie within 0.5 % of EPANET's constants and within 2 % of the other two.
  it.each(publishedCases(FRICTION, "FR-HWU").map((c) => [c.id, c] as const))("%s three American forms", (_, c) => {
    const loss =
      hazenWilliams(inSI(c, "flow"), inSI(c, "insideDiameter"), inSI(c, "length"), given(c.inputs, "C")) / FOOT;
    expect(Math.abs(loss / given(c.expected, "headLoss_EPANETform") - 1)).toBeLessThan(0.005);
    expect(Math.abs(loss / given(c.expected, "headLoss_0p2083form") - 1)).toBeLessThan(0.02);
    expect(Math.abs(loss / (given(c.expected, "pressureLoss_4p52form") * 2.309) - 1)).toBeLessThan(0.02);
  });

  it("FR-HWX-01 textbook example read off a chart", () => {
    const c = publishedCase("FR-HWX-01");
    const loss = hazenWilliams(inSI(c, "flow"), inSI(c, "insideDiameter"), inSI(c, "length"), given(c.inputs, "C"));
    expect(agrees(c, "headLoss", loss / FOOT)).toBe(true);
  });

  it.each(publishedCases(FRICTION, "FR-MOODY").map((c) => [c.id, c] as const))("%s Moody chart point", (_, c) => {
    expect(agrees(c, "f", frictionFactor(inSI(c, "Re"), given(c.inputs, "relativeRoughness")))).toBe(true);
  });

  it.each(publishedCases(FRICTION, "FR-DWP").map((c) => [c.id, c] as const))("%s Darcy-Weisbach in plastic", (_, c) => {
    const [flow, bore, roughness, viscosity] = [
      inSI(c, "flow"),
      inSI(c, "insideDiameter"),
      inSI(c, "eps"),
      inSI(c, "nu"),
    ];
    const speed = pipeSpeed(flow, bore);
    const reynolds = (speed * bore) / viscosity;
    expect(agrees(c, "velocity", speed / FOOT)).toBe(true);
    expect(agrees(c, "Re", reynolds)).toBe(true);
    expect(agrees(c, "f", frictionFactor(reynolds, roughness / bore))).toBe(true);
    expect(agrees(c, "headLoss", darcyWeisbachLoss(flow, bore, inSI(c, "length"), roughness, viscosity) / FOOT)).toBe(
      true,
    );
  });

  it("FR-DW-01 Lindeburg, example 17.2", () => {
    const c = publishedCase("FR-DW-01");
    expect(agrees(c, "f_colebrook", frictionFactor(inSI(c, "Re"), given(c.inputs, "relativeRoughness")))).toBe(true);
  });

  it("FR-DW-02 Kudela, example 1 (oil)", () => {
    const c = publishedCase("FR-DW-02");
    const loss = darcyWeisbachLoss(inSI(c, "flow"), inSI(c, "D"), inSI(c, "L"), inSI(c, "eps"), inSI(c, "nu"));
    expect(agrees(c, "headLoss", loss)).toBe(true);
  });

  it("FR-DW-03 Subramanian, example 1 (oil)", () => {
    const c = publishedCase("FR-DW-03");
    const loss = darcyWeisbachLoss(inSI(c, "flow"), inSI(c, "D"), inSI(c, "L"), inSI(c, "eps"), inSI(c, "nu"));
    expect(agrees(c, "headLoss", loss / FOOT)).toBe(true);
  });

  it("FR-DW-04 Maurer, hydraulics vignette, section 3.0", () => {
    const c = publishedCase("FR-DW-04");
    const [flow, bore, roughness, viscosity] = [inSI(c, "flow"), inSI(c, "D"), inSI(c, "ks"), inSI(c, "nu")];
    const reynolds = (pipeSpeed(flow, bore) * bore) / viscosity;
    expect(agrees(c, "Re", reynolds)).toBe(true);
    expect(agrees(c, "f", frictionFactor(reynolds, roughness / bore))).toBe(true);
    expect(agrees(c, "headLoss", darcyWeisbachLoss(flow, bore, inSI(c, "L"), roughness, viscosity) / FOOT)).toBe(true);
  });

  it("FR-DW-05 Maurer: the roughness read back from a laboratory loss gives that loss", () => {
    const c = publishedCase("FR-DW-05");
    const [flow, bore, viscosity] = [inSI(c, "flow"), inSI(c, "D"), inSI(c, "nu")];
    const roughness = given(c.expected, "ks");
    expect(agrees(c, "f", frictionFactor((pipeSpeed(flow, bore) * bore) / viscosity, roughness / bore))).toBe(true);
    const loss = darcyWeisbachLoss(flow, bore, inSI(c, "L"), roughness, viscosity);
    expect(Math.abs(loss / inSI(c, "headLoss") - 1)).toBeLessThan(0.01);
  });

  it("FR-DW-06 Crane, example 7.1 (smooth plastic)", () => {
    const c = publishedCase("FR-DW-06");
    const [flow, bore, viscosity] = [inSI(c, "flow"), inSI(c, "D"), inSI(c, "nu")];
    const reynolds = (pipeSpeed(flow, bore) * bore) / viscosity;
    expect(agrees(c, "Re", reynolds)).toBe(true);
    expect(agrees(c, "f", frictionFactor(reynolds, 0))).toBe(true);
  });

  it("FR-RE-01 Lindeburg, practice problem 17.2", () => {
    const c = publishedCase("FR-RE-01");
    expect(agrees(c, "Re", (inSI(c, "velocity") * inSI(c, "D")) / inSI(c, "nu"))).toBe(true);
    // 750 gpm in 6 in Schedule 40 is the speed the problem starts from.
    const { bore } = findPipe({ size: 6 * INCH, isBore: false }, "Sch 40 PVC");
    expect(pipeSpeed((750 * 3.785411784e-3) / 60, bore) / inSI(c, "velocity")).toBeCloseTo(1, 2);
  });
});

describe("water properties against MWH appendix C", () => {
  it.each(publishedCases("1b water properties", "WP-SI").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const t = given(c.inputs, "temperature");
    expect(agrees(c, "density", waterDensity(t))).toBe(true);
    expect(agrees(c, "kinematicViscosity", waterViscosity(t) * 1e6)).toBe(true);
  });

  it.each(publishedCases("1b water properties", "WP-US").map((c) => [c.id, c] as const))("%s", (_, c) => {
    const t = (given(c.inputs, "temperature") - 32) / 1.8;
    expect(agrees(c, "specificWeight", waterDensity(t) / 16.018463)).toBe(true);
    expect(agrees(c, "kinematicViscosity", (waterViscosity(t) / FOOT ** 2) * 1e5)).toBe(true);
  });
});
