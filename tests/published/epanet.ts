import { Project, Workspace } from "epanet-js";

/** One pump station lifting through pipes in series between two open water levels, in metres and litres a second. */
export interface EpanetSystem {
  /** Lower and upper water level, m. */
  readonly from: number;
  readonly to: number;
  readonly method: "H-W" | "D-W";
  /** Kinematic viscosity over EPANET's 1.1e-5 ft²/s. */
  readonly viscosity: number;
  /** Points of the pump curve, L/s and m. */
  readonly curve: readonly (readonly [flow: number, head: number])[];
  readonly pumps: number;
  readonly speed: number;
  /** Bore in mm, length in m, roughness as C or mm, K with everything in it, the outlet too. */
  readonly pipes: readonly EpanetPipe[];
  /** Pipes each pump has for itself before the flows join. */
  readonly riser?: readonly EpanetPipe[];
}

export interface EpanetPipe {
  readonly bore: number;
  readonly length: number;
  readonly roughness: number;
  readonly k: number;
}

/** EPANET's base viscosity, m²/s: its manual's 1.1e-5 ft²/s. */
export const EPANET_VISCOSITY = 1.1e-5 * 0.3048 ** 2;

function inputFile(system: EpanetSystem): string {
  const joints = system.pipes.map((_, index) => `N${index} ${Math.min(system.from, system.to) - 1} 0`);
  const riser = system.riser ?? [];
  // Where a pump's water goes: through its riser's joints, or straight to where the flows join.
  const joint = (pump: number, index: number): string => (index < riser.length ? `R${pump}_${index}` : "N0");
  const each = Array.from({ length: system.pumps }, (_, pump) => pump);
  const pumps = each.map((pump) => `PU${pump} LOW ${joint(pump, 0)} HEAD C SPEED ${system.speed}`);
  const pipe = (name: string, from: string, to: string, { bore, length, roughness, k }: EpanetPipe): string =>
    // EPANET knows no pipe of no length.
    `${name} ${from} ${to} ${Math.max(length, 1e-6)} ${bore} ${roughness} ${k} Open`;
  const pipes = system.pipes.map((row, index) =>
    pipe(`P${index}`, `N${index}`, index === system.pipes.length - 1 ? "HIGH" : `N${index + 1}`, row),
  );
  const risers = each.flatMap((pump) =>
    riser.map((row, index) => pipe(`RP${pump}_${index}`, joint(pump, index), joint(pump, index + 1), row)),
  );
  const riserJoints = each.flatMap((pump) => riser.map((_, index) => `${joint(pump, index)} ${system.from - 1} 0`));
  return [
    "[JUNCTIONS]",
    ...joints,
    ...riserJoints,
    "[RESERVOIRS]",
    `LOW ${system.from}`,
    `HIGH ${system.to}`,
    "[PIPES]",
    ...pipes,
    ...risers,
    "[PUMPS]",
    ...pumps,
    "[CURVES]",
    ...system.curve.map(([flow, head]) => `C ${flow} ${head}`),
    "[OPTIONS]",
    "UNITS LPS",
    `HEADLOSS ${system.method}`,
    `VISCOSITY ${system.viscosity}`,
    "TRIALS 200",
    "ACCURACY 0.00001",
    "HEADERROR 0.0000001",
    "[TIMES]",
    "DURATION 0",
    "[END]",
    "",
  ].join("\n");
}

/** EPANET itself, compiled for JavaScript; opened once for a whole test file. */
export class Epanet {
  private constructor(private readonly workspace: Workspace) {}

  static async start(): Promise<Epanet> {
    const workspace = new Workspace();
    await workspace.loadModule();
    return new Epanet(workspace);
  }

  /** A project with the system read in, for those who solve it more than once. Close it. */
  open(system: EpanetSystem): Project {
    this.workspace.writeFile("system.inp", inputFile(system));
    const project = new Project(this.workspace);
    project.open("system.inp", "report.rpt", "out.bin");
    return project;
  }

  /** Flow of all pumps together, L/s, and the head they give, m. */
  solve(system: EpanetSystem): { flow: number; head: number } {
    const project = this.open(system);
    project.solveH();
    const last = project.getLinkIndex(`P${system.pipes.length - 1}`);
    const first = project.getNodeIndex("N0");
    const result = { flow: flowOf(project, last), head: headOf(project, first) - system.from };
    project.close();
    return result;
  }
}

/** EN_FLOW and EN_HEAD of the toolkit's property lists. */
const EN_FLOW = 8;
const EN_HEAD = 10;

function flowOf(project: Project, link: number): number {
  return project.getLinkValue(link, EN_FLOW);
}

function headOf(project: Project, node: number): number {
  return project.getNodeValue(node, EN_HEAD);
}
