import { type RequestHandler, Router } from 'express'
import { type PhotoSize, photoPath } from '../../store/photoFiles.js'
import type { Kind, Photo } from '../../store/store.js'
import type { Context } from '../context.js'
import { NotFound, Unprocessable } from '../errors.js'
import { entryId, onceHeader } from '../once.js'
import { parse } from '../parse.js'
import { keepPhoto, mostPhotos, photoForm } from '../parts/keepPhoto.js'
import { sharing } from '../parts/sharing.js'
import { photoJson } from '../records/jobRecord.js'
import { captionSchema } from '../schemas/photos.js'

const owners: { kind: Kind; path: string }[] = [
  { kind: 'job', path: '/api/jobs' },
  { kind: 'supply', path: '/api/shelf/supplies' },
  { kind: 'device', path: '/api/shelf/devices' },
]

/** The pictures themselves, and photos as JSON. */
export function photoRoutes(context: Context): Router {
  const { store, config } = context
  const router = Router()
  const keepTogether = sharing<Photo>()

  const picture =
    (size: PhotoSize): RequestHandler =>
    async (request, response) => {
      const photo = await store.photo(String(request.params.photoId))
      await new Promise<void>((resolve, reject) => {
        response.sendFile(
          photoPath(config.dataDir, photo, size),
          {
            root: config.dataDir.startsWith('/') ? '/' : process.cwd(),
            dotfiles: 'allow',
            maxAge: '30d',
            immutable: true,
            headers: {
              'Content-Type': size === 'large' ? photo.type : 'image/webp',
              'Cache-Control': 'private, max-age=2592000',
            },
          },
          (error) => (error ? reject(error) : resolve()),
        )
      }).catch((error: NodeJS.ErrnoException) => {
        // what was said of the picture is not true of the words that are answered instead
        for (const header of ['Content-Type', 'Cache-Control', 'ETag', 'Last-Modified']) response.removeHeader(header)
        if (error.code === 'ENOENT' || error.code === 'EISDIR')
          throw new NotFound('The file of this photo is not there any more.')
        if (error.code !== 'ECONNABORTED') throw error
      })
    }
  router.get('/photos/:photoId', picture('large'))
  router.get('/photos/:photoId/small', picture('small'))

  for (const { kind, path } of owners) {
    router.get(`${path}/:id/photos`, async (request, response) => {
      await store.get(kind, String(request.params.id))
      response.json({ photos: (await store.photos(String(request.params.id))).map(photoJson), most: mostPhotos })
    })
    router.post(`${path}/:id/photos`, photoForm, async (request, response) => {
      const owner = String(request.params.id)
      await store.get(kind, owner)
      const caption = parse(captionSchema, (request.body as { caption?: unknown } | undefined)?.caption)
      if (!request.file)
        throw new Unprocessable([{ path: 'photo', message: 'Choose a photo: JPEG, PNG or WebP, up to 8 MB.' }])
      const { buffer } = request.file
      const entry = entryId(onceHeader(request), request.path, caption, buffer)
      const photo = await keepTogether(entry, () => keepPhoto(context, owner, caption, buffer, entry))
      response.status(201).json(photoJson(photo))
    })
  }
  router.delete('/api/photos/:photoId', async (request, response) => {
    await store.removePhoto(String(request.params.photoId))
    response.status(204).end()
  })
  router.post('/api/photos/:photoId/restore', async (request, response) => {
    response.json(photoJson(await store.restorePhoto(String(request.params.photoId), mostPhotos)))
  })
  return router
}
