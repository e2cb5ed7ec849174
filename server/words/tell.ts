import { Phrase } from './phrase.js'
import { plainReader, type Reader } from './reader.js'

/** What a value is once every phrase in it is text. */
export type Told<Value> = Value extends Phrase
  ? string
  : Value extends (...given: never[]) => unknown
    ? Value
    : Value extends object
      ? { [Key in keyof Value]: Told<Value[Key]> }
      : Value

/**
 * The same value with every phrase in it as text for a reader. Parts without a phrase are passed on as they are, not copied; so are
 * objects of classes.
 *
 * @param value  a phrase, or plain objects and arrays with phrases in them; without circles
 */
export function tell<Value>(value: Value, reader: Reader = plainReader): Told<Value> {
  return told(value, reader) as Told<Value>
}

function told(value: unknown, reader: Reader): unknown {
  if (typeof value !== 'object' || value === null) return value
  if (value instanceof Phrase) return Phrase.text(value, reader)
  if (Array.isArray(value)) {
    const items = value.map((item) => told(item, reader))
    return items.some((item, at) => item !== value[at]) ? items : value
  }
  const prototype = Object.getPrototypeOf(value)
  if (prototype !== Object.prototype && prototype !== null) return value
  const entries = Object.entries(value)
  const after = entries.map(([key, item]) => [key, told(item, reader)] as const)
  return after.some(([, item], at) => item !== entries[at]![1]) ? Object.fromEntries(after) : value
}
