/** Numbers drawn from a seed, the same for the same seed (mulberry32; from memory, its author put it in the public domain). */
export class Draw {
  private state: number;

  constructor(seed: number) {
    this.state = seed | 0;
  }

  /** From 0 to below 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) | 0;
    let t = Math.imul(this.state ^ (this.state >>> 15), 1 | this.state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  }

  between(least: number, most: number): number {
    return least + this.next() * (most - least);
  }

  chance(share: number): boolean {
    return this.next() < share;
  }

  one<T>(list: readonly T[]): T {
    const chosen = list[Math.floor(this.next() * list.length)];
    if (chosen === undefined) throw new RangeError('nothing to draw from');
    return chosen;
  }

  some<T>(list: readonly T[], share: number): T[] {
    return list.filter(() => this.chance(share));
  }

  shuffled<T>(list: readonly T[]): T[] {
    return list
      .map((one) => [this.next(), one] as const)
      .sort(([a], [b]) => a - b)
      .map(([, one]) => one);
  }
}
