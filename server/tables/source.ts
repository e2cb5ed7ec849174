/** How well a value is attested. */
export type SourceKind = 'published' | 'common practice' | 'from memory'

/** Where a value comes from: shown with every finding and in docs/sources.md. */
export interface Source {
  readonly title: string
  readonly detail: string
  readonly kind: SourceKind
}

/** A source that was read: `detail` names the clause, table or page. */
export const published = (title: string, detail: string): Source => Object.freeze({ title, detail, kind: 'published' })

/** A habit of the trade or a rule made in this project: `detail` gives the reason. */
export const commonPractice = (title: string, detail: string): Source =>
  Object.freeze({ title, detail, kind: 'common practice' })

/** Remembered and not looked up: `title` names the document it is remembered from. */
export const fromMemory = (title: string, detail: string): Source =>
  Object.freeze({ title, detail, kind: 'from memory' })
