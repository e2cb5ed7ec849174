import type { FieldError } from '../errors.js'
import type { FormFault } from './formState.js'

/** The faults of a schema as faults of a form: under the box that the path's end names, else under the first box. */
export function faultsOf(
  error: { message: string; fields?: FieldError[] },
  first: string,
  names: readonly string[],
): FormFault[] {
  const fields = error.fields?.length ? error.fields : [{ path: '', message: error.message }]
  return fields.map(({ path, message }) => {
    const end = path.split('.').pop() ?? ''
    return { name: names.includes(end) ? end : first, message }
  })
}
