import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest'
import { Full, Missing, Stale } from '../../server/store/errors.js'
import { openStore } from '../../server/store/openStore.js'
import { type Draft, type Photo, type Store, undoDays, undoMs } from '../../server/store/store.js'

// the machine that runs the tests may be busy with others
vi.setConfig({ testTimeout: 60_000 })

export interface Place {
  dataDir: string | null
  databaseUrl: string | undefined
  end(): Promise<void>
}

const draft = (name: string, over: Partial<Draft> = {}): Draft => ({
  name,
  search: name,
  state: null,
  summary: { name },
  body: { name, note: null },
  ...over,
})

const start = Date.UTC(2026, 0, 5, 9)
const dayMs = 24 * 3600 * 1000

/** What a store promises, on each of some places. */
export const keepsPromises = (places: [string, () => Promise<Place>][]) =>
  describe.each(places)('the store on %s', (_name, make) => {
    let place: Place
    let store: Store
    let clock = start

    /** what is forgotten while the server runs for so many days */
    const daily = async (days: number): Promise<Photo[]> => {
      const gone: Photo[] = []
      for (let day = 0; day < days; day += 1) {
        clock += dayMs
        gone.push(...(await store.purge()))
      }
      return gone
    }

    beforeAll(async () => {
      place = await make()
      store = openStore({ dataDir: place.dataDir, databaseUrl: place.databaseUrl, now: () => clock })
      await store.ready()
    }, 60_000)

    afterAll(async () => {
      await store.close()
      await place.end()
    }, 60_000)

    beforeEach(async () => {
      clock = start
      for (const kind of ['supply', 'device', 'job'] as const)
        for (const { id } of (await store.list(kind, { limit: 1000 })).rows) await store.remove(kind, id, null)
    })

    it('gives a new record an id that cannot be guessed, version 1 and its times', async () => {
      const first = await store.add('supply', draft('Brick, grey'))
      const second = await store.add('supply', draft('Brick, grey'))
      expect(first.id).toMatch(/^[\w-]{22}$/)
      expect(second.id).not.toBe(first.id)
      expect(first).toMatchObject({
        version: 1,
        createdAt: start,
        updatedAt: start,
        name: 'Brick, grey',
        kind: 'supply',
      })
      expect(await store.get('supply', first.id)).toEqual(first)
    })

    it('adds a record of a given id once, also when it is sent several times at once, and never brings a deleted one back', async () => {
      const id = `once-${place.dataDir ?? ''}-${Math.random()}`.replace(/\W/g, '-').slice(-30)
      const all = await Promise.all(Array.from({ length: 5 }, () => store.add('supply', draft('Once'), id)))
      for (const kept of all) expect(kept).toEqual(all[0])
      expect(all[0]).toMatchObject({ id, version: 1, name: 'Once' })
      expect((await store.list('supply', { limit: 10 })).total).toBe(1)
      clock += 60_000
      const changed = await store.change('supply', id, 1, () => draft('Twice'))
      expect(await store.add('supply', draft('Once'), id)).toEqual(changed)
      await store.remove('supply', id, null)
      expect((await store.add('supply', draft('Once'), id)).id).toBe(id)
      expect((await store.list('supply', { limit: 10 })).total).toBe(0)
    })

    it('keeps every character of a body: quotes, NUL, a character outside the basic plane, a lone half of one', async () => {
      const body = { text: `"'\\;--\u0000\u2028😀 \ud83d Ω ≤`, list: [0, -0.5, 1e-12, null, true] }
      const { id } = await store.add('job', draft('Ω', { body }))
      expect((await store.get('job', id)).body).toEqual(body)
    })

    it('does not find a record under another kind', async () => {
      const { id } = await store.add('supply', draft('A'))
      await expect(store.get('device', id)).rejects.toBeInstanceOf(Missing)
      await expect(store.remove('device', id, null)).rejects.toBeInstanceOf(Missing)
      await expect(store.get('supply', 'nothing')).rejects.toBeInstanceOf(Missing)
    })

    it('counts the version up with a change made on the present one', async () => {
      const { id } = await store.add('supply', draft('A'))
      clock += 60_000
      const changed = await store.change('supply', id, 1, () => draft('B'))
      expect(changed).toMatchObject({ id, version: 2, name: 'B', createdAt: start, updatedAt: start + 60_000 })
      expect(await store.get('supply', id)).toEqual(changed)
    })

    it('refuses a change made on an older version, says what is kept now, and changes nothing', async () => {
      const { id } = await store.add('supply', draft('A'))
      const now = await store.change('supply', id, 1, () => draft('B'))
      const refusal = await store.change('supply', id, 1, () => draft('C')).catch((error: unknown) => error)
      expect(refusal).toBeInstanceOf(Stale)
      expect((refusal as Stale).current).toEqual(now)
      await expect(store.remove('supply', id, 1)).rejects.toBeInstanceOf(Stale)
      expect(await store.get('supply', id)).toEqual(now)
    })

    it('lets exactly one of many changes on the same version through', async () => {
      const { id } = await store.add('job', draft('A'))
      const outcomes = await Promise.allSettled(
        Array.from({ length: 12 }, (_, index) => store.change('job', id, 1, () => draft(`by ${index}`))),
      )
      expect(outcomes.filter(({ status }) => status === 'fulfilled')).toHaveLength(1)
      expect((await store.get('job', id)).version).toBe(2)
    })

    it('loses none of many additions to one record made at once', async () => {
      const { id } = await store.add('job', draft('A', { body: [] }))
      await Promise.all(
        Array.from({ length: 20 }, (_, index) =>
          store.change<number[]>('job', id, null, ({ body }) => ({ ...draft('A'), body: [...body, index] })),
        ),
      )
      const { body, version } = await store.get<number[]>('job', id)
      expect([...body].sort((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, index) => index))
      expect(version).toBe(21)
    })

    it('leaves a record as it is where there is nothing to change', async () => {
      const kept = await store.add('job', draft('A'))
      clock += 1000
      expect(await store.change('job', kept.id, null, () => null)).toEqual(kept)
      expect(await store.get('job', kept.id)).toEqual(kept)
    })

    it('changes nothing when making the new body fails', async () => {
      const kept = await store.add('job', draft('A'))
      const failing = store.change('job', kept.id, null, () => {
        throw new RangeError('no')
      })
      await expect(failing).rejects.toThrow(RangeError)
      expect(await store.get('job', kept.id)).toEqual(kept)
    })

    it('hides a deleted record and brings it back within 30 days', async () => {
      const { id } = await store.add('device', draft('A'))
      await store.remove('device', id, 1)
      await expect(store.get('device', id)).rejects.toBeInstanceOf(Missing)
      await expect(store.remove('device', id, null)).rejects.toBeInstanceOf(Missing)
      expect((await store.list('device', { limit: 10 })).total).toBe(0)
      clock += undoMs
      expect(await store.restore('device', id)).toMatchObject({ id, version: 3, name: 'A' })
      expect((await store.get('device', id)).name).toBe('A')
      await expect(store.restore('device', id)).rejects.toBeInstanceOf(Missing)
    })

    it('brings nothing back after 30 days, and then forgets it for good', async () => {
      const { id } = await store.add('device', draft('A'))
      await store.remove('device', id, null)
      expect((await store.held([id]))[0]).toMatchObject({ deleted: true })
      clock += undoMs + 1
      await expect(store.restore('device', id)).rejects.toBeInstanceOf(Missing)
      await daily(undoDays)
      expect(await store.held([id])).toEqual([])
    })

    it('forgets nothing on a day that the clock calls far away, and all in its time once the clock is right again', async () => {
      // the days that other tests counted ahead of this one count no longer
      await store.purge()
      const { id } = await store.add('device', draft('A'))
      await store.remove('device', id, null)
      const deleted = clock
      for (const years of [10, -20, 30]) {
        clock = deleted + years * 365 * dayMs
        expect(await store.purge()).toEqual([])
        expect((await store.held([id]))[0]).toMatchObject({ deleted: true })
      }
      clock = deleted
      await daily(undoDays - 1)
      expect((await store.restore('device', id)).name).toBe('A')
      await store.remove('device', id, null)
      await daily(undoDays + 1)
      expect(await store.held([id])).toEqual([])
    })

    it('keeps what was deleted while the clock was ahead, and counts versions on whatever it says', async () => {
      const { id } = await store.add('job', draft('A'))
      const right = clock
      clock = right + 5 * 365 * dayMs
      await store.change('job', id, 1, () => draft('B'))
      clock = right - 3600 * 1000
      const kept = await store.change('job', id, 2, () => draft('C'))
      expect(kept).toMatchObject({ version: 3, name: 'C' })
      await expect(store.change('job', id, 2, () => draft('D'))).rejects.toBeInstanceOf(Stale)
      await store.remove('job', id, 3)
      expect(await store.restore('job', id)).toMatchObject({ version: 5, name: 'C' })
    })

    it('lists by name whatever the case, in pages, with the number of all', async () => {
      for (const name of ['beta', 'Alpha', 'gamma', 'Delta']) await store.add('supply', draft(name))
      const first = await store.list('supply', { limit: 3 })
      expect(first.rows.map(({ name }) => name)).toEqual(['Alpha', 'beta', 'Delta'])
      expect(first.rows[0]?.summary).toEqual({ name: 'Alpha' })
      expect(first.total).toBe(4)
      const second = await store.listWhole('supply', { limit: 3, offset: 3 })
      expect(second.rows.map(({ body }) => body)).toEqual([{ name: 'gamma', note: null }])
    })

    it('lists what was changed last first when asked', async () => {
      const old = await store.add('job', draft('old'))
      clock += 1000
      await store.add('job', draft('new'))
      clock += 1000
      await store.change('job', old.id, null, () => draft('old, touched'))
      const { rows } = await store.list('job', { limit: 10, order: 'latest' })
      expect(rows.map(({ name }) => name)).toEqual(['old, touched', 'new'])
    })

    it('searches for all words anywhere, taking %, _ and \\ as themselves', async () => {
      await store.add('supply', draft('100% tested', { search: '100% tested on the ÅNGSTRÖM bench' }))
      await store.add('supply', draft('1000 tested', { search: '1000 tested a_b c\\d' }))
      const found = async (search: string) =>
        (await store.list('supply', { search, limit: 10 })).rows.map(({ name }) => name)
      expect(await found('100%')).toEqual(['100% tested'])
      expect(await found('TESTED  ångström')).toEqual(['100% tested'])
      expect(await found('a_b c\\d')).toEqual(['1000 tested'])
      expect(await found('a%b')).toEqual([])
      expect(await found("' or 1=1 --")).toEqual([])
    })

    it('lists and counts by state', async () => {
      await store.add('job', draft('A', { state: 'ready' }))
      await store.add('job', draft('B', { state: 'waiting' }))
      await store.add('job', draft('C', { state: 'waiting' }))
      expect(await store.countStates('job')).toEqual({ ready: 1, waiting: 2 })
      const { rows, total } = await store.list('job', { states: ['waiting'], limit: 1 })
      expect([rows[0]?.name, total]).toEqual(['B', 2])
    })

    it('makes several changes together', async () => {
      const { id } = await store.add('supply', draft('A'))
      await store.apply([
        { do: 'add', kind: 'device', draft: draft('D') },
        { do: 'replace', kind: 'supply', id, version: 1, draft: draft('A2') },
        {
          do: 'put',
          kind: 'job',
          stamp: { id: 'from-elsewhere-000001', version: 7, createdAt: 5, updatedAt: 6 },
          expects: null,
          draft: draft('J'),
        },
      ])
      expect((await store.list('device', { limit: 5 })).rows.map(({ name }) => name)).toEqual(['D'])
      expect(await store.get('supply', id)).toMatchObject({ name: 'A2', version: 2 })
      expect(await store.get('job', 'from-elsewhere-000001')).toMatchObject({ version: 7, createdAt: 5, updatedAt: 6 })
      await store.purge()
    })

    it('makes none of several changes when one is refused', async () => {
      const kept = await store.add('supply', draft('A'))
      const other = await store.add('supply', draft('B'))
      await store.change('supply', other.id, 1, () => draft('B2'))
      const refused = store.apply([
        { do: 'add', kind: 'device', draft: draft('D') },
        { do: 'put', kind: 'supply', stamp: { ...kept, version: 9 }, expects: 1, draft: draft('A9') },
        { do: 'replace', kind: 'supply', id: other.id, version: 1, draft: draft('B3') },
      ])
      await expect(refused).rejects.toBeInstanceOf(Stale)
      expect((await store.list('device', { limit: 5 })).total).toBe(0)
      expect(await store.get('supply', kept.id)).toEqual(kept)
    })

    it('puts a record over a deleted one only when its version is the one expected', async () => {
      const { id, ...stamp } = await store.add('supply', draft('A'))
      await store.remove('supply', id, null)
      const put = (expects: number | null) =>
        store.apply([{ do: 'put', kind: 'supply', stamp: { id, ...stamp, version: 5 }, expects, draft: draft('back') }])
      await expect(put(null)).rejects.toBeInstanceOf(Stale)
      await put(2)
      expect(await store.get('supply', id)).toMatchObject({ name: 'back', version: 5 })
    })

    describe('photos', () => {
      const photo = (owner: string, id: string): Photo => ({
        id,
        owner,
        caption: 'plate',
        type: 'image/jpeg',
        bytes: 10,
        widthPx: 4,
        heightPx: 3,
        createdAt: clock,
      })

      it('are kept with their record, up to the number allowed, whoever adds at once', async () => {
        const { id } = await store.add('job', draft('A'))
        const outcomes = await Promise.allSettled(
          Array.from({ length: 5 }, (_, index) => store.addPhoto(photo(id, `${id}-${index}`), 3)),
        )
        expect(outcomes.filter(({ status }) => status === 'fulfilled')).toHaveLength(3)
        expect(await store.photos(id)).toHaveLength(3)
        await expect(store.addPhoto(photo(id, `${id}-x`), 3)).rejects.toBeInstanceOf(Full)
      })

      it('are kept once each, also where as many are kept as can be, and stay as they were first', async () => {
        const { id } = await store.add('job', draft('A'))
        const first = photo(id, `${id}-p`)
        const answers = await Promise.all(
          ['first', 'again', 'and again'].map((caption) => store.addPhoto({ ...first, caption }, 1)),
        )
        expect(new Set(answers.map(({ caption }) => caption)).size).toBe(1)
        expect(await store.photos(id)).toEqual([answers[0]])
      })

      it('can be deleted and brought back, and go for good with their record', async () => {
        const { id } = await store.add('job', draft('A'))
        await store.addPhoto(photo(id, `${id}-p`), 3)
        expect(await store.photo(`${id}-p`)).toEqual(photo(id, `${id}-p`))
        const every = async () => (await store.everyPhoto()).filter(({ owner }) => owner === id)
        expect(await every()).toEqual([photo(id, `${id}-p`)])
        await store.removePhoto(`${id}-p`)
        expect(await every()).toEqual([])
        await expect(store.photo(`${id}-p`)).rejects.toBeInstanceOf(Missing)
        await store.restorePhoto(`${id}-p`, 3)
        await store.remove('job', id, null)
        await expect(store.photo(`${id}-p`)).rejects.toBeInstanceOf(Missing)
        expect(await every()).toEqual([])
        clock += 1
        expect((await daily(undoDays)).map((gone) => gone.id)).toContain(`${id}-p`)
      })

      it('are not taken for a record that is not there', async () => {
        await expect(store.addPhoto(photo('nothing', 'p'), 3)).rejects.toBeInstanceOf(Missing)
      })
    })
  })
