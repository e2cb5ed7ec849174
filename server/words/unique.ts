import { Phrase, say, type Words } from './phrase.js'
import { plainReader } from './reader.js'

const plain = (words: Words): string => Phrase.text(say`${words}`, plainReader)

/** Whether two say the same. */
export const isSame = (one: Words, other: Words): boolean => plain(one) === plain(other)

/** The same without those that say again what an earlier one says. */
export function unique<Said extends Words>(all: readonly Said[]): Said[] {
  const said = new Set<string>()
  return all.filter((words) => said.size < said.add(plain(words)).size)
}
