// Work done ahead, handed on in order.

/** At most `ahead` items are under way; results come in the order of the items. */
export async function* inOrder<Item, Value>(
  items: Iterable<Item>,
  work: (item: Item) => Promise<Value>,
  ahead: number,
): AsyncGenerator<Value> {
  const underWay: Promise<Value>[] = []
  for (const item of items) {
    const next = work(item)
    // Told when its turn comes; until then a failure is not unheard of.
    next.catch(() => undefined)
    underWay.push(next)
    if (underWay.length >= ahead) yield await (underWay.shift() as Promise<Value>)
  }
  for (const next of underWay) yield await next
}
