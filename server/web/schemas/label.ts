import { z } from 'zod'

/** Longest text read from one plate, in characters; a plate has some hundred. */
export const longestPlateText = 200_000

/** `POST /api/label` */
export const labelRequest = z.strictObject({
  text: z.string().max(longestPlateText),
  of: z.enum(['supply', 'device']).nullish(),
})
