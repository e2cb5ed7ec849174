/** Runs a work of one key at a time: who asks for the same key meanwhile gets the answer of the one that runs. */
export function sharing<Answer>(): (key: string, work: () => Promise<Answer>) => Promise<Answer> {
  const running = new Map<string, Promise<Answer>>()
  return (key, work) => {
    const already = running.get(key)
    if (already) return already
    const begun = work().finally(() => running.delete(key))
    running.set(key, begun)
    return begun
  }
}
