// The cells of the grid are addressed as those of the files are.
export * from "../xlsx/address";
