import { invalid, missing, plain } from "../problem";
import { PVC, type PipeMaterial } from "../tables/pipeMaterials";
import { PIPE_TYPES } from "../tables/pipes";
import type { PipeType } from "../tables/pipeSizes";

/** The pipe type of a size that is itself the bore. */
export const BORE_TYPE = "Bore";

/** The names users choose a pipe type by. */
export const PIPE_TYPE_NAMES: readonly string[] = [...PIPE_TYPES.map((type) => type.name), BORE_TYPE];

/** A pipe as the hydraulics see it. */
export interface Pipe {
  /** As a person would say it: "2 in Sch 40 PVC". */
  readonly label: string;
  /** Inside diameter, m. */
  readonly bore: number;
  readonly material: PipeMaterial;
}

/** How smooth a pipe is, as the user says it: what is left out is the type's own. */
export interface OwnSmoothness {
  /** C of Hazen-Williams. */
  readonly hazenWilliams?: number;
  /** m */
  readonly roughness?: number;
}

/** The roughest inside the friction factor holds for, as a share of the bore. */
const ROUGHEST = 0.05;

/** What a user typed for a size, in m, and whether it was called a bore. */
export interface PipeSize {
  readonly size: number;
  readonly isBore: boolean;
}

/** Bores a stated bore may have, m: 3 mm to 1 m. */
export const BORE_RANGE = { min: 0.003, max: 1 } as const;

/** How far a typed size may lie from the nominal one, m: 12.7 mm typed as 12.5 mm is still 1/2 in. */
const SIZE_TOLERANCE = 0.00025;

const typesByName = new Map(PIPE_TYPES.map((type) => [type.name, type]));
/** Pipes looked up before, by type and size as typed. */
const known = new Map<PipeType, Map<number, Pipe>>();

/**
 * The pipe of a size and type: its bore (inside diameter = outside diameter - 2 × least wall) and smoothness.
 * A stated bore is as smooth as its type, rigid PVC for the type "Bore".
 *
 * @param size nominal size in m (NPS or outside diameter), or the bore itself when `isBore` or the type is "Bore"
 * @param typeName one of PIPE_TYPE_NAMES
 * @param own smoothness in place of the type's
 * @throws Problem "missing" when the type has no such size; the sentence lists those it has
 * @example findPipe({ size: 0.0508, isBore: false }, "Sch 40 PVC").bore => 0.0525; ASTM D1785: 2.375 in less twice
 *   0.154 in
 *
 * Source: the standard named in each row of the pipe tables.
 */
export function findPipe(size: PipeSize, typeName: string, name = "size", own?: OwnSmoothness): Pipe {
  const pipe = pipeOf(size, typeName, name);
  return own && (own.hazenWilliams !== undefined || own.roughness !== undefined) ? smoothed(pipe, own, name) : pipe;
}

function pipeOf({ size, isBore }: PipeSize, typeName: string, name: string): Pipe {
  const type = typesByName.get(typeName);
  if (isBore || type === undefined) return statedBore(size, type?.material ?? PVC, name);
  let sizes = known.get(type);
  if (!sizes) known.set(type, (sizes = new Map()));
  let pipe = sizes.get(size);
  if (!pipe) {
    pipe = lookUp(size, type, name);
    // Sizes typed a hair off the nominal one are kept too; none of them may pile up.
    if (sizes.size > 100) sizes.clear();
    sizes.set(size, pipe);
  }
  return pipe;
}

function lookUp(size: number, type: PipeType, name: string): Pipe {
  const row = type.sizes.find(({ nominal }) => Math.abs(nominal - size) <= SIZE_TOLERANCE);
  if (!row) {
    const written = type.sizes.map(({ nominal }) => sizeWords(nominal, type.sizedIn)).join(", ");
    const asked = sizeWords(size, type.sizedIn);
    throw missing(
      `${name} ${asked} ${type.sizedIn} does not exist in ${type.name}, which comes in ${written} ${type.sizedIn}; ` +
        `name another pipe type, or write the inside diameter as "bore ${plain(size * 1000)} mm"`,
    );
  }
  return {
    label: `${sizeWords(row.nominal, type.sizedIn)} ${type.sizedIn} ${type.name}`,
    bore: row.bore,
    material: type.material,
  };
}

function smoothed(pipe: Pipe, own: OwnSmoothness, name: string): Pipe {
  const { hazenWilliams = pipe.material.hazenWilliams, roughness = pipe.material.roughness } = own;
  if (roughness > ROUGHEST * pipe.bore) {
    throw invalid(
      `${name}: roughness must be at most ${ROUGHEST} of the bore, ${plain(ROUGHEST * pipe.bore * 1000)} mm; ` +
        `got ${plain(roughness * 1000)} mm`,
    );
  }
  const words = [
    own.hazenWilliams === undefined ? "" : `, C ${plain(hazenWilliams)}`,
    own.roughness === undefined ? "" : `, roughness ${plain(roughness * 1000)} mm`,
  ];
  const material = { name: `${pipe.material.name}${words.join("")}`, hazenWilliams, roughness, source: "the user" };
  return { label: `${pipe.label}${words.join("")}`, bore: pipe.bore, material };
}

function statedBore(bore: number, material: PipeMaterial, name: string): Pipe {
  if (!(bore >= BORE_RANGE.min && bore <= BORE_RANGE.max)) {
    throw invalid(`${name} as a bore must be 3 to 1000 mm (1/8 to 39 in); got ${plain(bore * 1000)} mm`);
  }
  return { label: `bore ${plain(bore * 1000)} mm, ${material.name}`, bore, material };
}

/** "1 1/2" for 38.1 mm in inches, "63" for 63 mm. */
function sizeWords(metres: number, unit: "in" | "mm"): string {
  if (unit === "mm") return plain(metres * 1000);
  const inches = metres / 0.0254;
  const whole = Math.floor(inches + 1e-9);
  const eighths = (inches - whole) * 8;
  const rounded = Math.round(eighths);
  if (Math.abs(eighths - rounded) > 1e-6) return plain(inches);
  if (rounded === 0) return String(whole);
  const fraction = rounded % 4 === 0 ? "1/2" : rounded % 2 === 0 ? `${rounded / 2}/4` : `${rounded}/8`;
  return whole === 0 ? fraction : `${whole} ${fraction}`;
}
