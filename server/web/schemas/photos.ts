import { line } from './record.js'

/** What a photo shows; "supply plate" and "machine plate" stand beside the typed words of that plate. */
export const captionSchema = line(200)
  .nullish()
  .transform((caption) => caption ?? '')
