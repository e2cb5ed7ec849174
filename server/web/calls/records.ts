import type { z } from 'zod'
import type { Asked } from './call.js'
import { type Call, call } from './call.js'

type Runs = 'list' | 'add' | 'one' | 'change' | 'remove' | 'restore'

interface Records {
  group: 'Shelf' | 'Jobs'
  /** "/api/jobs" */
  path: string
  plural: string
  noun: string
  /** what a list, and one of them, is answered as */
  list: z.ZodType
  record: z.ZodType
}

const listQuery = { search: 'words to find', limit: 'how many at the most', offset: 'how many to pass over' }

/** The six calls that every kind of record has. */
export function recordCalls<Create extends z.ZodType, Change extends z.ZodType>(
  { group, path, plural, noun, list, record }: Records,
  add: { body: Create; run: (body: z.output<Create>, asked: Asked) => Promise<{ id: string }> },
  change: { method: 'put' | 'patch'; body: Change; run: (body: z.output<Change>, asked: Asked) => unknown },
  run: Record<Exclude<Runs, 'add' | 'change'>, (asked: Asked) => unknown>,
): Call[] {
  const one = `${path}/:id`
  return [
    call({
      method: 'get',
      path,
      group,
      summary: `All ${plural}`,
      query: listQuery,
      answer: list,
      run: (_body, asked) => run.list(asked),
    }),
    call({
      method: 'post',
      path,
      group,
      summary: `Keep a ${noun}`,
      body: add.body,
      answer: record,
      status: 201,
      once: true,
      async run(body: z.output<Create>, asked) {
        const kept = await add.run(body, asked)
        asked.response.location(`${path}/${kept.id}`)
        return kept
      },
    }),
    call({
      method: 'get',
      path: one,
      group,
      summary: `One ${noun}`,
      answer: record,
      run: (_body, asked) => run.one(asked),
    }),
    call({ path: one, group, summary: `Change a ${noun}`, answer: record, ...change }),
    call({
      method: 'delete',
      path: one,
      group,
      summary: `Delete a ${noun}; can be undone for 30 days`,
      answer: 'nothing',
      status: 204,
      run: (_body, asked) => run.remove(asked),
    }),
    call({
      method: 'post',
      path: `${one}/restore`,
      group,
      summary: `Undo the deletion of a ${noun}`,
      answer: record,
      run: (_body, asked) => run.restore(asked),
    }),
  ]
}
