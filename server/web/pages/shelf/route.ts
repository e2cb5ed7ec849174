import { type Request, type Response, Router } from 'express'
import { readAtHand } from '../../../bench/atHand/atHand.js'
import {
  type ShelfDevice,
  type ShelfItem,
  type ShelfKind,
  type ShelfSupply,
  shelfDraft,
} from '../../../bench/shelf/shelfItem.js'
import { Full, Stale, StorageFault } from '../../../store/errors.js'
import type { Kept, Photo, Store } from '../../../store/store.js'
import type { Context } from '../../context.js'
import { NotFound, Unprocessable } from '../../errors.js'
import { entryId, onceField } from '../../once.js'
import { show } from '../../page.js'
import { parse } from '../../parse.js'
import { faultsOf } from '../../parts/faultsOf.js'
import { type FormFault, FormReader, type FormState } from '../../parts/formState.js'
import { keepPhoto, mostPhotos, photoForm } from '../../parts/keepPhoto.js'
import { pageNumber } from '../../parts/pager.js'
import { deletedPhoto } from '../../parts/photoViews.js'
import { sharing } from '../../parts/sharing.js'
import type { Match, ShelfMatching } from '../../parts/shelfMatching.js'
import { shelfMatrix } from '../../parts/shelfMatrix.js'
import { shelfDeviceSchema, shelfSupplySchema } from '../../schemas/shelf.js'
import { checkAddress } from '../check/checkAddress.js'
import type { ChangedField } from '../jobs/view.js'
import { readShelfForm, type ShelfForm, shelfFormOf, shelfLabel } from './form.js'
import { columnsShown, matrixView, rowsShown } from './matrixView.js'
import { mostMatches, plurals, shelfFormView, shelfItemView, shelfView } from './view.js'

interface Needs {
  context: Context
  matching: ShelfMatching
}

const text = (sent: unknown): string => (typeof sent === 'string' ? sent.trim().slice(0, 200) : '')

/** The country asked for; where none is named, that of what is at hand. */
const countryIn = async (store: Store, request: Request): Promise<string> => {
  if (request.query.country === undefined) return (await readAtHand(store)).country ?? ''
  const code = text(request.query.country).toUpperCase()
  return /^[A-Z]{2}$/.test(code) ? code : ''
}

/** A row from its form, checked as one sent as JSON is. */
function itemOf(kind: ShelfKind, form: ShelfForm): ShelfItem {
  const { name, place, note } = form
  if (kind === 'supply') {
    const parsed = parse(shelfSupplySchema, { name, place, note, supply: form.supply })
    return { name: parsed.name, place: parsed.place ?? null, note: parsed.note ?? null, supply: parsed.supply }
  }
  const parsed = parse(shelfDeviceSchema, { name, place, note, device: form.device })
  return { name: parsed.name, place: parsed.place ?? null, note: parsed.note ?? null, device: parsed.device }
}

/** The boxes that differ between what is kept now and what was typed. */
function changedFields(kept: FormState, typed: FormState): ChangedField[] {
  const names = [...new Set([...Object.keys(kept.values), ...Object.keys(typed.values)])]
  return names
    .map((name) => ({
      label: shelfLabel(name),
      kept: kept.values[name]?.trim() ?? '',
      typed: typed.values[name]?.trim() ?? '',
    }))
    .filter((field) => field.kept !== field.typed)
}

