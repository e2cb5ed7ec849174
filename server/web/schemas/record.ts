import { z } from 'zod'

/** C0 and C1 controls without tab, line feed and return; they are no part of anything a person writes. */
const controls = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f]/

/** A line or more of a person's own words, blanks around it taken away. */
export const words = (most: number) =>
  z
    .string()
    .trim()
    .max(most)
    .refine((text) => !controls.test(text), { error: 'must hold no control characters' })

export const line = (most: number) => words(most).refine((text) => !/[\r\n]/.test(text), { error: 'must be one line' })

/** What a record is called. */
export const nameSchema = line(200).min(1)

export const placeSchema = line(200).nullish()

export const noteSchema = words(4000).nullish()

/** The version that a change was based on. */
export const versionSchema = z
  .int()
  .min(1)
  .max(2 ** 31 - 1)

/** `?version=3`, where a deletion is to be refused if the record was changed since. */
export const versionQuerySchema = z
  .string()
  .regex(/^[1-9]\d{0,9}$/, { error: 'must be a whole number, 1 or more' })
  .transform(Number)
  .optional()

const whole = (least: number, most: number) =>
  z
    .string()
    .regex(/^\d{1,9}$/, { error: `must be a whole number from ${least} to ${most}` })
    .transform(Number)
    .pipe(z.number().min(least).max(most))

/** The most records in one list. */
export const mostListed = 100_000

/** `?search=&limit=&offset=` of every list. */
export const listQuerySchema = z.object({
  search: z.string().max(200).optional(),
  limit: whole(1, mostListed).optional(),
  offset: whole(0, 10_000_000).optional(),
})
