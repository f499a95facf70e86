/** How smooth a pipe's inside is, under either friction method. */
export interface PipeMaterial {
  readonly name: string;
  /** C of Hazen-Williams. */
  readonly hazenWilliams: number;
  /** Equivalent sand roughness for Darcy-Weisbach, m. */
  readonly roughness: number;
  readonly source: string;
}

const EPANET_PLASTIC =
  "EPANET 2.2 User Manual (Rossman et al., EPA/600/R-20/133), Table 3.2: plastic, C 140 to 150, roughness 0.005e-3 ft";
/** 0.005 thousandths of a foot, the manual's roughness of plastic, in m. */
const PLASTIC_ROUGHNESS = 0.005e-3 * 0.3048;

export const PVC: PipeMaterial = {
  name: "rigid PVC",
  hazenWilliams: 150,
  roughness: PLASTIC_ROUGHNESS,
  source: `${EPANET_PLASTIC}; C 150 as in Illinois Administrative Code 77, part 906, appendix A, exhibit I (Schedule 40 plastic). SWMM Reference Manual vol. II, Table 7-3, lists a more cautious 130 for PVC`,
};

export const FLEXIBLE_PVC: PipeMaterial = {
  name: "flexible PVC",
  hazenWilliams: 140,
  roughness: PLASTIC_ROUGHNESS,
  source: `${EPANET_PLASTIC}; the low end, because coiled hose never lies straight (common practice, no source)`,
};

export const POLYETHYLENE: PipeMaterial = {
  name: "polyethylene",
  hazenWilliams: 140,
  roughness: PLASTIC_ROUGHNESS,
  source: `${EPANET_PLASTIC}; C 140 as in SWMM Reference Manual vol. II, Table 7-3 (polyethylene)`,
};