/** The shelf as pages. */
export function shelfPageRoutes({ context, matching }: Needs): Router {
  const { store } = context
  const router = Router()
  const id = (request: Request): string => String(request.params.id)
  const keepTogether = sharing<Photo>()

  router.get('/shelf', async (request, response) => {
    const { search, supplies, devices, undo, of } = request.query
    const kind = of === 'supply' || of === 'device' ? of : null
    const undone = text(undo)
    const model = await shelfView(store, {
      search: text(search),
      country: await countryIn(store, request),
      numbers: { supply: pageNumber(supplies), device: pageNumber(devices) },
      undo: kind && /^[\w-]{16,64}$/.test(undone) ? { kind, id: undone } : null,
    })
    show(request, response, { view: 'shelf', model })
  })

  router.get('/shelf/matrix', async (request, response) => {
    const country = await countryIn(store, request)
    const asked = { row: pageNumber(request.query.row), column: pageNumber(request.query.column) }
    const part = { ...asked, rows: rowsShown, columns: columnsShown }
    const model = matrixView(await shelfMatrix(store, country || undefined, part), { country, ...asked })
    show(request, response, { view: 'matrix', model })
  })

  for (const kind of ['supply', 'device'] as const) {
    const folder = `/shelf/${plurals[kind]}`
    const one = `${folder}/:id`

    const form = (
      request: Request,
      response: Response,
      kept: { id: string; version: number; name: string } | null,
      state: FormState,
      refused: { faults?: FormFault[]; changed?: ChangedField[]; notSaved?: string; status?: number } = {},
    ): void =>
      show(request, response, {
        view: 'shelf-form',
        model: shelfFormView({ kind, kept, form: state, ...refused }),
        ...(refused.status === undefined ? {} : { status: refused.status }),
      })

    /** Saves a form; what is wrong with it, or with the disk, becomes the same form with what was typed. */
    const saving = async (
      request: Request,
      response: Response,
      kept: { id: string; version: number; name: string } | null,
      save: (item: ShelfItem) => Promise<Kept<ShelfItem>>,
    ): Promise<void> => {
      const sent = readShelfForm((request.body ?? {}) as Record<string, unknown>)
      if (sent.faults.length > 0) return form(request, response, kept, sent.state, { faults: sent.faults })
      try {
        const saved = await save(itemOf(kind, sent))
        response.redirect(303, `${folder}/${saved.id}`)
      } catch (error) {
        if (error instanceof StorageFault)
          return form(request, response, kept, sent.state, { notSaved: error.message, status: error.status })
        if (error instanceof Unprocessable) {
          const faults = faultsOf(error, 'name', ['name', 'place'])
          for (const fault of faults) sent.state.errors[fault.name] ??= fault.message
          return form(request, response, kept, sent.state, { faults })
        }
        if (error instanceof Stale) {
          const now = error.current as unknown as Kept<ShelfItem>
          const changed = changedFields(shelfFormOf(kind, now.body), shelfFormOf(kind, itemOf(kind, sent)))
          return form(request, response, now, sent.state, { changed, status: 409 })
        }
        throw error
      }
    }

    router.get(`${folder}/new`, (request, response) => form(request, response, null, shelfFormOf(kind, null)))
    router.post(folder, (request, response) =>
      saving(request, response, null, (item) =>
        store.add(kind, shelfDraft(item), entryId(onceField(request), kind, JSON.stringify(item))),
      ),
    )

    const page = async (
      request: Request,
      response: Response,
      refused: { photoForm?: FormState; faults?: FormFault[]; notSaved?: string; status?: number } = {},
    ): Promise<void> => {
      const kept = await store.get<ShelfItem>(kind, id(request))
      const country = await countryIn(store, request)
      const asked = country || undefined
      const matches =
        kind === 'supply' ? await matching.forSupply(kept.id, asked) : await matching.forDevice(kept.id, asked)
      const checks = await checksOf(kept, country, matches.slice(0, mostMatches))
      const model = shelfItemView({
        kind,
        kept,
        country,
        matches,
        checkOf: (match) => checks.get(match.id) ?? null,
        wanted: kind === 'device' ? await matching.wanted(kept.id, asked) : [],
        photos: await store.photos(kept.id),
        deletedPhoto: deletedPhoto(request.query.photo),
        ...refused,
      })
      show(request, response, {
        view: 'shelf-item',
        model,
        ...(refused.status === undefined ? {} : { status: refused.status }),
      })
    }

    /** The address of the whole check of each pair. */
    const checksOf = async (kept: Kept<ShelfItem>, country: string, matches: Match[]): Promise<Map<string, string>> => {
      const addresses = new Map<string, string>()
      for (const match of matches) {
        const other = await store.get<ShelfItem>(kind === 'supply' ? 'device' : 'supply', match.id)
        const supply = (kind === 'supply' ? kept : other).body as ShelfSupply
        const device = (kind === 'supply' ? other : kept).body as ShelfDevice
        try {
          addresses.set(
            match.id,
            checkAddress({ site: { country: country || null }, supply: supply.supply, device: device.device }),
          )
        } catch (error) {
          // a row brought in as JSON may have more rails than the form of a check has boxes for
          if (!(error instanceof RangeError)) throw error
        }
      }
      return addresses
    }

    router.get(one, (request, response) => page(request, response))

    router.get(`${one}/edit`, async (request, response) => {
      const kept = await store.get<ShelfItem>(kind, id(request))
      form(request, response, kept, shelfFormOf(kind, kept.body))
    })
    router.post(one, async (request, response) => {
      const { version } = (request.body ?? {}) as { version?: unknown }
      if (typeof version !== 'string' || !/^[1-9]\d{0,9}$/.test(version))
        throw new Unprocessable([
          { path: 'version', message: 'The form has no version; open the page again and send it from there.' },
        ])
      const base = { id: id(request), version: Number(version), name: text((request.body as { name?: unknown }).name) }
      await saving(request, response, base, (item) =>
        store.change<ShelfItem>(kind, base.id, base.version, () => shelfDraft(item)),
      )
    })
    router.post(`${one}/delete`, async (request, response) => {
      await store.remove(kind, id(request), null)
      response.redirect(303, `/shelf?of=${kind}&undo=${id(request)}`)
    })
    router.post(`${one}/restore`, async (request, response) => {
      await store.restore(kind, id(request))
      response.redirect(303, `${folder}/${id(request)}`)
    })

    router.post(`${one}/photos`, (request, response, next) => {
      photoForm(request, response, (fault?: unknown) => {
        const read = new FormReader(request.body, ['photo', 'caption'], (name) =>
          name === 'photo' ? 'Photo' : 'What it shows',
        )
        if (fault instanceof Unprocessable) read.fault('photo', fault.message)
        else if (!request.file || request.file.size === 0) read.fault('photo', 'Choose a photo.')
        const work = async (): Promise<void> => {
          await store.get(kind, id(request))
          const refused = (status: number, notSaved?: string) =>
            page(request, response, {
              photoForm: read.state,
              faults: read.faults,
              status,
              ...(notSaved === undefined ? {} : { notSaved }),
            })
          if (read.faults.length > 0) return refused(422)
          try {
            const caption = read.text('caption') ?? ''
            const bytes = request.file?.buffer ?? Buffer.alloc(0)
            const entry = entryId(onceField(request), id(request), caption, bytes)
            await keepTogether(entry, () => keepPhoto(context, id(request), caption, bytes, entry))
          } catch (error) {
            if (error instanceof StorageFault) return refused(error.status, error.message)
            if (!(error instanceof Unprocessable || error instanceof Full)) throw error
            read.fault('photo', error.message)
            return refused(422)
          }
          response.redirect(303, `${folder}/${id(request)}#photos`)
        }
        work().catch(next)
      })
    })
    router.post(`${one}/photos/:photoId/delete`, async (request, response) => {
      const photo = await store.photo(String(request.params.photoId))
      if (photo.owner !== id(request)) throw new NotFound()
      await store.removePhoto(photo.id)
      response.redirect(303, `${folder}/${id(request)}?photo=${photo.id}#photos`)
    })
    router.post(`${one}/photos/:photoId/restore`, async (request, response) => {
      await store.restorePhoto(String(request.params.photoId), mostPhotos)
      response.redirect(303, `${folder}/${id(request)}#photos`)
    })
  }
  return router
}
