/** A change of a tree: the two nodes from which it spreads upward, and the way back. */
export interface Change {
  readonly from: readonly [number, number];
  readonly undo: () => void;
}

/** A binary tree that groups pieces: leaves are numbered first, the root last. */
export class Tree {
  readonly root: number;
  readonly nodes: number;
  readonly left: Int32Array;
  readonly right: Int32Array;
  readonly parent: Int32Array;

  /** Groups the leaves pair by pair in the order given, then the pairs, and so on. */
  constructor(leafOrder: readonly number[]) {
    const leaves = leafOrder.length;
    this.nodes = 2 * leaves - 1;
    this.root = this.nodes - 1;
    this.left = new Int32Array(this.nodes).fill(-1);
    this.right = new Int32Array(this.nodes).fill(-1);
    this.parent = new Int32Array(this.nodes).fill(-1);
    const queue = [...leafOrder];
    for (let node = leaves; node < this.nodes; node++) {
      const next = 2 * (node - leaves);
      this.setChildren(node, queue[next] as number, queue[next + 1] as number);
      queue.push(node);
    }
  }

  leftOf(node: number): number {
    return this.left[node] as number;
  }

  rightOf(node: number): number {
    return this.right[node] as number;
  }

  parentOf(node: number): number {
    return this.parent[node] as number;
  }

  /** Exchanges two nodes; undefined when that is no change or cannot be. */
  swap(a: number, b: number): Change | undefined {
    if (a === b || a === this.root || b === this.root || this.parentOf(a) === this.parentOf(b)) return undefined;
    if (this.isAbove(a, b) || this.isAbove(b, a)) return undefined;
    const exchange = (): void => {
      const ofA = this.parentOf(a);
      const ofB = this.parentOf(b);
      this.replaceChild(ofA, a, b);
      this.replaceChild(ofB, b, a);
    };
    const from = [this.parentOf(a), this.parentOf(b)] as const;
    exchange();
    return { from, undo: exchange };
  }

  /** Lifts a node off and hangs it in beside another; undefined when that is no change or cannot be. */
  move(node: number, target: number): Change | undefined {
    const holder = this.parentOf(node);
    if (node === this.root || holder === this.root || target === this.root || target === holder) return undefined;
    const sibling = this.siblingOf(node);
    if (target === sibling || this.isAbove(node, target)) return undefined;
    // The holder goes along: it leaves its place to the sibling and takes the target's.
    const hangBeside = (other: number): void => {
      const left = this.siblingOf(node);
      this.replaceChild(this.parentOf(holder), holder, left);
      this.replaceChild(this.parentOf(other), other, holder);
      this.replaceChild(holder, left, other);
    };
    const above = this.parentOf(holder);
    hangBeside(target);
    return { from: [holder, above], undo: () => hangBeside(sibling) };
  }

  /** Every node that a change at two nodes touches, each once, parts before what they are parts of. */
  *upward([first, second]: readonly [number, number]): Generator<number> {
    let a = first;
    let b = second;
    let lead = this.depthOf(a) - this.depthOf(b);
    while (a !== b) {
      if (lead >= 0) {
        yield a;
        a = this.parentOf(a);
        lead--;
      } else {
        yield b;
        b = this.parentOf(b);
        lead++;
      }
    }
    for (let node = a; node >= 0; node = this.parentOf(node)) yield node;
  }

  private isAbove(high: number, low: number): boolean {
    for (let node = low; node >= 0; node = this.parentOf(node)) if (node === high) return true;
    return false;
  }

  private depthOf(node: number): number {
    let depth = 0;
    for (let at = this.parentOf(node); at >= 0; at = this.parentOf(at)) depth++;
    return depth;
  }

  private siblingOf(node: number): number {
    const parent = this.parentOf(node);
    return this.leftOf(parent) === node ? this.rightOf(parent) : this.leftOf(parent);
  }

  private setChildren(node: number, a: number, b: number): void {
    this.left[node] = a;
    this.right[node] = b;
    this.parent[a] = node;
    this.parent[b] = node;
  }

  private replaceChild(parent: number, child: number, by: number): void {
    if (this.leftOf(parent) === child) this.left[parent] = by;
    else this.right[parent] = by;
    this.parent[by] = parent;
  }
}
