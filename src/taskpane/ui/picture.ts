/** A drawing as a node; read as XML, so that nothing in a name of the user's can become more than text. */
export function picture(svg: string): Node {
  return document.importNode(new DOMParser().parseFromString(svg, "image/svg+xml").documentElement, true);
}
