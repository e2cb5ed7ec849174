/**
 * Loaded before the server by `--import`: answers what memory the process holds whenever its parent asks. Heap is
 * measured after collecting, which needs `--expose-gc`.
 */
process.on('message', () => {
  globalThis.gc?.()
  globalThis.gc?.()
  const { heapUsed, rss, external } = process.memoryUsage()
  process.send?.({ heapUsed, rss, external })
})
// the channel to the parent must not keep a server running that was told to stop
process.channel?.unref()
