import { checkValues } from '../../../facts/address.js'
import type { CheckRequest } from '../../../facts/check.js'
import { addressOf } from './form.js'

/**
 * The address of a check on the page "/": "/?country=DE&supply=…".
 *
 * @throws RangeError where the check has more rows than a form has
 */
export const checkAddress = (request: CheckRequest): string => `/?${addressOf(checkValues(request))}`
