/** A file of a typeface, as base64. */
declare module "*.ttf" {
  const base64: string;
  export default base64;
}
