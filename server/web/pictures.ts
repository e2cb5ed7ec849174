import { type RequestHandler, Router } from 'express'
import { type PhotoSize, photoPath } from '../store/photoFiles.js'
import type { Context } from './context.js'
import { NotFound } from './errors.js'

/** The pictures of kept photos themselves, large and small. */
export function pictureRoutes({ store, config }: Context): Router {
  const router = Router()
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
  return router
}
