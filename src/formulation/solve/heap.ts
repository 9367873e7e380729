/** A binary heap: what costs least comes out first. */
export class Heap<T extends { readonly cost: number }> {
  private readonly items: T[] = [];

  push(item: T): void {
    const { items } = this;
    items.push(item);
    let i = items.length - 1;
    while (i > 0) {
      const parent = (i - 1) >> 1;
      if (items[parent]!.cost <= items[i]!.cost) return;
      this.swap(i, parent);
      i = parent;
    }
  }

  /** Takes out what costs least; undefined when nothing is left. */
  pop(): T | undefined {
    const { items } = this;
    const top = items[0];
    const last = items.pop();
    if (items.length === 0 || last === undefined) return top;
    items[0] = last;
    for (let i = 0; ; ) {
      const left = 2 * i + 1;
      const right = left + 1;
      let least = i;
      if (left < items.length && items[left]!.cost < items[least]!.cost) least = left;
      if (right < items.length && items[right]!.cost < items[least]!.cost) least = right;
      if (least === i) return top;
      this.swap(i, least);
      i = least;
    }
  }

  private swap(i: number, j: number): void {
    [this.items[i], this.items[j]] = [this.items[j]!, this.items[i]!];
  }
}
