import { createHash } from 'node:crypto'
import type { Job } from './job.js'

/**
 * A digest of a job's name and observations, 22 characters. Two equal marks mean that nobody changed these between,
 * whatever else of the job changed: readings come in from the bench while someone else writes down what was seen.
 */
export const detailsMark = ({ name, observations }: Pick<Job, 'name' | 'observations'>): string =>
  createHash('sha256')
    .update(JSON.stringify([name, observations]))
    .digest('base64url')
    .slice(0, 22)
