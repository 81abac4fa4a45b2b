/** Moves positions apart to at least `gap`, each as little as it can, within [low, high]; order and count stay. */
export function spread(wanted: readonly number[], gap: number, low: number, high: number): number[] {
  const order = wanted.map((at, index) => ({ at, index })).sort((a, b) => a.at - b.at || a.index - b.index);
  const groups: { sum: number; count: number; start: number }[] = [];
  for (const { at } of order) {
    groups.push({ sum: at, count: 1, start: at });
    settle(groups, gap, low, high);
  }
  const placed = groups.flatMap(({ start, count }) => Array.from({ length: count }, (_, i) => start + i * gap));
  const out = new Array<number>(wanted.length);
  order.forEach(({ index }, i) => {
    out[index] = placed[i] ?? 0;
  });
  return out;
}

/** Joins the last groups while they overlap, each joint group centred on the mean of what its members wanted. */
function settle(groups: { sum: number; count: number; start: number }[], gap: number, low: number, high: number): void {
  for (;;) {
    const last = groups.at(-1);
    if (!last) return;
    const length = (last.count - 1) * gap;
    last.start = Math.max(low, Math.min(high - length, last.sum / last.count - length / 2));
    const before = groups.at(-2);
    if (!before || before.start + before.count * gap <= last.start + 1e-9) return;
    groups.pop();
    before.sum += last.sum;
    before.count += last.count;
  }
}
