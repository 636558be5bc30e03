// Which cells need each other in a ring: strongly connected components, with a stack of our own so that 5,000 long is fine.

/** Groups of ids that all reach one another through `needs`; a single id only if it needs itself. Source: Tarjan 1972. */
export function ringsAmong(needs: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  const order = new Map<string, number>();
  const low = new Map<string, number>();
  const open: string[] = [];
  const isOpen = new Set<string>();
  const rings: string[][] = [];
  const lower = (id: string, to: number): void => void low.set(id, Math.min(low.get(id) ?? to, to));

  const close = (id: string): void => {
    const ring: string[] = [];
    for (let member = open.pop(); member !== undefined; member = open.pop()) {
      isOpen.delete(member);
      ring.push(member);
      if (member === id) break;
    }
    if (ring.length > 1 || needs.get(id)?.includes(id)) rings.push(ring.reverse());
  };

  const visit = (root: string): void => {
    const path: { id: string; next: number }[] = [];
    const enter = (id: string): void => {
      order.set(id, order.size);
      low.set(id, order.size - 1);
      open.push(id);
      isOpen.add(id);
      path.push({ id, next: 0 });
    };
    enter(root);
    for (let top = path.at(-1); top; top = path.at(-1)) {
      const target = needs.get(top.id)?.[top.next++];
      if (target === undefined) {
        if (low.get(top.id) === order.get(top.id)) close(top.id);
        path.pop();
        const above = path.at(-1);
        if (above) lower(above.id, low.get(top.id) ?? 0);
      } else if (needs.has(target)) {
        if (!order.has(target)) enter(target);
        else if (isOpen.has(target)) lower(top.id, order.get(target) ?? 0);
      }
    }
  };
  for (const id of needs.keys()) if (!order.has(id)) visit(id);
  return rings;
}

/** One way round a ring: ids from `start` back to before `start`, the shortest there is. */
export function wayRound(
  start: string,
  members: ReadonlySet<string>,
  needs: ReadonlyMap<string, readonly string[]>,
): readonly string[] {
  const from = new Map<string, string>();
  const queue = [start];
  for (let head = 0; head < queue.length; head++) {
    const id = queue[head] ?? start;
    for (const target of needs.get(id) ?? []) {
      if (target === start) {
        const way = [id];
        for (let back = from.get(id); back !== undefined; back = from.get(back)) way.push(back);
        return way.reverse();
      }
      if (members.has(target) && !from.has(target) && target !== start) {
        from.set(target, id);
        queue.push(target);
      }
    }
  }
  return [start];
}
