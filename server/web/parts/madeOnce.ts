/** A work that is done when it is first asked for, and again where it failed; what came of it is kept. */
export function madeOnce<Made>(make: () => Promise<Made>): () => Promise<Made> {
  let made: Promise<Made> | undefined
  return () => {
    made ??= make().catch((error: unknown) => {
      made = undefined
      throw error
    })
    return made
  }
}
