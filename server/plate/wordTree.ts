import { isSpace } from './characters.js'
import { foldWord } from './fold.js'

interface Branch<Value> {
  next: Map<string, Branch<Value>>
  value?: Value
}

/** Longest distance a phrase may stretch over its own length by repeated spaces. */
const longestMatch = 96

/**
 * Words and phrases by their letters. A search costs at most `longestMatch` steps, whatever the number of words.
 */
export class WordTree<Value> {
  readonly #root: Branch<Value> = { next: new Map() }

  /** Adds a word; an earlier one that reads the same is kept. */
  add(word: string, value: Value): void {
    let branch = this.#root
    for (const one of foldWord(word).replace(/\.$/, '').split('')) {
      let next = branch.next.get(one)
      if (!next) {
        next = { next: new Map() }
        branch.next.set(one, next)
      }
      branch = next
    }
    branch.value ??= value
  }

  /**
   * The longest word that starts at `from` and ends where `endsAt` allows it.
   *
   * @param upper   folded text in capitals
   * @param endsAt  whether a word may end before the character at this index
   */
  longest(upper: string, from: number, endsAt: (index: number) => boolean): { value: Value; end: number } | null {
    let branch: Branch<Value> = this.#root
    let best: { value: Value; end: number } | null = null
    let index = from
    const limit = Math.min(upper.length, from + longestMatch)
    while (index < limit) {
      const next = branch.next.get(upper.charAt(index))
      if (!next) break
      branch = next
      index += 1
      // one space in the table stands for any number of them in print
      if (upper.charAt(index - 1) === ' ') while (index < limit && isSpace(upper.charAt(index))) index += 1
      if (branch.value !== undefined && endsAt(index)) best = { value: branch.value, end: index }
    }
    return best
  }
}
