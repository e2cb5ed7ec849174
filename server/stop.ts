import type { Server } from 'node:http'

/**
 * Stops taking connections, lets every request that has begun get its whole answer, and resolves when all are gone, or
 * at the deadline, when what is still open is cut off.
 *
 * @param deadlineMs  the longest wait [ms]
 * @returns whether all were finished in time
 */
export async function finishRequests(server: Server, deadlineMs: number): Promise<boolean> {
  // a connection that is kept open ends with the answer under way, or with the next one
  server.prependListener('request', (_request, response) => response.setHeader('Connection', 'close'))
  const closed = new Promise<true>((resolve) => server.close(() => resolve(true)))
  server.closeIdleConnections()
  const idle = setInterval(() => server.closeIdleConnections(), 50)
  let late: NodeJS.Timeout | undefined
  const deadline = new Promise<false>((resolve) => {
    late = setTimeout(() => resolve(false), deadlineMs)
  })
  const inTime = await Promise.race([closed, deadline])
  clearInterval(idle)
  clearTimeout(late)
  if (!inTime) server.closeAllConnections()
  return inTime
}
